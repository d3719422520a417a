import { execFileSync } from "node:child_process";
import fs from "node:fs";
import path from "node:path";
import { createInterface } from "node:readline";
import type { Readable } from "node:stream";
import Database from "better-sqlite3";
import { describe, expect, test } from "vitest";
import { check } from "#lib/check/index.ts";
import { readFolder } from "#lib/folder/index.ts";
import { fromJson } from "#lib/gotcha/index.ts";
import { compile } from "#lib/procedure/index.ts";
import { audit } from "#lib/store/audit/index.ts";
import { backup, restore, verifyBackup } from "#lib/store/backup/index.ts";
import { loadBook, loadBuild, openWorkshop, Refused, readLastBackup } from "#lib/store/index.ts";
import { readCsv } from "../publish/read-csv.ts";
import { allFiles, allRows, freshFolder, programRoot, tamper, workshopWithEverything } from "./kept.ts";
import { startChild } from "./kill/kill.ts";
import type { Marked } from "./kill/works/mark.ts";

const options = { programRoot };

async function refusal(work: Promise<unknown>): Promise<Refused> {
  const error = await work.then(
    () => new Error("it was not refused"),
    (reason: unknown) => reason,
  );
  expect(error).toBeInstanceOf(Refused);
  const refused = error as Refused;
  for (const words of [refused.found, refused.expected, refused.todo]) expect(words).not.toBe("");
  return refused;
}

