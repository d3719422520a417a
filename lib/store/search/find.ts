import { slips } from "#lib/gotcha/index.ts";
import { type FoundRow, SearchReader } from "../sqlite/search.ts";
import type { Workshop } from "../workshop.ts";
import { type Ask, expressionOf, type Place, placesOf, quote } from "./ask.ts";
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
 * that finds next to nothing, words with a slip or two and insides of numbers count; where that finds nothing, any word.
 */
export function find(workshop: Workshop, ask: Ask, limit = 30): Finding {
  const places = placesOf(ask.text);
  if (places.length === 0) return { found: [], instead: [] };
  const reader = readerOf(workshop);
  const search = (of: readonly Place[], joined?: "OR") =>
    reader.find(expressionOf(of, ask, joined), LOOKED_AT);
  let rows = search(places);
  const instead: Finding["instead"] = [];
  if (rows.length < ENOUGH) {
    const wider = places.map((place) => widened(reader, place, instead));
    if (wider.some((place, index) => place !== places[index])) rows = merged(rows, search(wider));
    if (rows.length === 0 && places.length > 1) rows = search(wider, "OR");
  }
  return {
    found: ranked(rows, places, ask.text)
      .slice(0, limit)
      .map((row) => shown(row, places)),
    instead,
  };
}

/** A place with the words that are like its own; the same place where there are none. */
function widened(reader: SearchReader, place: Place, instead: Finding["instead"]): Place {
  const typed = place.words.join("");
  const inside = typed.length >= 3 ? reader.within(typed) : [];
  const near = place.words.length === 1 && !reader.begins(typed) ? nearWords(reader, typed) : [];
  if (near.length > 0) instead.push({ typed, read: near });
  const ways = [...inside, ...near].map((word) => quote(word));
  return ways.length === 0 ? place : { ...place, ways: [...place.ways, ...ways] };
}

/** Words of the workshop that are this one with a slip, or two in a long one; the nearest first. */
function nearWords(reader: SearchReader, typed: string): string[] {
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
 * The order shown: by bm25, and before that whole words before begun ones, lessons and parts before what was said in
 * passing; and to "where", a part's mark that names what it lies in.
 */
function ranked(rows: FoundRow[], places: readonly Place[], text: string): FoundRow[] {
  const where = /^\s*where\b/i.test(text);
  const scored = rows.map((row, index) => {
    const head = new Set(row.head.split(" "));
    const body = new Set(row.body.split(" "));
    const whole = places.filter((place) => place.words.every((word) => body.has(word))).length;
    const inHead = places.filter((place) => place.words.every((word) => head.has(word))).length;
    let score = -row.rank + (whole + inHead) / places.length - index / 1000;
    if (row.source === "gotcha" || row.source === "item") score += 0.5;
    if (where && row.kind === "part") score += 2;
    return { row, score };
  });
  return scored.sort((a, b) => b.score - a.score).map((one) => one.row);
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
