import { finding } from "#lib/finding/index.ts";
import { holdPointsOf, stepsOf } from "#lib/procedure/index.ts";
import type { Rule } from "../rule.ts";
import { assembly } from "./words.ts";

/** Something to be looked at before the first run, and nobody says that it was. */
export const holdPoint: Rule = {
  id: "hold-point",
  title: "Before it first runs",
  explanation:
    "A limit that nothing was measured against, and a hazard of the first run, are looked at before the machine is started: afterwards it is too late. Open items and torques have findings of their own. It is asked once there is a step that proves the machine.",
  source: "DOE-STD-1029-92, from its public text: hold points stand where work must not go on unseen",
  check: ({ ledger, procedure, document }) =>
    !stepsOf(procedure).some((step) => step.stage === "prove")
      ? []
      : holdPointsOf(ledger, procedure, document)
          .filter(({ from, answer }) => (from === "limit" || from === "hazard") && answer === null)
          .map((point) =>
            finding({
              rule: "hold-point",
              severity: point.from === "limit" ? "doubtful" : "advice",
              place: { mark: point.mark, field: point.from },
              evidence: point.words,
              found: `Nobody says that this was looked at before the first run: ${point.words.replace(/[.\s]+$/, "") || "(no words)"}.`,
              expected: "A value as fitted, or a word that it was looked at.",
              todo: "Look, and say on the parts sheet what you found.",
              source: holdPoint.source,
            }),
          ),
  examples: [
    {
      says: "a limit, and no value as fitted",
      sketch: {
        marks: [
          assembly(1),
          [2, "measurement", { words: "End float", limit: { typed: "0.3 mm" }, source: "published" }],
          [5, "action", { words: "Start it", stage: "prove" }],
        ],
      },
      finds: 1,
    },
    {
      says: "measured as fitted",
      sketch: {
        marks: [
          assembly(1),
          [
            2,
            "measurement",
            { words: "End float", limit: { typed: "0.3 mm" }, asFitted: { typed: "0.2 mm" } },
          ],
          [5, "action", { words: "Start it", stage: "prove" }],
        ],
      },
      finds: 0,
    },
    {
      says: "the hazard of the first run",
      sketch: {
        marks: [
          [5, "action", { words: "Start it", stage: "prove" }],
          [6, "caution", { words: "The belt has no guard", avoid: "Stand aside" }],
        ],
      },
      finds: 1,
    },
  ],
};
