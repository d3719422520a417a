import { disagreement, type Reading } from "#lib/quantity/index.ts";
import { type Misreckoned, misreckonedIn } from "../equation.ts";
import type { EntryRule, Remark } from "../rule.ts";
import { type Decimal, readOnce, type Sight } from "../sight.ts";

/** A sum, a product or a difference written out, and wrong. */
export const writtenSums: EntryRule = {
  id: "written-sum",
  title: "Worked out in the text",
  explanation:
    "What is written as a sum must be the sum of its terms, and likewise a product or a difference. The terms are usually right and the result a slip.",
  source: "arithmetic",
  check: (sight) => {
    const texts = [sight.entry.text, ...(sight.entry.context.related ?? []).map((one) => one.text)];
    return texts
      .flatMap((text) => [
        ...writtenSum(text, sight.decimal),
        ...(addsUp(sight) ? written(text, misreckonedIn(text, sight.decimal)) : []),
      ])
      .slice(0, 1);
  },
  examples: [
    { says: "1.50, not 1.75", entry: { text: "0.75 + 0.50 + 0.25 = 1.75 in", what: "spacers" }, finds: 1 },
    { says: "five of 0.2 mm", entry: { text: "5 shims of 0.2 mm = 1.0 mm", what: "shim pack" }, finds: 0 },
    {
      says: "ounces and pounds",
      entry: { text: "1 lb 4 oz + 14 oz = 2 lb 4 oz", what: "weights" },
      finds: 1,
    },
    { says: "feet and inches", entry: { text: "3 ft 6 in + 8 in = 4 ft 2 in", what: "belt" }, finds: 0 },
    { says: "fractions", entry: { text: "4 x 6-1/2 in = 24 in", what: "four bays" }, finds: 1 },
    {
      says: "names and units between the figures",
      entry: { text: "gap 250 + bed 1,200 = 1,540 mm", what: "length of the bed" },
      finds: 1,
    },
    {
      says: "a list and what it comes to",
      entry: { text: "three leaves, 0.015, 0.012 and 0.004, together 0.033 in", what: "gap" },
      finds: 1,
    },
    {
      says: "volts by ohms are amperes",
      entry: { text: "12 V / 4 Ω = 3 A", what: "heater current" },
      finds: 0,
    },
    { says: "a difference", entry: { text: "25.00 - 24.95 = 0.5 mm", what: "clearance" }, finds: 1 },
  ],
};

/** Capacitors in a row and resistors side by side are written with a plus, and do not add up. */
const addsUp = ({ all }: Sight): boolean =>
  !/\bin series\b.*(?:[µunp]f|mfd)|(?:[µunp]f|mfd).*\bin series\b|\bparallel\b.*(?:Ω|ω|ohm)|(?:ω|ohm).*\bparallel\b/.test(
    all,
  );

const written = (text: string, wrong: Misreckoned | null): Remark[] =>
  wrong
    ? [
        {
          severity: "wrong",
          found: `“${text}”: the result is ${wrong.said}.`,
          expected: `The terms give ${wrong.should}.`,
          meant: `${wrong.should}?`,
        },
      ]
    : [];

function writtenSum(text: string, decimal: Decimal): Remark[] {
  const wrong = sumsIn(readOnce(text, decimal))
    .map(disagreement)
    .find((one) => one !== null);
  return wrong
    ? [
        {
          severity: "wrong",
          found: `“${text}” comes to ${wrong.found}.`,
          expected: `The terms give ${wrong.expected}.`,
          meant: `${wrong.expected}?`,
        },
      ]
    : [];
}

const sumsIn = (reading: Reading): Reading[] =>
  reading.kind === "list" ? reading.parts.flatMap(sumsIn) : reading.kind === "sum" ? [reading] : [];
