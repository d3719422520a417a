import { finding } from "#lib/finding/index.ts";
import { isPartEvent, wordsOf } from "#lib/mark/index.ts";
import type { Rule } from "../rule.ts";

/** A part mark that the ledger cannot enter: it does not say which part, or what was done with it. */
export const partUnsaid: Rule = {
  id: "part-unsaid",
  title: "A part, and what of it?",
  explanation:
    "The ledger enters a mark under its part. One without a part, or without what was done, is in no account.",
  source: "common practice, no source",
  check: ({ marks }) =>
    [...marks.values()]
      .filter((mark) => mark.kind === "part")
      .flatMap((mark) => {
        const name = wordsOf(mark, "item");
        const field =
          name === "" && !mark.fields.itemId ? "item" : isPartEvent(wordsOf(mark, "event")) ? null : "event";
        if (field === null) return [];
        return finding({
          rule: "part-unsaid",
          severity: "doubtful",
          place: { mark: mark.id, field },
          evidence: `${name}\n${wordsOf(mark, "event")}`,
          found:
            field === "item"
              ? "A part mark does not say which part."
              : `“${name}”: what was done with it is not said.`,
          expected: "The part, and what was done with it.",
          todo: "Fill it in from the film, or strike the mark out.",
          source: partUnsaid.source,
        });
      }),
  examples: [
    { says: "no part", sketch: { marks: [[1, "part", { event: "removed" }]] }, finds: 1 },
    { says: "nothing done", sketch: { marks: [[1, "part", { item: "Nut" }]] }, finds: 1 },
    { says: "both", sketch: { marks: [[1, "part", { item: "Nut", event: "removed" }]] }, finds: 0 },
  ],
};
