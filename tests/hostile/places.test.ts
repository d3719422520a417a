import { execFileSync } from "node:child_process";
import { createHash } from "node:crypto";
import fs from "node:fs";
import os from "node:os";
import path from "node:path";
import Database from "better-sqlite3";
import { afterAll, afterEach, beforeAll, describe, expect, test } from "vitest";
import { newRecording } from "#lib/build/index.ts";
import { bringBuild, sendBuild } from "#lib/cli/bring-build.ts";
import { keepStill, stillPath } from "#lib/cli/doors/stills.ts";
import { lookAt } from "#lib/cli/indexing/index.ts";
import { releaseBuild } from "#lib/cli/release.ts";
import { audit } from "#lib/store/audit/index.ts";
import { backup, restore } from "#lib/store/backup/index.ts";
import {
  apply,
  importBuild,
  isOfTheDisk,
  listRecordings,
  loadBuild,
  type OpenWorkshop,
  openWorkshop,
  rootFor,
  wordsOf,
} from "#lib/store/index.ts";
import { sampleDocument } from "../sample.ts";
import { commandOf, freshWorkshop } from "../store/fresh.ts";

/*
 * Files and folders that are not what they were: a workshop without its database, one that was exchanged while it is
 * open, a backup that somebody has changed together with its hashes, and two who release at the same moment.
 */
const programRoot = process.cwd();
const demo = path.resolve("content-demo/ostrey-pump");
const pumps = path.resolve("content-demo/halvern-pumps/first");
let scratch: string;

beforeAll(() => {
  scratch = fs.mkdtempSync(path.join(os.tmpdir(), "places-"));
});
afterAll(() => fs.rmSync(scratch, { recursive: true, force: true }));

const machine = { name: "Pump", maker: "", model: "", years: "", serial: "", variant: "", notes: "" };
const write = ({ client }: OpenWorkshop, id: string) =>
  apply(client, commandOf([{ table: "machine", id, rev: 0, set: machine }], "test", null));

describe("a workshop", () => {
  test("whose database is gone is not opened as an empty one", async () => {
    const opened = freshWorkshop();
    await bringBuild(opened, pumps, null);
    const { folder, database, stills } = opened.workshop;
    fs.writeFileSync(path.join(stills, `${"a".repeat(64)}.jpg`), "a picture");
    await opened.client.$disconnect();
    const kept = path.join(scratch, "kept.db");
    fs.renameSync(database, kept);
    expect(() => openWorkshop(folder, programRoot)).toThrow(
      /workshop\.db, is missing or empty.*Put workshop\.db back/s,
    );
    fs.writeFileSync(database, "");
    expect(() => openWorkshop(folder, programRoot)).toThrow(/missing or empty/);
    fs.copyFileSync(kept, database);
    const again = openWorkshop(folder, programRoot);
    expect(await again.client.build.count()).toBe(1);
    await again.client.$disconnect();
  });

  test("whose database is exchanged while it is open acknowledges nothing more", async () => {
    const opened = freshWorkshop();
    const { database } = opened.workshop;
    await write(opened, "before");
    fs.copyFileSync(database, `${database}.copy`);
    fs.renameSync(database, `${database}.first`);
    fs.renameSync(`${database}.copy`, database);
    const failure = await write(opened, "lost").catch((error: unknown) => error);
    expect(wordsOf(failure)?.found).toMatch(/moved, deleted or replaced/);
    expect(isOfTheDisk(failure)).toBe(true);
    fs.renameSync(`${database}.first`, database);
    await write(opened, "after");
    expect((await opened.client.machine.findMany()).map((row) => row.id).sort()).toEqual(["after", "before"]);
  });

  test.each([
    ["a file", (place: string) => fs.writeFileSync(place, "x"), /ENOTDIR|EEXIST/],
    [
      "a link that leads nowhere",
      (place: string) => fs.symlinkSync("/nowhere/at/all", place),
      /ENOENT|EEXIST/,
    ],
    [
      "a folder called workshop.db",
      (place: string) => fs.mkdirSync(path.join(place, "workshop.db"), { recursive: true }),
      /SQLITE_CANTOPEN/,
    ],
  ])("where %s lies is told of in words", (name, make, code) => {
    const place = path.join(scratch, name);
    make(place);
    expect(() => openWorkshop(place, programRoot)).toThrow(/The workshop in .* cannot be opened/);
    expect(() => openWorkshop(place, programRoot)).toThrow(code);
  });

  test.each(["a?b", "a#b", "a%20b", "it's “here”", "line\nbreak", " é\u0301😀 ", "-rf"])(
    "may lie in a folder called %j",
    async (name) => {
      const opened = openWorkshop(path.join(scratch, "names", name), programRoot);
      await write(opened, "m");
      await opened.client.$disconnect();
      expect(fs.statSync(path.join(scratch, "names", name, "workshop.db")).size).toBeGreaterThan(0);
    },
  );

  test("with a damaged line in its change log is audited to the end, and told which", async () => {
    const opened = freshWorkshop();
    await write(opened, "m");
    const database = new Database(opened.workshop.database);
    database.exec("UPDATE Change SET entriesJson = substr(entriesJson, 1, 40)");
    database.close();
    const { findings } = await audit(opened.workshop, { programRoot });
    expect(findings.map((one) => [one.rule, one.evidence])).toContainEqual([
      "log-differs",
      expect.stringContaining("change 1 (its rows cannot be read)"),
    ]);
  });

  test("has a damaged still mended by bringing the same picture once more", async () => {
    const { workshop } = freshWorkshop();
    const picture = Buffer.from("a picture");
    const sha256 = createHash("sha256").update(picture).digest("hex");
    await keepStill(workshop, sha256, picture);
    fs.writeFileSync(stillPath(workshop, sha256), "");
    await keepStill(workshop, sha256, picture);
    expect(fs.readFileSync(stillPath(workshop, sha256))).toEqual(picture);
    expect(fs.readdirSync(workshop.stills)).toHaveLength(1);
  });
});

