import { execFileSync } from "node:child_process";
import { chmodSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { delimiter, join } from "node:path";
import sharp from "sharp";
import { afterAll, describe, expect, test } from "vitest";
import {
  type Ffmpeg,
  type Film,
  findFfmpeg,
  MediaError,
  playableCopy,
  probe,
  stillWithFfmpeg,
} from "#lib/media/index.ts";
import {
  filmPath,
  filmTruth,
  playableFilms,
  trueFrames,
  unplayableFilms,
} from "#tests/fixtures/video/films.ts";
import { readFrameNumber } from "#tests/fixtures/video/pattern.ts";

const folder = mkdtempSync(join(tmpdir(), "ffmpeg-"));
afterAll(() => rmSync(folder, { recursive: true }));

const ffmpeg = (await findFfmpeg().catch(() => null)) as Ffmpeg;
if (!ffmpeg) console.log("not tried: stills and copies by ffmpeg, since there is none on this computer");

async function frameIn(png: Buffer): Promise<{ number: number | null; width: number; height: number }> {
  const { data, info } = await sharp(png).ensureAlpha().raw().toBuffer({ resolveWithObject: true });
  return { number: readFrameNumber(data, info.width, info.height), width: info.width, height: info.height };
}

async function filmAt(path: string): Promise<Film> {
  const film = await probe(path);
  if (!film.ok) throw new Error(film.found);
  return film;
}

/** First and last frame, a key frame and the one before it, and one between, each with its middle. */
function chosen(name: string): { index: number; moment: number }[] {
  const { keyFrames } = filmTruth(name);
  const { starts, end } = trueFrames(filmTruth(name));
  const wanted = [
    0,
    1,
    starts.length - 1,
    97,
    ...keyFrames.slice(-2).flatMap((key) => [key - 1, key, key + 1]),
  ];
  const there = [...new Set(wanted)].filter((index) => index >= 0 && index < starts.length);
  return there.map((index) => {
    const start = starts[index] as number;
    return { index, moment: (start + (starts[index + 1] ?? Math.max(end, start + 0.01))) / 2 };
  });
}

describe.skipIf(!ffmpeg)("stills", () => {
  test.each([...playableFilms, ...unplayableFilms])(
    "%s: each shows the frame that was meant, upright",
    async (name) => {
      const truth = filmTruth(name);
      const { frames } = await filmAt(filmPath(name));
      for (const { index, moment } of chosen(name)) {
        const still = await stillWithFfmpeg({ ffmpeg, path: filmPath(name), frames, moment });
        expect(still.index).toBe(index);
        const { width, height } = truth;
        expect(await frameIn(still.png)).toEqual({ number: truth.numbers[index], width, height });
      }
    },
  );

  test("a table of another recording is noticed", async () => {
    const { frames } = await filmAt(filmPath("constant-25.mp4"));
    const other = filmPath("constant-2997.mp4");
    const attempt = stillWithFfmpeg({ ffmpeg, path: other, frames, moment: 5.02 });
    await expect(attempt).rejects.toMatchObject({ kind: "no-frame" });
  });
});

describe.skipIf(!ffmpeg)("a copy that plays", () => {
  test.each([
    "variable.mp4",
    "late-start.mp4",
    "fragmented.mp4",
    "rotated.mov",
    "h264.mkv",
    "hevc.mp4",
    "camcorder.m2ts",
  ])(
    "%s: no frame lost, doubled or moved by a millisecond, and the original's moments show the same frames",
    async (name) => {
      const truth = filmTruth(name);
      const from = await filmAt(filmPath(name));
      const to = join(folder, `copy of ${name}.mp4`);
      const progress: number[] = [];
      await playableCopy({
        ffmpeg,
        from: filmPath(name),
        to,
        duration: from.duration,
        onProgress: (f) => progress.push(f),
      });
      const copy = await filmAt(to);
      expect([copy.playable, copy.videoCodec, copy.width, copy.height]).toEqual([
        true,
        "avc",
        truth.width,
        truth.height,
      ]);
      expect(copy.audioCodec).toBe(truth.audioCodec === null ? null : "aac");
      expect(copy.frames.starts.length).toBe(from.frames.starts.length);
      const shifts = from.frames.starts.map((start, index) =>
        Math.abs(start - (copy.frames.starts[index] as number)),
      );
      expect(Math.max(...shifts)).toBeLessThan(0.001);
      for (const { index, moment } of chosen(name)) {
        const { png } = await stillWithFfmpeg({ ffmpeg, path: to, frames: copy.frames, moment });
        expect((await frameIn(png)).number).toBe(truth.numbers[index]);
      }
      expect(progress.at(-1)).toBe(1);
      expect(progress).toEqual([...progress].sort((a, b) => a - b));
    },
  );

  test("of a film in a container that is not read here", async () => {
    const to = join(folder, "avi.mp4");
    await playableCopy({ ffmpeg, from: filmPath("old-camera.avi"), to, duration: 1 });
    const copy = await filmAt(to);
    expect([copy.playable, copy.frames.starts.length]).toEqual([true, 10]);
  });

  test("names are only names, whatever is in them", async () => {
    const awkward = mkdtempSync(join(folder, "-i %03d 'a' http:"));
    const from = join(awkward, '-f "null" concat:%d.mp4');
    writeFileSync(from, readFileSync(filmPath("hevc.mp4")));
    await playableCopy({ ffmpeg, from, to: join(awkward, "-out %d.mp4"), duration: 2 });
    expect(readdirSync(awkward).sort()).toEqual(['-f "null" concat:%d.mp4', "-out %d.mp4"]);
  });

  test("the original is not touched, and an older copy stays when a new one fails", async () => {
    const place = mkdtempSync(join(folder, "old-"));
    writeFileSync(join(place, "copy.mp4"), "an older copy");
    const damaged = join(place, "damaged.mp4");
    writeFileSync(damaged, readFileSync(filmPath("constant-25.mp4")).subarray(0, 20_000));
    const attempt = playableCopy({ ffmpeg, from: damaged, to: join(place, "copy.mp4"), duration: 10 });
    await expect(attempt).rejects.toMatchObject({ kind: "ffmpeg-failed" });
    expect(readdirSync(place).sort()).toEqual(["copy.mp4", "damaged.mp4"]);
    expect(readFileSync(join(place, "copy.mp4"), "utf8")).toBe("an older copy");
    expect(readFileSync(damaged).length).toBe(20_000);
  });

  test.each([
    [
      "a playlist",
      () => `#EXTM3U\n#EXT-X-TARGETDURATION:3\n#EXTINF:3,\n${filmPath("camcorder.m2ts")}\n#EXT-X-ENDLIST\n`,
    ],
    ["a list of files to join", () => `ffconcat version 1.0\nfile '${filmPath("hevc.mp4")}'\n`],
  ])("%s named .mp4 leads to no other file", async (_what, text) => {
    const place = mkdtempSync(join(folder, "list-"));
    writeFileSync(join(place, "film.mp4"), text());
    const attempt = playableCopy({
      ffmpeg,
      from: join(place, "film.mp4"),
      to: join(place, "copy.mp4"),
      duration: 3,
    });
    await expect(attempt).rejects.toMatchObject({ kind: "ffmpeg-failed" });
    expect(readdirSync(place)).toEqual(["film.mp4"]);
  });

  // A pipe nobody writes to: ffmpeg would wait for ever, so that only the stop can end it.
  test.skipIf(process.platform === "win32")("stopped, it is gone and leaves nothing", async () => {
    const place = mkdtempSync(join(folder, "stop-"));
    execFileSync("mkfifo", [join(place, "film.mp4")]);
    const stop = new AbortController();
    const attempt = playableCopy({
      ...{ ffmpeg, from: join(place, "film.mp4"), to: join(place, "copy.mp4"), duration: 3 },
      signal: stop.signal,
    });
    setImmediate(() => stop.abort(new Error("enough")));
    await expect(attempt).rejects.toThrow("enough");
    expect(readdirSync(place)).toEqual(["film.mp4"]);
    const already = { ffmpeg, from: filmPath("hevc.mp4"), to: join(place, "copy.mp4"), duration: 2 };
    await expect(playableCopy({ ...already, signal: stop.signal })).rejects.toThrow("enough");
  });
});

describe("looking for ffmpeg", () => {
  test("where there is none, the words say what would help", async () => {
    const error = await findFfmpeg({ env: { PATH: folder } }).catch((error) => error);
    expect(error).toBeInstanceOf(MediaError);
    expect(error.kind).toBe("no-ffmpeg");
    expect(error.todo).toMatch(/FFMPEG_PATH/);
    await expect(findFfmpeg({ env: {} })).rejects.toMatchObject({ kind: "no-ffmpeg" });
  });

  test("FFMPEG_PATH is taken at its word, and said when it leads nowhere", async () => {
    const error = await findFfmpeg({ env: { ...process.env, FFMPEG_PATH: join(folder, "gone") } }).catch(
      (error) => error,
    );
    expect(error.found).toContain(join(folder, "gone"));
  });

  test.skipIf(!ffmpeg)("FFMPEG_PATH comes before PATH", async () => {
    const found = await findFfmpeg({ env: { FFMPEG_PATH: ffmpeg.path, PATH: "" } });
    expect([found.path, found.version]).toEqual([ffmpeg.path, ffmpeg.version]);
  });

  test.skipIf(process.platform === "win32")(
    "folders of PATH in their order; relative ones and other programs are passed over",
    async () => {
      const script = (place: string, says: string) => {
        mkdirSync(join(folder, place), { recursive: true });
        writeFileSync(join(folder, place, "ffmpeg"), `#!/bin/sh\necho "${says}"\n`);
        chmodSync(join(folder, place, "ffmpeg"), 0o755);
        return join(folder, place);
      };
      const other = script("other", "something else");
      const first = script("first", "ffmpeg version 7-one");
      const second = script("second", "ffmpeg version 7-two");
      const found = await findFfmpeg({
        env: { PATH: ["", ".", "relative", other, first, second].join(delimiter) },
      });
      expect(found).toEqual({ path: join(first, "ffmpeg"), version: "ffmpeg version 7-one" });
    },
  );

  test.skipIf(process.platform === "win32")(
    "on Windows it is ffmpeg.exe, and the variable is spelt Path",
    async () => {
      const place = join(folder, "windows");
      mkdirSync(place);
      writeFileSync(join(place, "ffmpeg.exe"), '#!/bin/sh\necho "ffmpeg version 7-windows"\n');
      chmodSync(join(place, "ffmpeg.exe"), 0o755);
      expect((await findFfmpeg({ env: { Path: place }, platform: "win32" })).path).toBe(
        join(place, "ffmpeg.exe"),
      );
    },
  );
});
