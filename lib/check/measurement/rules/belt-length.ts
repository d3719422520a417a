import { near, plain, sayIn } from "../figures.ts";
import type { EntryRule } from "../rule.ts";
import type { Fact, Sight } from "../sight.ts";

/** An open belt round two pulleys. */
export const beltLength: EntryRule = {
  id: "belt-length",
  title: "How long a belt goes round two pulleys",
  explanation:
    "An open belt is twice the centres long, and half of each pulley's round, and a little for the slope between unlike pulleys; a crossed belt a little more. A length that the pulleys do not give was added up wrongly.",
  source: "geometry: L = 2C + π(D + d)/2 + (D - d)²/4C, crossed with (D + d)²",
  check: (sight) => {
    const { main, what, all } = sight;
    const told = main && what.includes("belt") && belt.test(what) ? lastLength(sight) : null;
    const centres = sight.facts.find(
      (fact) => isLength(fact) && /\b(?:centres?|centers?)\b/.test(fact.label),
    );
    const pulleys = pulleysOf(sight, centres);
    if (!told || !centres || !pulleys || told === centres) return [];
    const should = lengthOf(pulleys, centres.si, /\bcrossed\b/.test(all));
    if (near(told.si, should, 0.025)) return [];
    return [
      {
        severity: "wrong" as const,
        found: `${told.raw}, round ${pulleys.map((si) => sayIn(si, centres.quantity, 3)).join(" and ")} at ${plain(centres.si, 4)} m.`,
        expected: `${sayIn(should, told.quantity, 4)}.`,
        meant: `${sayIn(should, told.quantity, 4)}?`,
      },
    ];
  },
  examples: [
    {
      says: "two pulleys of six inches, twenty inches apart",
      entry: {
        text: "58.8 in",
        what: "belt length, open belt",
        context: {
          related: [
            { what: "pulleys", text: "pair, 6 in dia each" },
            { what: "centres", text: "20 in apart" },
          ],
        },
      },
      finds: 0,
    },
    {
      says: "half of one pulley forgotten",
      entry: {
        text: "2 x 20 + 9.42 = 49.4 in",
        what: "belt length, open belt",
        context: {
          related: [
            { what: "pulleys", text: "pair, 6 in dia each" },
            { what: "centres", text: "20 in apart" },
          ],
        },
      },
      finds: 1,
    },
  ],
};

const belt = /\bbelt\b.{0,16}\blength\b|\blength of (?:the )?(?:\w+ )?belt\b|\bbelt,? (?:open|crossed)\b/;
const isLength = ({ dimension, from, si }: Fact): boolean =>
  dimension === "length" && from !== "limit" && si > 0;
/** Of "2 x 20 + 9.42 = 49.4 in" what it comes to. */
const lastLength = ({ facts }: Sight): Fact | null =>
  facts.filter((fact) => fact.from === "text" && isLength(fact)).at(-1) ?? null;

function pulleysOf({ facts }: Sight, centres: Fact | undefined): [number, number] | null {
  const [one, other, ...more] = facts.filter(
    (fact) =>
      fact.from !== "text" &&
      fact !== centres &&
      isLength(fact) &&
      /\b(?:pulleys?|sheaves?|drums?|wheels?)\b/.test(fact.name) &&
      !/\b(?:width|face|bore)\b/.test(fact.label),
  );
  if (!one || more.length > 0) return null;
  const both =
    /\b(?:pulleys|sheaves|wheels|drums)\b/.test(one.name) || /\b(?:pair|both|each|two)\b/i.test(one.raw);
  return other ? [one.si, other.si] : both ? [one.si, one.si] : null;
}

const lengthOf = ([a, b]: [number, number], centres: number, crossed: boolean): number =>
  2 * centres + (Math.PI * (a + b)) / 2 + (crossed ? (a + b) ** 2 : (a - b) ** 2) / (4 * centres);
