import { finding } from "#lib/finding/index.ts";
import { wordsOf } from "#lib/mark/index.ts";
import type { Rule } from "../rule.ts";
import { fires, silent } from "../wording/say.ts";

const safe =
  /\b(?:(?:is|are|be|it's|now|perfectly|quite|completely|totally|absolutely) safe|safe to|harmless|risk-free|foolproof|no (?:danger|risk)|non-toxic)\b/i;
const denied = /\b(?:not|never|no longer|isn't|aren't|until|unless|nothing|nobody)\b[^.;]*$/i;
const fields = ["words", "detail", "result", "consequence", "avoid", "note", "why", "instead"];

/** A text that calls something safe. */
export const saysSafe: Rule = {
  id: "says-safe",
  title: "Called safe",
  explanation:
    "Nobody who wrote the sheet knows the reader's machine, room and hands. What was done to lower the risk can be said, and what was measured; that it is safe cannot.",
  source: "common practice, no source",
  check: ({ document, marks }) =>
    /^en\b/i.test(document.build.language)
      ? [...marks.values()].flatMap((mark) =>
          fields.flatMap((field) => {
            const text = wordsOf(mark, field);
            const match = safe.exec(text);
            if (!match || denied.test(text.slice(0, match.index))) return [];
            return finding({
              rule: "says-safe",
              severity: "doubtful",
              place: { mark: mark.id, field },
              evidence: match[0].toLowerCase(),
              found: `“${text.length > 90 ? `${text.slice(0, 88)}…` : text}” promises what nobody can.`,
              expected: "What was done and measured; the hazard that is left.",
              todo: "Say what was done in place of that it is safe.",
              source: saysSafe.source,
            });
          }),
        )
      : [],
  examples: [
    ...fires(
      "Wash the parts in white spirit, which is harmless.",
      "Touch the chassis: it is safe now.",
      "Lift the set by its frame, there is no danger.",
      "Use the stripper indoors; it is non-toxic.",
    ),
    ...silent(
      "Put on safety glasses.",
      "Put the dial in a safe place.",
      "Keep a safe distance from the belt.",
      "Treat the chassis as live: it is never safe to touch.",
      "File with the safe edge towards the shoulder.",
    ),
  ],
};
