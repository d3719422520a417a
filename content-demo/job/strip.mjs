import { beats } from "./beats.mjs";
import { card } from "./machine.mjs";
import { action, caution, consumable, deferred, gotcha, measurement, part, tool } from "./notation.mjs";

const micrometer = "micrometer, 0 to 1 in";
const feelers = "feeler gauge, 2 to 25 thou";
const fromCard = `specified and limit: ${card}`;
const usBenchmark = "Written for US workplaces, a benchmark elsewhere.";

/** At the desk, before the pump is opened; no film. */
export const atTheDesk = [
  action(
    null,
    "desk",
    "Before the pump is opened, gather the new lip seal, thrust washer and cover gasket.",
    {
      stage: "strip",
      detail:
        "The card says to renew all three whenever the pump is opened. Cut the gasket from oiled paper to the pattern printed on the card. Keep the old parts until the new ones are proved.",
      result: "Three new parts lie in one tin, marked with the name of the pump.",
    },
  ),
  part(null, "seal", "obtained", 1, {
    size: "1/2 in × 1-3/8 in × 3/8 in",
    source: "bearing stockist, to size",
  }),
  part(null, "washer", "obtained", 1, {
    size: "1/2 in × 1 in × 1/16 in",
    source: "bearing stockist, to size",
  }),
  part(null, "gasket", "made", 1, { size: "1/64 in thick", source: "made here" }),
  measurement(null, "Bore for the lip seal in the pump body", {
    specified: "1-3/8 in (34.9 mm)",
    source: "published",
    sourceNote: card,
  }),
  measurement(null, "New lip seal, outside diameter", {
    of: "seal",
    asFound: "1.381 in",
    specified: "1.379 to 1.383 in",
    instrument: "vernier calliper, 0 to 6 in",
    source: "measured",
    sourceNote: fromCard.replace(" and limit", ""),
    note: "Larger than the bore by 6 thou: a press fit.",
  }),
  tool(null, "Vernier calliper", "0 to 6 in"),
  consumable(null, "Oiled gasket paper, 1/64 in", "one piece, 5 in square"),
];

