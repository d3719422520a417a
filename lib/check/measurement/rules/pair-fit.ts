import { bearing } from "#lib/reference/index.ts";
import { near, roomOf, sayIn, stepOf } from "../figures.ts";
import { type EntryRule, firstOf, type Remark } from "../rule.ts";
import { type Fact, relatedFacts, type Sight } from "../sight.ts";
import { decisionIn, fitIn, type Side, sideOf } from "../words.ts";

/** A shaft and a hole that cannot go together as they are said to. */
export const pairFit: EntryRule = {
  id: "fit-impossible",
  title: "What goes into what",
  explanation:
    "What slides or drops in by hand must be smaller than its hole; what is pressed must be larger, and by a few thousandths of its size, or the outer part gives. Two measured sizes say at once whether the words can be true.",
  source: "arithmetic; ISO 286-1 for classes of fit",
  check: (sight) => firstOf(sight, pair, fitSaid, cavity, cornered, inSlot, onBearing),
  examples: [
    {
      says: "larger than the housing it drops into",
      entry: {
        text: "40.03 mm",
        what: "bearing outside diameter",
        context: {
          related: [
            { what: "housing bore", text: "40.00 mm" },
            { what: "fit", text: "drops in by hand" },
          ],
        },
      },
      finds: 1,
    },
    {
      says: "a press fit",
      entry: {
        text: "0.5000 in",
        what: "dowel diameter",
        context: {
          related: [
            { what: "reamed hole", text: "0.4995 in" },
            { what: "fit", text: "press" },
          ],
        },
      },
      finds: 0,
    },
    {
      says: "a press fit that is loose",
      entry: {
        text: "0.4990 in",
        what: "dowel diameter",
        context: {
          related: [
            { what: "reamed hole", text: "0.4995 in" },
            { what: "fit", text: "press" },
          ],
        },
      },
      finds: 1,
    },
    {
      says: "a piston larger than its bore",
      entry: {
        text: "70.05 mm",
        what: "piston diameter",
        context: { related: [{ what: "cylinder bore", text: "70.00 mm" }] },
      },
      finds: 1,
    },
    {
      says: "a key in inches, its keyway in millimetres",
      entry: {
        text: "5/16 in",
        what: "key width",
        context: {
          related: [
            { what: "sits in", text: "keyway 7.90 mm wide" },
            { what: "fit", text: "slides freely" },
          ],
        },
      },
      finds: 1,
    },
    {
      says: "a pin that is pressed into it, and is smaller",
      entry: {
        text: "0.2510 in",
        what: "reamed hole",
        context: {
          related: [
            { what: "pin that is pressed into it", text: "0.2500 in" },
            { what: "fit", text: "press" },
          ],
        },
      },
      finds: 1,
    },
    {
      says: "a square is wider over its corners",
      entry: {
        text: "6 mm square",
        what: "winding square",
        context: {
          related: [
            { what: "round hole in the case", text: "8 mm" },
            { what: "fit", text: "passes clear" },
          ],
        },
      },
      finds: 1,
    },
    {
      says: "a shaft larger than the bore its bearing's number gives",
      entry: {
        text: "25.06 mm",
        what: "shaft diameter at the bearing",
        context: {
          related: [
            { what: "bearing", text: "6205" },
            { what: "fit", text: "slides on by hand" },
          ],
        },
      },
      finds: 1,
    },
    {
      says: "a bolt thicker than its slot",
      entry: {
        text: "1/2 in",
        what: "bolt head thickness",
        context: {
          related: [
            { what: "slot in the keep", text: "7/16 in" },
            { what: "bolt", text: "enters freely" },
          ],
        },
      },
      finds: 1,
    },
    {
      says: "drops in while its housing is hot",
      entry: {
        text: "52.01 mm",
        what: "bearing outside diameter",
        context: {
          related: [
            { what: "housing bore, cold", text: "52.00 mm" },
            { what: "fit", text: "drops in with the cover at 100 °C" },
          ],
        },
      },
      finds: 0,
    },
  ],
};

/** Lengths that are no size of a fit. */
export const notASize =
  /\b(?:clearance|interference|gap|length|depth|play|float|wall|thick\w*|runout|run-out|stroke|travel|speed|limit|spec|tolerance|ovality|taper|wear|chamfer|radius|pcd|pitch|cent(?:re|er)s? (?:distance|height|to)|height|protru\w*|lift|backlash|fit of|pulley(?! (?:bore|seat|hub|shaft))|wheel base|roughness|counterbore depth)\b/;

