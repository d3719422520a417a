import { finding } from "#lib/finding/index.ts";
import { knownOf } from "#lib/procedure/index.ts";
import type { Rule } from "../rule.ts";
import { assembly, atMoment, off, on, pieces } from "./words.ts";

/** More pieces went on than came off or were obtained. */
export const countsDiffer: Rule = {
  id: "counts-differ",
  title: "More on than there were",
  explanation:
    "Four nuts came off and five went on: one of the counts is wrong, or one nut belongs somewhere else and is missing there.",
  source: "counted from the marks",
  check: ({ ledger }) =>
    !ledger.stripped
      ? []
      : ledger.accounts.flatMap(({ item, name, lines }) =>
          lines
            .filter(
              (line, index) => line.gained.unexplained > 0 && index > 0 && lines[index - 1] !== undefined,
            )
            .filter((line) => knownOf(line.after) > line.gained.unexplained)
            .map((line) =>
              finding({
                rule: "counts-differ",
                severity: "wrong",
                place: { mark: line.event.mark, field: "count" },
                evidence: `${item}\n${line.moved}\n${line.gained.unexplained}`,
                found: `${name}: ${pieces(line.moved ?? 1)} went on${atMoment(line.event)}, ${line.gained.unexplained} more than had come off or been obtained.`,
                expected: "No more on than there were.",
                todo: "Count again on the film, there and where they came off. If a new one was used, mark where it came from.",
                source: countsDiffer.source,
              }),
            ),
        ),
  examples: [
    {
      says: "five for four",
      sketch: { marks: [off(1, "Nut", { count: "4" }), assembly(5), on(6, "Nut", { count: "5" })] },
      finds: 1,
    },
    {
      says: "marked twice",
      sketch: { marks: [off(1, "Nut"), assembly(5), on(6, "Nut"), on(7, "Nut")] },
      finds: 1,
    },
    {
      says: "the kit's was tried, and is not to be used",
      sketch: {
        marks: [
          off(1, "Gasket"),
          [2, "part", { item: "Gasket", event: "scrapped" }],
          [3, "action", { words: "Try it", stage: "trial fit" }],
          on(4, "Gasket"),
        ],
        kits: [{ text: "1 x Gasket", lines: { "1 x Gasket": { notToUse: "its holes do not fit" } } }],
      },
      finds: 0,
    },
    {
      says: "one was bought",
      sketch: {
        marks: [
          off(1, "Nut", { count: "4" }),
          [2, "part", { item: "Nut", event: "obtained", count: "1" }],
          assembly(5),
          on(6, "Nut", { count: "5" }),
        ],
      },
      finds: 0,
    },
    {
      says: "tried, left on, and fitted for good",
      sketch: {
        marks: [
          off(1, "Nut"),
          [3, "action", { words: "Try it", stage: "trial fit" }],
          on(4, "Nut"),
          assembly(5),
          on(6, "Nut"),
        ],
      },
      finds: 0,
    },
  ],
};
