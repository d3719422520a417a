import { finding } from "#lib/finding/index.ts";
import type { Rule } from "./rule.ts";

/** A moment that was marked and never said why. */
export const unsortedMark: Rule = {
  id: "unsorted-mark",
  title: "An unsorted mark",
  explanation: "A mark dropped in passing is kept, and never printed until it has a kind.",
  source: "common practice, no source",
  check: ({ procedure }) =>
    procedure.unsorted.map((loose) =>
      finding({
        rule: "unsorted-mark",
        severity: "doubtful",
        place: { mark: loose.mark },
        evidence: loose.words,
        found: `A mark${loose.moment ? ` at ${loose.moment.written}` : ""} has no kind${loose.words ? `: “${loose.words}”` : ""}.`,
        expected: "A kind for every mark.",
        todo: "Look at that second and give it a kind, or strike it out.",
        source: unsortedMark.source,
      }),
    ),
  examples: [
    { says: "why was this?", sketch: { marks: [[4, "", {}]] }, finds: 1 },
    { says: "sorted", sketch: { marks: [[4, "tool", { words: "Spanner" }]] }, finds: 0 },
  ],
};
