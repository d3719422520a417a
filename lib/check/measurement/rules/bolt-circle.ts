import { near, plain, sayIn } from "../figures.ts";
import type { EntryRule } from "../rule.ts";
import type { Fact, Sight } from "../sight.ts";

/** Holes equally spaced round a circle. */
export const boltCircle: EntryRule = {
  id: "bolt-circle",
  title: "Holes round a circle",
  explanation:
    "Between neighbouring holes of N on a circle lies its diameter by the sine of 180° by N. Six holes stand a radius apart. A distance that the circle does not give is to the next hole but one, or the count is another.",
  source: "geometry: chord is the circle's diameter by sin(180°/N)",
  check: (sight) => {
    const { main, facts, what } = sight;
    if (
      !/hole|bolt|stud/.test(sight.all) ||
      /\b(?:diagonal\w*|across|opposite|keyway|dowel|mark)\b/.test(what)
    )
      return [];
    const circle = facts.find(
      (fact) => isLength(fact) && /\b(?:pitch circle|bolt circle|p\.?c\.?d\.?|circle)\b/.test(fact.label),
    );
    const count = countOf(sight);
    if (count === null) return [];
    if (main?.dimension === "angle" && /\b(?:between|apart|spacing|hole to hole)\b/.test(what))
      return /\bequal|\bevenly\b/.test(sight.all) ? angle(main, count) : [];
    if (!circle) return [];
    const chord = facts.find((fact) => isLength(fact) && fact !== circle && between.test(fact.label));
    if (!chord || ![chord, circle].includes(main as Fact)) return [];
    const should = circle.si * Math.sin(Math.PI / count);
    if (near(should, chord.si, 0.008)) return [];
    const share = chord.si / circle.si;
    const skipped = share < 1 ? (Math.asin(share) * count) / Math.PI : 0;
    return [
      {
        severity: "wrong" as const,
        found: `${chord.raw} between ${count} holes on ${circle.raw}.`,
        expected: `${sayIn(should, chord.quantity, 4)}.`,
        meant:
          Math.abs(skipped - 2) < 0.02 ? "to the next hole but one?" : `${sayIn(should, chord.quantity, 4)}?`,
      },
    ];
  },
  examples: [
    {
      says: "six stand a radius apart",
      entry: {
        text: "2.500 in",
        what: "between neighbouring hole centres",
        context: {
          related: [
            { what: "holes", text: "6, equally spaced" },
            { what: "pitch circle", text: "5 in dia" },
          ],
        },
      },
      finds: 0,
    },
    {
      says: "six stand sixty degrees apart",
      entry: {
        text: "45°",
        what: "between neighbouring studs",
        context: { related: [{ what: "studs", text: "6, equally spaced" }] },
      },
      finds: 1,
    },
    {
      says: "the next but one",
      entry: {
        text: "4.330 in",
        what: "between neighbouring hole centres",
        context: {
          related: [
            { what: "holes", text: "6, equally spaced" },
            { what: "pitch circle", text: "5 in dia" },
          ],
        },
      },
      finds: 1,
    },
  ],
};

const between =
  /\b(?:between|neighbou?ring|adjacent|next hole|chord|apart|hole to hole|centre to centre|centres?|side by side)\b/;
const isLength = ({ dimension, from, si, quantity }: Fact): boolean =>
  dimension === "length" && from !== "limit" && si > 0 && !quantity.high;

function countOf({ facts, all }: Sight): number | null {
  const fact = facts.find(
    (one) =>
      (one.dimension === "count" || one.dimension === "number") &&
      /\b(?:holes?|bolts?|studs?)\b/.test(`${one.label} ${one.quantity.unit}`),
  );
  if (fact) return fact.si >= 3 && Number.isInteger(fact.si) ? fact.si : null;
  const said = /\b(three|four|five|six|eight|ten|twelve)[- ](?:holes?|bolts?|studs?)\b/.exec(all);
  return said ? (inWords[said[1] ?? ""] ?? null) : null;
}
const inWords: Record<string, number> = { three: 3, four: 4, five: 5, six: 6, eight: 8, ten: 10, twelve: 12 };

function angle(main: Fact, count: number) {
  const should = (2 * Math.PI) / count;
  if (near(main.si, should, 0.01)) return [];
  return [
    {
      severity: "wrong" as const,
      found: `${main.raw} between ${count} holes.`,
      expected: `${plain(360 / count)}°.`,
      meant: `${plain(360 / count)}°?`,
    },
  ];
}
