import { createHash, randomUUID } from "node:crypto";
import fs from "node:fs";
import path from "node:path";
import Database from "better-sqlite3";

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
 * one transaction, in the order of their names, and keeps the bookkeeping of `prisma migrate deploy`. Then runs
 * `afterwards`, SQL that may be repeated (search tables, triggers).
 *
 * @returns the names of the migrations applied now.
 * @throws MigrationError when the database comes from a later version, or a migration was edited after it ran.
 */
export function migrate(file: string, folder: string, afterwards = ""): string[] {
  fs.mkdirSync(path.dirname(file), { recursive: true });
  const database = new Database(file, { timeout: 10_000 });
  try {
    database.pragma("journal_mode = WAL");
    database.pragma("synchronous = FULL");
    database.exec(BOOKKEEPING);
    const missing = missingOf(database, readMigrations(folder));
    for (const migration of missing) apply(database, migration);
    if (afterwards !== "") database.exec(afterwards);
    return missing.map((migration) => migration.name);
  } finally {
    database.close();
  }
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

function apply(database: Database.Database, { name, sql, checksum }: Migration): void {
  // Has no effect inside a transaction, so before it.
  database.pragma("foreign_keys = OFF");
  database
    .transaction(() => {
      database.exec(sql);
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
    })
    .immediate();
  database.pragma("foreign_keys = ON");
}
