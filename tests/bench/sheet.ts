import fs from "node:fs";
import os from "node:os";
import path from "node:path";
import { chromium } from "@playwright/test";
import { startProgram, stopProgram } from "../e2e/program.ts";
import { bringIn } from "./bring.ts";
import { documentWith } from "./many.ts";
import { type BenchLine, ms } from "./measure.ts";

const SECONDS = 125;

interface TraceEvent {
  name: string;
  dur?: number;
  ph: string;
  tid: number;
}

/** The longest tasks of the page's main thread while the sheet is scrolled, marked on and played, by tracing. */
async function longestTasks(address: string): Promise<number[]> {
  const browser = await chromium.launch({
    executablePath: process.env.CHROMIUM_PATH,
    args: [
      "--no-sandbox",
      "--disable-gpu",
      "--disable-background-networking",
      "--autoplay-policy=no-user-gesture-required",
    ],
  });
  const page = await browser.newPage({ viewport: { width: 1440, height: 900 } });
  await page.goto(address);
  await page.locator(".log-row").first().waitFor();
  await page.locator(".transport .frame").filter({ hasText: /frame/ }).waitFor();
  await page.waitForTimeout(2000);
  await browser.startTracing(page, {
    categories: ["devtools.timeline", "toplevel", "disabled-by-default-devtools.timeline"],
  });
  await page.keyboard.press("r");
  for (let turn = 0; turn < 30; turn++) {
    await page.mouse.move(400, 400);
    await page.mouse.wheel(0, turn % 2 ? -900 : 1500);
    await page.waitForTimeout(60);
    if (turn % 3 === 0) await page.keyboard.press(["s", "p", "m", " "][turn % 4] as string);
    if (turn % 5 === 0) await page.keyboard.press("ArrowDown");
    await page.waitForTimeout(60);
  }
  await page.keyboard.press("Enter");
  await page.keyboard.type("Undo the four nuts", { delay: 40 });
  await page.waitForTimeout(800);
  const trace = JSON.parse((await browser.stopTracing()).toString()) as {
    traceEvents: (TraceEvent & { args?: { name?: string } })[];
  };
  await browser.close();
  const main = new Set(
    trace.traceEvents
      .filter((one) => one.name === "thread_name" && one.args?.name === "CrRendererMain")
      .map((one) => one.tid),
  );
  return trace.traceEvents
    .filter((one) => one.ph === "X" && main.has(one.tid) && one.name === "RunTask")
    .map((one) => (one.dur ?? 0) / 1000)
    .sort((a, b) => b - a);
}

export const sheetLine: BenchLine = {
  name: "the log sheet with 2,000 marks on one recording: tasks of the main thread while scrolling, marking, playing",
  measure: async () => {
    const said: string[] = [];
    for (const count of [200, 2000]) {
      const folder = fs.mkdtempSync(path.join(os.tmpdir(), "bench-"));
      const running = await startProgram(path.join(folder, "workshop"));
      const build = await bringIn(documentWith(count, SECONDS), running);
      const tasks = await longestTasks(`${build}/sittings/sitting-1`);
      const over = tasks.filter((one) => one > 100).length;
      said.push(
        `${count} marks: longest ${tasks.slice(0, 5).map(ms).join(", ")}; ${over} of ${tasks.length} tasks above 100 ms`,
      );
      await stopProgram(running);
      fs.rmSync(folder, { recursive: true, force: true });
    }
    return said;
  },
};
