import fs from "node:fs";
import os from "node:os";
import path from "node:path";
import { test as base, expect, type Page } from "@playwright/test";
import { type Running, startProgram, stopProgram } from "./program.ts";

export const test = base.extend<{ program: Running; toleratedErrors: RegExp | null }>({
  toleratedErrors: [null, { option: true }],
  // biome-ignore lint/correctness/noEmptyPattern: Playwright reads which fixtures are asked for from this pattern
  program: async ({}, use) => {
    const folder = fs.mkdtempSync(path.join(os.tmpdir(), "workshop-"));
    const running = await startProgram(folder);
    await use(running);
    await stopProgram(running);
    fs.rmSync(folder, { recursive: true, force: true });
  },
  // The page closes before its program does, so that it never asks one that has gone.
  page: async ({ page, program: _, toleratedErrors }, use) => {
    const errors: string[] = [];
    // Listened for from the start: asked for only when a chooser opens, it can come too late.
    page.on("filechooser", () => undefined);
    page.on("pageerror", (error) => errors.push(error.message));
    page.on("console", (message) => {
      if (message.type() === "error") errors.push(message.text());
    });
    await use(page);
    // A page that throws, or asks for what its policy forbids, has failed whatever else it shows.
    const grave = errors.filter((error) => !toleratedErrors?.test(error));
    expect(grave, "errors in the browser's console").toEqual([]);
  },
});

export { expect };

/** Waits until everything done so far is on disk, by the screen's own words. */
export async function onDisk(page: Page): Promise<void> {
  await expect(page.locator(".saved[data-pending='0']").first()).toBeAttached();
}

/** Opens the demonstration in an empty workshop; gives its build's address. */
export async function openDemo(page: Page, address: string): Promise<string> {
  await page.goto(address);
  await page.getByRole("button", { name: "Open the demonstration" }).first().click();
  await page.waitForURL(/\/builds\/[^/]+\/procedure$/);
  await expect(page.locator(".procedure")).toBeVisible();
  return page.url().replace(/\/procedure$/, "");
}