export const strip = [
  tool(beats.float - 1.2, "Feeler gauge", "2 to 25 thou"),
  action(
    beats.float,
    "float",
    "Before a nut is touched, measure the end float with a feeler gauge at the pulley.",
    {
      stage: "strip",
      detail:
        "Pull the pulley outwards. Try the blades between pulley boss and thrust washer, thinnest first. The thickest that enters is the end float.",
    },
  ),
  measurement(beats.float + 3.8, "End float of the shaft, at the pulley boss", {
    of: "shaft",
    asFound: "about 15 thou",
    specified: "8 to 12 thou",
    limit: "at most 20 thou",
    instrument: feelers,
    source: "measured",
    sourceNote: fromCard,
  }),
  deferred(beats.float + 4.8, "open-float", "End float lies above the card's figure for a new pump.", {
    of: "washer",
    waitsFor: "a new thrust washer, and a second measurement",
  }),

  tool(beats.witness - 0.4, "Scriber", "6 in"),
  action(beats.witness, "witness", "Scratch a witness mark across the edges of cover and body.", {
    detail: "One line on top, over the joint, deep enough to see after cleaning.",
    result: "One straight line runs from the cover over the gasket to the body.",
  }),

  tool(beats.nutsOff - 0.4, "Open-ended spanner", "1/4 in BSF"),
  action(beats.nutsOff, "nutsOff", "Unscrew the four cover nuts in a cross, half a turn at a time.", {
    detail: "Half a turn on each before any comes off, so that the cover is not bent.",
  }),
  part(beats.nutsOff + 5.2, "coverNut", "removed", 4, { size: "1/4 in BSF", container: "tin 1" }),

  tool(beats.coverOff - 0.4, "Soft mallet", "small"),
  action(beats.coverOff, "coverOff", "Draw the cover straight off its four studs.", {
    detail:
      "If the cover sticks, tap its rim with a soft mallet on alternate sides. Drive nothing into the joint: the faces seal on the paper.",
  }),
  part(beats.coverOff + 3.0, "cover", "removed", 1, {
    wayRound: "drain plug at the bottom, witness mark on top",
    words: "Lies on the bench, right of the pump.",
  }),

  caution(beats.gasketOff - 2.8, "The old gasket may hold asbestos.", {
    consequence: "Dust that is breathed in can cause cancer of the lungs many years later.",
    harms: "person",
    severity: "serious",
    likelihood: "could",
    avoid:
      "Treat the gasket as asbestos until a laboratory says otherwise. Keep it wet, and take it off whole. Use no dry scraper or brush, no compressed air and no ordinary vacuum cleaner. Bag it wet, and label the bag. If it breaks up, stop and ask a licensed remover. Removal and waste follow local law.",
    sourceNote: `US EPA, Current Best Practices for Preventing Asbestos Exposure (brakes and clutches), March 2007; OSHA 29 CFR 1926.1101, wet methods. ${usBenchmark}`,
  }),
  consumable(
    beats.gasketOff - 1.4,
    "Water with a few drops of washing-up liquid",
    "100 ml",
    "in a wash bottle",
  ),
  consumable(beats.gasketOff - 0.8, "Waste bag, heavy polythene, with label", "one"),
  action(beats.gasketOff, "gasketOff", "With water on the joint, peel the old gasket away in one piece.", {
    detail:
      "Wet both sides as they open. Wipe what stays on the face with a wet cloth, and bag the cloth as well.",
    result: "The gasket lies wet in a closed and labelled bag; the face is bare.",
  }),
  part(beats.gasketOff + 4.4, "gasket", "removed", 1),
  part(beats.gasketOff + 5.0, "gasket", "scrapped", 1, { container: "waste bag" }),

  tool(beats.impellerNutOff - 0.5, "Ring spanner", "3/8 in BSF"),
  action(
    beats.impellerNutOff,
    "impellerNutOff",
    "Turn the impeller nut clockwise to undo the left-hand thread.",
    {
      detail: "Hold the pulley still with a strap, never with a bar through its spokes.",
    },
  ),
  gotcha(beats.impellerNutOff + 1.8, "The impeller nut held faster the more it was undone the usual way.", {
    on: "impellerNut",
    why: "Its thread is left hand. A groove round the corners of the nut is the only sign.",
    instead: "Look for the groove first. Clockwise undoes, anticlockwise tightens.",
  }),
  part(beats.impellerNutOff + 3.2, "impellerNut", "removed", 1, {
    size: "3/8 in BSF, left hand",
    container: "tin 2",
    wayRound: "grooved end outwards",
  }),

  caution(beats.impellerOff - 1.6, "A lever behind the rim breaks the brass vanes.", {
    consequence: "The impeller is scrap, and the shaft may bend.",
    harms: "thing",
    severity: "damage",
    likelihood: "could",
    avoid: "Use the two tapped holes and the jacking screws. Give each screw half a turn in turn.",
    sourceNote: "Common practice, no source",
  }),
  tool(beats.impellerOff - 0.5, "Jacking screws, two", "1/4 in BSF × 2 in"),
  action(beats.impellerOff, "impellerOff", "Draw the impeller off with the two jacking screws.", {
    detail: "The screws bear on the back wall of the body. Stop as soon as the impeller slides by hand.",
  }),
  part(beats.impellerOff + 4.0, "impeller", "removed", 1, {
    wayRound: "vanes towards the cover",
    words: "Lies on the bench, right of the pump.",
  }),

  tool(beats.keyOff - 0.4, "Brass drift", "1/8 in"),
  action(beats.keyOff, "keyOff", "Lift the key out of its slot in the shaft.", {
    detail: "Tap the end of the key with a brass drift, and it rolls up out of its slot.",
  }),
  part(beats.keyOff + 1.8, "key", "removed", 1, {
    size: "Woodruff, 1/8 in × 1/2 in",
    container: "tin 2",
    wayRound: "flat side up",
  }),

  action(beats.shaftOut, "shaftOut", "Draw the shaft out of the body at the pulley end.", {
    detail:
      "Keep one hand under the pulley. Nothing else holds the shaft, and the thrust washer comes out loose.",
  }),
  part(beats.shaftOut + 2.6, "shaft", "removed", 1, { words: "Lies on the bench, left of the pump." }),
  part(beats.shaftOut + 3.0, "washer", "removed", 1, { words: "Lies on the bench, left of the pump." }),

  caution(beats.sealOut - 1.6, "The seal hook can slip off the rim of the seal.", {
    consequence: "The point cuts a hand, or metal flies towards the eyes.",
    harms: "person",
    severity: "minor",
    likelihood: "could",
    avoid: "Wear eye protection and gloves. Keep the other hand behind the hook.",
    sourceNote: "Common practice, no source",
  }),
  tool(beats.sealOut - 0.8, "Seal hook", "8 in"),
  action(beats.sealOut, "sealOut", "Hook the old lip seal out of its bore, a little on each side.", {
    detail: "Catch the steel rim from behind. Leave the bush alone: brass bruises under a hook.",
  }),
  part(beats.sealOut + 3.0, "seal", "removed", 1, { wayRound: "spring side towards the impeller" }),
  part(beats.sealOut + 3.4, "seal", "scrapped", 1, { words: "Lip hard, with a groove worn in." }),
];

