import type { BuildDocument } from "#lib/build/index.ts";
import type { Procedure } from "../tree.ts";
import { type Account, OpenAccount } from "./account.ts";
import { eventsOf, type LedgerEvent } from "./events.ts";
import { fold } from "./fold.ts";
import { type KitStock, kitStock } from "./kit.ts";
import { movesOf } from "./moves.ts";

/** What has become of every part. */
export interface Ledger {
  /** In the order in which items are first met. */
  accounts: Account[];
  byItem: ReadonlyMap<string, Account>;
  events: LedgerEvent[];
  /** The item of that name, folded; `name:` and the name where no mark or record has it. */
  itemNamed: (folded: string) => string;
  stock: KitStock;
  /** Whether anything has been put on for good: before that, everything being off is no fault. */
  assembling: boolean;
  /** Whether anything is known to have come off: else what goes on has no account to be held against. */
  stripped: boolean;
}

/** The account of every part, from the events of the build in the order of their moments. */
export function ledgerOf(procedure: Procedure, document: BuildDocument): Ledger {
  const events = eventsOf(procedure, document);
  const itemNamed = namer(events, document);
  const stock = kitStock(document, itemNamed);
  const open = new Map<string, OpenAccount>();
  const account = (item: string, name: string): OpenAccount => {
    const known = open.get(item) ?? new OpenAccount(item, name);
    open.set(item, known);
    return known;
  };
  for (const event of events) enter(event, account, itemNamed, stock);
  const accounts = [...open.values()].map((one) => one.close());
  return {
    accounts,
    byItem: new Map(accounts.map((one) => [one.item, one])),
    events,
    itemNamed,
    stock,
    assembling: events.some((event) => putsOn(event) && !beforeAssembly.has(event.stage)),
    stripped: events.some((event) => event.event === "removed"),
  };
}

const beforeAssembly = new Set(["strip", "clean", "inspect", "repair", "trial fit"]);

/** Whether an event puts a part on the machine. */
export function putsOn({ event }: Pick<LedgerEvent, "event">): boolean {
  return event === "fitted" || event === "replaced" || event === "substituted";
}

function enter(
  event: LedgerEvent,
  account: (item: string, name: string) => OpenAccount,
  itemNamed: Ledger["itemNamed"],
  stock: KitStock,
): void {
  const moves = movesOf(event, itemNamed);
  const own = account(event.item, event.name);
  if (moves.length === 0) own.note(event);
  let count = event.count;
  const elsewhere = comesFromElsewhere(event, stock);
  for (const move of moves) {
    const of = move.item === event.item ? own : account(move.item, event.says.insteadOf);
    const { trial } = move;
    const reserve = elsewhere ? Number.MAX_SAFE_INTEGER : stock.left(move.item, trial);
    const done = of.move({ ...move, count }, reserve);
    if (!elsewhere) stock.draw(move.item, done.drawn, trial);
    // "Replaced", without a number: as many new ones go on as old ones were scrapped.
    count = done.count;
  }
  if (event.event === "obtained" && stock.names(event.says.source)) stock.draw(event.item, count ?? 1, false);
}

/** Whether what goes on comes from where the mark says, and from no kit: no other mark needs to have obtained it. */
function comesFromElsewhere(event: LedgerEvent, stock: KitStock): boolean {
  return putsOn(event) && event.says.source !== "" && !stock.names(event.says.source);
}

function namer(events: readonly LedgerEvent[], document: BuildDocument): Ledger["itemNamed"] {
  const known = new Map<string, string>();
  for (const item of document.items) known.set(fold(item.name), item.id);
  for (const { item, name } of events) known.set(fold(name), item);
  return (folded) => known.get(folded) ?? `name:${folded}`;
}
