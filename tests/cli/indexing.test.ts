import { createHash } from "node:crypto";
import fs from "node:fs";
import { createServer } from "node:http";
import type { AddressInfo } from "node:net";
import os from "node:os";
import path from "node:path";
import { afterAll, describe, expect, test } from "vitest";
import type { Recording } from "#lib/build/index.ts";
import { doors } from "#lib/cli/doors/index.ts";
import {
  awayOf,
  Indexing,
  indexingOf,
  listInPlace,
  lookAt,
  nameFile,
  openPlace,
  readWhole,
  whereaboutsOf,
} from "#lib/cli/indexing/index.ts";
import {
  apply,
  history,
  indexCounts,
  loadBuild,
  type OpenWorkshop,
  openWorkshop,
  placesOf,
  recordingsSince,
  sameBytes,
} from "#lib/store/index.ts";
import { sampleDocument, sampleMark } from "../sample.ts";
import { commandOf, freshWorkshop, writeDocument } from "../store/fresh.ts";

const data = path.resolve(import.meta.dirname, "../fixtures/video/data");
const base = fs.mkdtempSync(path.join(os.tmpdir(), "listed-"));
afterAll(() => fs.rmSync(base, { recursive: true, force: true }));

const at = { buildId: "build-1", sittingId: "sitting-1" };
const films = { a: "vp9.webm", b: "constant-25.mp4", c: "long-gop.mp4" };

/** A workshop with one empty sitting, and a drive with films on it. */
async function shop(on: Record<string, keyof typeof films | Buffer> = { "a.webm": "a", "b.mp4": "b" }) {
  const opened = freshWorkshop();
  await writeDocument(opened, sampleDocument({ recordings: [] }));
  const drive = fs.mkdtempSync(path.join(base, "drive-"));
  for (const [name, film] of Object.entries(on)) put(drive, name, film);
  return { opened, drive, work: new Indexing(opened) };
}

let minutes = 0;

/** Puts a film on a drive, each with a time of change of its own, as films have. */
function put(drive: string, name: string, film: keyof typeof films | Buffer): void {
  const file = path.join(drive, name);
  fs.mkdirSync(path.dirname(file), { recursive: true });
  fs.writeFileSync(file, typeof film === "string" ? fs.readFileSync(path.join(data, films[film])) : film);
  minutes += 1;
  fs.utimesSync(file, new Date(1e12 + minutes * 60_000), new Date(1e12 + minutes * 60_000));
}

async function finish(work: Indexing): Promise<void> {
  work.wake();
  await work.rest();
}

async function recordings({ client }: OpenWorkshop): Promise<Map<string, Recording>> {
  const document = await loadBuild(client, "build-1");
  const all = document?.recordings.filter((one) => one.gone === null) ?? [];
  return new Map(all.map((one) => [one.name, one]));
}

async function idOf(opened: OpenWorkshop, name: string): Promise<string> {
  const one = (await recordings(opened)).get(name);
  if (!one) throw new Error(`no recording ${name}`);
  return one.id;
}

async function markOn(opened: OpenWorkshop, recordingId: string): Promise<void> {
  const { rev: _, ...set } = sampleMark(
    1,
    "action",
    { words: "Cover off" },
    { id: `on-${recordingId}`, recordingId },
  );
  await apply(opened.client, commandOf([{ table: "mark", id: set.id, rev: 0, set }]));
}

const sha256 = (file: string) => createHash("sha256").update(fs.readFileSync(file)).digest("hex");

/** Where the recording of that id now has its film, from its first byte. */
async function playsFrom(opened: OpenWorkshop, id: string): Promise<string | null> {
  for (const place of await placesOf(opened.client, id)) {
    const file = await openPlace(opened, place);
    await file?.handle.close();
    if (file) return place.path;
  }
  return null;
}

