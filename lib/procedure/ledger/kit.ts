import { type BuildDocument, type Kit, type KitNote, present } from "#lib/build/index.ts";
import { fold } from "./fold.ts";
import { type KitLine, readKit } from "./kit-text.ts";

/** A line of a kit with the item it belongs to and what the restorer says of it. */
export interface KitEntry extends KitLine {
  kit: Kit;
  item: string;
  note: KitNote;
  /** How many came: as the bag says, unless the restorer counted otherwise. */
  received: number;
}

/** What the kits of a build hold, and how much of it has been drawn. */
export interface KitStock {
  entries: KitEntry[];
  /** How many of an item are left in the kits; those that are not to be used only for a trial, which may have shown it. */
  left: (item: string, trial: boolean) => number;
  draw: (item: string, count: number, trial: boolean) => void;
  /** How many have been drawn of those that may be used. */
  drawn: (item: string) => number;
  /** Whether a text names a kit, by its name or its supplier. */
  names: (source: string) => boolean;
}

/** The kits of a build, read anew from what was pasted. */
export function kitStock(document: BuildDocument, itemNamed: (folded: string) => string): KitStock {
  const kits = present(document.kits).sort((a, b) => (a.id < b.id ? -1 : 1));
  const byNumber = numbersOf(document);
  const entries = kits.flatMap((kit) =>
    readKit(kit.text).map((line) => entryOf(kit, line, byNumber, itemNamed)),
  );
  const usable = new Stock(entries.filter((entry) => !entry.note.notToUse));
  const onlyTried = new Stock(entries.filter((entry) => entry.note.notToUse));
  const names = kits.flatMap((kit) => [fold(kit.name), fold(kit.supplier)]).filter((name) => name.length > 2);
  return {
    entries,
    left: (item, trial) => usable.left(item) + (trial ? onlyTried.left(item) : 0),
    draw: (item, count, trial) => {
      const rest = count - usable.draw(item, count);
      if (trial) onlyTried.draw(item, rest);
    },
    drawn: (item) => usable.drawn(item),
    names: (source) => names.some((name) => fold(source).includes(name)),
  };
}

/** So many of each item, and how many of them have been drawn. */
class Stock {
  readonly #held = new Map<string, number>();
  readonly #drawn = new Map<string, number>();

  constructor(entries: readonly KitEntry[]) {
    for (const { item, received } of entries) this.#held.set(item, (this.#held.get(item) ?? 0) + received);
  }

  drawn(item: string): number {
    return this.#drawn.get(item) ?? 0;
  }

  left(item: string): number {
    return (this.#held.get(item) ?? 0) - this.drawn(item);
  }

  /** Draws as many as there are, of those wanted; gives how many that were. */
  draw(item: string, wanted: number): number {
    const some = Math.max(0, Math.min(wanted, this.left(item)));
    this.#drawn.set(item, this.drawn(item) + some);
    return some;
  }
}

function entryOf(
  kit: Kit,
  line: KitLine,
  byNumber: ReadonlyMap<string, string>,
  itemNamed: (folded: string) => string,
): KitEntry {
  const note = kit.lines[line.typed] ?? {};
  const named = itemNamed(fold(note.item || line.name));
  const item =
    note.item || !named.startsWith("name:") ? named : (byNumber.get(fold(line.partNumber)) ?? named);
  return { ...line, kit, item, note, received: note.received ?? line.count };
}

function numbersOf(document: BuildDocument): Map<string, string> {
  const numbers = new Map<string, string>();
  for (const item of present(document.items)) {
    if (item.partNumber.trim() !== "") numbers.set(fold(item.partNumber), item.id);
  }
  return numbers;
}
