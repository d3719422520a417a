import { execFileSync } from "node:child_process";
import { mkdtempSync, readdirSync, readFileSync, rmSync, truncateSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, describe, expect, test } from "vitest";
import { type NoFilm, type ProbeResult, probe, unplayableTrouble } from "#lib/media/index.ts";
import {
  filmPath,
  filmTruth,
  otherFiles,
  playableFilms,
  trueFrames,
  unplayableFilms,
} from "#tests/fixtures/video/films.ts";

const folder = mkdtempSync(join(tmpdir(), "probe-"));
afterAll(() => rmSync(folder, { recursive: true }));

function put(name: string, bytes: Uint8Array | string): string {
  writeFileSync(join(folder, name), bytes);
  return join(folder, name);
}

function film(result: ProbeResult) {
  if (!result.ok) throw new Error(`${result.kind}: ${result.found}`);
  return result;
}

async function trouble(path: string, options = {}): Promise<NoFilm> {
  const result = await probe(path, options);
  if (result.ok) throw new Error("a film was found");
  for (const words of [result.found, result.expected, result.todo]) expect(words).toMatch(/^[A-Z].*[.”)]$/s);
  return result;
}

// Truth: ffprobe's list of decoded frames, from one decode without seeking (tests/fixtures/video/make.ts).
describe("the table of frames", () => {
  test.each([...playableFilms, ...unplayableFilms])(
    "%s: every frame begins when a full decode says",
    async (name) => {
      const truth = filmTruth(name);
      const found = film(await probe(filmPath(name)));
      const { starts, end } = trueFrames(truth);
      expect(found.frames.starts.length).toBe(starts.length);
      const worst = Math.max(
        ...starts.map((start, index) => Math.abs(start - (found.frames.starts[index] as number))),
      );
      expect(worst).toBeLessThan(1e-6);
      expect(found.duration).toBe(found.frames.end);
      expect(found.duration).toBeGreaterThan(starts.at(-1) as number);
      // Where the decoder knows how long the last frame lasts; Matroska rounds times to milliseconds.
      if (truth.lastDuration > 0) expect(Math.abs(found.duration - end)).toBeLessThan(0.001);
      expect([found.width, found.height, found.rotation]).toEqual([
        truth.width,
        truth.height,
        truth.rotation,
      ]);
      const codec = { h264: "avc" }[truth.videoCodec] ?? truth.videoCodec;
      expect([found.videoCodec, found.audioCodec]).toEqual([codec, truth.audioCodec]);
    },
  );

  test("the truth counts each frame once, in order", () => {
    for (const name of playableFilms) {
      const { numbers, pts } = filmTruth(name);
      expect(numbers).toEqual(pts.map((_, index) => index));
    }
  });
});

describe("what a browser plays", () => {
  test.each(playableFilms)("%s plays", async (name) => {
    const found = film(await probe(filmPath(name)));
    expect(found.playable).toBe(true);
    expect(unplayableTrouble(found)).toBeNull();
  });

  test.each(unplayableFilms)(
    "%s does not, and the words say which codec it has and what helps",
    async (name) => {
      const found = film(await probe(filmPath(name)));
      expect(found.playable).toBe(false);
      const said = unplayableTrouble(found);
      expect(said?.found).toMatch(name === "hevc.mp4" ? /HEVC/ : /H\.264.* TS/);
      expect(said?.todo).toMatch(/ffmpeg/);
    },
  );
});

