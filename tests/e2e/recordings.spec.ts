import { createHash } from "node:crypto";
import fs from "node:fs";
import os from "node:os";
import path from "node:path";
import { findFfmpeg } from "#lib/media/index.ts";
import { expect, test } from "./workshop.ts";

const data = path.resolve(import.meta.dirname, "../fixtures/video/data");

async function beginBuild(page: import("@playwright/test").Page, address: string): Promise<void> {
  await page.goto(address);
  await page.getByLabel("Machine, as you call it").fill("Mantel clock");
  await page.getByLabel("What is restored").fill("Strike train");
  await page.getByRole("button", { name: "Begin" }).click();
  await page.waitForURL(/\/builds\//);
}

test("a folder of films is listed where it lies: nothing in it is copied, changed or deleted", async ({
  page,
  program,
}) => {
  const folder = fs.mkdtempSync(path.join(os.tmpdir(), "films-"));
  fs.copyFileSync(path.join(data, "variable.mp4"), path.join(folder, "Tag 1 – Rückplatine.mp4"));
  fs.mkdirSync(path.join(folder, "second evening"));
  fs.copyFileSync(path.join(data, "vp9.webm"), path.join(folder, "second evening", "b.webm"));
  fs.writeFileSync(path.join(folder, "flat battery.mp4"), "");
  fs.writeFileSync(path.join(folder, "notes.mp4"), "no film at all, only words");
  fs.writeFileSync(path.join(folder, "shopping.txt"), "brass rod");
  const whole = fs.readFileSync(path.join(data, "long-gop.mp4"));
  fs.writeFileSync(path.join(folder, "cut short.mp4"), whole.subarray(0, whole.length >> 1));
  const look = () =>
    (fs.readdirSync(folder, { recursive: true, withFileTypes: true }) as fs.Dirent[])
      .filter((entry) => entry.isFile())
      .map((entry) => {
        const full = path.join(entry.parentPath, entry.name);
        const { mtimeMs, size } = fs.statSync(full);
        return [full, mtimeMs, size, createHash("sha256").update(fs.readFileSync(full)).digest("hex")].join(
          " ",
        );
      })
      .sort();
  const before = look();

  await beginBuild(page, program.address);
  await page.getByLabel("Or a folder where films lie").fill(folder);
  await page.getByRole("button", { name: "List it" }).click();
  await expect(
    page.getByText("5 listed where they lie; 0 were known already; 1 other files left alone."),
  ).toBeVisible();
  await expect(page.getByText(/\d+ frames/)).toHaveCount(2);
  // What cannot be used stays listed, with words for it.
  for (const name of ["flat battery.mp4", "notes.mp4", "cut short.mp4"]) {
    await expect(page.locator("li", { hasText: name }).locator(".finding").first()).not.toBeEmpty();
  }
  await page.getByLabel("Or a folder where films lie").fill(folder);
  await page.getByRole("button", { name: "List it" }).click();
  await expect(page.getByText("0 listed where they lie; 5 were known already")).toBeVisible();

  await page.getByRole("link", { name: "Tag 1 – Rückplatine.mp4" }).click();
  await expect(page.locator(".transport .frame")).toHaveText(/frame \d+ of \d+/);
  await page.keyboard.press("f");
  await expect(page.locator(".still img")).toHaveCount(1);
  expect(look()).toEqual(before);
  expect(fs.readdirSync(path.join(program.folder, "recordings"))).toEqual([]);
  fs.rmSync(folder, { recursive: true });
});

test("HEVC from a telephone: the message says what would help, and a copy plays with the same frames", async ({
  page,
  program,
}) => {
  test.skip((await findFfmpeg()) === null, "ffmpeg is not installed here");
  await beginBuild(page, program.address);
  await page.getByLabel("Drop films here").setInputFiles(path.join(data, "hevc.mp4"));
  const line = page.locator("li", { hasText: "hevc.mp4" });
  await expect(line.locator(".finding").first()).toContainText(/HEVC/);
  await line.getByRole("button", { name: "Make a copy that plays" }).click();
  await expect(line.getByRole("link", { name: "hevc.mp4" })).toBeVisible({ timeout: 60_000 });
  await line.getByRole("link", { name: "hevc.mp4" }).click();
  await expect(page.locator(".transport .frame")).toHaveText("frame 1 of 60");
  await page.keyboard.press("ArrowRight");
  await expect(page.locator(".transport .frame")).toHaveText("frame 2 of 60");
  await page.keyboard.press("f");
  await expect(page.locator(".still img")).toHaveCount(1);
});

test("the same address from elsewhere, and another origin, change nothing", async ({
  page,
  program,
  request,
}) => {
  await beginBuild(page, program.address);
  const command = {
    id: "0123456789",
    buildId: null,
    label: "x",
    puts: [{ table: "machine", id: "m", rev: 0, set: {} }],
  };
  for (const headers of [{ origin: "http://evil.example" }, { origin: "null" }, {}] as Record<
    string,
    string
  >[]) {
    const response = await request.post(`${program.address}commands`, { data: command, headers });
    expect(response.status(), JSON.stringify(headers)).toBe(403);
  }
  const misled = await request.get(program.address, { headers: { host: "workshop.example" } });
  expect(misled.status()).toBe(421);
});
