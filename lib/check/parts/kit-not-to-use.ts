import { finding } from "#lib/finding/index.ts";
import { type Ledger, type Line, putsOn } from "#lib/procedure/index.ts";
import type { Rule } from "../rule.ts";
import { assembly, atMoment, off, on } from "./words.ts";

/** A part of a kit that is not to be used, and went on. */
export const kitNotToUse: Rule = {
  id: "kit-not-to-use",
  title: "Not to be used, and on",
  explanation:
    "A kit holds parts for several versions, or a gasket that is too thick. Where the restorer has said that one must not be used, a mark that takes it from the kit is a trap sprung.",
  source: "the restorer's own word that it is not to be used",
  check: ({ ledger }) =>
    ledger.stock.entries
      .filter((entry) => entry.note.notToUse)
      .flatMap((entry) => {
        // By a trial it is found out that it must not be used.
        const used = ledger.byItem
          .get(entry.item)
          ?.lines.findLast(
            (line) => putsOn(line.event) && line.event.stage !== "trial fit" && isFromKit(line, ledger),
          );
        if (!used) return [];
        return finding({
          rule: "kit-not-to-use",
          severity: "wrong",
          place: { mark: used.event.mark, field: "source" },
          evidence: `${entry.typed}\n${entry.note.notToUse}`,
          found: `${used.event.name} went on${atMoment(used.event)}. The one in ${entry.kit.name} is not to be used: ${entry.note.notToUse}.`,
          expected: "Another one, and where it came from.",
          todo: "Look which one is on. Mark where the right one came from, or take the note back.",
          source: kitNotToUse.source,
        });
      }),
  examples: [
    {
      says: "it was tried, and went on all the same",
      sketch: {
        marks: [
          [1, "action", { words: "Try it", stage: "trial fit" }],
          on(2, "Gasket"),
          off(3, "Gasket"),
          assembly(6),
          on(7, "Gasket"),
        ],
        kits: [{ text: "1 x Gasket", lines: { "1 x Gasket": { notToUse: "its holes do not fit" } } }],
      },
      finds: 1,
    },
    {
      says: "the thick gasket went in",
      sketch: {
        marks: [assembly(5), on(6, "Gasket")],
        kits: [{ text: "1 x Gasket", lines: { "1 x Gasket": { notToUse: "too thick by half" } } }],
      },
      finds: 1,
    },
    {
      says: "it was tried, did not fit, and was put aside",
      sketch: {
        marks: [
          [1, "action", { words: "Try it", stage: "trial fit" }],
          on(2, "Gasket"),
          off(3, "Gasket"),
          [4, "part", { item: "Gasket", event: "left out" }],
          [5, "part", { item: "Gasket", event: "made" }],
          assembly(6),
          on(7, "Gasket"),
        ],
        kits: [{ text: "1 x Gasket", lines: { "1 x Gasket": { notToUse: "its holes do not fit" } } }],
      },
      finds: 0,
    },
    {
      says: "another one went in",
      sketch: {
        marks: [[1, "part", { item: "Gasket", event: "made" }], assembly(5), on(6, "Gasket")],
        kits: [{ text: "1 x Gasket", lines: { "1 x Gasket": { notToUse: "too thick by half" } } }],
      },
      finds: 0,
    },
  ],
};

/** Whether what went on is the kit's: by its mark's words, or since there is no other new one that it could be. */
function isFromKit({ event, gained, from }: Line, { stock, byItem }: Ledger): boolean {
  const { source } = event.says;
  if (source !== "") return stock.names(source);
  if (gained.unexplained > 0) return true;
  const isNew = (from.fresh ?? 0) + (from.trialNew ?? 0) > 0;
  const lines = byItem.get(event.item)?.lines ?? [];
  const another =
    lines.some(({ act }) => act === "obtain" || act === "make") ||
    stock.entries.some((entry) => entry.item === event.item && !entry.note.notToUse);
  return isNew && !another;
}
