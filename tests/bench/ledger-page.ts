import fs from "node:fs";
import os from "node:os";
import path from "node:path";
import { chromium } from "@playwright/test";
import { startProgram, stopProgram } from "../e2e/program.ts";
import { bringIn } from "./bring.ts";
import { largeBuild } from "./ledger.ts";
import { type BenchLine, median, ms, time } from "./measure.ts";

/** From the press of "Fitted now" until the part stands as on, without a reload; milliseconds, each another part. */
async function untilItFollows(build: string): Promise<number[]> {
  const browser = await chromium.launch({
    executablePath: process.env.CHROMIUM_PATH,
    args: ["--no-sandbox", "--disable-gpu", "--disable-background-networking"],
  });
  const page = await browser.newPage({ viewport: { width: 1440, height: 900 } });
  await page.goto(`${build}/parts`);
  await page.locator(".assembly button", { hasText: "Fitted now" }).first().waitFor();
  // Nothing is named in here: the page knows nothing of what a compiler keeps names with.
  const times = await page.evaluate(async () => {
    const waited: number[] = [];
    for (let turn = 0; turn < 6; turn++) {
      const left = document.querySelectorAll(".assembly li > button").length;
      const start = performance.now();
      document.querySelector<HTMLButtonElement>(".assembly li > button")?.click();
      while (document.querySelectorAll(".assembly li > button").length === left) {
        await new Promise(requestAnimationFrame);
      }
      if (turn > 0) waited.push(performance.now() - start);
    }
    return waited;
  });
  await browser.close();
  return times;
}

export const ledgerPageLine: BenchLine = {
  name: "the ledger page of 500 parts and 800 events, served and followed",
  measure: async () => {
    const folder = fs.mkdtempSync(path.join(os.tmpdir(), "bench-"));
    const running = await startProgram(path.join(folder, "workshop"));
    const build = await bringIn(largeBuild(), running);
    const page = await time(15, async () => (await fetch(`${build}/parts`)).text());
    const rows = await time(15, async () => (await fetch(`${build}/document`)).text());
    const followed = await untilItFollows(build);
    await stopProgram(running);
    fs.rmSync(folder, { recursive: true, force: true });
    return [
      `server: the page ${ms(page)}, what it shows ${ms(rows)}, together ${ms(page + rows)} (100 ms are allowed)`,
      `browser: ${ms(median(followed))} from a mark made on the page until the page shows it, without a reload`,
    ];
  },
};
