import type { EntryRule, Remark } from "../rule.ts";
import { relatedFacts, type Sight } from "../sight.ts";

/** "None" said of what was seen to be there. */
export const noneAndSome: EntryRule = {
  id: "none-and-some",
  title: "None, and yet some",
  explanation:
    "A coil that carries current is not open, a shaft that moves endwise has end float, a joint that drips leaks. One of the two was looked at wrongly.",
  source: "arithmetic; for circuits Ohm's law",
  check: (sight) => broken(sight) ?? still(sight) ?? leaks(sight) ?? [],
  examples: [
    {
      says: "an open coil carries no current",
      entry: {
        text: "open circuit",
        what: "field coil reading",
        context: { related: [{ what: "current at 12 V, same test", text: "0.8 A" }] },
      },
      finds: 1,
    },
    {
      says: "an open coil, and no current",
      entry: {
        text: "open circuit",
        what: "field coil reading",
        context: { related: [{ what: "current at 12 V", text: "0 A" }] },
      },
      finds: 0,
    },
    {
      says: "no float, and yet it moves",
      entry: {
        text: "no end float",
        what: "crankshaft end float",
        context: { related: [{ what: "shaft pushed end to end", text: "moves 0.3 mm" }] },
      },
      finds: 1,
    },
    {
      says: "no leak, and yet the pressure fell",
      entry: {
        text: "no leak",
        what: "after an hour at test pressure",
        context: {
          related: [
            { what: "pressure at the start", text: "100 psi" },
            { what: "pressure after the hour", text: "62 psi" },
          ],
        },
      },
      finds: 1,
    },
    {
      says: "no float, now that it was shimmed",
      entry: {
        text: "no end float",
        what: "crankshaft end float",
        context: { related: [{ what: "end float before shimming", text: "0.3 mm" }] },
      },
      finds: 0,
    },
  ],
};

const earlier =
  /\b(?:before|as found|earlier|previous|after|limit|spec|maximum|max|allowed|wanted|new|old|other|good|second|until|drawing|book)\b/;
const open = /\bopen[- ]circuit\b|\bno continuity\b|\binfinite\b|^∞|\bopen\b$|\bo\/?l\b/i;
const works =
  /\b(?:rings|lights|lit|glows|runs|sparks|hums|gets (?:warm|hot)|warms up|works|pulls in|clicks|carries current)\b/;

/** An open circuit that carries a current. */
function broken(sight: Sight): Remark[] | null {
  const { entry, what } = sight;
  if (
    !open.test(entry.text.trim()) ||
    !/\b(?:coil|winding|element|filament|circuit|resistance|fuse|heater|lead|resistor|primary|secondary|field|armature|bulb|lamp|reading|continuity)\b/.test(
      what,
    )
  )
    return null;
  const current = relatedFacts(sight).find(
    (fact) =>
      fact.dimension === "current" &&
      fact.si > 0 &&
      !/\b(?:fuse|rating|rated|full scale|before|as found)\b/.test(fact.name),
  );
  const seen = (entry.context?.related ?? []).find(
    ({ what: name, text }) =>
      works.test(text.toLowerCase()) && !/\b(?:not|no|never|before|other|new)\b/i.test(`${name} ${text}`),
  );
  const other = current ? `${current.name} ${current.raw}` : seen ? `${seen.what}: ${seen.text}` : null;
  if (!other) return null;
  return [
    {
      severity: "doubtful",
      found: `${what}: ${entry.text}; and ${other}.`,
      expected: "An open circuit carries no current.",
      meant: "a lead that made no contact?",
    },
  ];
}

const none =
  /^(?:no|nil|zero|without(?: any)?|free of|no (?:measurable|perceptible)) (?:end |side |up-and-down |radial |lateral )?([a-z]+)/;
const moves: Record<string, RegExp> = {
  float: /\b(?:moves?|end to end|endwise|shake|float|play)\b/,
  play: /\b(?:moves?|rocks?|play|shake|endwise|up and down)\b/,
  shake: /\b(?:moves?|rocks?|play|shake)\b/,
  backlash: /\b(?:moves?|turns? before|backlash|play|free (?:travel|turn))\b/,
  "run-out": /\b(?:wobbles?|run-?out|indicator|clock)\b/,
  runout: /\b(?:wobbles?|run-?out|indicator|clock)\b/,
  clearance: /\b(?:feeler|clearance|gap)\b/,
  gap: /\b(?:feeler|clearance|gap)\b/,
};

/** None of a play or gap, and a measured one beside it. */
function still(sight: Sight): Remark[] | null {
  const { entry, what } = sight;
  const thing = none.exec(entry.text.trim().toLowerCase())?.[1] ?? "";
  const shows = moves[thing];
  if (!shows) return null;
  const some = relatedFacts(sight).find(
    (fact) =>
      ["length", "angle"].includes(fact.dimension) &&
      fact.si > 0 &&
      fact.quantity.qualifier !== "at most" &&
      !earlier.test(fact.name) &&
      shows.test(`${fact.label} ${fact.raw.toLowerCase()}`),
  );
  if (!some) return null;
  return [
    {
      severity: "doubtful",
      found: `${what}: ${entry.text}; and ${some.name}: ${some.raw}.`,
      expected: "One of the two.",
      meant: `${some.raw}?`,
    },
  ];
}

/** No leak, and the pressure or the level fell. */
function leaks(sight: Sight): Remark[] | null {
  if (
    !/^(?:no|nil|without)(?: any)? (?:leaks?|leakage|loss|drop)\b|^(?:tight|holds|held)\b/.test(
      sight.entry.text.trim().toLowerCase(),
    )
  )
    return null;
  const [first, last] = [
    /\b(?:start|before|first|at 0|pumped to|charged to|initial)\b/,
    /\b(?:after|later|end|last|next (?:day|morning)|then)\b/,
  ].map((when) =>
    relatedFacts(sight).find(
      (fact) => ["pressure", "volume"].includes(fact.dimension) && when.test(fact.name),
    ),
  );
  if (!first || !last || first === last || first.dimension !== last.dimension || last.si >= first.si * 0.95)
    return null;
  if (/\b(?:cool|cold|temperature)/.test(sight.all)) return null;
  return [
    {
      severity: "doubtful",
      found: `${sight.what}: ${sight.entry.text}; ${first.name} ${first.raw}, ${last.name} ${last.raw}.`,
      expected: "What does not leak keeps its pressure.",
    },
  ];
}
