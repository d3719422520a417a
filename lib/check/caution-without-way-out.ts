import { needed } from "./needed.ts";
import type { Rule } from "./rule.ts";

/** A caution that does not say how to avoid the harm. */
export const cautionWithoutWayOut: Rule = {
  id: "caution-without-way-out",
  title: "A caution with no way to avoid it",
  explanation:
    "A safety message says what the hazard is, what it can do, and how to avoid it. One that only frightens does not help the reader at the bench.",
  source: "ANSI Z535.6, from public summaries: nature of the hazard, consequence, avoidance",
  check: (view) =>
    needed(view, "caution", "avoid", {
      rule: "caution-without-way-out",
      severity: "wrong",
      todo: "Write what the reader does to avoid it, with its source; where the law or a licensed trade decides, say so.",
      source: cautionWithoutWayOut.source,
    }),
  examples: [
    {
      says: "frightens only",
      sketch: { marks: [[1, "caution", { words: "The spring is under load" }]] },
      finds: 1,
    },
    {
      says: "says how",
      sketch: {
        marks: [[1, "caution", { words: "The spring is under load", avoid: "Hold it with a clamp" }]],
      },
      finds: 0,
    },
  ],
};