describe("a folder listed in place", () => {
  test("is usable at once, then looked at, then read whole; nothing in it is touched", async () => {
    const { opened, drive, work } = await shop({
      "a.webm": "a",
      "x/b.mp4": "b",
      "empty.mp4": Buffer.alloc(0),
    });
    fs.writeFileSync(path.join(drive, "notes.txt"), "brass rod");
    const state = () =>
      (fs.readdirSync(drive, { recursive: true, withFileTypes: true }) as fs.Dirent[])
        .filter((entry) => entry.isFile())
        .map((entry) => path.join(entry.parentPath, entry.name))
        .map((file) => {
          const { size, mtimeMs, atimeMs, ino, mode, nlink } = fs.statSync(file);
          return { file, size, mtimeMs, atimeMs, ino, mode, nlink };
        });
    const before = state();
    const listed = await listInPlace(opened, drive, at);
    expect(listed).toMatchObject({ listed: 3, known: 0, ignored: 1, found: [], second: 0 });
    const [first] = (await recordings(opened)).values();
    expect(first).toMatchObject({ probe: null, sha256: null });
    expect(await playsFrom(opened, (first as Recording).id)).not.toBeNull();
    expect(await indexCounts(opened.client, "build-1")).toEqual({ of: 3, looked: 0, hashed: 0 });

    await finish(work);
    expect(await indexCounts(opened.client, "build-1")).toEqual({ of: 3, looked: 3, hashed: 3 });
    expect(work.state).toBe("resting");
    for (const [name, recording] of await recordings(opened)) {
      expect(recording.sha256).toBe(sha256(path.join(drive, name)));
    }
    // The table beside the film was made by a full decode.
    const table = JSON.parse(fs.readFileSync(path.join(data, `${films.b}.json`), "utf8"));
    const looked = (await recordings(opened)).get("x/b.mp4")?.probe;
    expect(looked).toMatchObject({ frameCount: table.pts.length, playable: true });
    expect((await recordings(opened)).get("empty.mp4")?.trouble?.found).toContain("0 bytes");
    // Reading for the comparison above went through this process and may have changed the times of access.
    expect(state().map(({ atimeMs: _, ...rest }) => rest)).toEqual(
      before.map(({ atimeMs: _, ...rest }) => rest),
    );
    expect(fs.readdirSync(opened.workshop.recordings)).toEqual([]);
  });

  test("takes the captions that lie beside its films, once", async () => {
    const { opened, drive } = await shop({ "a.webm": "a", "x/b.mp4": "b", "x/c.mp4": "c", "d.mp4": "b" });
    const vtt = "WEBVTT\n\n00:00.000 --> 00:01.000\nCover off.\n";
    const write = (name: string, text: string) => fs.writeFileSync(path.join(drive, name), text);
    write("A.en-GB.vtt", vtt);
    write("x/b.srt", "1\n00:00:00,000 --> 00:00:01,000\nSeal out.\n");
    write("x/a.vtt", "WEBVTT\n\n00:00.000 --> 00:01.000\nNobody's.\n");
    write("d.vtt", "no times at all");
    fs.symlinkSync(path.join(drive, "A.en-GB.vtt"), path.join(drive, "x", "c.vtt"));
    const tracks = async () =>
      (await opened.client.captionTrack.findMany({ include: { recording: true } }))
        .map(({ name, recording, gone, text }) => ({ name, film: recording.name, gone: gone !== null, text }))
        .sort((a, b) => (a.film < b.film ? -1 : 1));

    expect(await listInPlace(opened, drive, at)).toMatchObject({ captions: 2, badCaptions: ["d.vtt"] });
    expect(await tracks()).toMatchObject([
      { name: "A.en-GB.vtt", film: "a.webm", text: vtt },
      { name: "b.srt", film: "x/b.mp4" },
    ]);
    // What was struck out stays so, and a file made since is taken when the folder is listed again.
    await opened.client.captionTrack.updateMany({ where: { name: "b.srt" }, data: { gone: "by hand" } });
    write("d.vtt", vtt);
    expect(await listInPlace(opened, drive, at)).toMatchObject({ listed: 0, captions: 1, badCaptions: [] });
    expect(await tracks()).toMatchObject([{ film: "a.webm" }, { film: "d.mp4" }, { gone: true }]);
  });

  test("adds nothing when it is listed again, in one build or another", async () => {
    const { opened, drive, work } = await shop();
    await listInPlace(opened, drive, at);
    await finish(work);
    expect(await listInPlace(opened, drive, at)).toMatchObject({
      listed: 0,
      known: 2,
      elsewhere: 0,
      rows: [],
    });
    expect(await listInPlace(opened, drive, { ...at, buildId: "build-2" })).toMatchObject({
      listed: 0,
      elsewhere: 2,
    });
  });

  test("goes on after a restart with what is not yet looked at or read whole", async () => {
    const { opened, drive, work } = await shop({ "a.webm": "a", "b.mp4": "b", "c.mp4": "c" });
    await listInPlace(opened, drive, at);
    await lookAt(opened, await idOf(opened, "a.webm"));
    await readWhole(opened, await idOf(opened, "b.mp4"));
    expect(await indexCounts(opened.client, "build-1")).toEqual({ of: 3, looked: 1, hashed: 1 });
    await work.stop();
    const again = openWorkshop(opened.workshop.folder, process.cwd());
    await finish(new Indexing(again));
    expect(await indexCounts(again.client, "build-1")).toEqual({ of: 3, looked: 3, hashed: 3 });
    await again.client.$disconnect();
  });

  test("stands still while it is stopped, and goes on", async () => {
    const { opened, drive, work } = await shop();
    await listInPlace(opened, drive, at);
    await work.stop();
    await finish(work);
    expect(work.state).toBe("stopped");
    expect(await indexCounts(opened.client, "build-1")).toEqual({ of: 2, looked: 0, hashed: 0 });
    work.goOn();
    await work.rest();
    expect(await indexCounts(opened.client, "build-1")).toEqual({ of: 2, looked: 2, hashed: 2 });
  });

  test("a film given up half-way is read from its beginning afterwards", async () => {
    const { opened, drive } = await shop({
      "b.mp4": Buffer.concat([fs.readFileSync(path.join(data, films.b)), Buffer.alloc(3_000_000)]),
    });
    await listInPlace(opened, drive, at);
    const id = await idOf(opened, "b.mp4");
    const stop = new AbortController();
    const onBytes = () => stop.abort(new Error("stopped"));
    await expect(readWhole(opened, id, { signal: stop.signal, onBytes })).rejects.toThrow("stopped");
    expect((await recordings(opened)).get("b.mp4")?.sha256).toBeNull();
    await readWhole(opened, id);
    expect((await recordings(opened)).get("b.mp4")?.sha256).toBe(sha256(path.join(drive, "b.mp4")));
  });

  test("what it finds out is told since a change, and stands beside what the restorer writes meanwhile", async () => {
    const { opened, drive, work } = await shop();
    await listInPlace(opened, drive, at);
    const { seq, recordings: all } = await recordingsSince(opened.client, "build-1", null);
    expect(all).toHaveLength(2);
    expect((await recordingsSince(opened.client, "build-1", seq)).recordings).toEqual([]);
    const id = await idOf(opened, "b.mp4");
    await lookAt(opened, id);
    const told = await recordingsSince(opened.client, "build-1", seq);
    expect(told.recordings.map((one) => one.id)).toEqual([id]);
    // Who wrote on a row as it was shown before the note is not told that it is stale: the columns are others.
    const shown = told.recordings[0] as Recording;
    const set = { publishedAt: "https://video.example.org/film?t={seconds}" };
    await readWhole(opened, id);
    await apply(opened.client, commandOf([{ table: "recording", id, rev: shown.rev, set }]));
    const row = (await recordings(opened)).get("b.mp4");
    expect(row).toMatchObject({ ...set, probe: shown.probe, sha256: sha256(path.join(drive, "b.mp4")) });
    await finish(work);
  });
});

