import fs from "node:fs";
import path from "node:path";
import Database from "better-sqlite3";
import { describe, expect, test } from "vitest";
import { audit } from "#lib/store/audit/index.ts";
import { loadBuild, MigrationError, openWorkshop, readSettings, workshopAt } from "#lib/store/index.ts";
import { migrate } from "#lib/store/sqlite/migrate.ts";
import { allFiles, allRows, freshFolder, programRoot } from "./kept.ts";
import { earlierDatabases, earliest, migrationsAndOne, sameRowsAndMore } from "./schemas.ts";

function workshopWith(database: string): string {
  const folder = freshFolder();
  fs.copyFileSync(database, path.join(folder, "workshop.db"));
  return folder;
}

const copiesIn = (folder: string) => fs.readdirSync(folder).filter((name) => name.startsWith("before-"));

describe("an upgrade", () => {
  test.each(earlierDatabases())("of %s keeps every row, and the program reads it", async (name) => {
    const database = path.join(path.dirname(earliest), name);
    const folder = workshopWith(database);
    const { client } = openWorkshop(folder, programRoot);
    const document = await loadBuild(client, "build-1");
    expect(document?.marks).toHaveLength(3);
    expect((await readSettings(client)).reactionTime).toBe(0.4);
    await client.$disconnect();
    const { Root: _, ...before } = allRows(database);
    sameRowsAndMore(before, allRows(path.join(folder, "workshop.db")));
    const { findings } = await audit(workshopAt(folder), { programRoot });
    // The database alone is kept here, so its files are missing, and nothing else is.
    const rules = new Set(findings.filter((one) => one.severity === "wrong").map((one) => one.rule));
    expect([...rules].sort()).toEqual(["recording-missing", "still-missing"]);
  });

  test("puts a whole copy beside the database first, under a name that says before what", () => {
    const folder = workshopWith(earliest);
    const file = path.join(folder, "workshop.db");
    const [first] = migrate(file, migrationsAndOne(freshFolder()));
    expect(copiesIn(folder)).toEqual([`before-${first}.db`]);
    const copy = path.join(folder, `before-${first}.db`);
    expect(allRows(copy)).toEqual(allRows(earliest));
    expect(allRows(file)).toHaveProperty("Trial");
    expect(allRows(copy)).not.toHaveProperty("Trial");
    // The copy is one plain file that needs nothing beside it.
    expect(fs.readdirSync(folder).filter((name) => name.startsWith(`before-${first}.db-`))).toEqual([]);
  });

  test("never writes over a copy: another content takes the next number, the same content none", () => {
    const folder = workshopWith(earliest);
    const file = path.join(folder, "workshop.db");
    const failing = migrationsAndOne(freshFolder(), 'CREATE TABLE "Half" (a); SELECT no_such_function();');
    migrate(file, path.join(programRoot, "prisma/migrations"));
    const after = copiesIn(folder);
    const before = allFiles(folder).get("workshop.db");
    for (let attempt = 0; attempt < 2; attempt++) {
      expect(() => migrate(file, failing)).toThrow(MigrationError);
    }
    expect(() => migrate(file, failing)).toThrow(/99990101000000_trial failed \(no such function/);
    expect(allFiles(folder).get("workshop.db")).toEqual(before);
    expect(copiesIn(folder)).toEqual([...after, "before-99990101000000_trial.db"].sort());
    const kept = allFiles(folder).get("before-99990101000000_trial.db");

    const database = new Database(file);
    database.exec("UPDATE Build SET title = 'worked on meanwhile'");
    database.close();
    expect(() => migrate(file, failing)).toThrow(MigrationError);
    expect(allFiles(folder).get("before-99990101000000_trial.db")).toEqual(kept);
    const second = allRows(path.join(folder, "before-99990101000000_trial-2.db"));
    expect(second.Build).toMatchObject([{ title: "worked on meanwhile" }]);
  });

  test("of a new workshop copies nothing, and opening one twice upgrades it once", async () => {
    const folder = freshFolder();
    for (let opening = 0; opening < 2; opening++) {
      const { client } = openWorkshop(folder, programRoot);
      await client.$disconnect();
    }
    expect(copiesIn(folder)).toEqual([]);
  });
});

describe("a database that this version cannot open", () => {
  const cases: [string, RegExp, (file: string) => void][] = [
    [
      "is not one",
      /not a whole SQLite database/,
      (file) => fs.writeFileSync(file, "Dear diary, ".repeat(100)),
    ],
    ["is cut short", /not a whole SQLite database/, (file) => fs.truncateSync(file, 20_000)],
    ["comes from a later version", /later version/, (file) => write(file, "99990101000000_later")],
    ["had an upgrade that was edited since", /edited after it ran/, (file) => spoil(file)],
  ];
  test.each(cases)("because it %s is left as it is, and said to be so", (_, words, spoilIt) => {
    const folder = workshopWith(earliest);
    const file = path.join(folder, "workshop.db");
    spoilIt(file);
    const before = fs.readFileSync(file);
    expect(() => openWorkshop(folder, programRoot)).toThrow(words);
    expect(() => openWorkshop(folder, programRoot)).toThrow(MigrationError);
    const after = fs.readFileSync(file);
    if (!/later|edited/.test(String(words))) expect(after.equals(before)).toBe(true);
    else expect(allRows(file)).toMatchObject({ Build: [{ id: "build-1" }] });
  });
});

function write(file: string, migration: string): void {
  const database = new Database(file);
  database
    .prepare(
      "INSERT INTO _prisma_migrations (id, checksum, migration_name, started_at, finished_at) VALUES ('x', 'x', ?, 1, 1)",
    )
    .run(migration);
  database.close();
}

function spoil(file: string): void {
  const database = new Database(file);
  database.exec("UPDATE _prisma_migrations SET checksum = 'another'");
  database.close();
}
