import fs from "node:fs";
import Database from "better-sqlite3";
import { z } from "zod";
import { Refused } from "../command.ts";

/** A database that is read and never written to, by its own connection. */
export type Reading = Database.Database;

/** Opens a database for reading only, whatever version of the program wrote it. */
export function openToRead(file: string): Reading {
  if (!fs.existsSync(file)) {
    throw new Refused({
      found: `There is no workshop at ${file}.`,
      expected: "The database of a workshop, workshop.db.",
      todo: "Name the workshop's folder: WORKSHOP_DIR, or --workshop.",
    });
  }
  return new Database(file, { readonly: true, fileMustExist: true, timeout: 10_000 });
}

/** What `PRAGMA integrity_check` says is damaged; empty when the database is whole. */
export function integrityTroubles(database: Reading): string[] {
  try {
    const rows = database.pragma("integrity_check(20)") as { integrity_check: string }[];
    return rows.map((row) => row.integrity_check).filter((line) => line !== "ok");
  } catch (error) {
    return [(error as Error).message];
  }
}

/**
 * What a workshop's database does not have: triggers and views, which would change rows or show others whenever the
 * program writes or reads; and what it must have, the record of how it came to its form. Empty when all is well.
 */
export function strangeParts(database: Reading): string[] {
  try {
    // The two that keep the search table's words beside its entries are the program's own.
    const query = database.prepare(
      "SELECT type, name FROM sqlite_master WHERE type IN ('trigger', 'view') AND tbl_name <> 'search_entry'",
    );
    const strange = query.all() as { type: string; name: string }[];
    const own = database.prepare("SELECT 1 FROM sqlite_master WHERE name = '_prisma_migrations'").get();
    return [
      ...strange.map(({ type, name }) => `it holds a ${type} that this program did not make, ${name}`),
      ...(own ? [] : ["it is no workshop's database"]),
    ];
  } catch {
    // One that cannot be read has been told of by its damage.
    return [];
  }
}

/** A row that names another which is not there. */
export interface BrokenReference {
  table: string;
  /** The row's own id. */
  id: string;
  /** The table that was named. */
  parent: string;
}

/** What `PRAGMA foreign_key_check` finds. */
export function brokenReferences(database: Reading): BrokenReference[] {
  const rows = database.pragma("foreign_key_check") as { table: string; rowid: number; parent: string }[];
  return rows.slice(0, 200).map(({ table, rowid, parent }) => {
    const row = database.prepare(`SELECT id FROM "${table}" WHERE rowid = ?`).get(rowid);
    return { table, id: String((row as { id?: unknown } | undefined)?.id ?? `row ${rowid}`), parent };
  });
}

/** All rows of a table, one after the other. */
export function* rowsOf(database: Reading, table: string): Generator<Record<string, unknown>> {
  const query = database.prepare(`SELECT * FROM "${table}"`);
  yield* query.iterate() as IterableIterator<Record<string, unknown>>;
}

/** The names of the migrations that the database has been brought through. */
export function appliedMigrations(database: Reading): string[] {
  const query = database.prepare(
    "SELECT migration_name FROM _prisma_migrations WHERE rolled_back_at IS NULL ORDER BY migration_name",
  );
  return query.pluck().all() as string[];
}

const logged = z.object({ tbl: z.string(), id: z.string(), rev: z.number() });

/** The last revision that the change log gives to each row, by table and id. */
export function loggedRevisions(database: Reading): { table: string; id: string; rev: number }[] {
  const query = database.prepare(`
    SELECT json_extract(entry.value, '$.table') AS tbl, json_extract(entry.value, '$.id') AS id,
           max(json_extract(entry.value, '$.after.rev')) AS rev
    FROM Change, json_each(iif(json_valid(Change.entriesJson), Change.entriesJson, '[]')) AS entry GROUP BY 1, 2`);
  return z
    .array(logged)
    .parse(query.all())
    .map(({ tbl, ...rest }) => ({ table: tbl, ...rest }));
}

/** Numbers of the changes whose rows cannot be read. */
export function unreadableChanges(database: Reading): number[] {
  return database
    .prepare("SELECT seq FROM Change WHERE NOT json_valid(entriesJson)")
    .pluck()
    .all() as number[];
}

/** Whether the change log speaks of a text, such as a hash: undoing may bring it back. */
export function isInLog(database: Reading, text: string): boolean {
  return (
    database.prepare("SELECT 1 FROM Change WHERE instr(entriesJson, ?) > 0 LIMIT 1").get(text) !== undefined
  );
}

const placeRow = z.object({
  recordingId: z.string(),
  name: z.string(),
  sha256: z.string().nullable(),
  gone: z.string().nullable(),
  root: z.string(),
  own: z.number(),
  path: z.string(),
  size: z.number(),
  modifiedAt: z.number(),
  role: z.string(),
});

/** A place of a recording, with what is known of the recording. */
export interface ReadPlace extends Omit<z.infer<typeof placeRow>, "own"> {
  /** Whether it lies in a folder of the workshop. */
  own: boolean;
}

/** Where all recordings lie. */
export function readPlaces(database: Reading): ReadPlace[] {
  const query = database.prepare(`
    SELECT Place.recordingId, Recording.name, Recording.sha256, Recording.gone, Root.path AS root, Root.own,
           Place.path, Place.size, Place.modifiedAt, Place.role
    FROM Place JOIN Root ON Root.id = Place.rootId JOIN Recording ON Recording.id = Place.recordingId
    ORDER BY Root.path, Place.path`);
  return z
    .array(placeRow)
    .parse(query.all())
    .map((row) => ({ ...row, own: row.own !== 0 }));
}
