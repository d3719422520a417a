import { finding } from "#lib/finding/index.ts";
import { disagreement, read } from "#lib/quantity/index.ts";
import type { Rule } from "./rule.ts";
import { typedValues } from "./typed-values.ts";

/** A value written in two units that do not say the same. */
export const unitsDisagree: Rule = {
  id: "units-disagree",
  title: "Two units, one value",
  explanation:
    "Where a value is written in two units, one must be the other converted, within what rounding allows. If they disagree, one of them was misread, mistyped or converted wrongly, and a reader cannot tell which.",
  source: "NIST SP 811 (2008), appendix B: conversion factors and rounding",
  check: ({ document, marks }) =>
    typedValues(marks).flatMap(({ mark, field, label, typed }) => {
      const wrong = disagreement(read(typed, { decimal: document.build.decimal }));
      if (!wrong) return [];
      return finding({
        rule: "units-disagree",
        severity: "wrong",
        place: { mark, field },
        evidence: typed,
        found: `${label}: “${typed}”. ${wrong.found}`,
        expected: wrong.expected,
        todo: "Look at the instrument or the source again, and correct the one that is wrong.",
        source: unitsDisagree.source,
      });
    }),
  examples: [
    {
      says: "an inch and three eighths is 34.925 mm, so 34.9 mm agrees",
      sketch: { marks: [[1, "measurement", { words: "Tube", asFound: { typed: "1-3/8 in (34.9 mm)" } }]] },
      finds: 0,
    },
    {
      says: "38.1 mm is an inch and a half",
      sketch: { marks: [[1, "measurement", { words: "Tube", asFound: { typed: "1-3/8 in (38.1 mm)" } }]] },
      finds: 1,
    },
    {
      says: "12 lbf ft is 16.3 N m",
      sketch: { marks: [[1, "measurement", { words: "Nuts", specified: { typed: "12 lbf ft (16 N m)" } }]] },
      finds: 0,
    },
    {
      says: "12 lbf ft is not 163 N m",
      sketch: { marks: [[1, "measurement", { words: "Nuts", specified: { typed: "12 lbf ft (163 N m)" } }]] },
      finds: 1,
    },
  ],
};
