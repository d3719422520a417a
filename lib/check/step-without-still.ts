import { finding } from "#lib/finding/index.ts";
import { stepsOf } from "#lib/procedure/index.ts";
import type { Rule } from "./rule.ts";

/** A step that shows nothing. */
export const stepWithoutStill: Rule = {
  id: "step-without-still",
  title: "A step with no still",
  explanation:
    "A stranger at the bench recognises the place by its picture. Where there is nothing to see, the answer to this finding says so.",
  source: "common practice, no source",
  check: ({ procedure }) =>
    stepsOf(procedure)
      .filter((step) => step.stills.every((still) => still.sha256 === ""))
      .map((step) =>
        finding({
          rule: "step-without-still",
          severity: "doubtful",
          place: { mark: step.mark },
          evidence: step.title,
          found:
            step.stills.length > 0
              ? `Step ${step.number} names a still, and its picture is not there.`
              : `Step ${step.number} has no still.`,
          expected: "At least one picture of the step.",
          todo: "Take the frame that shows it best, add a photograph, or answer why none is needed.",
          source: stepWithoutStill.source,
        }),
      ),
  examples: [
    { says: "nothing to see", sketch: { marks: [[1, "action", { words: "Undo the nuts" }]] }, finds: 1 },
    {
      says: "a still of the action",
      sketch: { marks: [[1, "action", { words: "Undo the nuts" }]], stills: ["action@1"] },
      finds: 0,
    },
    {
      says: "a still of a part in the step",
      sketch: {
        marks: [
          [1, "action", { words: "Undo the nuts" }],
          [2, "part", { item: "Nut", event: "removed" }],
        ],
        stills: ["part@2"],
      },
      finds: 0,
    },
  ],
};