describe("names that were meant to harm", () => {
  const names = [
    "quote\" and 'quote'.webm",
    "line\nbreak.webm",
    "\u202egnp.webm",
    "a..b.webm",
    "-rf.webm",
    "<b>bold.webm",
    `${"ü".repeat(125)}.webm`,
    "CON.webm",
  ];

  test("are listed as they are, and their films play", async () => {
    const { opened, drive, work } = await shop(Object.fromEntries(names.map((name) => [name, "a"])));
    expect(await listInPlace(opened, drive, at)).toMatchObject({ listed: names.length, unreadable: [] });
    const all = await recordings(opened);
    expect([...all.keys()].sort()).toEqual([...names].sort());
    for (const [name, one] of all) expect(await playsFrom(opened, one.id)).toBe(name);
    await work.stop();
  });
});

describe("the door to the work in the background", () => {
  test("says how far it is, stops it, lets it go on, and has a film looked at again", async () => {
    const { opened, drive } = await shop({ "b.mp4": "b", "notes.mp4": Buffer.from("no film, only words") });
    await listInPlace(opened, drive, at);
    const server = createServer((req, res) => void doors(opened, req, res, process.cwd()));
    await new Promise<void>((resolve) => server.listen(0, "127.0.0.1", resolve));
    const address = `http://127.0.0.1:${(server.address() as AddressInfo).port}/media/index`;
    const wish = async (body: unknown) => {
      const response = await fetch(address, { method: "POST", body: JSON.stringify(body) });
      return { status: response.status, ...(await response.json()) };
    };
    const work = indexingOf(opened);
    const build = "build-1";
    expect(await wish({ build, do: "stop" })).toMatchObject({
      status: 200,
      state: "stopped",
      of: 2,
      looked: 0,
    });
    await wish({ build, do: "go on" });
    await work.rest();
    const told = await (await fetch(`${address}?build=${build}`)).json();
    expect(told).toMatchObject({
      state: "resting",
      doing: null,
      of: 2,
      looked: 2,
      hashed: 2,
      away: [],
      same: [],
    });
    expect(told.recordings).toHaveLength(2);
    const later = await (await fetch(`${address}?build=${build}&since=${told.seq}`)).json();
    expect(later.recordings).toEqual([]);
    // The file is mended under its own name: looking again finds the film.
    put(drive, "notes.mp4", "c");
    await listInPlace(opened, drive, at);
    const notes = await idOf(opened, "notes.mp4");
    await wish({ build, do: "look again", recording: notes });
    await work.rest();
    expect((await recordings(opened)).get("notes.mp4")).toMatchObject({ id: notes, trouble: null });
    for (const wrong of [
      {},
      { build, do: "explode" },
      { build, do: "look again", recording: "nowhere" },
      7,
      null,
    ]) {
      const { status, found, todo } = await wish(wrong);
      expect([status, typeof found, todo === ""]).toEqual([400, "string", false]);
    }
    server.closeAllConnections();
    server.close();
  });
});

