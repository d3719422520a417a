import type { LedgerEvent } from "./events.ts";
import { fold } from "./fold.ts";
import { type Ledger, putsOn } from "./ledger.ts";

/** Pieces of one part in one container. */
export interface Held {
  item: string;
  name: string;
  count: number;
  /** The mark that put them in. */
  event: LedgerEvent;
}

/** A bag or tin: what went in, what came out, what lies in it now. */
export interface Container {
  name: string;
  countedIn: number;
  countedOut: number;
  holds: Held[];
}

/** Every container that a mark names, in the order in which they are first named. */
export function containersOf(ledger: Ledger): Container[] {
  const containers = new Map<string, Container>();
  for (const event of ledger.events) {
    takeOut(event, movedBy(ledger, event), [...containers.values()]);
    putIn(event, movedBy(ledger, event), containers);
  }
  return [...containers.values()];
}

/** How many an event moved, by the account; what it looked at or cleaned stays where it was. */
function movedBy(ledger: Ledger, event: LedgerEvent): number {
  const line = ledger.byItem.get(event.item)?.lines.findLast((one) => one.event === event);
  return line?.moved ?? event.count ?? 1;
}

const goesIn = new Set([
  "removed",
  "obtained",
  "made",
  "cleaned",
  "inspected",
  "repaired",
  "left out",
  "scrapped",
]);

function putIn(event: LedgerEvent, count: number, containers: Map<string, Container>): void {
  const name = event.says.container;
  if (name === "" || !goesIn.has(event.event)) return;
  const key = fold(name);
  const container = containers.get(key) ?? { name, countedIn: 0, countedOut: 0, holds: [] };
  containers.set(key, container);
  container.countedIn += count;
  container.holds.push({ item: event.item, name: event.name, count, event });
}

/** What is thrown away lies where it was put: no piece that goes on is that one. */
const isAway = ({ event }: Held): boolean => event.event === "scrapped" || event.event === "left out";

/** What goes on, is thrown away, or is put somewhere else, leaves the container it lay in: first in, first out. */
function takeOut(event: LedgerEvent, count: number, containers: readonly Container[]): void {
  const moves = event.says.container !== "" && goesIn.has(event.event);
  const leaves = putsOn(event) || event.event === "scrapped" || event.event === "left out";
  if (
    !leaves &&
    !(moves && event.event !== "removed" && event.event !== "obtained" && event.event !== "made")
  )
    return;
  let rest = count;
  for (const container of containers) {
    for (const held of container.holds.filter((one) => one.item === event.item && !isAway(one))) {
      const out = Math.min(rest, held.count);
      held.count -= out;
      container.countedOut += out;
      rest -= out;
    }
    container.holds = container.holds.filter((one) => one.count > 0);
  }
}
