import { type LedgerEvent, namesIn } from "./events.ts";
import { fold } from "./fold.ts";
import { type Ledger, putsOn } from "./ledger.ts";

/** One thing said: this part goes on over that one, by that mark. */
export interface Covering {
  /** Goes on later. */
  over: string;
  overName: string;
  /** Must be on before. */
  under: string;
  underName: string;
  mark: string;
}

/** All that the marks say of what goes on over what, each pair once. */
export function coveringsOf(ledger: Ledger): Covering[] {
  const pairs = new Map<string, Covering>();
  for (const event of ledger.events) {
    for (const name of namesIn(event.says.covers)) {
      const under = ledger.itemNamed(fold(name));
      const key = `${event.item}\n${under}`;
      if (!pairs.has(key)) {
        const underName = ledger.byItem.get(under)?.name ?? name;
        pairs.set(key, { over: event.item, overName: event.name, under, underName, mark: event.mark });
      }
    }
  }
  return [...pairs.values()];
}

/** A circle of coverings: each goes on over the next, and the last over the first. */
export type Circle = Covering[];

/** An order in which parts can go on, or what stands against one. */
export interface Order {
  /** Items, each after all that it covers; those in a circle and what lies over them are left out. */
  legal: string[];
  circles: Circle[];
}

/**
 * An order of these items that satisfies every covering, as near to the given one as that allows; and the circles
 * that no order satisfies.
 */
export function legalOrder(items: readonly string[], coverings: readonly Covering[]): Order {
  const there = new Set(items);
  const within = coverings.filter((one) => there.has(one.over) && there.has(one.under));
  const waits = new Map(items.map((item) => [item, 0]));
  const over = new Map<string, string[]>();
  for (const one of within) {
    waits.set(one.over, (waits.get(one.over) ?? 0) + 1);
    over.set(one.under, [...(over.get(one.under) ?? []), one.over]);
  }
  const left = new Set(items);
  const legal: string[] = [];
  for (let next = firstFree(left, waits); next !== undefined; next = firstFree(left, waits)) {
    legal.push(next);
    left.delete(next);
    for (const item of over.get(next) ?? []) waits.set(item, (waits.get(item) ?? 0) - 1);
  }
  return { legal, circles: circlesIn(left, within) };
}

function firstFree(left: ReadonlySet<string>, waits: ReadonlyMap<string, number>): string | undefined {
  for (const item of left) if (waits.get(item) === 0) return item;
  return undefined;
}

/** One circle for each knot: from any item that is left, following what it waits for must come round. */
function circlesIn(left: ReadonlySet<string>, coverings: readonly Covering[]): Circle[] {
  const next = new Map<string, Covering>();
  for (const one of coverings) {
    if (left.has(one.over) && left.has(one.under) && !next.has(one.over)) next.set(one.over, one);
  }
  const seen = new Set<string>();
  const circles: Circle[] = [];
  for (const start of left) {
    const path: Covering[] = [];
    const onPath = new Map<string, number>();
    let at = start;
    for (let step = next.get(at); step && !seen.has(at); step = next.get(at)) {
      seen.add(at);
      onPath.set(at, path.length);
      path.push(step);
      at = step.under;
    }
    const from = onPath.get(at);
    if (from !== undefined) circles.push(path.slice(from));
  }
  return circles;
}

/** Something that went on before what it covers. */
export interface TooEarly {
  covering: Covering;
  over: LedgerEvent;
  under: LedgerEvent;
}

/**
 * What went on for good before what it covers. Where both lie in steps of one stage, the order of the steps decides,
 * hand edits and all; else the order of the moments.
 */
export function tooEarly(ledger: Ledger): TooEarly[] {
  return coveringsOf(ledger).flatMap((covering) => {
    const over = lastOn(ledger, covering.over);
    const under = lastOn(ledger, covering.under);
    return over && under && isBefore(over, under) ? [{ covering, over, under }] : [];
  });
}

function lastOn(ledger: Ledger, item: string): LedgerEvent | undefined {
  return ledger.byItem
    .get(item)
    ?.lines.map((line) => line.event)
    .findLast((event) => putsOn(event) && event.stage !== "trial fit");
}

function isBefore(a: LedgerEvent, b: LedgerEvent): boolean {
  if (a.stage === b.stage && a.step !== null && b.step !== null && a.step !== b.step) return a.step < b.step;
  return a.order < b.order;
}
