import { createHash, randomBytes } from "node:crypto";
import fs from "node:fs";
import os from "node:os";
import path from "node:path";
import type { Page } from "@playwright/test";
import { startProgram, stopProgram } from "./program.ts";
import { expect, test } from "./workshop.ts";

const data = path.resolve(import.meta.dirname, "../fixtures/video/data");

async function beginBuild(page: Page, address: string): Promise<void> {
  await page.goto(address);
  await page.getByLabel("Machine, as you call it").fill("Mantel clock");
  await page.getByLabel("What is restored").fill("Strike train");
  await page.getByRole("button", { name: "Begin" }).click();
  await page.waitForURL(/\/builds\//);
}

/** A film that is longer than two pieces: a free box of noise after the film itself (ISO/IEC 14496-12, 8.1.2). */
function longFilm(name: string, megabytes: number): { file: string; sha256: string; bytes: number } {
  const folder = fs.mkdtempSync(path.join(os.tmpdir(), "film-"));
  const noise = Buffer.concat([Buffer.from("0000000066726565", "hex"), randomBytes(megabytes * 1_000_000)]);
  noise.writeUInt32BE(noise.length);
  const bytes = Buffer.concat([fs.readFileSync(path.join(data, "constant-25.mp4")), noise]);
  const file = path.join(folder, name);
  fs.writeFileSync(file, bytes);
  return { file, sha256: createHash("sha256").update(bytes).digest("hex"), bytes: bytes.length };
}

const sha256Of = (file: string) => createHash("sha256").update(fs.readFileSync(file)).digest("hex");

/** What is in the folder of recordings, hidden things aside: what anybody may take for a whole film. */
const filmsIn = (workshop: string) =>
  fs.readdirSync(path.join(workshop, "recordings")).filter((name) => !name.startsWith("."));

/** Lets one piece through; from the next on, `then` has every request that brings or asks for pieces. */
async function onSecondPiece(
  page: Page,
  then: (route: import("@playwright/test").Route) => Promise<void>,
): Promise<() => Promise<void>> {
  let pieces = 0;
  await page.route("**/media/uploads/*", async (route) => {
    if (route.request().method() === "PATCH") pieces += 1;
    if (pieces < 2) await route.continue();
    else await then(route);
  });
  return () => page.unroute("**/media/uploads/*");
}

test.describe("a film that is brought in piece by piece", () => {
  // What the browser says of a line that is cut is not the page's doing.
  test.use({ toleratedErrors: /net::ERR_|Failed to load resource/ });

  test("is broken off by a reload, goes on from where it was, and is byte for byte the file", async ({
    page,
    program,
  }) => {
    const film = longFilm("Tag 2 – Räderwerk.mp4", 20);
    await beginBuild(page, program.address);
    const release = await onSecondPiece(page, (route) => route.abort());
    await page.getByLabel("Drop films here").setInputFiles(film.file);
    await expect(page.getByText("waits: the program does not answer")).toBeVisible();
    // Nothing partial is listed, here or in the folder.
    expect(filmsIn(program.folder)).toEqual([]);
    await expect(page.locator(".lines li", { hasText: "frames" })).toHaveCount(0);
    page.on("dialog", (dialog) => dialog.accept());
    await release();
    await page.reload();
    await expect(page.getByText("was broken off with 17 MB of 20 MB here")).toBeVisible();

    const offsets: number[] = [];
    page.on("request", (request) => {
      if (request.method() === "PATCH") offsets.push(Number(request.headers()["upload-offset"]));
    });
    await page.getByLabel("Drop films here").setInputFiles(film.file);
    await expect(page.getByRole("link", { name: "Tag 2 – Räderwerk.mp4" })).toBeVisible();
    // From the first piece on, or later: a piece may have begun between the line's mending and the reload.
    expect(Math.min(...offsets)).toBeGreaterThanOrEqual(16 * 1024 * 1024);
    await expect(page.getByText("was broken off")).toHaveCount(0);
    const [kept] = filmsIn(program.folder);
    expect(sha256Of(path.join(program.folder, "recordings", kept as string))).toBe(film.sha256);
    expect(fs.readdirSync(path.join(program.folder, "recordings", ".incoming"))).toEqual([]);
  });

  test("goes on by itself when the program was killed and is back", async ({ page, program }) => {
    const film = longFilm("strike.mp4", 20);
    await beginBuild(page, program.address);
    let killed: Promise<void> | null = null;
    const release = await onSecondPiece(page, async (route) => {
      killed ??= stopProgram(program, "SIGKILL");
      await killed;
      await route.continue().catch(() => undefined);
    });
    await page.getByLabel("Drop films here").setInputFiles(film.file);
    await expect(page.getByText("waits: the program does not answer")).toBeVisible();
    expect(filmsIn(program.folder)).toEqual([]);
    await release();
    const back = await startProgram(program.folder, { PORT: new URL(program.address).port });
    expect(back.address).toBe(program.address);
    await expect(page.getByRole("link", { name: "strike.mp4" })).toBeVisible({ timeout: 30_000 });
    const [kept] = filmsIn(program.folder);
    expect(sha256Of(path.join(program.folder, "recordings", kept as string))).toBe(film.sha256);
    await page.close();
    await stopProgram(back);
  });

  test("is let go when it is not wanted any more", async ({ page, program }) => {
    const film = longFilm("wrong film.mp4", 20);
    await beginBuild(page, program.address);
    const release = await onSecondPiece(page, (route) => route.abort());
    await page.getByLabel("Drop films here").setInputFiles(film.file);
    await expect(page.getByText("waits: the program does not answer")).toBeVisible();
    await page.getByRole("button", { name: "Stop" }).click();
    await release();
    await expect(page.getByText("was broken off with 17 MB of 20 MB here")).toBeVisible();
    await page.getByRole("button", { name: "Let it go" }).click();
    await expect(page.getByText("was broken off")).toHaveCount(0);
    expect(fs.readdirSync(path.join(program.folder, "recordings", ".incoming"))).toEqual([]);
  });
});
