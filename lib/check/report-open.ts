import { present } from "#lib/build/index.ts";
import { finding } from "#lib/finding/index.ts";
import type { Rule } from "./rule.ts";

/** A mistake was reported against a release, and nobody has said what came of it. */
export const reportOpen: Rule = {
  id: "report-open",
  title: "A report without an answer",
  explanation:
    "Somebody found a mistake in a release. Until it has been looked at, the next reader may be working to it.",
  source: "common practice, no source",
  check: ({ document }) =>
    present(document.errata)
      .filter((one) => one.disposition === "")
      .map((one) =>
        finding({
          rule: "report-open",
          severity: "doubtful",
          place: { mark: one.markId ?? undefined, field: one.id },
          evidence: `${one.words}\n${one.value}`,
          found: `Reported against revision ${revisionOf(document.releases, one.releaseId)}: “${one.words}”${one.value ? ` (${one.value})` : ""}.`,
          expected: "What came of it: a mistake, or not, and what is right.",
          todo: "Look at the recording, and say beside the release what came of it.",
          source: reportOpen.source,
        }),
      ),
  examples: [
    {
      says: "a build that was never released",
      sketch: { marks: [[1, "action", { words: "Lift the cover" }]] },
      finds: 0,
    },
  ],
};

function revisionOf(releases: readonly { id: string; revision: string }[], id: string): string {
  return releases.find((one) => one.id === id)?.revision ?? "?";
}