function pair(sight: Sight): Remark[] {
  const { main, what } = sight;
  if (main?.dimension !== "length" || notASize.test(what)) return [];
  if (!relatedFacts(sight).some((fact) => fact.dimension === "length")) return [];
  const own = sideOf(what) ?? sideOf(`${what} ${sight.part}`);
  if (own === null || sight.reading.kind === "product") return seal(sight, main);
  for (const other of relatedFacts(sight)) {
    const side = sideByPhrase(other) ?? sideOf(other.name);
    if (other.dimension !== "length" || side === null || side === own || notASize.test(other.name)) continue;
    const lost = slipOf(main, other, sight);
    if (lost) return [lost];
    if (!near(other.si, main.si, 0.09)) continue;
    const [inner, outer] = own === "in" ? [main, other] : [other, main];
    const remark = judged(sight, inner, outer);
    if (remark) return [remark];
  }
  return [];
}

/** "Sits in", "goes over it": what the label says of the other part, else what the words beside its figure do. */
function sideByPhrase({ name, label }: Fact): Side | null {
  if (/\b(?:in|into|inside|through) it\b/.test(name)) return "in";
  if (/\b(?:over|on|onto|round|around) it\b/.test(name)) return "out";
  if (
    /\b(?:sits|goes|runs|works|fits|turns|slides|drops|fitted|pressed|beds|lies|moves|enters) (?:in|into|inside|through)\b|\b(?:goes|fits|slips|slides|pushes|drops|runs) over\b|\b(?:collar|sleeve|bush|hub|pulley|wheel|gear|ring|cap) (?:on|over) (?:it|this)\b|\bits (?:hole|bore|seat|socket|housing)\b/.test(
      name,
    )
  )
    return "out";
  if (
    /\b(?:goes|fits|sits|runs|slides|turns|slips|pressed|fitted|rides) (?:on|onto|upon|round|around)\b|\b(?:takes|carries|holds|goes in it|goes through it)\b/.test(
      name,
    )
  )
    return "in";
  return name === label || /\b(?:hole|bore|inside|i\.?d|outside|o\.?d)\b/.test(name) ? null : sideOf(label);
}

/** Measured apart from one another: a size hot and a size cold tell nothing of a fit at one temperature. */
const heated =
  /\b(?:cold|hot|heated|warm(?:ed)?|chilled|frozen|freezer|oven|dry ice|nitrogen|hot ?plate|oil bath)\b|\bat \d{2,3} ?°/;

/** "40 H7/s6", and it slides: the letters of ISO 286-1 tell clearance (a to h) from interference (s and beyond). */
function fitSaid(sight: Sight): Remark[] {
  const fit = /\b\d{1,3}(?:\.\d+)?\s?H\d{1,2}\s?\/\s?([a-z]{1,2})\d{1,2}\b/.exec(
    `${sight.entry.text} ${sight.entry.context.spec ?? ""}`,
  );
  if (!fit) return [];
  const letter = fit[1]?.[0] ?? "";
  const said = fitIn(saidOf(sight));
  const clears = /[a-h]/.test(letter);
  const grips = /[s-z]/.test(letter);
  if (said === null || !(said === "tight" ? clears : grips)) return [];
  return [
    {
      severity: "wrong",
      found: `${fit[0]}, and said to be ${said === "tight" ? "tight" : "free"}.`,
      expected: clears ? "H with a to h leaves clearance." : "H with s and beyond is an interference fit.",
      source: "ISO 286-1 (from memory)",
    },
  ];
}

/** What lies within something is not longer than the room in it. */
function cavity(sight: Sight): Remark[] {
  const { main, what } = sight;
  if (main?.dimension !== "length" || !/\b(?:height|width|length|thickness|depth)\b/.test(what)) return [];
  if (room.test(what) || /\b(?:proud|protrud\w*|stands? out|nip|crush|preload|compress\w*)\b/.test(sight.all))
    return [];
  const within = relatedFacts(sight).find((fact) => fact.dimension === "length" && room.test(fact.name));
  if (!within || main.si <= within.si + stepOf(main) * 0.3 || !near(main.si, within.si, 0.6)) return [];
  if (decisionIn(`${sight.verdict} ${sight.remarks}`) === "rejected") return [];
  return [
    {
      severity: "doubtful",
      found: `${what} ${main.raw}, ${within.name} ${within.raw}.`,
      expected: `${within.raw} at the most.`,
    },
  ];
}

const tooLarge = (found: string, expected: string): Remark[] => [
  { severity: "wrong", found, expected, source: "geometry" },
];

