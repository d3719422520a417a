import { needed } from "./needed.ts";
import type { Rule } from "./rule.ts";

/** An action that does not say what is done. */
export const actionWithoutWords: Rule = {
  id: "action-without-words",
  title: "An action with no text",
  explanation: "An action begins a step, and the step is printed. Without words there is nothing to follow.",
  source: "common practice, no source",
  check: (view) =>
    needed(view, "action", "words", {
      rule: "action-without-words",
      severity: "wrong",
      todo: "Write the instruction, the verb first.",
      source: actionWithoutWords.source,
    }),
  examples: [
    { says: "blank", sketch: { marks: [[1, "action", { words: "  " }]] }, finds: 1 },
    { says: "an instruction", sketch: { marks: [[1, "action", { words: "Undo the nuts" }]] }, finds: 0 },
  ],
};
