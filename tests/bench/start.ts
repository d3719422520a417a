import fs from "node:fs";
import os from "node:os";
import path from "node:path";
import { startProgram, stopProgram } from "../e2e/program.ts";
import { type BenchLine, median, ms } from "./measure.ts";

export const startLine: BenchLine = {
  name: "npm start, everything built, until the address is printed and the first screen answers",
  measure: async () => {
    const folder = fs.mkdtempSync(path.join(os.tmpdir(), "bench-"));
    const times: number[] = [];
    for (let turn = 0; turn < 4; turn++) {
      const start = performance.now();
      const running = await startProgram(folder);
      await (await fetch(running.address)).text();
      if (turn > 0) times.push(performance.now() - start);
      await stopProgram(running);
    }
    fs.rmSync(folder, { recursive: true, force: true });
    return [`${ms(median(times))} (goal: under 2 s)`];
  },
};