/** A square or a hexagon that is to go through a round hole goes by its corners. */
function cornered(sight: Sight): Remark[] {
  const lengths = sight.facts.filter((fact) => fact.dimension === "length");
  const hole = lengths.find((fact) =>
    /\bround (?:hole|bore|eye|socket)\b|\b(?:bored|drilled) hole\b/.test(fact.label),
  );
  const [square, hex] = [/\bsquare\b/, /\bhex(?:agon\w*)?\b/].map((shape) =>
    lengths.find((fact) => fact !== hole && shape.test(fact.label) && !/\bcorners\b/.test(fact.label)),
  );
  const flats = square ?? hex;
  if (
    !hole ||
    !flats ||
    ![hole, flats].includes(sight.main as Fact) ||
    fitIn(saidOf(sight).replace(/\bpasses\b/g, "slips in")) !== "clear"
  )
    return [];
  const corners = flats.si * (square ? Math.SQRT2 : 2 / Math.sqrt(3));
  if (corners <= hole.si + roomOf(flats) * 0.45) return [];
  return tooLarge(
    `${flats.name} ${flats.raw}, ${hole.name} ${hole.raw}.`,
    `A hole of ${sayIn(corners, hole.quantity, 3)}: the width over the corners.`,
  );
}

/** What enters a slot is thinner than the slot is wide. */
function inSlot(sight: Sight): Remark[] {
  const { main, what } = sight;
  if (main?.dimension !== "length" || !/\b(?:thickness|thick|width)\b/.test(what) || inASlot.test(what))
    return [];
  const slot = relatedFacts(sight).find(
    (fact) =>
      fact.dimension === "length" &&
      inASlot.test(fact.name) &&
      !/\b(?:depth|deep|length|long)\b/.test(fact.name),
  );
  if (
    !slot ||
    main.si <= slot.si + roomOf(main) * 0.3 ||
    !near(main.si, slot.si, 0.5) ||
    fitIn(saidOf(sight)) !== "clear"
  )
    return [];
  return tooLarge(`${what} ${main.raw}, ${slot.name} ${slot.raw}.`, `Less than ${slot.raw}.`);
}

const inASlot = /\b(?:slot|groove|mortise|keyway|fork|slit|kerf)\b/;

/** A bearing's number gives the bore that its shaft must fit. */
function onBearing(sight: Sight): Remark[] {
  const { main, what } = sight;
  const number = sight.named.find((one) => one.designation.type === "bearing")?.designation;
  const told = (sight.entry.context.related ?? []).find(
    (one) => /\bbearing\b/i.test(one.what) && /^\d{3,5}\b/.test(one.text),
  );
  const row = bearing(
    number?.type === "bearing" ? number.number : (/^\d+/.exec(told?.text ?? "")?.[0] ?? ""),
  );
  const said = fitIn(saidOf(sight));
  if (!row || said === null || main?.dimension !== "length" || notASize.test(what)) return [];
  const shaft = /\b(?:shaft|journal|spindle|axle)\b/.test(what);
  if (shaft === /\bhousing\b/.test(what)) return [];
  const size = (shaft ? row.bore : row.outside) / 1000;
  const over = shaft ? main.si - size : size - main.si;
  if (
    !near(main.si, size, 0.05) ||
    (said === "clear" ? over <= 1e-5 : over >= -1e-5) ||
    heated.test(sight.all)
  )
    return [];
  return tooLarge(
    `${what} ${main.raw} for ${row.number}, and said to be ${said === "clear" ? "free" : "tight"}.`,
    `${shaft ? "A bore" : "An outside"} of ${sayIn(size, main.quantity, 4)}.`,
  );
}

const room =
  /\binside (?:depth|width|length|height)\b|\b(?:between|room between|space between)\b|\bbarrel depth\b/;

/** A shaft of a tenth of its hole: the decimal point, or the unit. */
function slipOf(main: Fact, other: Fact, { remarks, all }: Sight): Remark | null {
  const ratio = main.si / other.si;
  const factor = [10, 0.1, 100, 0.01, 25.4, 1 / 25.4, 1000, 0.001].find((one) => near(ratio, one, 0.03));
  if (!factor || /\boil ?way|feed hole|drilling|split pin|grub|cross[- ]?hole\b/.test(`${all} ${remarks}`))
    return null;
  return {
    severity: "doubtful",
    found: `${main.name} ${main.raw}, ${other.name} ${other.raw}.`,
    expected: "Nearly one size.",
    meant: `${sayIn(main.si / factor, main.quantity, 4)}?`,
  };
}

const soft =
  /\b(?:rubber|leather|felt|nylon|plastic|cork|wood|seal|packing|cup|o-?ring|hose|grommet|neoprene|ptfe|fibre)\b/;

/** What goes in moves in its hole. */
const moves = (inner: Fact, outer: Fact, { what }: Sight): boolean =>
  /\b(?:piston|valve stem|stem|plunger|journal|crank-?pin|running|runs|turns|works|slides?|sliding|spindle)\b/.test(
    `${inner.name} ${what}`,
  ) && !/\bpiston boss|gudgeon|wrist\b/.test(`${inner.name} ${outer.name}`);

