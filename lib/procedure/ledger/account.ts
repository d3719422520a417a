import type { LedgerEvent } from "./events.ts";
import type { ItemMove } from "./moves.ts";
import { type Gained, knownOf, move, noPieces, nothingGained, type Pools } from "./pieces.ts";

/** One line of an item's history: what happened, and how its pieces lay afterwards. */
export interface Line {
  event: LedgerEvent;
  /** How many were moved; null where none was. */
  moved: number | null;
  act: ItemMove["act"] | null;
  gained: Gained;
  /** From which pools they were taken. */
  from: Partial<Pools>;
  after: Pools;
}

/** The account of one item. */
export interface Account {
  item: string;
  name: string;
  /** In the order of their moments. */
  lines: Line[];
  now: Pools;
  /** All that became known, and how. */
  gained: Gained;
}

/** An account that events are written into, one after the other. */
export class OpenAccount {
  readonly item: string;
  name: string;
  readonly lines: Line[] = [];
  #now: Pools = noPieces;
  #gained: Gained = nothingGained;

  constructor(item: string, name: string) {
    this.item = item;
    this.name = name;
  }

  /** Writes a movement down; gives how many were moved, and how many of the reserve were drawn. */
  move(wanted: ItemMove, reserve: number): { count: number; drawn: number } {
    const { after, count, gained, from, drawn } = move(this.#now, { ...wanted, reserve });
    this.#now = after;
    this.#gained = sum(this.#gained, gained);
    this.lines.push({ event: wanted.event, moved: count, act: wanted.act, gained, from, after });
    return { count, drawn };
  }

  /** Writes down an event that moves nothing. */
  note(event: LedgerEvent): void {
    this.lines.push({ event, moved: null, act: null, gained: nothingGained, from: {}, after: this.#now });
  }

  known(): boolean {
    return knownOf(this.#now) > 0;
  }

  close(): Account {
    return { item: this.item, name: this.name, lines: this.lines, now: this.#now, gained: this.#gained };
  }
}

function sum(a: Gained, b: Gained): Gained {
  return {
    found: a.found + b.found,
    obtained: a.obtained + b.obtained,
    made: a.made + b.made,
    unexplained: a.unexplained + b.unexplained,
  };
}