describe("a backup", () => {
  test("restored into an empty folder has the same rows in every table, the same bytes in every file, the same procedure", async () => {
    const { client, workshop } = await workshopWithEverything();
    const before = allRows(workshop.database);
    const made = await backup(workshop, freshFolder(), options);
    expect(made.findings).toEqual([]);

    const target = path.join(freshFolder(), "elsewhere", "workshop");
    const restored = await restore(made.folder, target, options);
    expect(restored.audit.findings).toEqual([]);

    const after = allRows(path.join(target, "workshop.db"));
    const roots = before.Root as { own: number; path: string }[];
    // The workshop's own folders lie elsewhere now, and nothing else differs.
    before.Root = roots.map((root) =>
      root.own ? { ...root, path: path.join(target, path.basename(root.path)) } : root,
    );
    expect(after.Root).toHaveLength(2);
    for (const table of Object.keys(before))
      expect(new Set(after[table]), table).toEqual(new Set(before[table]));
    expect(Object.keys(after)).toEqual(Object.keys(before));
    for (const folder of ["stills", "recordings", "releases"] as const) {
      expect(allFiles(path.join(target, folder))).toEqual(allFiles(workshop[folder]));
    }

    const again = openWorkshop(target, programRoot);
    const [one, other] = [await loadBuild(client, "build-1"), await loadBuild(again.client, "build-1")];
    await again.client.$disconnect();
    if (!one || !other) throw new Error("the build is in both");
    expect(check(compile(other), other)).toEqual(check(compile(one), one));
  });

  test("is plain files: sha256sum agrees with every hash, and each build is a build folder with texts to read", async () => {
    const { client, workshop, elsewhere } = await workshopWithEverything();
    const made = await backup(workshop, freshFolder(), options);
    // GNU coreutils is the judge of the hashes.
    execFileSync("sha256sum", ["-c", "--strict", "--quiet", "SHA256SUMS"], { cwd: made.folder });
    const manifest = JSON.parse(fs.readFileSync(path.join(made.folder, "manifest.json"), "utf8"));
    const listed = manifest.files.map((file: { path: string }) => file.path);
    const there = [...allFiles(made.folder).keys()];
    expect(there.filter((name) => !listed.includes(name)).sort()).toEqual(["SHA256SUMS", "manifest.json"]);
    expect(manifest.elsewhere).toMatchObject([{ path: "second.mp4", folder: path.dirname(elsewhere) }]);
    expect(listed).not.toContain("recordings/second.mp4");

    const folder = path.join(made.folder, "builds", "Water pump");
    const { document, missing } = await readFolder(folder);
    expect(missing).toEqual([]);
    expect(document).toEqual(await loadBuild(client, "build-1"));
    expect(fs.readFileSync(path.join(folder, "marks.txt"), "utf8")).toMatch(
      /0:10 of first\.mp4: Action\n.*Take off the cover/,
    );
    expect(fs.readFileSync(path.join(folder, "README.txt"), "utf8")).toContain(
      "first.mp4: ../../recordings/first.mp4",
    );
    expect(fs.readFileSync(path.join(made.folder, "README.txt"), "utf8")).toContain("NOT in this backup");
  });

  test("holds the gotcha book as plain files: every word and sighting of it, and a table", async () => {
    const { client, workshop } = await workshopWithEverything();
    const made = await backup(workshop, freshFolder(), options);
    const read = (name: string) => fs.readFileSync(path.join(made.folder, "gotchas", name), "utf8");
    const { gotchas, sightings } = await loadBook(client);
    const kept = gotchas.filter((one) => one.gone === null);
    expect(kept.map((one) => one.id).sort()).toEqual(["gotcha-1", "gotcha-2"]);
    expect(fromJson(read("book.json"))).toMatchObject({ gotchas: kept, sightings });
    // The table keeps the words and the scopes, which a reader of RFC 4180 finds in their columns.
    const [heads = [], ...lines] = readCsv(read("book.csv"));
    const symptoms = lines.map((line) => line[heads.indexOf("symptom")]);
    expect(symptoms).toEqual(['\'=Gasket, "paper", tears', '\'=Gasket, "paper", tears', "The gasket rips"]);
    expect(lines.map((line) => line[heads.indexOf("kit")])).toEqual(["Seal kit", "", ""]);

    // A book that was changed afterwards is found out, like every other file.
    fs.appendFileSync(path.join(made.folder, "gotchas", "book.json"), " ");
    const { findings } = await verifyBackup(made.folder);
    expect(findings.map((one) => one.found).join()).toContain("gotchas/book.json is not as it was written");
    const restored = path.join(freshFolder(), "workshop");
    await restore(made.folder, restored, { ...options, anyway: true });
    expect(allRows(path.join(restored, "workshop.db")).Gotcha).toEqual(allRows(workshop.database).Gotcha);
  });

  test("made while another process writes holds every command that was acknowledged before it began", async () => {
    const { client, workshop } = await workshopWithEverything();
    await client.$disconnect();
    const writer = startChild("mark");
    await writer.ready;
    const acknowledged: Marked[] = [];
    const closed = new Promise((resolve) => writer.process.once("close", resolve));
    const enough = new Promise<void>((resolve) =>
      createInterface(writer.process.stdout as Readable).on("line", (line) => {
        acknowledged.push(JSON.parse(line));
        if (acknowledged.length === 20) resolve();
      }),
    );
    writer.process.send({ folder: workshop.folder, run: 1 });
    await enough;
    const before = [...acknowledged];
    const made = await backup(workshop, freshFolder(), options);
    writer.process.kill("SIGKILL");
    await closed;
    // It went on writing all the while.
    expect(acknowledged.length).toBeGreaterThan(before.length);

    const target = path.join(freshFolder(), "new");
    const restored = await restore(made.folder, target, options);
    expect(restored.audit.findings).toEqual([]);
    const rows = allRows(path.join(target, "workshop.db")).Mark as { id: string; rev: number }[];
    for (const { id, rev } of before) {
      expect(rows.find((row) => row.id === id)?.rev).toBeGreaterThanOrEqual(rev);
    }
  });

  test("into the same folder again makes another; the first keeps every byte, and the workshop says when the last was", async () => {
    const { client, workshop } = await workshopWithEverything();
    const parent = freshFolder();
    const now = new Date("2026-05-03T14:20:05Z");
    const first = await backup(workshop, parent, { ...options, now });
    const bytes = allFiles(first.folder);
    const second = await backup(workshop, parent, { ...options, now });
    expect(fs.readdirSync(parent).sort()).toEqual([
      "witness-mark-2026-05-03T142005Z",
      "witness-mark-2026-05-03T142005Z-2",
    ]);
    expect(allFiles(first.folder)).toEqual(bytes);
    expect(await readLastBackup(client)).toMatchObject({ at: now.toISOString(), folder: second.folder });
  });

  test("is refused in the workshop itself and in a folder that is not there, and nothing is left", async () => {
    const { workshop } = await workshopWithEverything();
    const inside = path.join(workshop.folder, "backups");
    expect((await refusal(backup(workshop, inside, options))).found).toContain("own folder");
    expect(fs.existsSync(inside)).toBe(false);
    const away = path.join(freshFolder(), "not", "there");
    expect((await refusal(backup(workshop, away, options))).todo).toContain("Plug the drive in");
  });

  test("stopped half-way leaves nothing", async () => {
    const { workshop } = await workshopWithEverything();
    const parent = freshFolder();
    const stop = new AbortController();
    const onProgress = ({ words }: { words: string }) => {
      if (words === "Copying recordings") stop.abort(new Error("stopped"));
    };
    await expect(backup(workshop, parent, { ...options, onProgress, signal: stop.signal })).rejects.toThrow(
      "stopped",
    );
    expect(fs.readdirSync(parent)).toEqual([]);
  });

  test("says what the workshop lacks, and keeps all the rest", async () => {
    const { workshop, sha256 } = await workshopWithEverything();
    fs.rmSync(path.join(workshop.stills, `${sha256}.jpg`));
    fs.appendFileSync(path.join(workshop.recordings, "first.mp4"), "rot");
    const made = await backup(workshop, freshFolder(), options);
    expect(made.findings.map((one) => one.place.field).sort()).toEqual([
      "recordings/first.mp4",
      `stills/${sha256}.jpg`,
    ]);
    expect((await verifyBackup(made.folder)).findings).toEqual([]);
  });

  test("of a damaged database is refused, and nothing is left that looks like one", async () => {
    const { client, workshop } = await workshopWithEverything();
    await client.$disconnect();
    damageTable(workshop.database, "Mark");
    const parent = freshFolder();
    await expect(backup(workshop, parent, options)).rejects.toThrow();
    expect(fs.readdirSync(parent)).toEqual([]);
  });
});

