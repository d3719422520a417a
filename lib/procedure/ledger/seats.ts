import type { Account, Line } from "./account.ts";
import type { LedgerEvent } from "./events.ts";
import { fold } from "./fold.ts";
import { type Ledger, putsOn } from "./ledger.ts";

/** How a part sat when it came off, and how it sits now that it is on for good: the last of each that says so. */
export interface Seating {
  item: string;
  name: string;
  /** What this one is stamped with; pieces of one item that are stamped differently are told apart. */
  stamped: string;
  off: LedgerEvent[];
  on: LedgerEvent[];
  /** Something about it was wrong as found: it is not expected to go back as it was. */
  foundWrong: boolean;
}

/** The last taking-off and the last putting-on of every part, trial fits aside, told apart by stamp. */
export function seatingsOf(ledger: Ledger): Seating[] {
  return ledger.accounts.flatMap((account) => {
    const stamps = [...new Set(account.lines.map((line) => fold(line.event.says.stamped)))].filter(Boolean);
    return stamps.length > 1 ? stamps.map((stamp) => seating(account, stamp)) : [seating(account, null)];
  });
}

function seating(account: Account, stamp: string | null): Seating {
  const lines = account.lines.filter((line) => stamp === null || fold(line.event.says.stamped) === stamp);
  const off = lastRun(
    lines,
    (event) => event.event === "removed" && event.stage !== "trial fit",
    putsOnForGood,
  );
  const on = lastRun(lines, putsOnForGood, (event) => event.event === "removed");
  return {
    item: account.item,
    name: account.name,
    stamped: stamp ?? "",
    off,
    on: on.length > 0 && off.length > 0 && lastOrder(on) < lastOrder(off) ? [] : on,
    foundWrong: account.lines.some((line) => line.event.says.foundWrong !== ""),
  };
}

function putsOnForGood(event: LedgerEvent): boolean {
  return putsOn(event) && event.stage !== "trial fit";
}

function lastOrder(events: readonly LedgerEvent[]): number {
  return events.at(-1)?.order ?? -1;
}

/** The last events of one sort that no event of the other sort comes between. */
function lastRun(
  lines: readonly Line[],
  wanted: (event: LedgerEvent) => boolean,
  breaks: (event: LedgerEvent) => boolean,
): LedgerEvent[] {
  const runs: LedgerEvent[][] = [[]];
  for (const { event } of lines) {
    if (wanted(event)) runs.at(-1)?.push(event);
    else if (breaks(event) && runs.at(-1)?.length) runs.push([]);
  }
  return runs.filter((run) => run.length > 0).at(-1) ?? [];
}

/** Of several events, what they all say in a field; null where they differ or say nothing. */
export function oneSaid(
  events: readonly LedgerEvent[],
  field: "wayRound" | "place" | "between",
): string | null {
  const texts = new Set(events.map((event) => fold(event.says[field])).filter(Boolean));
  return texts.size === 1 ? ([...texts][0] as string) : null;
}
