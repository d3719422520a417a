import type { KitEntry } from "./kit.ts";
import type { Ledger } from "./ledger.ts";
import { onOf } from "./pieces.ts";

/** A line of a kit against what the machine needs: what came, what was used, what is left over and why. */
export interface KitAccount extends KitEntry {
  /** How many the machine has or had, by the ledger; null where no mark speaks of the part. */
  need: number | null;
  fitted: number;
  /** Drawn from this line and not fitted: scrapped, or left out by a mark. */
  spoilt: number;
  left: number;
  /** How many more are needed than came. */
  short: number;
  /** Why some are left over, by the restorer or by a mark that left them out; empty while nobody has said. */
  leftWhy: string;
}

/** Every line of every kit. Lines of one item are drawn upon in the order in which they stand. */
export function reconcileKits(ledger: Ledger): KitAccount[] {
  const drawn = new Map<string, number>();
  const needed = new Map<string, number>();
  return ledger.stock.entries.map((entry) => {
    const { item } = entry;
    const account = ledger.byItem.get(item);
    const need = account ? needOf(ledger, item) : null;
    const rest = drawn.get(item) ?? ledger.stock.drawn(item);
    const used = entry.note.notToUse ? 0 : Math.min(rest, entry.received);
    drawn.set(item, rest - used);
    const wanted = needed.get(item) ?? need ?? 0;
    needed.set(item, Math.max(0, wanted - entry.received));
    const out = account?.lines.filter((line) => line.event.event === "left out") ?? [];
    const fitted = Math.min(used, account ? onOf(account.now) : 0);
    return {
      ...entry,
      need,
      fitted,
      spoilt: used - fitted,
      left: entry.received - used,
      short: entry.note.notToUse ? 0 : Math.max(0, wanted - entry.received),
      leftWhy:
        entry.note.leftWhy ||
        entry.note.notToUse ||
        out.map((line) => line.event.says.words).find(Boolean) ||
        "",
    };
  });
}

/** How many a machine has of an item: what came with it, or, where that was not seen, what is on it. */
function needOf(ledger: Ledger, item: string): number {
  const account = ledger.byItem.get(item);
  return account ? Math.max(account.gained.found, onOf(account.now)) : 0;
}
