import { finding } from "#lib/finding/index.ts";
import { type Account, onOf } from "#lib/procedure/index.ts";
import type { Rule } from "../rule.ts";
import { assembly, off, on, pieces } from "./words.ts";

/** A part that was scrapped, and of which fewer are on than came off. */
export const scrappedNotReplaced: Rule = {
  id: "scrapped-not-replaced",
  title: "Scrapped, and not replaced",
  explanation:
    "Four grommets came off and were thrown away, and three new ones went on. The old ones are accounted for; the machine is one short. It is asked once assembly has begun.",
  source: "counted from the marks",
  check: ({ ledger }) =>
    !ledger.assembling
      ? []
      : ledger.accounts
          .filter((account) => missing(account) > 0)
          .map((account) => {
            const { item, name, gained, now, lines } = account;
            const last = lines.findLast((line) => line.act === "scrap");
            return finding({
              rule: "scrapped-not-replaced",
              severity: "doubtful",
              place: { mark: last?.event.mark, field: "count" },
              evidence: `${item}\n${gained.found}\n${onOf(now)}`,
              found: `${name}: ${pieces(gained.found)} came with the machine, ${onOf(now)} on it now, and the rest scrapped.`,
              expected: "As many on as there were, or a mark that leaves some out on purpose.",
              todo: "Mark the new ones going on, or mark what was left out.",
              source: scrappedNotReplaced.source,
            });
          }),
  examples: [
    {
      says: "three new for four old",
      sketch: {
        marks: [
          off(1, "Grommet", { count: "4" }),
          [2, "part", { item: "Grommet", event: "scrapped", count: "4" }],
          assembly(5),
          on(6, "Grommet", { count: "3", source: "the supplier" }),
        ],
      },
      finds: 1,
    },
    {
      says: "four new ones",
      sketch: {
        marks: [
          off(1, "Grommet", { count: "4" }),
          [2, "part", { item: "Grommet", event: "scrapped", count: "4" }],
          assembly(5),
          on(6, "Grommet", { count: "4", source: "the supplier" }),
        ],
      },
      finds: 0,
    },
    {
      says: "another part took its place",
      sketch: {
        marks: [
          off(1, "Felt ring"),
          assembly(5),
          [
            6,
            "part",
            { item: "Lip seal", event: "replaced", insteadOf: "Felt ring", source: "the supplier" },
          ],
        ],
      },
      finds: 0,
    },
  ],
};

/** How many that came with the machine were scrapped with nothing in their place. Others' findings tell the rest. */
function missing({ item, gained, now, lines }: Account): number {
  const gaveWay = lines
    .filter((line) => line.event.item !== item)
    .reduce((sum, line) => sum + (line.moved ?? 0), 0);
  return now.scrapped === 0 ? 0 : gained.found - onOf(now) - now.leftOut - now.cameOff - now.fresh - gaveWay;
}
