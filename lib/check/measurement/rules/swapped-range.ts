import { sayIn } from "../figures.ts";
import type { EntryRule, Remark } from "../rule.ts";
import type { Fact } from "../sight.ts";
import { affirmed } from "../words.ts";

/** A range whose lower end stands above its upper end. */
export const swappedRange: EntryRule = {
  id: "range-swapped",
  title: "A range that ends below its beginning",
  explanation:
    "A range is written from its lower end to its upper one. Where the first is the larger, one figure was mistyped or the two changed places; nothing lies between them.",
  source: "arithmetic",
  check: ({ facts, all, entry: { text } }) => {
    for (const fact of facts) {
      const { quantity } = fact;
      if (!quantity.high || quantity.siHigh === undefined) continue;
      const goesDown = quantity.siHigh < quantity.si && !inverse.test(fact.raw);
      if (!goesDown || affirmed(all, falling) || bothBelowNought(quantity.value.number, quantity.high.number))
        continue;
      const [low, high] = [sayIn(quantity.siHigh, quantity), sayIn(quantity.si, quantity)];
      return [
        {
          severity: "wrong" as const,
          found: `“${fact.raw}” begins at ${high} and ends at ${low}.`,
          expected: "The lower end first.",
          meant: `${low} to ${high}?`,
        },
      ];
    }
    const way = otherWay(text);
    if (way) return [way];
    const both = mostThenLeast(text);
    if (both) return [both];
    const ends = twoEnds(facts);
    if (ends) return [ends];
    const least = facts.find((fact) => fact.from !== "spec" && isLeast(fact.label, fact.quantity.qualifier));
    const most = facts.find(
      (fact) =>
        fact.dimension === least?.dimension && fact !== least && isMost(fact.label, fact.quantity.qualifier),
    );
    if (!least || !most || strip(least.name) !== strip(most.name) || least.si <= most.si * 1.000001)
      return [];
    return [
      {
        severity: "wrong",
        found: `The least is “${least.raw}”, the most “${most.raw}”.`,
        expected: "A least below the most.",
        meant: "the two changed places?",
      },
    ];
  },
  examples: [
    { says: "from 15 to 12", entry: { text: "15-12 thou", what: "end float" }, finds: 1 },
    { says: "from 12 to 15", entry: { text: "12-15 thou", what: "end float" }, finds: 0 },
    {
      says: "the widest opening has the smallest number",
      entry: { text: "widest f/22, smallest f/3.5", what: "aperture range" },
      finds: 1,
    },
    {
      says: "f/3.5 is wide",
      entry: { text: "widest f/3.5, smallest f/22", what: "aperture range" },
      finds: 0,
    },
    { says: "down to more", entry: { text: "18 down to 25 mm", what: "taper of the reamer" }, finds: 1 },
    { says: "cooling goes down", entry: { text: "from 100 down to 60 °C", what: "cooling" }, finds: 0 },
    {
      says: "below nought people count away from it",
      entry: { text: "-10 to -20 °C", what: "freezer" },
      finds: 0,
    },
    {
      says: "a least above the most",
      entry: {
        text: "min 20 thou",
        what: "gap",
        context: { related: [{ what: "gap, upper limit", text: "max 15 thou" }] },
      },
      finds: 1,
    },
  ],
};

const falling =
  /\b(?:down to|from .{1,20} down|cool(?:s|ed|ing)?|falls?|falling|drops? (?:from|to)|dropp(?:ed|ing)|slow(?:s|ed|ing)|reduc\w+|taper(?:s|ed|ing)?|fades|decreas\w+|large to small|lowered|discharg\w*|gradient|descend\w*|decay\w*|(?:closed|came|went|gone|brought|taken|ground|turned|honed|lapped|bored|settled|wore|worn|opened|changed|moved|reset|altered|cut|filed|dressed|eased|let|backed|wound|bedded)(?: \w+)? from)\b/;
