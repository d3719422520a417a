import fs from "node:fs";
import os from "node:os";
import path from "node:path";
import type { Locator, Page } from "@playwright/test";
import { type BuildDocument, present } from "#lib/build/index.ts";
import { chooseFiles, tabTo } from "./keyboard.ts";
import { startProgram, stopProgram } from "./program.ts";
import { expect, onDisk, test } from "./workshop.ts";

/** A recording of seven minutes with its captions, and the marks that somebody who read them wrote down. */
const film = path.resolve(import.meta.dirname, "../fixtures/video/long/treadle-head.mp4");
const shared = path.resolve(import.meta.dirname, "../captions/shared");
const captions = path.join(shared, "treadle-head.vtt");

interface Gold {
  t: number;
  t_end: number;
  kind: string;
}
const gold: Gold[] = JSON.parse(fs.readFileSync(path.join(shared, "treadle-head.gold.json"), "utf8")).marks;

/** A build with that film in it; its address. Captions chosen with the film come in with it. */
async function begin(page: Page, address: string, files: string[]): Promise<string> {
  await page.goto(address);
  await page.getByLabel("Machine, as you call it").fill("Treadle head");
  await page.getByLabel("What is restored").fill("The hook and its timing");
  await page.keyboard.press("Enter");
  await page.waitForURL(/\/builds\//);
  await page.getByLabel("Drop films here").setInputFiles(files);
  await expect(page.getByText(/430 frames/)).toBeVisible();
  return page.url();
}

async function openLog(page: Page): Promise<void> {
  await page.getByRole("link", { name: "Open the log" }).click();
  await expect(page.locator(".transport .frame")).toHaveText(/frame \d+ of \d+/);
}

const waiting = (page: Page) => page.locator(".spoken [role='status']");

async function documentOf(page: Page, build: string): Promise<BuildDocument> {
  return ((await (await page.request.get(`${build}/document`)).json()) as { document: BuildDocument })
    .document;
}

/** The second that is written as minutes and seconds. */
async function secondOf(place: Locator): Promise<number> {
  const [minutes, seconds] = ((await place.textContent()) ?? "").split(":").map(Number);
  return 60 * (minutes ?? 0) + (seconds ?? 0);
}

/** Kind and second of the draft in hand. */
async function inHand(page: Page): Promise<{ id: string; kind: string; second: number } | null> {
  const row = page.locator(".log-row.draft.hand");
  if ((await row.count()) === 0) return null;
  const second = await secondOf(row.locator(".num").first());
  const id = (await row.getAttribute("data-mark")) ?? "";
  return {
    id,
    kind: (await row.getAttribute("data-draft")) ?? "",
    second,
  };
}

const trueDraft = ({ kind, second }: { kind: string; second: number }) =>
  gold.some((mark) => mark.kind === kind && second >= mark.t - 4 && second <= mark.t_end + 4);

test("the review of a recording of seven minutes, by keyboard alone, its keys counted", async ({
  page,
  program,
}, info) => {
  const build = await begin(page, program.address, [film, captions]);
  await openLog(page);
  await expect(waiting(page)).toHaveText(/\d+ drafts wait/);
  const proposed = Number.parseInt((await waiting(page).textContent()) ?? "", 10);
  expect(proposed).toBeGreaterThan(30);
  // Nothing drafted counts: no mark, and nothing in the procedure.
  expect((await documentOf(page, build)).marks).toEqual([]);

  await page.evaluate(() => {
    const counted = window as unknown as { keys: number };
    counted.keys = 0;
    window.addEventListener("keydown", () => counted.keys++, { capture: true });
  });
  await page.keyboard.press(".");
  let [accepted, dropped] = [0, 0];
  for (let draft = await inHand(page); draft; draft = await inHand(page)) {
    const right = trueDraft(draft);
    await page.keyboard.press(right ? "a" : "x");
    if (right) accepted++;
    else dropped++;
    await expect(page.locator(`.log-row.draft[data-mark='${draft.id}']`)).toHaveCount(0);
  }
  expect(accepted + dropped).toBe(proposed);
  await onDisk(page);
  const keys = await page.evaluate(() => (window as unknown as { keys: number }).keys);
  const each = keys / accepted;
  info.annotations.push({
    type: "keys per accepted mark",
    description: `${keys} / ${accepted} = ${each.toFixed(2)}`,
  });
  console.log(
    `${proposed} drafts: ${accepted} accepted, ${dropped} dropped, ${keys} keys, ${each.toFixed(2)} each`,
  );
  expect(each).toBeLessThanOrEqual(1.5);

  const after = await documentOf(page, build);
  expect(present(after.marks)).toHaveLength(accepted);
  expect(after.decisions).toHaveLength(proposed);
  for (const mark of present(after.marks)) expect(mark.fields.said, "its words").toBeTruthy();

  // Read again: the same captions, and a mended file, bring nothing back and double nothing.
  const mended = path.join(os.tmpdir(), `mended-${process.pid}.vtt`);
  fs.writeFileSync(mended, fs.readFileSync(captions, "utf8").replaceAll("okay so hello", "right, hello"));
  for (const file of [captions, mended]) {
    await page.reload();
    await expect(page.locator(".cues li").first()).toBeVisible();
    await page.getByText("The caption file").click();
    await page.getByLabel(/^Other captions/).setInputFiles(file);
    await expect(page.getByText(`${path.basename(file)} ·`)).toBeVisible();
    await expect(page.locator(".log-row.draft")).toHaveCount(0);
  }
  fs.rmSync(mended);
  await expect(page.locator(".cues")).toContainText("right, hello");
  expect(present((await documentOf(page, build)).marks)).toHaveLength(accepted);
});

/** Captions of a few sentences, each ten seconds. */
function saying(name: string, ...sentences: string[]): string {
  const stamp = (seconds: number) => `00:00:${String(seconds).padStart(2, "0")}.000`;
  const cues = sentences.map((text, i) => `${stamp(10 * i + 1)} --> ${stamp(10 * i + 8)}\n${text}`);
  const file = path.join(os.tmpdir(), `${name}-${process.pid}.vtt`);
  fs.writeFileSync(file, `WEBVTT\n\n${cues.join("\n\n")}\n`);
  return file;
}

test("a draft is written in, undone, and not proposed where a mark by hand says it already", async ({
  page,
  program,
}) => {
  const build = await begin(page, program.address, [film]);
  await openLog(page);
  const words = saying(
    "few",
    "It has 18 thou of backlash.",
    "Don't lever on the casting.",
    "I'm having a cup of tea.",
  );
  await tabTo(page, "Captions for treadle-head.mp4");
  await chooseFiles(page, words);
  await expect(waiting(page)).toHaveText("2 drafts wait");
  await page.locator(".log-body").focus();
  // Its fields are a Tab away; the first letter written makes a mark of it.
  await page.keyboard.press(".");
  await expect(page.locator(".log-row.draft.hand blockquote")).toHaveText("It has 18 thou of backlash.");
  await page.keyboard.press("Enter");
  await page.keyboard.press("End");
  await page.keyboard.type(" of the gears");
  await page.keyboard.press("Escape");
  await onDisk(page);
  await expect(waiting(page)).toHaveText("1 draft waits");
  const [mark] = present((await documentOf(page, build)).marks);
  expect(mark).toMatchObject({ kind: "measurement", fields: { said: "18 thou" } });
  expect(mark?.fields.words).toMatch(/ of the gears$/);
  // Undone as one thing: the words first, then mark and decision together.
  await page.keyboard.press("u");
  await page.keyboard.press("u");
  await expect(waiting(page)).toHaveText("2 drafts wait");
  expect(present((await documentOf(page, build)).marks)).toEqual([]);
  // Marked by hand instead, at that moment and with that value: it is not proposed a second time.
  await page.locator(".cues button").first().click();
  await page.locator(".log-body").focus();
  await page.keyboard.press("m");
  await page.locator(".log-row.hand [data-field='asFound']").fill("0.018 in");
  await page.keyboard.press("Escape");
  await expect(waiting(page)).toHaveText("1 draft waits");
  fs.rmSync(words);
});

test("captions dropped on a recording follow the film, are searched, and go to their second", async ({
  page,
  program,
}) => {
  await begin(page, program.address, [film]);
  await openLog(page);
  const text = `${fs.readFileSync(captions, "utf8")}\n\n00:07:20.000 -> 00:07:21.000\nnot a cue\n`;
  const lines = text.split("\n");
  const wrong = lines.findIndex((line) => line.includes("07:20.000 ->")) + 1;
  await page.locator(".captions-of").evaluate((place, given) => {
    const data = new DataTransfer();
    data.items.add(new File([given], "treadle-head.en.vtt", { type: "text/vtt" }));
    place.dispatchEvent(new DragEvent("drop", { dataTransfer: data, bubbles: true, cancelable: true }));
  }, text);
  await expect(page.locator(".cues li").first()).toBeVisible();
  await page.getByText("The caption file").click();
  await page.getByText("One thing in this file to look at").click();
  await expect(page.locator(".problems")).toContainText(`Line ${wrong}:`);

  await page.getByLabel("Search what is said").fill("three thirty seconds of an inch");
  const rows = page.locator(".cues li");
  await expect(page.locator(".spoken [role='status']")).toHaveText(/^\d of \d+$/);
  const start = await secondOf(rows.first().locator(".num"));
  await rows.first().getByRole("button").click();
  const video = page.locator(".picture video");
  const now = () => video.evaluate((element: HTMLVideoElement) => element.currentTime);
  await expect.poll(now).toBeGreaterThanOrEqual(start - 1);
  expect(await now()).toBeLessThan(start + 2);
  await page.getByLabel("Search what is said").fill("");
  await expect(page.locator(".cues [aria-current] .num")).toHaveText(/0:3\d|0:4\d/);

  // The same words as the player's own text track.
  const tracks = await video.evaluate((element: HTMLVideoElement) =>
    [...element.textTracks].map((track) => ({
      kind: track.kind,
      mode: track.mode,
      cues: track.cues?.length ?? 0,
    })),
  );
  expect(tracks).toEqual([{ kind: "captions", mode: "showing", cues: expect.any(Number) }]);
  expect(tracks[0]?.cues).toBeGreaterThan(100);

  // Times of the published film say nothing about where in this recording: shown, and not drafted from.
  await page.getByLabel("Its times are those of").selectOption("cut");
  await expect(page.getByText("No drafts are made from it")).toBeVisible();
  await expect(page.locator(".log-row.draft")).toHaveCount(0);
});

test.describe("with the program killed", () => {
  test.use({ toleratedErrors: /ERR_CONNECTION_REFUSED|ERR_EMPTY_RESPONSE|ERR_CONNECTION_RESET/ });

  test("what was accepted and dropped is as it was when the program is back", async ({ page, program }) => {
    const build = await begin(page, program.address, [film, captions]);
    await openLog(page);
    await page.locator(".log-body").focus();
    await page.keyboard.press(".");
    for (const key of ["a", "x", "a"]) await page.keyboard.press(key);
    await onDisk(page);
    await expect(page.locator(".saved")).toContainText("On disk: Draft");
    const left = (await waiting(page).textContent()) ?? "";
    await stopProgram(program, "SIGKILL");
    // Decided while it is gone: it goes to disk when it is back.
    await page.keyboard.press("x");
    await expect(page.getByText(/^Not on disk yet:/)).toBeVisible();
    const back = await startProgram(program.folder, { PORT: new URL(program.address).port });
    await expect(page.getByText(/^On disk: Draft dropped/)).toBeVisible({ timeout: 30_000 });
    const document = await documentOf(page, build);
    expect(document.decisions.map((one) => one.verdict).sort()).toEqual([
      "accepted",
      "accepted",
      "dropped",
      "dropped",
    ]);
    expect(present(document.marks)).toHaveLength(2);
    await page.reload();
    await expect(waiting(page)).toHaveText(`${Number.parseInt(left, 10) - 1} drafts wait`);
    await page.close();
    await stopProgram(back);
  });
});

test("captions made from the sound by the restorer's own command, and none run that is not set", async ({
  page,
  program,
}) => {
  await begin(page, program.address, [film]);
  const log = await page.getByRole("link", { name: "Open the log" }).getAttribute("href");
  await openLog(page);
  await expect(page.getByText("None is set, so nothing is run.")).toBeVisible();
  await page.goto(`${program.address}settings`);
  const script = path.join(os.tmpdir(), `words-${process.pid}.mjs`);
  // A stand-in for a recogniser: it looks at the sound file and writes what it was given to say.
  fs.writeFileSync(
    script,
    `import fs from "node:fs";
     const [sound, captions] = process.argv.slice(2);
     const head = fs.readFileSync(sound).subarray(0, 4).toString();
     console.error("50 %");
     fs.writeFileSync(captions, "WEBVTT\\n\\n00:01.000 --> 00:05.000\\nIt has 18 thou of backlash, says " + head);`,
  );
  await page
    .getByLabel("A command on this computer that makes captions from a sound file")
    .fill(`"${process.execPath}" "${script}" {sound} {captions}`);
  await page.keyboard.press("Tab");
  await expect(page.getByText("On disk.")).toBeVisible();
  await page.goto(new URL(log ?? "", program.address).href);
  await page.getByRole("button", { name: "Make captions from its sound" }).click();
  await expect(page.locator(".cues")).toContainText(/says (RIFF|\S+)/);
  await expect(waiting(page)).toHaveText("1 draft waits");
  fs.rmSync(script);
});
