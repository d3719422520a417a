import type { BuildDocument } from "#lib/build/index.ts";
import { clocksOf, present } from "#lib/build/index.ts";
import { compareMarks, type Mark, typedOf } from "#lib/mark/index.ts";
import { quantitiesOf, read } from "#lib/quantity/index.ts";
import type { Account } from "./account.ts";
import type { LedgerEvent } from "./events.ts";
import { itemFinder } from "./item-finder.ts";
import { type Ledger, putsOn } from "./ledger.ts";
import { onOf } from "./pieces.ts";

/** A part that is tightened to a figure: fitted is one fact, torqued is another. */
export interface Fastener {
  item: string;
  name: string;
  /** The last time it went on for good; null while it is not on. */
  fitted: LedgerEvent | null;
  on: number;
  /** How many have been torqued since. */
  torqued: number;
  /** The figure, where a mark gives one. */
  figure: string;
}

/** Every part of which a mark says how tight it is, or gives a torque. */
export function fastenersOf(ledger: Ledger, document: BuildDocument): Fastener[] {
  const figures = torquesOf(document);
  return ledger.accounts
    .filter((account) => figures.has(account.item) || account.lines.some(({ event }) => saysTight(event)))
    .map((account) => fastener(account, figures.get(account.item) ?? []));
}

function saysTight({ event, says }: LedgerEvent): boolean {
  return event === "torqued" || says.tightness !== "" || says.torque !== "";
}

/** A measured torque of an item, and whether it says that the part has it. */
interface TorqueOf {
  figure: string;
  /** Marks of measured values in time; the mark before which events lie. */
  mark: string;
  asFitted: boolean;
}

function fastener(account: Account, figures: readonly TorqueOf[]): Fastener {
  const lastOn = account.lines.findLastIndex(({ event }) => putsOn(event) && event.stage !== "trial fit");
  const on = onOf(account.now);
  const since = lastOn < 0 ? [] : account.lines.slice(firstOfRun(account, lastOn));
  const torqued = since
    .filter(({ event }) => event.event === "torqued" || (putsOn(event) && event.says.tightness === "torqued"))
    .reduce((sum, { event, moved }) => sum + (event.count ?? moved ?? on), 0);
  const figure =
    account.lines.map(({ event }) => event.says.torque).findLast(Boolean) ?? figures.at(-1)?.figure ?? "";
  return {
    item: account.item,
    name: account.name,
    fitted: on > 0 ? (account.lines[lastOn]?.event ?? null) : null,
    on,
    torqued: figures.some((one) => one.asFitted) ? on : Math.min(on, torqued),
    figure,
  };
}

/** Pieces that went on one after the other, with no taking-off between, belong together. */
function firstOfRun(account: Account, last: number): number {
  const broken = account.lines.findLastIndex(({ event }, index) => index < last && event.event === "removed");
  return broken + 1;
}

function torquesOf(document: BuildDocument): Map<string, TorqueOf[]> {
  const itemOf = itemFinder(document);
  const found = new Map<string, TorqueOf[]>();
  const marks = present(document.marks)
    .filter((mark) => mark.kind === "measurement")
    .sort(compareMarks(clocksOf(document)));
  for (const mark of marks) {
    const item = itemOf(mark);
    const torque = item && torqueIn(mark, document.build.decimal);
    if (torque) found.set(item.item, [...(found.get(item.item) ?? []), torque]);
  }
  return found;
}

function torqueIn(mark: Mark, decimal: "." | ","): TorqueOf | null {
  const isTorque = (field: string) =>
    quantitiesOf(read(typedOf(mark, field), { decimal })).some((quantity) => quantity.dimension === "torque");
  const asFitted = isTorque("asFitted");
  if (!asFitted && !isTorque("specified")) return null;
  return { mark: mark.id, asFitted, figure: typedOf(mark, asFitted ? "asFitted" : "specified") };
}