/** Below nought people count away from it; "+0.02/-0.01" is a tolerance. */
const bothBelowNought = (a: number, b: number) => b < 0 && (a < 0 || a > 0);
const least = /\b(?:min(?:imum)?|lowest|smallest|at least|lower (?:limit|end))\b/;
const most = /\b(?:max(?:imum)?|highest|largest|at most|upper (?:limit|end))\b/;
const isLeast = (label: string, qualifier: string) => qualifier === "at least" || least.test(label);
const isMost = (label: string, qualifier: string) => qualifier === "at most" || most.test(label);
const strip = (name: string) =>
  name
    .replace(
      /\b(?:min(?:imum)?|max(?:imum)?|lowest|highest|smallest|largest|lower|upper|limit|end|least|most)\b/g,
      "",
    )
    .replace(/[\s.,]+/g, " ")
    .trim();

const largestWord =
  "max(?:imum)?|upper|highest|at most|largest|longest|widest|biggest|greatest|thickest|fastest";
const leastWord = "min(?:imum)?|lower|lowest|at least|smallest|shortest|narrowest|thinnest|slowest";
const figureAfter = (words: string) => new RegExp(`\\b(?:${words})\\b[^\\d-]{0,4}(\\d+(?:\\.\\d+)?)`, "i");
const mostFigure = figureAfter(largestWord);
const leastFigure = figureAfter(leastWord);
/** Numbers that grow as the thing gets smaller: openings of a lens, wire and sheet gauges. */
const inverse = /\bf\/\d|\b[sa]\.?w\.?g\b|\bgauge\b/i;

/** "Not below 85 °C, not above 160 °F": a least and a most of one thing in two units. */
function twoEnds(facts: readonly Fact[]): Remark | null {
  const [low, high, ...more] = facts.filter((fact) => fact.from === "text");
  if (!low || !high || more.length > 0 || low.dimension !== high.dimension) return null;
  const [least, most] = low.quantity.qualifier === "at least" ? [low, high] : [high, low];
  if (least.quantity.qualifier !== "at least" || most.quantity.qualifier !== "at most") return null;
  if (least.si <= most.si * 1.000001) return null;
  return {
    severity: "wrong",
    found: `“${low.raw}”: the least is ${sayIn(least.si, most.quantity, 3)} in the unit of the most.`,
    expected: "A least below the most.",
    meant: "a unit, or the two changed places?",
  };
}

const downOrUp =
  /(?<![\d./])(-?\d+(?:\.\d+)?)(?: ?[a-z°µ"]{1,4})? ?(down|up|falling|rising|dropping|climbing) to (-?\d+(?:\.\d+)?)(?![\d/-])/i;

/** "18 down to 25 mm": it goes the other way. */
function otherWay(text: string): Remark | null {
  const [, from, way = "", to] = downOrUp.exec(text) ?? [];
  if (from === undefined || to === undefined || Number(from) === Number(to)) return null;
  const rises = /^(?:up|rising|climbing)$/i.test(way);
  if (rises === Number(from) < Number(to) || inverse.test(text)) return null;
  return {
    severity: "wrong",
    found: `“${text}”: ${to} is ${rises ? "below" : "above"} ${from}.`,
    expected: `From the ${rises ? "lower" : "higher"} figure to the ${rises ? "higher" : "lower"} one.`,
    meant: "the two changed places?",
  };
}

/** "max 12 min 18 N·m": both in one text. */
function mostThenLeast(text: string): Remark | null {
  const [first, second] = [mostFigure, leastFigure].map((one) => Number(one.exec(text)?.[1] ?? Number.NaN));
  if (first === undefined || second === undefined || Number.isNaN(first + second)) return null;
  const turned = inverse.test(text);
  if (turned ? first <= second : second <= first) return null;
  const units = new Set(text.match(/[a-zµΩ°"][a-z/·²"]*\s*(?=,|$|;)/gi) ?? []);
  if (units.size > 1) return null;
  return {
    severity: "wrong",
    found: `“${text}”: the least is above the most.`,
    expected: turned ? "The smaller number is the larger size." : "A least below the most.",
    meant: "the two changed places?",
  };
}
