import { slips } from "#lib/gotcha/index.ts";
import { type FoundRow, SearchReader } from "../sqlite/search.ts";
import type { Workshop } from "../workshop.ts";
import { type Ask, eitherOf, expressionOf, type Place, placesOf, quote } from "./ask.ts";
import type { SearchEntry } from "./entries.ts";

/** Something found, best first. */
export interface Found
  extends Pick<
    SearchEntry,
    "source" | "row" | "part" | "build" | "machine" | "sitting" | "recording" | "at" | "kind"
  > {
  /** A stretch of what it says, about the words that were looked for. */
  text: string;
  buildTitle: string | null;
  machineName: string | null;
}

/** What a search came to. */
export interface Finding {
  found: Found[];
  /** Words that were taken for mistyped ones, with what was looked for instead. */
  instead: { typed: string; read: string[] }[];
}

/** So many are looked at closely before the best are shown. */
const LOOKED_AT = 60;

/** With fewer than these, words like the ones typed are looked for too. */
const ENOUGH = 3;

/**
 * Finds what was asked for, best first. All words must be there, whole, begun, or by another name of the trade; where
 * that finds next to nothing, words with a slip or two and insides of numbers count; where that finds nothing,
 * fewer of the words.
 */
export function find(workshop: Workshop, ask: Ask, limit = 30): Finding {
  return findWith(readerOf(workshop), ask, limit);
}

/** What a search asks of the database. */
export type Reader = Pick<SearchReader, "find" | "begins" | "within" | "near">;

/** As {@link find}, by that reader. */
export function findWith(reader: Reader, ask: Ask, limit = 30): Finding {
  const places = placesOf(ask.text);
  if (places.length === 0) return { found: [], instead: [] };
  const search = (of: readonly Place[]) => reader.find(expressionOf(of, ask), LOOKED_AT);
  let rows = search(places);
  let sought: readonly Place[] = places;
  const instead: Finding["instead"] = [];
  if (rows.length < ENOUGH) {
    const wider = places.map((place) => widened(reader, place, instead));
    sought = wider;
    if (wider.some((place, index) => place !== places[index])) rows = merged(rows, search(wider));
    if (rows.length === 0 && places.length > 1) rows = byFewerWords(wider, search);
  }
  return {
    found: ranked(rows, sought, ask.text)
      .slice(0, limit)
      .map((row) => shown(row, places)),
    instead,
  };
}

/** With more words than these the ways of leaving some out are too many to look for. */
const MOST_WORDS = 6;

/** What has all words but one, else all but two, and so on; at last the longest word that finds anything. */
function byFewerWords(places: readonly Place[], search: (of: readonly Place[]) => FoundRow[]): FoundRow[] {
  // Long words are rare ones, most of the time.
  const longestFirst = [...places].sort((a, b) => b.words.join("").length - a.words.join("").length);
  const telling = longestFirst.slice(0, MOST_WORDS);
  for (let count = telling.length - 1; count > 1; count--) {
    const rows = search([eitherOf(choices(telling, count))]);
    if (rows.length > 0) return rows;
  }
  for (const place of longestFirst) {
    const rows = search([place]);
    if (rows.length > 0) return rows;
  }
  return [];
}

/** Every choice of so many of them, in their order. */
function choices<T>(all: readonly T[], count: number): T[][] {
  if (count === 0) return [[]];
  return all.flatMap((one, at) => choices(all.slice(at + 1), count - 1).map((rest) => [one, ...rest]));
}

/** A place with the words that are like its own; the same place where there are none. */
function widened(reader: Reader, place: Place, instead: Finding["instead"]): Place {
  const typed = place.words.join("");
  const inside = typed.length >= 3 ? reader.within(typed) : [];
  const near = place.words.length === 1 && !reader.begins(typed) ? nearWords(reader, typed) : [];
  if (near.length > 0) instead.push({ typed, read: near });
  const alike = [...inside, ...near];
  const other = [...alike.map(quote), ...endingOff(place), ...apart(place)];
  if (other.length === 0) return place;
  const forms = [...place.forms, ...alike.map((word) => [word]), ...stemOf(place).map((stem) => [stem])];
  return { ...place, forms, ways: [...place.ways, ...other] };
}

/** "Catching" is written "catch" too, and "slipped" "slip". A stem without a vowel is none: a spring is no "spr". */
function stemOf({ words }: Place): string[] {
  const [, stem = ""] = /^([a-z]+?)(?:ing|ed)$/.exec(words.length === 1 ? (words[0] ?? "") : "") ?? [];
  return stem.length >= 3 && /[aeiouy]/.test(stem) ? [stem.replace(/([b-df-hj-np-tv-z])\1$/, "$1")] : [];
}

