import type { CaptionTrack, Gotcha, Item } from "#lib/build/index.ts";
import { readCaptionText } from "#lib/captions/read/index.ts";
import { foldWords } from "#lib/gotcha/index.ts";
import { kindOf, type Mark, wordsOf } from "#lib/mark/index.ts";
import type { Row, TableName } from "../tables.ts";

/** Where an entry comes from. A cue's row is its caption track, and `part` counts the cues in it. */
export type Source = "mark" | "gotcha" | "item" | "cue";

/** Something that can be found: what a mark, a gotcha, a part or a caption cue says. */
export interface SearchEntry {
  source: Source;
  row: string;
  part: number;
  build: string | null;
  machine: string | null;
  sitting: string | null;
  recording: string | null;
  /** Seconds of the recording's clock, to jump to. */
  at: number | null;
  /** The kind of a mark; "gotcha", "item" or "cue". */
  kind: string;
  /** As it is shown. */
  text: string;
  head: string;
  body: string;
  facets: string;
}

/** The source of the entries that a table's rows make; null where they make none. */
export const sourceOf: Partial<Record<TableName, Source>> = {
  mark: "mark",
  gotcha: "gotcha",
  item: "item",
  captionTrack: "cue",
};

/** The entries that a row makes: none for one that is struck out, or has no words. */
export function entriesOfRow(table: TableName, row: Row): SearchEntry[] {
  if (row.gone !== null) return [];
  if (table === "mark") return ofMark(row as unknown as Mark);
  if (table === "gotcha") return [ofGotcha(row as unknown as Gotcha)];
  if (table === "item") return [ofItem(row as unknown as Item)];
  return table === "captionTrack" ? ofTrack(row as unknown as CaptionTrack) : [];
}

function ofMark(mark: Mark): SearchEntry[] {
  const { buildId: build, sittingId: sitting, recordingId: recording, at, kind } = mark;
  const text = markText(mark);
  if (text === "") return [];
  const place = { build, sitting, recording, at, kind };
  return [entry("mark", mark.id, place, text, [wordsOf(mark), wordsOf(mark, "item")])];
}

/** Everything a person wrote in a mark, on one line. */
export function markText(mark: Mark): string {
  return kindOf(mark.kind)
    .fields.map((field) => {
      const value = mark.fields[field.name];
      return typeof value === "string" ? value : ((value as { typed?: string } | undefined)?.typed ?? "");
    })
    .filter(Boolean)
    .join(" · ");
}

function ofGotcha(gotcha: Gotcha): SearchEntry {
  const scopes = gotcha.appliesTo.map(({ years: _y, serial: _s, ...words }) =>
    Object.values(words).join(" "),
  );
  const { symptom, mechanism, consequence, tell, avoid, mend, sourceNote } = gotcha;
  const text = [symptom, mechanism, consequence, tell, avoid, mend, sourceNote].filter(Boolean).join(" · ");
  return entry("gotcha", gotcha.id, { kind: "gotcha" }, text, [symptom], scopes);
}

function ofItem({ id, machineId, name, partNumber, material, notes }: Item): SearchEntry {
  const text = [name, partNumber, material, notes].filter(Boolean).join(" · ");
  return entry("item", id, { machine: machineId, kind: "item" }, text, [name, partNumber]);
}

function ofTrack({ id, buildId: build, recordingId: recording, clock, text }: CaptionTrack): SearchEntry[] {
  return readCaptionText(text).cues.map((cue, part) => ({
    // A moment of the edited film is none of the recording's.
    ...entry(
      "cue",
      id,
      { build, recording, at: clock === "cut" ? null : cue.start, kind: "cue" },
      cue.text,
      [],
    ),
    part,
  }));
}

function entry(
  source: Source,
  row: string,
  place: Partial<SearchEntry> & { kind: string },
  text: string,
  heads: string[],
  also: string[] = [],
): SearchEntry {
  const { build = null, machine = null, sitting = null, recording = null, at = null, kind } = place;
  const head = folded(heads.join(" "));
  const facets = facetsOf({ kind, build, machine });
  return {
    ...{ source, row, part: 0, build, machine, sitting, recording, at, kind, text },
    ...{ head, body: folded([text, ...also].join(" ")), facets },
  };
}

/** Words of a text as they are looked for, and numbers written with points and strokes as one word beside them. */
function folded(text: string): string {
  return [...foldWords(text), ...solidNumbers(text)].join(" ");
}

/** Numbers and designations in which signs stand, without the signs: "AB-1234/7" as "ab12347". */
export function solidNumbers(text: string): string[] {
  return text.split(/\s+/).flatMap((chunk) => {
    const words = foldWords(chunk);
    return words.length > 1 && /\d/.test(chunk) ? [words.join("")] : [];
  });
}

/** The words by which entries are narrowed down: kind, build, machine. Each begins with a letter of its own. */
export function facetsOf(of: { kind?: string; build?: string | null; machine?: string | null }): string {
  const word = (letter: string, value: string | null | undefined) =>
    value ? [`${letter}${value.toLowerCase().replace(/[^a-z0-9]/g, "")}`] : [];
  return [...word("k", of.kind), ...word("b", of.build), ...word("m", of.machine)].join(" ");
}
