import { finding } from "#lib/finding/index.ts";
import { type Mark, typedOf, wordsOf } from "#lib/mark/index.ts";
import type { Rule } from "./rule.ts";

/** A measurement that does not say where its value comes from. */
export const valueWithoutSource: Rule = {
  id: "value-without-source",
  title: "A value with no source",
  explanation:
    "A figure without a source is copied and believed. Measured (with what), published (where), common practice, reported by somebody, or a guess: all are worth having, if they are called what they are. Naming the instrument says that a found or fitted value was measured.",
  source: "common practice, no source",
  check: ({ marks }) =>
    [...marks.values()]
      .filter((mark) => mark.kind === "measurement")
      .map((mark) => ({ mark, lacks: unsourced(mark) }))
      .filter(({ lacks }) => lacks.length > 0)
      .map(({ mark, lacks }) =>
        finding({
          rule: "value-without-source",
          severity: "doubtful",
          place: { mark: mark.id, field: "source" },
          evidence: lacks.map((field) => typedOf(mark, field)).join("\n"),
          found: `“${wordsOf(mark) || "A measurement"}”: ${lacks.map((field) => `“${typedOf(mark, field)}”`).join(", ")} with no source.`,
          expected: "Where the value comes from.",
          todo: "Choose a source, and name the book, the person or the instrument.",
          source: valueWithoutSource.source,
        }),
      ),
  examples: [
    {
      says: "a figure from nowhere",
      sketch: { marks: [[1, "measurement", { specified: { typed: "12 lbf ft" } }]] },
      finds: 1,
    },
    {
      says: "measured with an instrument",
      sketch: { marks: [[1, "measurement", { asFound: { typed: "0.4965 in" }, instrument: "micrometer" }]] },
      finds: 0,
    },
    {
      says: "an instrument does not explain a specified value",
      sketch: {
        marks: [
          [
            1,
            "measurement",
            { asFound: { typed: "0.4965 in" }, specified: { typed: "1/2 in" }, instrument: "micrometer" },
          ],
        ],
      },
      finds: 1,
    },
    {
      says: "published somewhere",
      sketch: { marks: [[1, "measurement", { specified: { typed: "1/2 in" }, source: "published" }]] },
      finds: 0,
    },
  ],
};

/** Fields of a measurement whose value says no source, neither by the mark's source nor by an instrument. */
function unsourced(mark: Mark): string[] {
  if (wordsOf(mark, "source") !== "") return [];
  const measured = wordsOf(mark, "instrument") !== "" ? [] : ["asFound", "asFitted"];
  return ["specified", "limit", ...measured].filter((field) => typedOf(mark, field) !== "");
}
