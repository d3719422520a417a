import { finding } from "#lib/finding/index.ts";
import { reconcileKits } from "#lib/procedure/index.ts";
import type { Rule } from "../rule.ts";
import { off } from "./words.ts";

/** A kit that holds fewer than the machine needs. */
export const kitShort: Rule = {
  id: "kit-short",
  title: "The kit is short",
  explanation:
    "A kit with three seals for four places is found out when the fourth place is empty, and the time to send it back is over. Counted against what came off, it is known on the day it arrives.",
  source: "counted from the marks and from what is written on the kit",
  check: ({ ledger }) =>
    reconcileKits(ledger)
      .filter((line) => line.short > 0 && !suppliedElsewhere(line.item, ledger))
      .map((line) =>
        finding({
          rule: "kit-short",
          severity: "doubtful",
          place: { field: `${line.kit.id}/${line.typed}` },
          evidence: `${line.typed}\n${line.need}\n${line.received}`,
          found: `${line.kit.name}: ${line.received} “${line.name}” came, and ${line.need} are needed.`,
          expected: `${line.short} more.`,
          todo: "Get what is short and mark it as obtained, or mark which old ones go back.",
          source: kitShort.source,
        }),
      ),
  examples: [
    {
      says: "one short",
      sketch: { marks: [off(1, "Seal", { count: "4" })], kits: [{ text: "3 x Seal" }] },
      finds: 1,
    },
    {
      says: "enough",
      sketch: { marks: [off(1, "Seal", { count: "4" })], kits: [{ text: "4 x Seal" }] },
      finds: 0,
    },
    {
      says: "the one that was short came from elsewhere",
      sketch: {
        marks: [
          off(1, "Seal", { count: "4" }),
          [2, "part", { item: "Seal", event: "obtained", source: "a shop" }],
        ],
        kits: [{ text: "3 x Seal" }],
      },
      finds: 0,
    },
  ],
};

/** Whether pieces came from elsewhere, or old ones went back: then what the kit lacks has been seen to. */
function suppliedElsewhere(item: string, { byItem, stock }: Parameters<Rule["check"]>[0]["ledger"]): boolean {
  const account = byItem.get(item);
  if (!account) return false;
  const elsewhere = account.gained.obtained + account.gained.made - stock.drawn(item);
  return elsewhere > 0 || account.lines.some((line) => line.act === "on" && (line.from.cameOff ?? 0) > 0);
}