function judged(sight: Sight, inner: Fact, outer: Fact): Remark | null {
  const innerLow = inner.low ?? inner.si;
  const over = innerLow - (outer.high ?? outer.si);
  const under = (outer.low ?? outer.si) - (inner.high ?? inner.si);
  const said = fitIn(saidOf(sight));
  const unsure = Math.min(stepOf(inner), stepOf(outer)) * 0.3;
  const size = outer.si;
  const words = `${inner.name} ${inner.raw}, ${outer.name} ${outer.raw}`;
  const by = (amount: number) => sayIn(amount, outer.quantity, 2);
  if (said === "tight" && under > unsure)
    return {
      severity: "wrong",
      found: `${words}: loose by ${by(under)}, and said to be tight.`,
      expected: "The inner part larger than its hole.",
    };
  if (said === "clear" && over > unsure && !(heated.test(sight.all) && over < size * 0.004))
    return {
      severity: "wrong",
      found: `${words}: ${by(over)} too large to go in freely.`,
      expected: "The inner part smaller than its hole.",
    };
  if (over > size * 0.005 && over > 2e-5 && said !== "clear" && !soft.test(sight.all))
    return {
      severity: "doubtful",
      found: `${words}: ${by(over)} of interference.`,
      expected:
        "A few thousandths of the diameter at the most; more than that bursts or yields the outer part.",
      source: "common practice, no source",
    };
  if (
    said === null &&
    over > unsure &&
    moves(inner, outer, sight) &&
    !/\b(?:before|prior to|to be) (?:ream|bor|hon|lapp|scrap|fit)|\bunreamed|rough|blank|undersize|as cast|heat/.test(
      sight.all,
    ) &&
    decisionIn(`${sight.verdict} ${sight.remarks}`) !== "rejected"
  )
    return {
      severity: "wrong",
      found: `${words}: ${by(over)} larger than the hole in which it moves.`,
      expected: "Clearance.",
    };
  if (
    said === "clear" &&
    under > size * 0.03 &&
    under > 4e-4 &&
    /\b(?:sliding|running|close|slip|precision)\b/.test(saidOf(sight))
  )
    return {
      severity: "doubtful",
      found: `${words}: ${by(under)} of clearance.`,
      expected: "A sliding or running fit has a few thousandths of its size.",
      source: "common practice, no source",
    };
  return null;
}

/** What was said of the fit in words alone, and where the label itself names one. */
function saidOf(sight: Sight): string {
  const label =
    /\b(?:fit|interference)\b/.test(sight.what) ||
    /\b(?:sliding|running|press|shrink|drive)[- ]/.test(sight.what)
      ? sight.what.replace(/\bslide\b|\bdrive (?:shaft|pin|end|gear)|\bpress (?:tool|frame|ram)/g, "")
      : "";
  const named = (sight.entry.context.related ?? [])
    .filter((one) => /\bfit\b|assembl|how|goes|enters/i.test(one.what))
    .map((one) => one.text.toLowerCase());
  const aloud = named.filter((text) => !sight.remarks.includes(text));
  const spec = /fit/i.test(sight.entry.context.spec ?? "") ? sight.entry.context.spec?.toLowerCase() : "";
  return [label, ...aloud, sight.remarks, spec, sight.entry.text.toLowerCase().replace(/^[\d.\s/-]+\w*/, "")]
    .filter(Boolean)
    .join("; ");
}

/** A seal or a bush given as a product, on its shaft. */
function seal(sight: Sight, main: Fact): Remark[] {
  const sizes = sight.facts.filter((fact) => fact.from === "text" && fact.dimension === "length");
  const [first, second] = sizes;
  if (sight.reading.kind !== "product" || !first || !second || main.si !== first.si) return [];
  const [id, od] = first.si < second.si ? [first, second] : [second, first];
  if (!/\b(?:seal|bearing|bush|bushing|collar|ring)\b/.test(`${sight.what} ${sight.part}`)) return [];
  for (const other of relatedFacts(sight).filter((fact) => fact.dimension === "length")) {
    if (
      /\b(?:shaft|journal|spindle|axle)\b/.test(other.name) &&
      !near(other.si, id.si, 0.03) &&
      !/\bpulley|other\b/.test(other.name)
    )
      return [
        {
          severity: "wrong",
          found: `${sight.entry.text}, on ${other.name} ${other.raw}.`,
          expected: `A bore of ${other.raw}.`,
        },
      ];
    if (
      /\b(?:housing|recess|bore|pocket|seat)\b/.test(other.name) &&
      !/depth|deep|width/.test(other.name) &&
      !near(other.si, od.si, 0.03) &&
      !near(other.si, id.si, 0.03)
    )
      return [
        {
          severity: "wrong",
          found: `${sight.entry.text}, in ${other.name} ${other.raw}.`,
          expected: `An outside diameter of ${other.raw}.`,
        },
      ];
  }
  return [];
}
