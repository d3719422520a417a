import fs from "node:fs";
import path from "node:path";
import Database from "better-sqlite3";
import { afterAll, describe, expect, test } from "vitest";
import { audit } from "#lib/store/audit/index.ts";
import { verifyBackup } from "#lib/store/backup/index.ts";
import { openWorkshop } from "#lib/store/index.ts";
import { migrate } from "#lib/store/sqlite/migrate.ts";
import { sampleDocument } from "../sample.ts";
import { freshWorkshop, writeDocument } from "./fresh.ts";
import { allRows, freshFolder, programRoot, workshopWithEverything } from "./kept.ts";
import { bundleChild, killAgainAndAgain, patience, tell, times } from "./kill/kill.ts";
import { seeded } from "./kill/random.ts";
import type { Marked } from "./kill/works/mark.ts";
import { earliest, migrationsAndOne, sameRowsAndMore, trialOf } from "./schemas.ts";

const bundle = await bundleChild();
afterAll(bundle.remove);

describe("killed with SIGKILL at a random moment, nothing that was acknowledged is missing", () => {
  test("marking and typing", { timeout: patience }, async () => {
    const { client, workshop } = freshWorkshop();
    await writeDocument({ client, workshop }, sampleDocument());
    await client.$disconnect();
    const acknowledged = new Map<string, Marked>();

    const counts = await killAgainAndAgain<Marked>({
      work: "mark",
      file: bundle.file,
      times: times(30, 1000),
      random: seeded(3),
      within: { acknowledgements: 12, milliseconds: 25 },
      order: (run) => ({ folder: workshop.folder, run }),
      look: async (ended, run) => {
        for (const mark of ended.acknowledged) acknowledged.set(mark.id, mark);
        expectFound(ended.acknowledged, marksOf(workshop.database, `mark-${run}-`));
      },
    });

    // All that was ever acknowledged, once the program itself has opened the workshop again.
    const reopened = openWorkshop(workshop.folder, programRoot);
    expectFound([...acknowledged.values()], await reopened.client.mark.findMany());
    await reopened.client.$disconnect();
    // The last word on each row is in the log, the search table is what a rebuild would make it, and so on.
    expect(
      (await audit(workshop, { programRoot })).findings.filter((one) => one.severity !== "advice"),
    ).toEqual([]);
    tell("Marking and typing", counts);
  });

  test("backing up", { timeout: patience }, async () => {
    const { client, workshop } = await workshopWithEverything();
    await client.$disconnect();
    const parent = freshFolder();
    const looked = new Set<string>();

    const counts = await killAgainAndAgain<string>({
      work: "backup",
      file: bundle.file,
      times: times(10, 100),
      random: seeded(7),
      within: { acknowledgements: 1, milliseconds: 200 },
      order: () => ({ folder: workshop.folder, parent }),
      look: async ({ acknowledged }) => {
        const there = fs.readdirSync(parent).filter((name) => !name.startsWith("."));
        expect(there).toEqual(expect.arrayContaining(acknowledged));
        for (const name of there.filter((one) => !looked.has(one))) {
          looked.add(name);
          expect((await verifyBackup(path.join(parent, name))).findings).toEqual([]);
        }
      },
    });
    expect((await audit(workshop, { programRoot })).findings).toEqual([]);
    tell("Backing up", counts);
  });

  test("upgrading", { timeout: patience }, async () => {
    const migrations = migrationsAndOne(freshFolder(), trialOf(100_000));
    const before = allRows(earliest);

    const counts = await killAgainAndAgain<string[]>({
      work: "migrate",
      file: bundle.file,
      times: times(10, 100),
      random: seeded(11),
      within: { acknowledgements: 0, milliseconds: 300 },
      order: (run) => {
        const file = path.join(path.dirname(migrations), `run-${run}`, "workshop.db");
        fs.mkdirSync(path.dirname(file));
        fs.copyFileSync(earliest, file);
        return { file, migrations };
      },
      look: async ({ acknowledged }, run) => {
        const folder = path.join(path.dirname(migrations), `run-${run}`);
        const file = path.join(folder, "workshop.db");
        expect(integrity(file)).toBe("ok");
        // Either the old form or the new one, and never a step between.
        const { _prisma_migrations: applied, ...rows } = allRows(file);
        const names = (applied as { migration_name: string }[]).map((row) => row.migration_name);
        expect("Trial" in rows).toBe(names.includes("99990101000000_trial"));
        if (acknowledged.length > 0) expect(names).toEqual(expect.arrayContaining(acknowledged.flat()));
        sameRowsAndMore(before, rows);
        for (const copy of fs.readdirSync(folder).filter((name) => /^before-.*\.db$/.test(name))) {
          expect(integrity(path.join(folder, copy))).toBe("ok");
          sameRowsAndMore(before, allRows(path.join(folder, copy)));
        }
        migrate(file, migrations);
        const { _prisma_migrations: _, ...after } = allRows(file);
        sameRowsAndMore(before, after);
        expect(after.Trial).toHaveLength(100_000);
        // What was cut short has been taken away, and no copy was made twice.
        const copies = fs.readdirSync(folder).filter((name) => name.includes("before"));
        expect(copies.filter((name) => !/^before-\d+_[a-z_]+\.db$/.test(name))).toEqual([]);
        fs.rmSync(folder, { recursive: true });
      },
    });
    tell("Upgrading", counts);
  });
});

/** Each acknowledged mark is there, with the words it had then or those typed after. */
function expectFound(
  acknowledged: readonly Marked[],
  rows: readonly { id: string; rev: number; fieldsJson: string }[],
): void {
  const byId = new Map(rows.map((row) => [row.id, row]));
  for (const mark of acknowledged) {
    const row = byId.get(mark.id);
    if (!row || row.rev < mark.rev)
      throw new Error(`${mark.id} at revision ${mark.rev} is lost: ${row?.rev}`);
    expect((JSON.parse(row.fieldsJson).words ?? "").startsWith(mark.words)).toBe(true);
  }
}

function marksOf(file: string, prefix: string): { id: string; rev: number; fieldsJson: string }[] {
  const database = new Database(file);
  try {
    const query = database.prepare("SELECT id, rev, fieldsJson FROM Mark WHERE id LIKE ? || '%'");
    return query.all(prefix) as { id: string; rev: number; fieldsJson: string }[];
  } finally {
    database.close();
  }
}

function integrity(file: string): unknown {
  const database = new Database(file);
  try {
    return database.pragma("integrity_check", { simple: true });
  } finally {
    database.close();
  }
}
