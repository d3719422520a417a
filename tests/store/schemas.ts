import fs from "node:fs";
import path from "node:path";
import { expect } from "vitest";
import { migrationsIn } from "#lib/store/open.ts";
import { programRoot } from "./kept.ts";

/** A small workshop's database as the first migration left it. Databases of later schemas are kept beside it. */
export const earliest = path.join(import.meta.dirname, "data", "workshop-20261125000000.db");

/** The databases of all earlier schemas, by name. */
export function earlierDatabases(): string[] {
  return fs.readdirSync(path.dirname(earliest)).filter((name) => /^workshop-\d+\.db$/.test(name));
}

/** An upgrade of some length that makes a table, fills it, and makes another one anew, as upgrades do. */
export const trialOf = (lines: number) => `
CREATE TABLE "Trial" ("id" INTEGER PRIMARY KEY, "words" TEXT NOT NULL);
WITH RECURSIVE numbers(n) AS (SELECT 1 UNION ALL SELECT n + 1 FROM numbers WHERE n < ${lines})
INSERT INTO "Trial" SELECT n, 'line ' || n FROM numbers;
CREATE TABLE "new_Setting" ("name" TEXT NOT NULL PRIMARY KEY, "value" TEXT NOT NULL, "trial" TEXT NOT NULL DEFAULT '');
INSERT INTO "new_Setting" ("name", "value") SELECT "name", "value" FROM "Setting";
DROP TABLE "Setting";
ALTER TABLE "new_Setting" RENAME TO "Setting";
ALTER TABLE "Machine" ADD COLUMN "trial" TEXT NOT NULL DEFAULT '';
`;

/** A folder with the migrations of this version and one more. */
export function migrationsAndOne(folder: string, sql = trialOf(1000)): string {
  const migrations = path.join(folder, "migrations");
  fs.cpSync(migrationsIn(programRoot), migrations, { recursive: true });
  fs.mkdirSync(path.join(migrations, "99990101000000_trial"));
  fs.writeFileSync(path.join(migrations, "99990101000000_trial", "migration.sql"), sql);
  return migrations;
}

type Rows = Record<string, unknown[]>;

/** Every row that was there is there still, with what it held; an upgrade may have added columns and tables. */
export function sameRowsAndMore(before: Rows, after: Rows): void {
  for (const [table, rows] of Object.entries(before)) {
    if (table === "_prisma_migrations") continue;
    const found = (after[table] ?? []) as Record<string, unknown>[];
    expect(found, table).toHaveLength(rows.length);
    for (const row of rows as Record<string, unknown>[]) {
      const key = "id" in row ? "id" : "name" in row ? "name" : "mark_id";
      expect(
        found.find((one) => one[key] === row[key]),
        table,
      ).toMatchObject(row);
    }
  }
}