describe("restoring", () => {
  test("refuses a folder that holds anything, and the backup itself", async () => {
    const { workshop } = await workshopWithEverything();
    const made = await backup(workshop, freshFolder(), options);
    const before = allFiles(made.folder);
    const full = freshFolder();
    fs.writeFileSync(path.join(full, "a letter.txt"), "kept");
    expect((await refusal(restore(made.folder, full, options))).found).toContain("a letter.txt");
    expect(fs.readFileSync(path.join(full, "a letter.txt"), "utf8")).toBe("kept");
    await refusal(restore(made.folder, workshop.folder, options));
    await refusal(restore(made.folder, path.join(made.folder, "here"), options));
    await refusal(restore(freshFolder(), path.join(freshFolder(), "new"), options));
    expect(allFiles(made.folder)).toEqual(before);
  });

  const damages: [string, RegExp, (folder: string) => void][] = [
    ["a changed byte", /first\.mp4.*hash/, (folder) => flipByte(path.join(folder, "recordings/first.mp4"))],
    [
      "a shorter file",
      /bytes, not/,
      (folder) => fs.truncateSync(path.join(folder, "recordings/first.mp4"), 10),
    ],
    ["a missing file", /not there/, (folder) => fs.rmSync(path.join(folder, "recordings/first.mp4"))],
    ["a changed database", /workshop\.db/, (folder) => flipByte(path.join(folder, "workshop.db"))],
    ["a path that leads out", /\.\./, (folder) => rename(folder, "recordings/first.mp4", "../../first.mp4")],
    [
      "a manifest cut short",
      /manifest\.json/,
      (folder) => fs.truncateSync(path.join(folder, "manifest.json"), 100),
    ],
    [
      "a link in place of a file",
      /link/,
      (folder) => {
        fs.rmSync(path.join(folder, "recordings/first.mp4"));
        fs.symlinkSync("/etc/hostname", path.join(folder, "recordings/first.mp4"));
      },
    ],
  ];
  test.each(damages)(
    "refuses a backup with %s, says which file, and writes nothing",
    async (_, words, damage) => {
      const { workshop } = await workshopWithEverything();
      const made = await backup(workshop, freshFolder(), options);
      damage(made.folder);
      const above = freshFolder();
      expect((await refusal(restore(made.folder, path.join(above, "new"), options))).found).toMatch(words);
      expect(fs.readdirSync(above)).toEqual([]);
    },
  );

  test("brings back what is whole of a damaged backup when that is asked for, and the audit names the rest", async () => {
    const { workshop } = await workshopWithEverything();
    const made = await backup(workshop, freshFolder(), options);
    flipByte(path.join(made.folder, "recordings/first.mp4"));
    const target = path.join(freshFolder(), "new");
    const restored = await restore(made.folder, target, { ...options, anyway: true });
    expect(restored.leftOut).toEqual(["recordings/first.mp4"]);
    expect(restored.audit.findings).toMatchObject([{ rule: "recording-missing", severity: "wrong" }]);
    flipByte(path.join(made.folder, "workshop.db"));
    await refusal(restore(made.folder, path.join(freshFolder(), "new"), { ...options, anyway: true }));
  });

  test("refuses a backup of a later version and says so", async () => {
    const { workshop } = await workshopWithEverything();
    tamper(
      workshop.database,
      "INSERT INTO _prisma_migrations (id, checksum, migration_name, started_at, finished_at) VALUES ('x', 'x', '99990101000000_later', 1, 1)",
    );
    // The builds cannot be read by this version; the rest is kept, and said to be so.
    const made = await backup(workshop, freshFolder(), options);
    expect(made.leftOut[0]?.why).toContain("later version");
    const above = freshFolder();
    await expect(restore(made.folder, path.join(above, "new"), options)).rejects.toThrow(/later version/);
    expect(fs.readdirSync(above)).toEqual([]);
  });
});

