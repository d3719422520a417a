import { execFileSync } from "node:child_process";
import fs from "node:fs";
import os from "node:os";
import path from "node:path";
import sharp from "sharp";
import type { BuildDocument, Still } from "#lib/build/index.ts";
import { frameAt } from "#lib/time/index.ts";
import { readFrameNumber } from "../fixtures/video/pattern.ts";
import { expect, onDisk, test } from "./workshop.ts";

const data = path.resolve(import.meta.dirname, "../fixtures/video/data");

/**
 * Films whose frames carry their number, with the times of one linear decode beside each: in the ordinary run one of
 * each sort, with LONG=1 all.
 */
const films = [
  "constant-2997.mp4",
  "variable-fragmented.mp4",
  "long-gop.mp4",
  "rotated.mov",
  "vp9.webm",
  ...(process.env.LONG
    ? ["constant-25.mp4", "variable.mp4", "fragmented.mp4", "no-edit-list.mp4", "late-start.mp4"]
    : []),
];
const EACH = process.env.LONG ? 20 : 4;

/** A small generator of numbers in [0, 1), the same ones each time (mulberry32). */
function seeded(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4_294_967_296;
  };
}

for (const [index, film] of films.entries()) {
  test(`${EACH} stills of ${film} each show the frame whose interval holds the moment`, async ({
    page,
    program,
  }) => {
    const truth = JSON.parse(fs.readFileSync(path.join(data, `${film}.json`), "utf8"));
    const starts: number[] = truth.pts.map(
      (ticks: number) => (ticks * truth.timeBase[0]) / truth.timeBase[1],
    );
    const keys: number[] = truth.keyFrames;
    const random = seeded(1904 + index);
    await page.goto(program.address);
    await page.getByLabel("Machine, as you call it").fill("Trial");
    await page.getByLabel("What is restored").fill(film);
    await page.getByRole("button", { name: "Begin" }).click();
    await page.getByLabel("Drop films here").setInputFiles(path.join(data, film));
    await expect(page.getByText(`${starts.length} frames`)).toBeVisible();
    const build = page.url();
    await page.getByRole("link", { name: "Open the log" }).click();
    await expect(page.locator(".transport .frame")).toHaveText(/of \d+/);

    const scale = await page.locator(".scale").boundingBox();
    if (!scale) throw new Error("there is no scale");
    const listed = (await (await page.request.get(`${build}/document`)).json()) as {
      document: BuildDocument;
    };
    const duration = listed.document.recordings[0]?.probe?.duration ?? 0;
    const asked: number[] = [];
    for (let count = 0; count < EACH; count++) {
      // Half of them anywhere, half in the frame before or after a key frame or on it.
      const near = (keys[Math.floor(random() * keys.length)] ?? 0) + Math.floor(random() * 3) - 1;
      const frame = Math.min(Math.max(near, 0), starts.length - 1);
      const middle = ((starts[frame] as number) + (starts[frame + 1] ?? duration)) / 2;
      const moment = count % 2 === 0 ? random() * duration : middle;
      const y = Math.round((moment / Math.max(duration, 1)) * scale.height);
      await page.mouse.click(scale.x + 10, scale.y + Math.min(y, scale.height - 1));
      asked.push((Math.min(y, scale.height - 1) / scale.height) * Math.max(duration, 1));
      const shown = page.locator(".still img");
      await page.keyboard.press("f");
      await expect(shown).toHaveCount(count + 1);
    }
    await onDisk(page);

    const { document } = (await (await page.request.get(`${build}/document`)).json()) as {
      document: BuildDocument;
    };
    const stills = [...document.stills].sort((a, b) => a.rank - b.rank);
    expect(stills).toHaveLength(EACH);
    // Each is compared, also after one that is wrong, so that a failure says how many.
    for (const [place, still] of stills.entries()) {
      const wanted = frameAt({ starts, end: duration }, asked[place] as number);
      const meant = frameAt({ starts, end: duration }, (still as Still).at as number);
      expect.soft(meant, `still ${place}: the moment kept is in the frame that was asked for`).toBe(wanted);
      const picture = await page.request.get(`${program.address}media/stills/${still.sha256}`);
      const { data: pixels, info } = await sharp(await picture.body())
        .ensureAlpha()
        .raw()
        .toBuffer({ resolveWithObject: true });
      expect
        .soft(readFrameNumber(pixels, info.width, info.height), `still ${place} at ${still.at}`)
        .toBe(truth.numbers[wanted]);
    }
  });
}

test("of a film blurred but for one frame, that frame is offered first and taken with one click, or one key", async ({
  page,
  program,
}) => {
  const sharpOne = 104;
  const folder = fs.mkdtempSync(path.join(os.tmpdir(), "blurred-"));
  const film = path.join(folder, "blurred.mp4");
  const blur = `boxblur=3:1:enable='not(eq(n,${sharpOne}))'`;
  const encoded = ["-vf", blur, "-an", "-crf", "18", film];
  try {
    execFileSync("ffmpeg", ["-v", "error", "-i", path.join(data, "constant-25.mp4"), ...encoded]);
  } catch {
    test.skip(true, "there is no ffmpeg on this computer to blur a film with");
  }
  const truth = JSON.parse(fs.readFileSync(path.join(data, "constant-25.mp4.json"), "utf8"));
  await page.goto(program.address);
  await page.getByLabel("Machine, as you call it").fill("Trial");
  await page.getByLabel("What is restored").fill("Blurred");
  await page.getByRole("button", { name: "Begin" }).click();
  await page.getByLabel("Drop films here").setInputFiles(film);
  await expect(page.getByText("250 frames")).toBeVisible();
  fs.rmSync(folder, { recursive: true });
  const build = page.url();
  await page.getByRole("link", { name: "Open the log" }).click();
  await expect(page.locator(".transport .frame")).toHaveText("frame 1 of 250");
  const numberOf = async (place: number) => {
    const { document } = (await (await page.request.get(`${build}/document`)).json()) as {
      document: BuildDocument;
    };
    const still = [...document.stills].sort((a, b) => a.rank - b.rank)[place] as Still;
    expect(frameAt({ starts: Array.from({ length: 250 }, (_, n) => n / 25), end: 10 }, still.at ?? 0)).toBe(
      sharpOne,
    );
    const picture = await page.request.get(`${program.address}media/stills/${still.sha256}`);
    const { data: pixels, info } = await sharp(await picture.body())
      .ensureAlpha()
      .raw()
      .toBuffer({ resolveWithObject: true });
    return readFrameNumber(pixels, info.width, info.height);
  };
  const scale = await page.locator(".scale").boundingBox();
  if (!scale) throw new Error("there is no scale");
  await page.mouse.click(scale.x + 10, scale.y + Math.round(scale.height * 0.43));
  await page.keyboard.press("f");
  const offered = page.getByRole("group", { name: "Frames near it, sharpest first" });
  const first = offered.getByRole("button").first();
  await expect(first).toHaveText(/^Take the sharpest, 0\.\d\d s (before|after)$/);
  await first.click();
  await expect(page.getByText("No frame within half a second is sharper.")).toBeVisible();
  await onDisk(page);
  expect(await numberOf(0)).toBe(truth.numbers[sharpOne]);

  await page.locator(".log-body").focus();
  await page.keyboard.press("Shift+F");
  await expect(page.locator(".still img")).toHaveCount(2);
  await onDisk(page);
  expect(await numberOf(1)).toBe(truth.numbers[sharpOne]);
});