describe("films that were renamed or moved", () => {
  test("keep their recording and its marks when their folder is listed again", async () => {
    const { opened, drive, work } = await shop({ "a.webm": "a", "b.mp4": "b", "c.mp4": "c" });
    await listInPlace(opened, drive, at);
    await finish(work);
    const ids = {
      a: await idOf(opened, "a.webm"),
      b: await idOf(opened, "b.mp4"),
      c: await idOf(opened, "c.mp4"),
    };
    for (const id of Object.values(ids)) await markOn(opened, id);
    // One goes to a folder of its own, two exchange names.
    fs.mkdirSync(path.join(drive, "first evening"));
    fs.renameSync(path.join(drive, "a.webm"), path.join(drive, "first evening/opening.webm"));
    fs.renameSync(path.join(drive, "b.mp4"), path.join(drive, "t.mp4"));
    fs.renameSync(path.join(drive, "c.mp4"), path.join(drive, "b.mp4"));
    fs.renameSync(path.join(drive, "t.mp4"), path.join(drive, "c.mp4"));
    // Before anybody looks, no recording plays another's film.
    expect(await playsFrom(opened, ids.b)).toBeNull();
    const listed = await listInPlace(opened, drive, at);
    expect(listed).toMatchObject({ listed: 0, known: 3 });
    expect(listed.found).toHaveLength(3);
    expect(await playsFrom(opened, ids.a)).toBe("first evening/opening.webm");
    expect(await playsFrom(opened, ids.b)).toBe("c.mp4");
    expect(await playsFrom(opened, ids.c)).toBe("b.mp4");
    expect(await idOf(opened, "c.mp4")).toBe(ids.b);
    const document = await loadBuild(opened.client, "build-1");
    expect(document?.marks.map((mark) => mark.recordingId).sort()).toEqual(Object.values(ids).sort());
    expect(await awayOf(opened, "build-1")).toEqual([]);
  });

  test("are said to be away with their drive, and found again under its other name or when it is back", async () => {
    const { opened, drive, work } = await shop();
    await listInPlace(opened, drive, at);
    await finish(work);
    const id = await idOf(opened, "b.mp4");
    fs.renameSync(drive, `${drive}-elsewhere`);
    const away = await awayOf(opened, "build-1");
    expect(away.map((one) => one.kind)).toEqual(["root-missing", "root-missing"]);
    expect(away[0]?.found).toContain(drive);
    expect((await whereaboutsOf(opened, id)).away).toMatchObject({ kind: "root-missing" });
    await expect(listInPlace(opened, drive, at)).rejects.toMatchObject({ kind: "root-missing" });
    expect(await listInPlace(opened, `${drive}-elsewhere`, at)).toMatchObject({ listed: 0, known: 2 });
    expect(await awayOf(opened, "build-1")).toEqual([]);
    expect(await playsFrom(opened, id)).toBe("b.mp4");
    // And back again, as when the drive is plugged into the first computer.
    fs.renameSync(`${drive}-elsewhere`, drive);
    expect(await listInPlace(opened, drive, at)).toMatchObject({ listed: 0, known: 2 });
    expect((await recordings(opened)).size).toBe(2);
  });

  test("a drive that went before its films were looked at is no fault of theirs; they are looked at when it is back", async () => {
    const { opened, drive, work } = await shop();
    await listInPlace(opened, drive, at);
    fs.renameSync(drive, `${drive}-away`);
    await finish(work);
    for (const recording of (await recordings(opened)).values())
      expect(recording).toMatchObject({ probe: null, trouble: null, sha256: null });
    fs.renameSync(`${drive}-away`, drive);
    await finish(work);
    expect(await indexCounts(opened.client, "build-1")).toEqual({ of: 2, looked: 2, hashed: 2 });
  });

  test("another film that takes a name is a recording of its own, and the first is known when it returns", async () => {
    const { opened, drive, work } = await shop({ "b.mp4": "b" });
    await listInPlace(opened, drive, at);
    await finish(work);
    const id = await idOf(opened, "b.mp4");
    fs.renameSync(path.join(drive, "b.mp4"), path.join(base, "kept.mp4"));
    put(drive, "b.mp4", "c");
    expect(await awayOf(opened, "build-1")).toMatchObject([{ recording: id, kind: "other-file" }]);
    expect(await playsFrom(opened, id)).toBeNull();
    expect(await listInPlace(opened, drive, at)).toMatchObject({ listed: 1, known: 0 });
    await finish(work);
    fs.renameSync(path.join(base, "kept.mp4"), path.join(drive, "b again.mp4"));
    expect(await listInPlace(opened, drive, at)).toMatchObject({
      found: [{ from: "b.mp4", to: "b again.mp4" }],
    });
    expect(await playsFrom(opened, id)).toBe("b again.mp4");
    const document = await loadBuild(opened.client, "build-1");
    expect(document?.recordings.map((one) => one.name).sort()).toEqual(["b again.mp4", "b.mp4"]);
  });

  test("another film of the same length in its place is not played for it", async () => {
    const { opened, drive, work } = await shop({ "b.mp4": "b" });
    await listInPlace(opened, drive, at);
    await finish(work);
    const id = await idOf(opened, "b.mp4");
    const other = Buffer.from(fs.readFileSync(path.join(drive, "b.mp4")));
    other.fill(1, 100, 200);
    put(drive, "b.mp4", other);
    expect(await playsFrom(opened, id)).toBeNull();
  });

  test("empty films are never taken for one another", async () => {
    const { opened, drive, work } = await shop({ "one.mp4": Buffer.alloc(0), "two.mp4": Buffer.alloc(0) });
    await listInPlace(opened, drive, at);
    await finish(work);
    expect(await sameBytes(opened.client, "build-1")).toEqual([]);
    fs.renameSync(path.join(drive, "one.mp4"), path.join(drive, "three.mp4"));
    expect(await listInPlace(opened, drive, at)).toMatchObject({ listed: 1, known: 1, found: [] });
    expect(await awayOf(opened, "build-1")).toHaveLength(1);
  });

  test("a film listed while it was being copied is the same recording when it is whole", async () => {
    const whole = fs.readFileSync(path.join(data, films.b));
    const { opened, drive, work } = await shop({ "b.mp4": whole.subarray(0, whole.length >> 1) });
    await listInPlace(opened, drive, at);
    await finish(work);
    const before = (await recordings(opened)).get("b.mp4");
    expect(before?.trouble).not.toBeNull();
    put(drive, "b.mp4", whole);
    expect(await listInPlace(opened, drive, at)).toMatchObject({ listed: 0, known: 1 });
    await finish(work);
    const after = (await recordings(opened)).get("b.mp4");
    expect(after).toMatchObject({ id: before?.id, trouble: null, sha256: sha256(path.join(drive, "b.mp4")) });
    expect(after?.probe).not.toBeNull();
  });
});

