import type { Gotcha, Sighting } from "#lib/build/index.ts";

/** The rows of the book, those struck out and those of others among them. */
export interface Book {
  gotchas: readonly Gotcha[];
  sightings: readonly Sighting[];
}

/** A gotcha as it is told: with what has been joined into it, and every sighting of them all. */
export interface Entry {
  gotcha: Gotcha;
  joined: Gotcha[];
  sightings: Sighting[];
  superseded: boolean;
}

/** The entries of the book, by the id of the gotcha that each is told as. */
export function entriesOf({ gotchas, sightings }: Book): Map<string, Entry> {
  const present = new Map(gotchas.filter((one) => one.gone === null).map((one) => [one.id, one]));
  const entries = new Map<string, Entry>();
  const headOf = (id: string): string | null => head(present, id);
  for (const gotcha of present.values()) {
    if (headOf(gotcha.id) !== gotcha.id) continue;
    entries.set(gotcha.id, { gotcha, joined: [], sightings: [], superseded: false });
  }
  for (const gotcha of present.values()) {
    const entry = entries.get(headOf(gotcha.id) ?? "");
    if (entry && entry.gotcha !== gotcha) entry.joined.push(gotcha);
    for (const old of gotcha.supersedes) {
      const taken = entries.get(headOf(old) ?? "");
      if (taken && taken !== entry) taken.superseded = true;
    }
  }
  for (const sighting of sightings) {
    if (sighting.gone === null) entries.get(headOf(sighting.gotchaId) ?? "")?.sightings.push(sighting);
  }
  for (const entry of entries.values())
    entry.sightings.sort((a, b) => (a.at < b.at ? -1 : a.at > b.at ? 1 : 0));
  return entries;
}

/** The gotcha that one is told as. One joined to what is not there, or in a circle, stands for itself. */
function head(present: ReadonlyMap<string, Gotcha>, id: string): string | null {
  if (!present.has(id)) return null;
  const way = new Set([id]);
  let at = id;
  for (;;) {
    const next = present.get(at)?.joinedInto ?? null;
    if (next === null || !present.has(next)) return at;
    // In a circle the least id tells for all, whichever one began.
    if (way.has(next)) return [...way].sort()[0] ?? id;
    way.add(next);
    at = next;
  }
}

/** Where an entry applies: what it and those joined into it say, together. */
export function scopesOf({ gotcha, joined }: Entry): Pick<Gotcha, "appliesTo" | "notTo"> {
  const all = [gotcha, ...joined];
  return { appliesTo: all.flatMap((one) => one.appliesTo), notTo: all.flatMap((one) => one.notTo) };
}
