import { type Finding, finding, type Severity } from "#lib/finding/index.ts";
import { type KindName, kindOf, missingFields, wordsOf } from "#lib/mark/index.ts";
import type { View } from "./rule.ts";

/** A finding for each mark of a kind that lacks one field which a finished mark of that kind needs. */
export function needed(
  view: View,
  kind: KindName,
  field: string,
  words: { rule: string; severity: Severity; todo: string; source: string },
): Finding[] {
  return [...view.marks.values()]
    .filter((mark) => mark.kind === kind)
    .flatMap((mark) =>
      missingFields(mark)
        .filter((missing) => missing.field === field)
        .map((missing) => ({ mark, missing })),
    )
    .map(({ mark, missing }) =>
      finding({
        rule: words.rule,
        severity: words.severity,
        place: { mark: mark.id, field },
        evidence: wordsOf(mark),
        found: `${kindOf(kind).word}${wordsOf(mark) ? ` “${wordsOf(mark)}”` : ""}: ${missing.message}.`,
        expected: `Every ${kindOf(kind).word.toLowerCase()} says it.`,
        todo: words.todo,
        source: words.source,
      }),
    );
}
