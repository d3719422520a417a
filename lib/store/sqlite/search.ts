import Database from "better-sqlite3";
import type { SearchEntry } from "../search/entries.ts";
import type { Reading } from "./read.ts";

/** An entry that was found, with the titles of what it belongs to. The smaller the rank, the better. */
export interface FoundRow extends SearchEntry {
  rank: number;
  buildTitle: string | null;
  machineName: string | null;
}

/**
 * The query of a search, for an FTS5 expression and a number of entries. What belongs to a struck-out build is left
 * out; a cue has the sitting of its recording.
 */
export const searchQuery = `
  SELECT e.*, w.rank AS rank, b.title AS buildTitle, m.name AS machineName,
         coalesce(e.sitting, r.sittingId) AS sitting
  FROM (SELECT rowid, rank FROM search_words WHERE search_words MATCH ? ORDER BY rank LIMIT ?) w
  JOIN search_entry e ON e.number = w.rowid
  LEFT JOIN Build b ON b.id = e.build
  LEFT JOIN Machine m ON m.id = coalesce(e.machine, b.machineId)
  LEFT JOIN Recording r ON e.sitting IS NULL AND r.id = e.recording
  WHERE b.gone IS NULL AND m.gone IS NULL
  ORDER BY w.rank`;

/** Reads the search tables by a connection of its own. */
export class SearchReader {
  readonly #database: Reading;
  readonly #find: Database.Statement;
  readonly #begins: Database.Statement;
  readonly #within: Database.Statement;
  readonly #near: Database.Statement;

  constructor(file: string) {
    this.#database = new Database(file, { readonly: true, fileMustExist: true, timeout: 10_000 });
    const prepare = (sql: string) => this.#database.prepare(sql);
    this.#find = prepare(searchQuery);
    this.#begins = prepare("SELECT 1 FROM search_term WHERE term >= ? AND term < ? LIMIT 1");
    this.#within = prepare("SELECT term FROM search_term WHERE instr(term, ?) > 1 LIMIT 200");
    this.#near = prepare(
      "SELECT term FROM search_term WHERE term >= ? AND term < ? AND length(term) BETWEEN ? AND ?",
    );
    this.#near.pluck();
    this.#within.pluck();
  }

  find(expression: string, limit: number): FoundRow[] {
    return this.#find.all(expression, limit) as FoundRow[];
  }

  /** Whether any word begins so. */
  begins(word: string): boolean {
    return this.#begins.get(word, `${word}\u{10ffff}`) !== undefined;
  }

  /** Words that have this inside them, not at their beginning. */
  within(part: string): string[] {
    return this.#within.all(part) as string[];
  }

  /** Words that begin with a letter and are that long. */
  near(letter: string, shortest: number, longest: number): string[] {
    return this.#near.all(letter, `${letter}\u{10ffff}`, shortest, longest) as string[];
  }

  close(): void {
    this.#database.close();
  }
}

/** Takes the entries of rows out of the search tables: `[[source, row], …]` as JSON. */
export const takeEntries = `
  DELETE FROM search_entry WHERE number IN (
    SELECT e.number FROM json_each(?) j
    JOIN search_entry e ON e.source = j.value ->> 0 AND e.row = j.value ->> 1)`;

/** Puts entries, as a JSON list, into the search tables. */
export const addEntries = `
  INSERT INTO search_entry (source, row, part, build, machine, sitting, recording, at, kind, text, head, body, facets)
  SELECT value ->> 'source', value ->> 'row', value ->> 'part', value ->> 'build', value ->> 'machine',
         value ->> 'sitting', value ->> 'recording', value ->> 'at', value ->> 'kind', value ->> 'text',
         value ->> 'head', value ->> 'body', value ->> 'facets'
  FROM json_each(?)`;

/** What the search tables hold, in an order of their own; nothing where there are none. */
export function indexedEntries(database: Reading): (SearchEntry & { number: number })[] {
  if (!database.prepare("SELECT 1 FROM sqlite_master WHERE name = 'search_entry'").get()) return [];
  return database.prepare("SELECT * FROM search_entry").all() as (SearchEntry & { number: number })[];
}

/** Numbers of entries whose words cannot be found, and of words that belong to no entry. */
export function unmatchedNumbers(database: Reading): number[] {
  const tables = "SELECT count(*) FROM sqlite_master WHERE name IN ('search_entry', 'search_words')";
  if (database.prepare(tables).pluck().get() !== 2) return [];
  return database
    .prepare(
      `SELECT number FROM search_entry WHERE number NOT IN (SELECT rowid FROM search_words)
       UNION SELECT rowid FROM search_words WHERE rowid NOT IN (SELECT number FROM search_entry)`,
    )
    .pluck()
    .all() as number[];
}

/** Empties the search tables and fills them with these entries, in one transaction. */
export function refill(
  file: string,
  sql: string,
  entries: (database: Reading) => Iterable<SearchEntry[]>,
): void {
  const database = new Database(file, { timeout: 10_000 });
  try {
    const turn = database.transaction(() => {
      database.exec(`DROP TABLE IF EXISTS search_entry; DROP TABLE IF EXISTS search_words;
        DROP TABLE IF EXISTS search_term; ${sql}`);
      const add = database.prepare(addEntries);
      for (const some of entries(database)) add.run(JSON.stringify(some));
      database.pragma(`user_version = ${searchForm}`);
    });
    turn.immediate();
  } finally {
    database.close();
  }
}

/** The version of what the search tables hold. Another one in a workshop, or none, and they are made anew. */
const searchForm = 1;

/** Whether the search tables of a workshop are of this version. */
export function hasSearchForm(file: string): boolean {
  const database = new Database(file, { readonly: true, timeout: 10_000 });
  try {
    return database.pragma("user_version", { simple: true }) === searchForm;
  } finally {
    database.close();
  }
}