describe("a second copy", () => {
  const copy = (drive: string, from: string, to: string) => {
    fs.copyFileSync(path.join(drive, from), path.join(drive, to));
    const { atime, mtime } = fs.statSync(path.join(drive, from));
    fs.utimesSync(path.join(drive, to), atime, mtime);
  };

  test("becomes a second place once both have been read whole, and the history says so", async () => {
    const { opened, drive, work } = await shop({ "b.mp4": "b" });
    await listInPlace(opened, drive, at);
    await finish(work);
    const id = await idOf(opened, "b.mp4");
    await markOn(opened, id);
    copy(drive, "b.mp4", "copy of b.mp4");
    expect(await listInPlace(opened, drive, at)).toMatchObject({ listed: 1, known: 1, found: [] });
    await finish(work);
    expect([...(await recordings(opened)).keys()]).toEqual(["b.mp4"]);
    expect((await placesOf(opened.client, id)).map((place) => place.path).sort()).toEqual([
      "b.mp4",
      "copy of b.mp4",
    ]);
    const lines = await history(opened.client, "build-1");
    expect(lines.some((line) => line.label.includes("byte for byte"))).toBe(true);
    fs.rmSync(path.join(drive, "b.mp4"));
    expect(await playsFrom(opened, id)).toBe("copy of b.mp4");
    expect(await awayOf(opened, "build-1")).toEqual([]);
  });

  test("on which something hangs stays, and is said to be the same", async () => {
    const { opened, drive, work } = await shop({ "b.mp4": "b" });
    copy(drive, "b.mp4", "copy.mp4");
    await listInPlace(opened, drive, at);
    for (const name of ["b.mp4", "copy.mp4"]) await markOn(opened, await idOf(opened, name));
    await finish(work);
    expect((await recordings(opened)).size).toBe(2);
    expect(await sameBytes(opened.client, "build-1")).toEqual([
      [await idOf(opened, "b.mp4"), await idOf(opened, "copy.mp4")].sort(),
    ]);
  });

  test("the very file by another way is a second place at once", async () => {
    const { opened, drive, work } = await shop({ "b.mp4": "b" });
    await listInPlace(opened, drive, at);
    await finish(work);
    fs.linkSync(path.join(drive, "b.mp4"), path.join(drive, "linked.mp4"));
    expect(await listInPlace(opened, drive, at)).toMatchObject({ listed: 0, second: 1 });
    expect(await placesOf(opened.client, await idOf(opened, "b.mp4"))).toHaveLength(2);
  });

  test("of a film that is away, with another time of change, brings it back once it has been read", async () => {
    const { opened, drive, work } = await shop({ "b.mp4": "b" });
    await listInPlace(opened, drive, at);
    await finish(work);
    const id = await idOf(opened, "b.mp4");
    await markOn(opened, id);
    fs.rmSync(path.join(drive, "b.mp4"));
    put(drive, "from the backup.mp4", "b");
    expect(await listInPlace(opened, drive, at)).toMatchObject({ listed: 1, found: [] });
    await finish(work);
    expect([...(await recordings(opened)).values()].map((one) => one.id)).toEqual([id]);
    expect(await playsFrom(opened, id)).toBe("from the backup.mp4");
  });
});

