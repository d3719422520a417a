import { execFileSync } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import sharp from "sharp";
import { describe, expect, test } from "vitest";
import { findFfmpeg } from "#lib/media/index.ts";
import { framesNear, type Pixels, sharpestFew, sharpnessOf } from "#lib/media/sharpness.ts";
import { filmPath, filmTruth, trueFrames } from "#tests/fixtures/video/films.ts";

/** A field of squares, blurred by so many pixels, with its light changed evenly. */
async function squares(blur: number, light = { gain: 1, offset: 0 }): Promise<Pixels> {
  const [width, height] = [240, 160];
  const data = Buffer.alloc(width * height * 3);
  for (let pixel = 0; pixel < width * height; pixel++) {
    const odd = (((pixel % width) >> 4) + (Math.floor(pixel / width) >> 4)) % 2;
    data.fill(odd ? 150 : 60, 3 * pixel, 3 * pixel + 3);
  }
  let picture = sharp(data, { raw: { width, height, channels: 3 } });
  if (blur > 0) picture = picture.blur(blur);
  const { data: pixels } = await picture
    .linear(light.gain, light.offset)
    .ensureAlpha()
    .raw()
    .toBuffer({ resolveWithObject: true });
  return { data: pixels, width, height };
}

describe("sharpness", () => {
  test("falls with every step of blur", async () => {
    const found = await Promise.all(
      [0, 0.6, 1, 2, 4, 8].map(async (blur) => sharpnessOf(await squares(blur))),
    );
    for (const [place, value] of found.slice(1).entries()) expect(value).toBeLessThan(found[place] as number);
  });

  test("does not change with even light, and grows with the square of contrast, as a variance does", async () => {
    const plain = sharpnessOf(await squares(0));
    expect(sharpnessOf(await squares(0, { gain: 1, offset: 40 }))).toBeCloseTo(plain, 3);
    expect(sharpnessOf(await squares(0, { gain: 1.5, offset: 0 })) / plain).toBeCloseTo(2.25, 6);
  });

  test("of a plain field is nothing, of a slope nothing, of one bright point what the Laplacian's weights say", () => {
    const field = (grey: (x: number, y: number) => number, side = 5): Pixels => {
      const data = Array.from({ length: side * side }, (_, at) => grey(at % side, Math.floor(at / side)));
      return { data: data.flatMap((value) => [value, value, value, 255]), width: side, height: side };
    };
    expect(sharpnessOf(field(() => 90))).toBeCloseTo(0, 6);
    expect(sharpnessOf(field((x, y) => 10 * x + 20 * y))).toBeCloseTo(0, 3);
    // Weights 1, 1, 1, 1, -4: of nine inner points four bend by 10 and one by -40; mean 0, so (4·100 + 1600) / 9.
    expect(sharpnessOf(field((x, y) => (x === 2 && y === 2 ? 10 : 0)))).toBeCloseTo(2000 / 9, 3);
    expect(sharpnessOf(field(() => 90, 2))).toBe(0);
  });
});

describe("frames near a moment", () => {
  const frames = trueFrames(filmTruth("variable.mp4"));

  test("are all of those whose middle is within the stretch, and no other", () => {
    const middle = (index: number) =>
      ((frames.starts[index] as number) + (frames.starts[index + 1] ?? frames.end)) / 2;
    for (const index of [0, 1, 37, 130, 131, 258, frames.starts.length - 1]) {
      const { first, exact, last } = framesNear(frames, middle(index), 0.5);
      expect(exact).toBe(index);
      const within = frames.starts
        .map((_, at) => at)
        .filter((at) => Math.abs(middle(at) - middle(index)) <= 0.5);
      expect([first, last]).toEqual([within[0], within.at(-1)]);
    }
  });

  test("those offered are ranked, few and apart", () => {
    const measured = Array.from({ length: 30 }, (_, index) => ({ index, sharpness: -Math.abs(index - 11) }));
    const few = sharpestFew(measured, 3);
    expect(few[0]?.index).toBe(11);
    expect(few).toHaveLength(3);
    expect(few.map((one) => one.sharpness)).toEqual(few.map((one) => one.sharpness).sort((a, b) => b - a));
    for (const one of few)
      for (const other of few)
        if (one !== other) expect(Math.abs(one.index - other.index)).toBeGreaterThan(3);
  });
});

const ffmpeg = await findFfmpeg().catch(() => null);

describe.skipIf(!ffmpeg)("of a film that is blurred but for one frame", () => {
  test.each([100, 107, 112])("frame %i comes first", async (sharpOne) => {
    const folder = mkdtempSync(join(tmpdir(), "sharpness-"));
    const film = join(folder, "blurred.mp4");
    const blur = `boxblur=3:1:enable='not(eq(n,${sharpOne}))'`;
    const quiet = ["-v", "error", "-y", "-i"];
    execFileSync("ffmpeg", [...quiet, filmPath("constant-25.mp4"), "-vf", blur, "-an", "-crf", "20", film]);
    const raw = ["-f", "rawvideo", "-pix_fmt", "rgba", "-"];
    const bytes = execFileSync("ffmpeg", [...quiet, film, ...raw], { maxBuffer: 100_000_000 });
    rmSync(folder, { recursive: true });
    const { width, height } = filmTruth("constant-25.mp4");
    const size = width * height * 4;
    const { first, last } = framesNear(trueFrames(filmTruth("constant-25.mp4")), 105.5 / 25, 0.5);
    const measured = Array.from({ length: last - first + 1 }, (_, at) => {
      const data = bytes.subarray((first + at) * size, (first + at + 1) * size);
      return { index: first + at, sharpness: sharpnessOf({ data, width, height }) };
    });
    expect(sharpestFew(measured, 3)[0]?.index).toBe(sharpOne);
  });
});
