import { createHash, randomUUID } from "node:crypto";
import fs from "node:fs";
import path from "node:path";
import Database from "better-sqlite3";
import { keepCopyBefore } from "./snapshot.ts";

/** Why a database cannot be opened by this version of the program; the message says what to do. */
export class MigrationError extends Error {}

const BOOKKEEPING = `CREATE TABLE IF NOT EXISTS "_prisma_migrations" (
  "id" TEXT PRIMARY KEY NOT NULL, "checksum" TEXT NOT NULL, "finished_at" DATETIME, "migration_name" TEXT NOT NULL,
  "logs" TEXT, "rolled_back_at" DATETIME, "started_at" DATETIME NOT NULL DEFAULT current_timestamp,
  "applied_steps_count" INTEGER UNSIGNED NOT NULL DEFAULT 0)`;

interface Migration {
  name: string;
  sql: string;
  checksum: string;
}

/**
 * Brings a database file to the form this version knows: applies the migrations in `folder` that it lacks, each in
 * one transaction, in the order of their names, and keeps the bookkeeping of `prisma migrate deploy`. Before the
 * first of them a database that holds anything is copied to `before-<migration>.db` beside it. Then runs
 * `afterwards`, SQL that may be repeated (search tables, triggers).
 *
 * @returns the names of the migrations applied now.
 * @throws MigrationError when the database comes from a later version, a migration was edited after it ran or fails,
 *   or the file is no whole database. Nothing is changed then.
 */
export function migrate(file: string, folder: string, afterwards = ""): string[] {
  fs.mkdirSync(path.dirname(file), { recursive: true });
  const database = new Database(file, { timeout: 10_000 });
  try {
    database.pragma("journal_mode = WAL");
    database.pragma("synchronous = FULL");
    database.exec(BOOKKEEPING);
    const applied = applyMissing(database, readMigrations(folder));
    if (afterwards !== "") database.exec(afterwards);
    return applied;
  } catch (error) {
    throw damaged(error, file) ?? error;
  } finally {
    database.close();
  }
}

/**
 * The migrations in `folder` that a database lacks. Nothing is written.
 *
 * @throws MigrationError as {@link migrate}
 */
export function missingMigrations(database: Database.Database, folder: string): string[] {
  const known = readMigrations(folder);
  const kept = database.prepare("SELECT 1 FROM sqlite_master WHERE name = '_prisma_migrations'").get();
  return (kept ? missingOf(database, known) : known).map((migration) => migration.name);
}

/** What to say of a file that SQLite cannot read; null for any other error. */
function damaged(error: unknown, file: string): MigrationError | null {
  const code = String((error as { code?: unknown }).code ?? "");
  if (!/^SQLITE_(NOTADB|CORRUPT)/.test(code)) return null;
  return new MigrationError(
    `${file} is not a whole SQLite database (${code}). Keep it as it is, let “npm run -s witness -- audit” say what it finds, and restore the latest backup into an empty folder.`,
    { cause: error },
  );
}

function readMigrations(folder: string): Migration[] {
  const entries = fs.readdirSync(folder, { withFileTypes: true }).filter((entry) => entry.isDirectory());
  return entries
    .map((entry) => entry.name)
    .sort()
    .map((name) => {
      // Line ends are made alike first: a checkout on Windows may have changed them.
      const sql = fs.readFileSync(path.join(folder, name, "migration.sql"), "utf8").replace(/\r\n/g, "\n");
      return { name, sql, checksum: createHash("sha256").update(sql).digest("hex") };
    });
}

function missingOf(database: Database.Database, known: Migration[]): Migration[] {
  const query = `SELECT migration_name AS name, checksum, finished_at AS finished
                 FROM _prisma_migrations WHERE rolled_back_at IS NULL`;
  type Row = { name: string; checksum: string; finished: unknown };
  const done = new Map((database.prepare(query).all() as Row[]).map((row) => [row.name, row]));
  for (const row of done.values()) {
    const migration = known.find((one) => one.name === row.name);
    if (!row.finished) {
      throw new MigrationError(`The upgrade ${row.name} did not finish. Restore the copy made before it.`);
    }
    if (!migration) {
      throw new MigrationError(
        `This workshop was written by a later version of the program (it has ${row.name}). Use that version, or restore a backup made with this one.`,
      );
    }
    if (migration.checksum !== row.checksum) {
      throw new MigrationError(
        `The upgrade ${row.name} was edited after it ran. Put the original file back.`,
      );
    }
  }
  return known.filter((migration) => !done.has(migration.name));
}

function applyMissing(database: Database.Database, known: Migration[]): string[] {
  const applied: string[] = [];
  // Has no effect inside a transaction, so before it.
  database.pragma("foreign_keys = OFF");
  for (const migration of missingOf(database, known)) {
    const turn = database.transaction(() => {
      // Another process may have come first while this one waited for its turn.
      if (!missingOf(database, known).includes(migration)) return;
      if (applied.length === 0) keepCopy(database, migration.name);
      apply(database, migration);
      applied.push(migration.name);
    });
    turn.immediate();
  }
  database.pragma("foreign_keys = ON");
  return applied;
}

/** The transaction that has begun keeps others from writing between the copy and the upgrade. */
function keepCopy(database: Database.Database, migration: string): void {
  const tables = "SELECT 1 FROM sqlite_master WHERE type = 'table' AND name <> '_prisma_migrations' LIMIT 1";
  if (!database.prepare(tables).get()) return;
  try {
    keepCopyBefore(database.name, migration);
  } catch (error) {
    throw new MigrationError(
      `The workshop could not be copied before the upgrade ${migration} (${(error as Error).message}), so it was not upgraded. Make room on the drive, or see whether its folder may be written to.`,
      { cause: error },
    );
  }
}

function apply(database: Database.Database, { name, sql, checksum }: Migration): void {
  try {
    database.exec(sql);
  } catch (error) {
    throw new MigrationError(
      `The upgrade ${name} failed (${(error as Error).message}). Nothing was changed; a copy from before it lies beside the workshop's database.`,
      { cause: error },
    );
  }
  const broken = database.pragma("foreign_key_check") as unknown[];
  if (broken.length > 0) {
    throw new MigrationError(`The upgrade ${name} left broken references: ${JSON.stringify(broken[0])}`);
  }
  database
    .prepare(
      `INSERT INTO _prisma_migrations (id, checksum, migration_name, started_at, finished_at, applied_steps_count)
       VALUES (?, ?, ?, ?, ?, 1)`,
    )
    .run(randomUUID(), checksum, name, Date.now(), Date.now());
}