function endingOff(place: Place): string[] {
  return stemOf(place).map((stem) => `${quote(stem)} *`);
}

/** A number and a word that looked like one designation ("330 key") may stand apart. */
function apart({ words }: Place): string[] {
  return words.length === 2 && /^\d+$/.test(words[0] ?? "") ? [`(${words.map(quote).join(" AND ")})`] : [];
}

/** Words of the workshop that are this one with a slip, or two in a long one; the nearest first. */
function nearWords(reader: Reader, typed: string): string[] {
  if (typed.length < 4) return [];
  const most = typed.length >= 8 ? 2 : 1;
  const letters = new Set([typed[0] as string, typed[1] as string]);
  return [...letters]
    .flatMap((letter) => reader.near(letter, typed.length - most, typed.length + most))
    .map((word) => ({ word, slips: slips(typed, word, most) }))
    .filter((one) => one.slips !== null)
    .sort((a, b) => (a.slips as number) - (b.slips as number))
    .slice(0, 8)
    .map((one) => one.word);
}

function merged(first: FoundRow[], then: FoundRow[]): FoundRow[] {
  const numbers = new Set(first.map((row) => `${row.source} ${row.row} ${row.part}`));
  return [...first, ...then.filter((row) => !numbers.has(`${row.source} ${row.row} ${row.part}`))];
}

/**
 * The order shown: by bm25, and before that whole words before begun ones, words that stand together before scattered
 * ones, lessons and parts before what was said in passing; and to "where", a part's mark that says what it lies in.
 */
function ranked(rows: FoundRow[], places: readonly Place[], text: string): FoundRow[] {
  const where = /^\s*where\b/i.test(text);
  const scored = rows.map((row) => {
    const kind = row.source === "gotcha" || row.source === "item" ? 0.5 : 0;
    const answer = where && row.kind === "part" ? 2 : 0;
    return { row, score: -row.rank + closeness(row, places) + kind + answer };
  });
  return scored.sort((a, b) => b.score - a.score).map((one) => one.row);
}

/** How many of the places are whole words of a row, and how many of those stand side by side; of 1 each. */
function closeness({ head, body }: FoundRow, places: readonly Place[]): number {
  const words = (head === "" ? body : head).split(" ");
  const spans = places.map((place) => spanOf(words, place));
  const whole = spans.filter((span) => span?.whole).length;
  const together = spans.filter((span, index) => {
    const before = spans[index - 1];
    return index === 0 ? span !== null : span !== null && before?.to === span.from;
  }).length;
  return (whole + 2 * together) / places.length;
}

interface Span {
  from: number;
  to: number;
  whole: boolean;
}

/** Where a place stands among words; its earlier forms before its later ones. */
function spanOf(words: readonly string[], { forms }: Place): Span | null {
  for (const form of forms) {
    const last = form.length - 1;
    const from = words.findIndex((_, at) =>
      form.every((word, index) => {
        const found = words[at + index];
        return index === last ? found?.startsWith(word) : found === word;
      }),
    );
    if (from >= 0) return { from, to: from + form.length, whole: words[from + last] === form[last] };
  }
  return null;
}

/** How much of an entry is shown, in characters. */
const SHOWN = 160;

function shown(row: FoundRow, places: readonly Place[]): Found {
  const { source, row: id, part, build, machine, sitting, recording, at, kind } = row;
  const { buildTitle, machineName } = row;
  const text = stretch(row.text, places);
  return {
    source,
    row: id,
    part,
    build,
    machine,
    sitting,
    recording,
    at,
    kind,
    text,
    buildTitle,
    machineName,
  };
}

function stretch(text: string, places: readonly Place[]): string {
  if (text.length <= SHOWN) return text;
  const low = text.toLowerCase();
  const at = Math.max(
    0,
    ...places.map((place) => low.indexOf(place.words[0] ?? "")).filter((one) => one >= 0),
  );
  const from = at < SHOWN / 2 ? 0 : text.lastIndexOf(" ", at - SHOWN / 4) + 1;
  const to = from + SHOWN;
  return `${from > 0 ? "…" : ""}${text.slice(from, to)}${to < text.length ? "…" : ""}`;
}

const readers = new WeakMap<Workshop, SearchReader>();

function readerOf(workshop: Workshop): SearchReader {
  const known = readers.get(workshop);
  if (known) return known;
  const reader = new SearchReader(workshop.database);
  readers.set(workshop, reader);
  return reader;
}
