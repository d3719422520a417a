import { type BuildDocument, present } from "#lib/build/index.ts";
import type { Mark } from "#lib/mark/index.ts";
import { itemOf } from "../steps.ts";
import { fold } from "./fold.ts";

/** Gives the item a mark speaks of: by its id, by the name of an item there is, or by the name alone; null for none. */
export function itemFinder(document: BuildDocument): (mark: Mark) => { item: string; name: string } | null {
  const names = new Map(document.items.map((item) => [item.id, item.name]));
  // Of two items of one name the first by id counts, whatever order the rows stand in.
  const byName = new Map<string, { item: string; name: string }>();
  for (const { id, name } of present(document.items).sort((a, b) => (a.id < b.id ? 1 : -1))) {
    byName.set(fold(name), { item: id, name });
  }
  return (mark) => {
    const item = itemOf(mark, names);
    return item?.item.startsWith("name:") ? (byName.get(fold(item.name)) ?? item) : item;
  };
}