test("a film whose index says that it lasts three years is told of as damaged, and the others are looked at", async () => {
  const opened = freshWorkshop();
  const { client, workshop } = opened;
  await importBuild(client, sampleDocument({ recordings: [] }), null);
  const film = fs.readFileSync(path.resolve("tests/fixtures/video/data/long-gop.mp4"));
  const endless = Buffer.from(film);
  // ISO/IEC 14496-12, 8.6.1.2: 'stts' holds version, count of entries, then count of samples and their length.
  endless.writeUInt32BE(0xffffffff, film.indexOf("stts") + 16);
  const root = await rootFor(client, workshop.recordings, true);
  for (const [id, bytes] of Object.entries({ endless, whole: film })) {
    const file = path.join(workshop.recordings, `${id}.mp4`);
    fs.writeFileSync(file, bytes);
    const { size, mtimeMs: modifiedAt } = fs.statSync(file);
    const recording = newRecording({ id, buildId: "build-1", sittingId: "sitting-1", name: id });
    await listRecordings(client, root, [{ recording, place: { path: `${id}.mp4`, size, modifiedAt } }], id);
    await lookAt(opened, id);
  }
  const rows = (await loadBuild(client, "build-1"))?.recordings ?? [];
  expect(rows.find((row) => row.id === "endless")?.trouble?.found).toMatch(/what no film can be: duration/);
  expect(rows.find((row) => row.id === "whole")?.probe?.frameCount).toBe(300);
});

describe("a backup that was changed together with its hashes", () => {
  let made: string;
  beforeAll(async () => {
    const opened = openWorkshop(path.join(scratch, "to-keep"), programRoot);
    await bringBuild(opened, pumps, null);
    await opened.client.$disconnect();
    made = (await backup(opened.workshop, path.join(scratch, "backups"), { programRoot })).folder;
  });

  type Listed = { files: { path: string; bytes: number; sha256: string }[] };

  /** A copy of the backup in which something was changed, and its manifest agrees with it. */
  function changed(name: string, change: (folder: string, manifest: Listed) => void): string {
    const folder = path.join(scratch, name);
    fs.cpSync(made, folder, { recursive: true });
    const file = path.join(folder, "manifest.json");
    const manifest = JSON.parse(fs.readFileSync(file, "utf8")) as Listed;
    change(folder, manifest);
    for (const one of manifest.files.filter((listed) => listed.path === "workshop.db")) {
      const bytes = fs.readFileSync(path.join(folder, one.path));
      Object.assign(one, { bytes: bytes.length, sha256: createHash("sha256").update(bytes).digest("hex") });
    }
    fs.writeFileSync(file, JSON.stringify(manifest));
    return folder;
  }

  function inDatabase(sql: string) {
    return (folder: string) => {
      const database = new Database(path.join(folder, "workshop.db"));
      database.exec(sql);
      database.close();
    };
  }

  test.each([
    [
      "a trigger that deletes marks",
      inDatabase("CREATE TRIGGER t AFTER INSERT ON Mark BEGIN DELETE FROM Mark; END"),
      /a trigger that this program did not make, t/,
    ],
    [
      "a database of nothing",
      (folder: string) => fs.writeFileSync(path.join(folder, "workshop.db"), ""),
      /no workshop's database/,
    ],
    [
      "a file listed twice",
      (_: string, manifest: Listed) => void manifest.files.push(manifest.files[0] as Listed["files"][0]),
      /a file stands in it twice/,
    ],
  ] as [string, (folder: string, manifest: Listed) => void, RegExp][])(
    "with %s is not restored",
    async (name, change, words) => {
      const target = path.join(scratch, `${name} restored`);
      await expect(restore(changed(name, change), target, { programRoot })).rejects.toThrow(words);
      expect(fs.readdirSync(scratch).filter((left) => left.startsWith(path.basename(target)))).toEqual([]);
    },
  );

  test("is not restored into itself by way of a link", async () => {
    const link = path.join(scratch, "link");
    fs.symlinkSync(made, link);
    const before = fs.readdirSync(made);
    await expect(restore(made, path.join(link, "in"), { programRoot })).rejects.toThrow(
      /lies in the backup itself/,
    );
    expect(fs.readdirSync(made)).toEqual(before);
  });
});