describe("a file named by hand", () => {
  test("is taken when it is the film, whatever it is called now", async () => {
    const { opened, drive, work } = await shop({ "b.mp4": "b" });
    await listInPlace(opened, drive, at);
    await finish(work);
    const id = await idOf(opened, "b.mp4");
    const now = path.join(base, `found ${id}.mp4`);
    fs.renameSync(path.join(drive, "b.mp4"), now);
    await nameFile(opened, id, now);
    expect(await playsFrom(opened, id)).toBe(path.basename(now));
    expect((await whereaboutsOf(opened, id)).away).toBeNull();
  });

  test("is refused with words when it is another, and nothing is changed", async () => {
    const { opened, drive, work } = await shop({ "b.mp4": "b" });
    await listInPlace(opened, drive, at);
    await finish(work);
    const id = await idOf(opened, "b.mp4");
    const before = await placesOf(opened.client, id);
    const longer = path.join(base, "longer.mp4");
    fs.copyFileSync(path.join(data, films.c), longer);
    const alike = path.join(base, "alike.mp4");
    const bytes = Buffer.from(fs.readFileSync(path.join(drive, "b.mp4")));
    bytes.fill(1, 100, 200);
    fs.writeFileSync(alike, bytes);
    await expect(nameFile(opened, id, longer)).rejects.toThrow(/The film of this recording has/);
    await expect(nameFile(opened, id, alike)).rejects.toThrow(/begins or ends otherwise/);
    await expect(nameFile(opened, id, "b.mp4")).rejects.toThrow(/does not say where on this computer/);
    await expect(nameFile(opened, id, path.join(base, "nowhere.mp4"))).rejects.toMatchObject({
      kind: "file-missing",
    });
    await expect(nameFile(opened, id, drive)).rejects.toMatchObject({ kind: "not-a-file" });
    expect(await placesOf(opened.client, id)).toEqual(before);
  });

  test("is known by its running time and frames when the recording came without its film", async () => {
    const { opened, work } = await shop({});
    const probe = {
      duration: 4,
      frameCount: 100,
      width: 1,
      height: 1,
      rotation: 0,
      videoCodec: "avc",
      audioCodec: null,
      playable: true,
    };
    const row = { ...sampleDocument().recordings[0], probe };
    await apply(opened.client, commandOf([{ table: "recording", id: "recording-1", rev: 0, set: row }]));
    const file = path.join(base, "came later.mp4");
    fs.copyFileSync(path.join(data, films.b), file);
    await expect(nameFile(opened, "recording-1", file)).rejects.toThrow(
      /This recording runs for 0:04 in 100 frames/,
    );
    await finish(work);
  });
});
