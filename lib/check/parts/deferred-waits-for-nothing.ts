import { finding } from "#lib/finding/index.ts";
import { typedOf } from "#lib/mark/index.ts";
import type { Rule } from "../rule.ts";

/** Something left provisional that does not say what it waits for. */
export const deferredWaitsForNothing: Rule = {
  id: "deferred-waits-for-nothing",
  title: "Until when?",
  explanation:
    "“Finger-tight for now” is forgotten; “finger-tight until the gasket lies flat” is looked at when the gasket lies flat. What was left provisional says what it waits for, or how long.",
  source: "common practice, no source",
  check: ({ procedure, marks }) =>
    procedure.deferred
      .filter(({ closedBy, waitsFor }) => closedBy === null && waitsFor === "")
      .filter(({ mark }) => !hasLimit(marks.get(mark)))
      .map((line) =>
        finding({
          rule: "deferred-waits-for-nothing",
          severity: "advice",
          place: { mark: line.mark, field: "waitsFor" },
          evidence: line.what,
          found: `“${line.what || "Something left provisional"}” does not say until when.`,
          expected: "What it waits for: a part, a measurement, a day.",
          todo: "Write it into the mark.",
          source: deferredWaitsForNothing.source,
        }),
      ),
  examples: [
    { says: "for now", sketch: { marks: [[1, "deferred", { words: "Finger-tight for now" }]] }, finds: 1 },
    {
      says: "until the belt comes",
      sketch: { marks: [[1, "deferred", { words: "Finger-tight", waitsFor: "the belt" }]] },
      finds: 0,
    },
    {
      says: "a bath has its time",
      sketch: { marks: [[1, "deferred", { words: "In the bath", longest: { typed: "4 h" } }]] },
      finds: 0,
    },
  ],
};

function hasLimit(mark: Parameters<typeof typedOf>[0] | undefined): boolean {
  return mark !== undefined && (typedOf(mark, "least") !== "" || typedOf(mark, "longest") !== "");
}