test("a workshop that was moved finds its recordings where it lies now", async () => {
  const { client, workshop } = await workshopWithEverything();
  await client.$disconnect();
  const target = path.join(freshFolder(), "moved");
  fs.cpSync(workshop.folder, target, { recursive: true, preserveTimestamps: true });
  const moved = openWorkshop(target, programRoot);
  const paths = (await moved.client.root.findMany({ where: { own: true } })).map((root) => root.path);
  expect(paths).toEqual([path.join(target, "recordings")]);
  await moved.client.$disconnect();
  expect((await audit(moved.workshop, options)).findings).toEqual([]);
});

function flipByte(file: string): void {
  const bytes = fs.readFileSync(file);
  const middle = Math.floor(bytes.length / 2);
  bytes.writeUInt8((bytes[middle] as number) ^ 1, middle);
  fs.writeFileSync(file, bytes);
}

function rename(folder: string, from: string, to: string): void {
  const file = path.join(folder, "manifest.json");
  fs.writeFileSync(file, fs.readFileSync(file, "utf8").replace(JSON.stringify(from), JSON.stringify(to)));
}

/** Writes over the pages of a table, as a drive with faults does. */
function damageTable(file: string, table: string): void {
  const bytes = fs.readFileSync(file);
  const page = pageOf(file, table);
  bytes.fill(0xff, page.size * (page.number - 1), page.size * (page.number - 1) + 64);
  fs.writeFileSync(file, bytes);
}

function pageOf(file: string, table: string): { number: number; size: number } {
  const database = new Database(file);
  database.pragma("wal_checkpoint(TRUNCATE)");
  const number = database
    .prepare("SELECT rootpage FROM sqlite_master WHERE name = ?")
    .pluck()
    .get(table) as number;
  const size = database.pragma("page_size", { simple: true }) as number;
  database.close();
  return { number, size };
}
