import { finding } from "#lib/finding/index.ts";
import { stepsOf } from "#lib/procedure/index.ts";
import type { Rule } from "./rule.ts";

/** A still whose description is only the program's proposal. */
export const stillWithoutWords: Rule = {
  id: "still-without-words",
  title: "A still nobody has described",
  explanation:
    "A reader who cannot see the picture, or has a bad print of it, needs its words. The program proposes some from the marks; only the restorer knows what the picture really shows.",
  source: "WCAG 2.2, success criterion 1.1.1; PDF/UA-1 clause 7.3",
  check: ({ procedure }) =>
    stepsOf(procedure).flatMap((step) =>
      step.stills
        .filter((still) => !still.written && still.sha256 !== "")
        .map((still) =>
          finding({
            rule: "still-without-words",
            severity: "advice",
            place: { mark: still.mark, still: still.still },
            evidence: still.alt,
            found: `A still of step ${step.number} has only proposed words: “${still.alt}”`,
            expected: "Words for what it shows, written or accepted by you.",
            todo: "Read them against the picture; take them or write your own.",
            source: stillWithoutWords.source,
          }),
        ),
    ),
  examples: [
    {
      says: "described",
      sketch: { marks: [[1, "action", { words: "Undo the nuts" }]], stills: ["action@1"] },
      finds: 0,
    },
  ],
};