export const inspect = [
  caution(beats.clean - 2.8, "White spirit gives off a flammable vapour.", {
    consequence: "The vapour can catch fire and make drowsy; swallowed, the liquid can be fatal.",
    harms: "person",
    severity: "serious",
    likelihood: "could",
    avoid:
      "Work outdoors or with moving fresh air, away from heat and sparks. Wear gloves. Lay the cloth flat outdoors to dry. Follow the supplier's data sheet, and local rules for waste.",
    sourceNote:
      "GHS statements H226, H304, H336, P210, P271, P280 (EU CLP wording), as usual for white spirit. The supplier's data sheet decides.",
  }),
  caution(beats.clean - 1.4, "Compressed air throws grit back out of a blind bore.", {
    consequence: "Grit enters an eye, or air enters the skin.",
    harms: "person",
    severity: "serious",
    likelihood: "could",
    avoid:
      "Wipe the bore, with no air line. Where air must be used: less than 30 psi, with a chip guard and eye protection, and never towards skin.",
    sourceNote: `OSHA 29 CFR 1910.242(b). ${usBenchmark}`,
  }),
  consumable(beats.clean - 0.4, "White spirit", "20 ml", "on a lint-free cloth, wound on a wooden rod"),
  action(beats.clean, "clean", "Wipe the seal bore and the shaft with white spirit on a cloth.", {
    stage: "clean",
    result: "A white cloth comes away clean from bore, bush and shaft.",
  }),

  tool(beats.measure - 0.4, "Micrometer", "0 to 1 in"),
  action(
    beats.measure,
    "measure",
    "Measure the shaft on the seal track and the old thrust washer with the micrometer.",
    {
      stage: "inspect",
      detail: "On the shaft, measure in two places at right angles, and keep the smaller value.",
    },
  ),
  measurement(beats.measure + 2.4, "Shaft diameter on the seal track", {
    name: "shaft-diameter",
    of: "shaft",
    asFound: "0.4982 in (12.654 mm)",
    specified: "1/2 in -0.001",
    limit: "at least 0.497 in",
    asFitted: "0.4982 in (12.654 mm)",
    instrument: micrometer,
    source: "measured",
    sourceNote: fromCard,
    note: "Worn, but above the limit: the shaft is used again.",
  }),
  measurement(beats.measure + 5.2, "Thrust washer, thickness", {
    name: "washer-thickness",
    of: "washer",
    asFound: "0.0595 in",
    specified: "1/16 in (1.5875 mm)",
    limit: "at least 0.060 in",
    asFitted: "0.0625 in",
    instrument: micrometer,
    source: "measured",
    sourceNote: fromCard,
    note: "The old washer has lost 3 thou and is below its limit. The new one was measured before fitting.",
  }),
  part(beats.measure + 5.6, "washer", "scrapped", 1),
];