describe("when it was made", () => {
  // The times given to the muxer in tests/fixtures/video/make.ts.
  test.each([
    ["constant-25.mp4", "2026-05-03T09:21:07.000Z"],
    ["rotated.mov", "2026-05-03T09:40:00.000Z"],
    ["h264.mkv", "2026-05-03T09:55:30.000Z"],
  ])("%s: %s", async (name, createdAt) => {
    const found = film(await probe(filmPath(name)));
    expect(found.createdAt).toBe(createdAt);
    expect(found.createdAtTrust).toMatch(/not every camera/);
  });

  test("a file that does not say has none", async () => {
    expect(film(await probe(filmPath("long-gop.mp4"))).createdAt).toBeNull();
  });

  test("a creation time of 64 bits is read too (ISO/IEC 14496-12, 8.2.2, version 1)", async () => {
    const bytes = readFileSync(filmPath("constant-25.mp4"));
    const at = bytes.indexOf("mvhd") - 4;
    // 2026-05-03T09:21:07Z, counted by another program: `date -ud 2026-05-03T09:21:07 +%s` plus 2082844800.
    expect(bytes.readUInt32BE(at + 12)).toBe(1777800067 + 2082844800);
    const length = bytes.readUInt32BE(at);
    const wide = Buffer.alloc(length + 12);
    bytes.copy(wide, 0, at, at + 8);
    wide.writeUInt32BE(length + 12, 0);
    wide[8] = 1;
    wide.writeBigUInt64BE(BigInt(bytes.readUInt32BE(at + 12)), 12);
    wide.writeBigUInt64BE(BigInt(bytes.readUInt32BE(at + 16)), 20);
    bytes.copy(wide, 28, at + 20, at + 24);
    wide.writeBigUInt64BE(BigInt(bytes.readUInt32BE(at + 24)), 32);
    bytes.copy(wide, 40, at + 28, at + length);
    const moov = bytes.lastIndexOf("moov", at) - 4;
    const longer = Buffer.concat([bytes.subarray(0, at), wide, bytes.subarray(at + length)]);
    longer.writeUInt32BE(longer.readUInt32BE(moov) + 12, moov);
    expect(film(await probe(put("wide.mp4", longer))).createdAt).toBe("2026-05-03T09:21:07.000Z");
  });
});

describe("files that are no film, or not all of one", () => {
  const whole = (name: string) => readFileSync(filmPath(name));

  test("nothing there", async () => {
    expect((await trouble(join(folder, "gone.mp4"))).kind).toBe("missing");
  });

  test("a folder", async () => {
    expect((await trouble(folder)).kind).toBe("missing");
  });

  test.skipIf(process.platform === "win32")("a pipe nobody writes to is not even opened", async () => {
    execFileSync("mkfifo", [join(folder, "pipe.mp4")]);
    expect((await trouble(join(folder, "pipe.mp4"))).kind).toBe("missing");
  });

  test("zero bytes", async () => {
    const said = await trouble(put("zero.mp4", ""));
    expect(said.kind).toBe("empty");
    expect(said.found).toMatch(/0 bytes/);
  });

  test("text with the name of a film", async () => {
    const said = await trouble(put("notes.mp4", "Bought the gasket set today.\n"));
    expect([said.kind, said.found]).toEqual(["not-video", "This is a text file (29 bytes)."]);
  });

  test("a playlist that names other files is text, and nothing it names is read", async () => {
    const list = `#EXTM3U\n#EXT-X-TARGETDURATION:10\n#EXTINF:10,\n${filmPath("camcorder.m2ts")}\n#EXT-X-ENDLIST\n`;
    expect((await trouble(put("list.mp4", list))).kind).toBe("not-video");
  });

  test("bytes without any order", async () => {
    let seed = 12345;
    const noise = Buffer.alloc(50_000);
    for (let index = 0; index < noise.length; index++) {
      seed = (seed * 1103515245 + 12345) % 2 ** 31;
      noise[index] = seed >> 16;
    }
    expect((await trouble(put("noise.mp4", noise))).kind).toBe("not-video");
  });

  test("a photograph says that it is one", async () => {
    const said = await trouble(
      put("photo.mp4", Buffer.from("ffd8ffe000104a46494600010100000100010000ffd9", "hex")),
    );
    expect(said.kind).toBe("not-video");
    expect(said.todo).toMatch(/photograph/);
  });

  test("sound without a picture", async () => {
    expect((await trouble(filmPath(otherFiles.soundOnly))).kind).toBe("no-picture");
  });

  test("a container that is not read here", async () => {
    const said = await trouble(filmPath(otherFiles.avi));
    expect(said.kind).toBe("unplayable");
    expect(said.found).toMatch(/AVI/);
  });

  test("cut off, index at the end", async () => {
    const bytes = whole("constant-25.mp4");
    const said = await trouble(put("cut-last.mp4", bytes.subarray(0, bytes.indexOf("moov") - 4)));
    expect(said.kind).toBe("cut-short");
    expect(said.found).toMatch(/no index/);
    const inIndex = await trouble(put("cut-in-index.mp4", bytes.subarray(0, bytes.indexOf("moov") + 900)));
    expect(inIndex.kind).toBe("cut-short");
  });

  test.each([0.3, 0.5, 0.9, 0.999])("cut off at %f, index first", async (share) => {
    const bytes = whole("constant-2997.mp4");
    const said = await trouble(put("cut-first.mp4", bytes.subarray(0, Math.floor(bytes.length * share))));
    expect(said.kind).toBe("cut-short");
  });

  test("cut off, and the rest of its length blank, as a broken-off copy may be", async () => {
    const path = put("blank.mp4", whole("constant-2997.mp4").subarray(0, 10_000));
    truncateSync(path, whole("constant-2997.mp4").length);
    expect((await trouble(path)).kind).toBe("cut-short");
  });

  test.each(["fragmented.mp4", "h264.mkv", "vp9.webm"])("cut off: %s", async (name) => {
    const bytes = whole(name);
    expect((await trouble(put(`cut-${name}`, bytes.subarray(0, bytes.length - 2000)))).kind).toBe(
      "cut-short",
    );
  });

  test("a film written live and cut off is as long as what is there", async () => {
    const bytes = whole("vp8-live.webm");
    const found = film(await probe(put("live.webm", bytes.subarray(0, bytes.length >> 1))));
    expect(found.frames.starts.length).toBeGreaterThan(60);
    expect(found.frames.starts.length).toBeLessThan(200);
  });

  test("rubbish after the last box is not taken for a missing end", async () => {
    const bytes = Buffer.concat([
      whole("constant-2997.mp4"),
      Buffer.alloc(4096),
      Buffer.from("made by a camera"),
    ]);
    expect(film(await probe(put("tail.mp4", bytes))).frames.starts.length).toBe(270);
  });

  test("names with quotes, line breaks and turned letters are only names", async () => {
    const name = `a "b" 'c'\n$(x) \u202efedc.mp4`;
    expect(film(await probe(put(name, whole("av1.mp4")))).frames.starts.length).toBe(200);
  });
});

