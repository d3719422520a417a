import { finding } from "#lib/finding/index.ts";
import type { Reading } from "#lib/quantity/index.ts";
import { readOnce } from "./measurement/index.ts";
import type { Rule } from "./rule.ts";
import { typedValues } from "./typed-values.ts";

/** A number that does not say of what, or a text in which no value was found. */
export const noUnit: Rule = {
  id: "no-unit",
  title: "A number with no unit",
  explanation:
    "A number alone is read as millimetres by one reader and as thousandths of an inch by the next. Where a unit has two meanings (a pint, a mil), the program asks which, and never guesses silently.",
  source: "ISO 80000-1 (from memory): the value of a quantity is a number and a unit",
  check: ({ document, marks }) =>
    typedValues(marks).flatMap(({ mark, field, label, typed }) => {
      const asked = whatIsMissing(readOnce(typed, document.build.decimal));
      if (!asked) return [];
      return finding({
        rule: "no-unit",
        severity: "doubtful",
        place: { mark, field },
        evidence: typed,
        found: `${label}: “${typed}”. ${asked}`,
        expected: "A number with its unit.",
        todo: "Write the unit after the number, as it was read off the instrument or the page.",
        source: noUnit.source,
      });
    }),
  examples: [
    {
      says: "0.015 of what?",
      sketch: { marks: [[1, "measurement", { asFound: { typed: "0.015" } }]] },
      finds: 1,
    },
    {
      says: "with its unit",
      sketch: { marks: [[1, "measurement", { asFound: { typed: "0.015 in" } }]] },
      finds: 0,
    },
    {
      says: "a ratio has none",
      sketch: { marks: [[1, "measurement", { specified: { typed: "50:1" } }]] },
      finds: 0,
    },
    {
      says: "no value at all",
      sketch: { marks: [[1, "measurement", { asFound: { typed: "a bit loose" } }]] },
      finds: 1,
    },
  ],
};

function whatIsMissing(reading: Reading): string | null {
  switch (reading.kind) {
    case "bare":
      return "There is no unit.";
    case "unread":
      return reading.why;
    case "question":
      return reading.ask;
    default:
      return null;
  }
}
