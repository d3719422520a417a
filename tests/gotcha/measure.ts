import type { Gotcha } from "#lib/build/index.ts";
import { alikes, type Book, brief, type Opening } from "#lib/gotcha/index.ts";
import { find, type Workshop } from "#lib/store/index.ts";

const TODAY = "2026-11-28";

/** An opening, and the ids of what a brief for it must show, what it is right to show, and what cannot be decided. */
export interface Asked {
  opening: Opening;
  asked: readonly string[];
  right: readonly string[];
  open: readonly string[];
}

/** Recall of what must be shown and precision of what is, over all openings. */
export function measureBriefs(book: Book, openings: readonly Asked[], never: ReadonlySet<string>) {
  const count = { wanted: 0, found: 0, shown: 0, right: 0, never: 0, longest: 0 };
  const missed: string[] = [];
  const wrong: string[] = [];
  for (const { opening, asked, right, open } of openings) {
    const lines = brief(book, opening, TODAY).map((line) => line.entry.gotcha);
    const shown = lines.map((one) => one.id).filter((id) => !open.includes(id));
    const place = `${opening.machine.id} / ${opening.assembly.name}`;
    const found = asked.filter((id) => shown.includes(id));
    count.wanted += asked.length;
    count.found += found.length;
    count.shown += shown.length;
    count.right += shown.filter((id) => right.includes(id)).length;
    count.never += lines.filter((one) => never.has(one.id)).length;
    count.longest = Math.max(count.longest, lines.length);
    missed.push(...asked.filter((id) => !found.includes(id)).map((id) => `${place}: ${id}`));
    wrong.push(...shown.filter((id) => !right.includes(id)).map((id) => `${place}: ${id}`));
  }
  return {
    ...count,
    missed,
    wrong,
    recall: count.found / count.wanted,
    precision: count.right / count.shown,
  };
}

/** How often the right entry is first, and among five, for questions with a written truth, by kind of question. */
export function measureFinding(
  workshop: Workshop,
  questions: readonly { kind: string; text: string; id: string }[],
) {
  const count: Record<string, { first: number; five: number; of: number }> = {};
  const missed: string[] = [];
  for (const { kind, text, id } of questions) {
    const place = find(workshop, { text }).found.findIndex((one) => one.row === id);
    for (const name of [kind, "all"]) {
      count[name] ??= { first: 0, five: 0, of: 0 };
      count[name].of += 1;
      if (place === 0) count[name].first += 1;
      if (place >= 0 && place < 5) count[name].five += 1;
    }
    if (place !== 0) missed.push(`${kind} “${text}” (${place})`);
  }
  return { count, all: count.all ?? { first: 0, five: 0, of: 0 }, missed };
}

/** How many reworded entries are offered with what they reword when they are written into a book, and how many first. */
export function measureReworded(
  book: readonly Gotcha[],
  again: readonly { written: Gotcha; same: string }[],
) {
  const missed: string[] = [];
  let [right, first] = [0, 0];
  for (const { written, same } of again) {
    const offered = alikes(book, written).map((pair) => pair.ids[1]);
    if (offered[0] === same) first += 1;
    if (offered.includes(same)) right += 1;
    else missed.push(written.symptom);
  }
  return { right, first, missed };
}

/** Which of the pairs, known to be different, are offered as perhaps the same in a book. */
export function measureNear(book: readonly Gotcha[], near: readonly (readonly [string, string])[]) {
  const offered = new Set(alikes(book).map((pair) => pair.ids.toSorted().join("|")));
  return near.filter((pair) => offered.has(pair.toSorted().join("|")));
}
