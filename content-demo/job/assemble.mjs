import { beats } from "./beats.mjs";
import { card } from "./machine.mjs";
import { action, caution, consumable, deferred, gotcha, measurement, part, tool } from "./notation.mjs";

const wrench = "torque wrench, 1 to 15 lbf ft";

export const assemble = [
  tool(beats.sealIn - 0.7, "Pressing mandrel with 1/2 in pilot", "1-11/32 in diameter"),
  consumable(beats.sealIn - 0.3, "Water-pump grease", "5 ml"),
  action(beats.sealIn, "sealIn", "Press the new lip seal in square, with its lip towards the impeller.", {
    stage: "assemble",
    detail:
      "Grease the lip. The pilot of the mandrel runs in the bush and keeps the seal square. Press until the seal meets the shoulder of the bore, and no further.",
    result: "The rim of the seal lies level all round.",
  }),
  gotcha(beats.sealIn + 1.4, "The seal goes in either way round, and leaks at once if it is reversed.", {
    on: "seal",
    why: "Water pressure must push the lip onto the shaft. The spring shows the side, and is hidden afterwards.",
    instead: "Find the spring before pressing. The spring side faces the impeller.",
  }),
  part(beats.sealIn + 3.2, "seal", "fitted", 1, { wayRound: "spring side towards the impeller" }),

  action(
    beats.shaftIn,
    "shaftIn",
    "Slide the shaft in, with the new thrust washer against the pulley boss.",
    {
      detail: "Oil the shaft first. Turn the shaft as its end passes the lip of the seal.",
    },
  ),
  part(beats.shaftIn + 1.8, "washer", "fitted", 1, { size: "1/2 in × 1 in × 1/16 in" }),
  part(beats.shaftIn + 2.2, "shaft", "fitted", 1),

  action(beats.impellerOn, "impellerOn", "Fit the impeller over its key, with the vanes towards the cover.", {
    detail: "Set the key in its slot first, flat side up and level with the shaft.",
  }),
  part(beats.impellerOn + 0.8, "key", "fitted", 1, {
    size: "Woodruff, 1/8 in × 1/2 in",
    wayRound: "flat side up",
  }),
  part(beats.impellerOn + 2.2, "impeller", "fitted", 1, { wayRound: "vanes towards the cover" }),

  tool(beats.impellerNutOn - 0.4, "Torque wrench", "1 to 15 lbf ft"),
  action(
    beats.impellerNutOn,
    "impellerNutOn",
    "Tighten the impeller nut anticlockwise with the torque wrench.",
    {
      detail: "Set the wrench to left-hand drive. The thread is clean and dry.",
    },
  ),
  part(beats.impellerNutOn + 0.8, "impellerNut", "fitted", 1, {
    size: "3/8 in BSF, left hand",
    wayRound: "grooved end outwards",
  }),
  measurement(beats.impellerNutOn + 1.8, "Impeller nut, torque, thread clean and dry", {
    of: "impellerNut",
    specified: "12 lbf ft (16.3 N m)",
    asFitted: "12 lbf ft",
    instrument: wrench,
    source: "published",
    sourceNote: card,
  }),

  action(beats.coverOn, "coverOn", "Fit the new gasket and then the cover, with the witness mark in line.", {
    detail: "The gasket goes on dry. Its four holes must drop over the studs without pulling.",
  }),
  part(beats.coverOn + 0.8, "gasket", "fitted", 1, { size: "1/64 in thick" }),
  part(beats.coverOn + 2.2, "cover", "fitted", 1, {
    wayRound: "drain plug at the bottom, witness mark on top",
  }),
  gotcha(
    beats.coverOn + 2.6,
    "The cover fits in four positions, and once went on with the drain plug on top.",
    {
      on: "cover",
      why: "The four studs stand evenly, and nothing else guides the cover.",
      instead: "Bring the witness mark into line before the first nut.",
    },
  ),

  action(beats.nutsOn, "nutsOn", "Run the four cover nuts on, finger-tight.", {
    detail: "No spanner yet: the gasket must be seen to lie flat all round.",
  }),
  part(beats.nutsOn + 1.8, "coverNut", "fitted", 4, { size: "1/4 in BSF" }),
  deferred(beats.nutsOn + 2.1, "open-nuts", "The four cover nuts are finger-tight only.", {
    of: "coverNut",
    waitsFor: "the gasket seen to lie flat all round",
  }),

  tool(beats.nutsTight - 0.3, "Torque wrench", "1 to 15 lbf ft"),
  action(beats.nutsTight, "nutsTight", "Tighten the four cover nuts in a cross, in two stages.", {
    closes: ["open-nuts"],
    detail: "First stage 2 lbf ft (2.7 N m), second stage 5 lbf ft (6.8 N m). Threads clean and dry.",
  }),
  measurement(beats.nutsTight + 3.2, "Cover nuts, torque, second stage, threads clean and dry", {
    of: "coverNut",
    specified: "5 lbf ft (6.8 N m)",
    asFitted: "5 lbf ft",
    instrument: wrench,
    source: "published",
    sourceNote: card,
  }),
];

export const prove = [
  caution(beats.turn - 1.2, "Belt and pulley draw in fingers once the engine turns them.", {
    consequence: "Fingers are crushed or torn off.",
    harms: "person",
    severity: "serious",
    likelihood: "could",
    avoid:
      "Prove the pump by hand, with the belt off. Refit the belt guard before the engine is started. Wear no gloves and no loose sleeves near a running belt.",
    sourceNote:
      "UK Provision and Use of Work Equipment Regulations 1998, regulation 11, dangerous parts of machinery. Binds employers, a benchmark for others.",
  }),
  action(beats.turn, "turn", "Turn the pulley by hand through one whole turn.", {
    detail: "Feel for a rub of the impeller on the cover, and for a place that drags.",
    result: "The shaft turns freely all the way round, without a rub.",
  }),

  tool(beats.floatAgain - 0.4, "Feeler gauge", "2 to 25 thou"),
  action(beats.floatAgain, "floatAgain", "Measure the end float again at the pulley.", {
    stage: "prove",
    detail:
      "The end float was 15 thou, and the new washer is 3 thou thicker than the old: 12 thou is to be expected.",
  }),
  measurement(beats.floatAgain + 2.4, "End float of the shaft, at the pulley boss", {
    closes: ["open-float"],
    of: "shaft",
    asFound: "about 15 thou",
    specified: "8 to 12 thou",
    limit: "at most 20 thou",
    asFitted: "12 thou",
    instrument: "feeler gauge, 2 to 25 thou",
    source: "measured",
    sourceNote: `specified and limit: ${card}`,
  }),
];
