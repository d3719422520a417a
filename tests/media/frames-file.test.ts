import { mkdtempSync, readdirSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import fc from "fast-check";
import { afterAll, describe, expect, test } from "vitest";
import { decodeFrames, encodeFrames, MediaError, readFramesFile, writeFramesFile } from "#lib/media/index.ts";

const folder = mkdtempSync(join(tmpdir(), "frames-"));
afterAll(() => rmSync(folder, { recursive: true }));

const tables = fc
  .uniqueArray(
    fc.double({ min: 0, max: 1e6, noNaN: true }).map((time) => time + 0),
    { maxLength: 50 },
  )
  .map((times) => [...times].sort((a, b) => a - b))
  .chain((starts) =>
    fc.double({ min: 0, max: 10, noNaN: true }).map((last) => ({ starts, end: (starts.at(-1) ?? 0) + last })),
  );

describe("a frame table as bytes", () => {
  test("comes back bit for bit", () => {
    fc.assert(
      fc.property(tables, ({ starts, end }) => {
        const back = decodeFrames(encodeFrames({ starts, end }));
        expect(Array.from(back.starts)).toEqual(starts);
        expect(back.end).toBe(end);
      }),
    );
  });

  test("is little-endian, as the format says", () => {
    // 1.5 is 0x3FF8000000000000 (IEEE 754), written from its lowest byte up.
    const hex = Buffer.from(encodeFrames({ starts: [0, 1.5], end: 2 })).toString("hex");
    expect(hex).toBe(
      `574d4654${"01000000"}${"02000000"}00000000${"0000000000000040"}${"0".repeat(16)}${"000000000000f83f"}`,
    );
  });

  test("may lie at any place in a larger buffer", () => {
    const bytes = encodeFrames({ starts: [0, 0.04], end: 0.08 });
    const larger = new Uint8Array(bytes.length + 3);
    larger.set(bytes, 3);
    expect(decodeFrames(larger.subarray(3)).end).toBe(0.08);
  });

  test("a caller's table that is none is refused", () => {
    for (const bad of [[1, 1], [2, 1], [-1, 0], [Number.NaN], [0, Number.POSITIVE_INFINITY]]) {
      expect(() => encodeFrames({ starts: bad, end: 9 })).toThrow(RangeError);
    }
    expect(() => encodeFrames({ starts: [0, 5], end: 4 })).toThrow(RangeError);
  });

  const good = encodeFrames({ starts: [0, 0.04, 0.08], end: 0.12 });
  const changed = (at: number, byte: number) => good.map((old, index) => (index === at ? byte : old));
  test.each([
    ["nothing", new Uint8Array(0)],
    ["cut short", good.subarray(0, good.length - 1)],
    ["too long", Uint8Array.from([...good, 0])],
    ["another beginning", changed(0, 0)],
    ["a newer version", changed(4, 2)],
    ["a count that is not so", changed(8, 4)],
    ["a count of four thousand million", changed(11, 255)],
    ["a frame before the one before it", changed(good.length - 1, 0)],
    ["an end before its beginning", changed(23, 0)],
    ["text", new TextEncoder().encode("WMFT, or so it says, but not in binary")],
  ])("bytes that are none are refused: %s", (_what, bytes) => {
    expect(() => decodeFrames(bytes)).toThrow(MediaError);
  });

  test("goes to disk and comes back, with nothing else left there", async () => {
    await writeFramesFile(join(folder, "a.frames"), { starts: Float64Array.of(0, 1), end: 2 });
    await writeFramesFile(join(folder, "a.frames"), { starts: [0, 0.5, 1], end: 2 });
    expect(Array.from((await readFramesFile(join(folder, "a.frames"))).starts)).toEqual([0, 0.5, 1]);
    writeFileSync(join(folder, "b.frames"), "not a table");
    await expect(readFramesFile(join(folder, "b.frames"))).rejects.toMatchObject({ kind: "bad-frame-table" });
    await expect(writeFramesFile(join(folder, "gone", "c"), { starts: [0], end: 1 })).rejects.toThrow();
    expect(readdirSync(folder).sort()).toEqual(["a.frames", "b.frames"]);
  });
});