describe("releases", () => {
  const asked = { changed: "", again: "", mended: [], date: "2026-11-28" };
  const build = "demo-build-water-pump";

  test("asked for twice at once bear two letters; the same one asked for twice is made once; none is written over", async () => {
    const opened = freshWorkshop();
    const { client, workshop } = opened;
    await bringBuild(opened, demo, null);
    const release = (id: string, of = build) => releaseBuild(opened, { ...asked, id, build: of });
    await Promise.all([release("release-one"), release("release-one"), release("release-two")]);
    const rows = await client.release.findMany({ orderBy: { revision: "asc" } });
    expect(rows.map((row) => row.revision)).toEqual(["A", "B"]);
    const copy = await bringBuild(opened, demo, "keep both");
    if (copy.kind !== "imported") throw new Error("it was not brought in");
    await expect(release("release-one", copy.document.build.id)).rejects.toThrow(/Another build/);
    expect((await audit(workshop, { programRoot })).findings.map((one) => one.rule)).toEqual([]);
  }, 120_000);

  test("go on in a workshop that a build was brought to without the files of its first", async () => {
    const first = freshWorkshop();
    await bringBuild(first, demo, null);
    await releaseBuild(first, { ...asked, id: "release-first", build });
    const folder = path.join(scratch, "carried");
    await sendBuild(first, build, folder, false);
    const second = freshWorkshop();
    await bringBuild(second, folder, null);
    await releaseBuild(second, { ...asked, id: "release-second", build });
    const rows = await second.client.release.findMany({ orderBy: { revision: "asc" } });
    expect(rows.map((row) => row.revision)).toEqual(["A", "B"]);
  }, 120_000);
});

describe.runIf(canMount())("a drive that fills up", () => {
  const drive = fs.mkdtempSync(path.join(os.tmpdir(), "drive-"));
  beforeAll(() => {
    execFileSync("mount", ["-t", "tmpfs", "-o", "size=40m", "tmpfs", drive]);
  });
  afterEach(() => fs.rmSync(path.join(drive, "filler"), { force: true }));
  afterAll(() => {
    execFileSync("umount", ["-l", drive]);
    fs.rmdirSync(drive);
  });

  test("in the middle of a release leaves nothing of it; with room, it is made", async () => {
    const opened = openWorkshop(path.join(drive, "workshop"), programRoot);
    await bringBuild(opened, demo, null);
    const { bavail, bsize } = fs.statfsSync(drive);
    fs.writeFileSync(path.join(drive, "filler"), Buffer.alloc(bavail * bsize - 700_000));
    const asked = {
      id: "release-one",
      build: "demo-build-water-pump",
      changed: "",
      again: "",
      mended: [],
      date: "2026-11-28",
    };
    const failure = await releaseBuild(opened, asked).catch((error: unknown) => error);
    expect(wordsOf(failure)?.found).toMatch(/The drive is full/);
    expect(fs.readdirSync(opened.workshop.releases)).toEqual([]);
    expect(await opened.client.release.count()).toBe(0);
    fs.rmSync(path.join(drive, "filler"));
    await releaseBuild(opened, asked);
    expect(await opened.client.release.count()).toBe(1);
    await opened.client.$disconnect();
  }, 120_000);
});

/** A small drive of its own takes the rights of an administrator. */
function canMount(): boolean {
  const place = fs.mkdtempSync(path.join(os.tmpdir(), "drive-"));
  try {
    execFileSync("mount", ["-t", "tmpfs", "none", place], { stdio: "ignore" });
    execFileSync("umount", [place], { stdio: "ignore" });
    return true;
  } catch {
    return false;
  } finally {
    fs.rmdirSync(place);
  }
}