describe("a reader that does not come back", () => {
  test("is ended at its limit", async () => {
    const workerModule = new URL("./spinning-worker.ts", import.meta.url);
    const said = await trouble(filmPath("av1.mp4"), { timeLimitMs: 300, workerModule });
    expect(said.kind).toBe("hung");
    expect(said.found).toMatch(/0\.3 s/);
  });

  test("a damaged index that counts to four thousand million", async () => {
    const bytes = whole("constant-2997.mp4");
    // The run length of the first entry of the composition offsets (ISO/IEC 14496-12, 8.6.1.3).
    bytes[bytes.indexOf("ctts") + 12] = 0xff;
    const said = await trouble(put("counts.mp4", bytes), { timeLimitMs: 1500 });
    expect(["hung", "unreadable"]).toContain(said.kind);
  });

  test("a worker that fails says so", async () => {
    const workerModule = new URL("./failing-worker.ts", import.meta.url);
    const said = await trouble(filmPath("av1.mp4"), { workerModule });
    expect(said.kind).toBe("unreadable");
  });

  test.skipIf(process.platform !== "linux")("ended readers leave no file open", async () => {
    const damaged = whole("constant-2997.mp4");
    damaged[damaged.indexOf("ctts") + 12] = 0xff;
    const path = put("leak.mp4", damaged);
    for (let count = 0; count < 3; count++) await probe(path, { timeLimitMs: 400 });
    const open = readdirSync("/proc/self/fd").filter((fd) => linkOf(fd).startsWith(folder));
    expect(open).toEqual([]);
  });

  function whole(name: string): Buffer {
    return readFileSync(filmPath(name));
  }
});

function linkOf(fd: string): string {
  try {
    return execFileSync("readlink", [`/proc/${process.pid}/fd/${fd}`]).toString();
  } catch {
    return "";
  }
}
