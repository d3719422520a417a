import { finding } from "#lib/finding/index.ts";
import type { OrphanReason } from "#lib/procedure/index.ts";
import type { Rule } from "./rule.ts";

/** A hand edit that no longer finds what it was made on. */
export const orphanedEdit: Rule = {
  id: "orphaned-edit",
  title: "An edit with nothing under it",
  explanation:
    "Hand edits of the procedure are kept when marks change. One whose mark is gone, or was made on words that have changed since, may now say something else than was meant.",
  source: "common practice, no source",
  check: ({ procedure }) =>
    procedure.orphans.map((orphan) =>
      finding({
        rule: "orphaned-edit",
        severity: orphan.why === "words changed" ? "advice" : "doubtful",
        place: { edit: orphan.edit, mark: orphan.mark },
        evidence: `${orphan.why}\n${orphan.asked}\n${orphan.basis}`,
        found: `An edit asks to ${orphan.asked}, and ${reasons[orphan.why]}${orphan.basis ? ` It was made on “${orphan.basis}”.` : ""}`,
        expected: "An edit that finds the step it was made for.",
        todo: "Take the edit back, make it again on what stands there now, or answer that it is right.",
        source: orphanedEdit.source,
      }),
    ),
  examples: [
    {
      says: "the mark is gone",
      sketch: { edits: [{ mark: "action@1", edit: "title", value: "Lift it off", basis: "Lift the cover" }] },
      finds: 1,
    },
    {
      says: "the words have changed",
      sketch: {
        marks: [[1, "action", { words: "Lift the lid" }]],
        edits: [{ mark: "action@1", edit: "title", value: "Lift it off", basis: "Lift the cover" }],
      },
      finds: 1,
    },
    {
      says: "all as it was",
      sketch: {
        marks: [[1, "action", { words: "Lift the cover" }]],
        edits: [{ mark: "action@1", edit: "title", value: "Lift it off", basis: "Lift the  cover " }],
      },
      finds: 0,
    },
  ],
};

const reasons: Record<OrphanReason, string> = {
  "mark gone": "its mark has been struck out.",
  "not a step": "no step begins there any more.",
  "target gone": "the other step is no longer there.",
  "target in another stage": "the other step now lies in another stage.",
  "goes in a circle": "the steps would follow each other in a circle.",
  "words changed": "the words of its mark have changed since; it is still applied.",
};
