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
  /** How many of an item are left in the kits; none of those that are not to be used. */
  left: (item: string) => number;
  draw: (item: string, count: number) => void;
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
  const held = new Map<string, number>();
  for (const entry of entries) {
    if (entry.note.notToUse) continue;
    held.set(entry.item, (held.get(entry.item) ?? 0) + entry.received);
  }
  const drawn = new Map<string, number>();
  const names = kits.flatMap((kit) => [fold(kit.name), fold(kit.supplier)]).filter((name) => name.length > 2);
  return {
    entries,
    left: (item) => (held.get(item) ?? 0) - (drawn.get(item) ?? 0),
    draw: (item, count) => {
      const some = Math.min(count, (held.get(item) ?? 0) - (drawn.get(item) ?? 0));
      if (some > 0) drawn.set(item, (drawn.get(item) ?? 0) + some);
    },
    drawn: (item) => drawn.get(item) ?? 0,
    names: (source) => names.some((name) => fold(source).includes(name)),
  };
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
