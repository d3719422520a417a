import { finding } from "#lib/finding/index.ts";
import type { Rule } from "./rule.ts";

/** Something left provisional that no later mark has closed. */
export const openDeferred: Rule = {
  id: "open-deferred",
  title: "Left provisional",
  explanation:
    "What was left finger-tight, without sealant or with a borrowed bolt stays open until a later mark closes it. A procedure that leaves it open leaves the machine that way at the reader's bench.",
  source: "common practice, no source",
  check: ({ procedure }) =>
    procedure.deferred
      .filter((line) => line.closedBy === null)
      .map((line) =>
        finding({
          rule: "open-deferred",
          severity: "wrong",
          place: { mark: line.mark },
          evidence: `${line.what}\n${line.waitsFor}`,
          found: `Still open: “${line.what || "(no words)"}”${line.waitsFor ? `, until ${line.waitsFor}` : ""}.`,
          expected: "A later mark that closes it.",
          todo: "Mark the moment when it was put right and let that mark close this one, or answer why it may stay.",
          source: openDeferred.source,
        }),
      ),
  examples: [
    {
      says: "nuts left finger-tight",
      sketch: { marks: [[1, "deferred", { words: "Cover nuts finger-tight", waitsFor: "the new belt" }]] },
      finds: 1,
    },
    {
      says: "and tightened later",
      sketch: {
        marks: [
          [1, "deferred", { words: "Cover nuts finger-tight" }],
          [9, "action", { words: "Tighten the cover nuts", closes: ["deferred@1"] }],
        ],
      },
      finds: 0,
    },
    {
      says: "a mark cannot close itself",
      sketch: { marks: [[1, "deferred", { words: "Old gasket", closes: ["deferred@1"] }]] },
      finds: 1,
    },
  ],
};
