import { finding } from "#lib/finding/index.ts";
import type { Rule } from "../rule.ts";
import { assembly, atMoment, off, on, pieces } from "./words.ts";

/** A new part that was obtained or made, and went nowhere. */
export const obtainedNotUsed: Rule = {
  id: "obtained-not-used",
  title: "New, and not used",
  explanation:
    "A new seal on the bench after assembly means that the old one is still in, or that the new one was not needed. Only one of the two is good news.",
  source: "common practice, no source",
  check: ({ ledger }) =>
    !ledger.assembling
      ? []
      : ledger.accounts
          .filter((account) => account.now.fresh > 0)
          .map(({ item, name, now, lines }) => {
            const got = lines.findLast(({ act }) => act === "obtain" || act === "make");
            return finding({
              rule: "obtained-not-used",
              severity: "doubtful",
              place: { mark: (got ?? lines.at(-1))?.event.mark, field: "event" },
              evidence: `${item}\n${now.fresh}`,
              found: `${name}: ${pieces(now.fresh)} new${atMoment(got?.event)}, and not fitted.`,
              expected: "Fitted, or left out on purpose.",
              todo: "Mark where it went on, or mark it as left out and say why.",
              source: obtainedNotUsed.source,
            });
          }),
  examples: [
    {
      says: "a new seal on the bench",
      sketch: {
        marks: [[1, "part", { item: "Seal", event: "obtained" }], off(2, "Nut"), assembly(5), on(6, "Nut")],
      },
      finds: 1,
    },
    {
      says: "a spare, kept",
      sketch: {
        marks: [
          [1, "part", { item: "Seal", event: "obtained" }],
          off(2, "Nut"),
          assembly(5),
          on(6, "Nut"),
          [7, "part", { item: "Seal", event: "left out", words: "kept as a spare" }],
        ],
      },
      finds: 0,
    },
  ],
};
