import { spawnSync } from "node:child_process";
import { createHash, randomBytes } from "node:crypto";
import fs from "node:fs";
import os from "node:os";
import path from "node:path";
import { setTimeout as sleep } from "node:timers/promises";
import { chromium } from "@playwright/test";
import { newBuild, newMachine, newSitting } from "#lib/build/index.ts";
import type { TableName } from "#lib/store/tables.ts";
import { startProgram, stopProgram } from "../e2e/program.ts";
import type { BenchLine } from "./measure.ts";

const film = fs.readFileSync(path.resolve("tests/fixtures/video/data/constant-25.mp4"));
const GB = 1e9;
const seconds = (ms: number) => `${(ms / 1000).toFixed(1)} s`;
const megabytes = (bytes: number) => `${Math.round(bytes / 1e6)} MB`;

/** A film made longer by a free box of 64-bit length (ISO/IEC 14496-12, 4.2 and 8.1.2). */
function header(bytes: number): Buffer {
  const box = Buffer.from("00000001667265650000000000000000", "hex");
  box.writeBigUInt64BE(BigInt(bytes - film.length), 8);
  return Buffer.concat([film, box]);
}

/** A film of that many bytes that takes no room: what it is made longer by is a hole. */
function sparseFilm(file: string, bytes: number): void {
  fs.writeFileSync(file, header(bytes));
  fs.truncateSync(file, bytes);
}

/** A film of that many bytes of noise. @returns its SHA-256 */
function noisyFilm(file: string, bytes: number): string {
  const noise = randomBytes(64_000_000);
  const hash = createHash("sha256");
  const out = fs.openSync(file, "w");
  let left = bytes;
  for (let piece = header(bytes); left > 0; piece = noise.subarray(0, Math.min(left, noise.length))) {
    fs.writeSync(out, piece);
    hash.update(piece);
    left -= piece.length;
  }
  fs.closeSync(out);
  return hash.digest("hex");
}

/** An empty build in a running program. */
async function begin(address: string): Promise<{ build: string; sitting: string }> {
  const put = (table: TableName, row: { id: string; rev: number }) => ({
    table,
    id: row.id,
    rev: 0,
    set: row,
  });
  const puts = [
    put("machine", newMachine({ id: "machine-1", name: "Trial engine" })),
    put("build", newBuild({ id: "build-1", machineId: "machine-1", title: "Water pump" })),
    put("sitting", newSitting({ id: "sitting-1", buildId: "build-1", title: "First evening" })),
  ];
  await post(address, "commands", { id: crypto.randomUUID(), buildId: "build-1", label: "begin", puts });
  return { build: "build-1", sitting: "sitting-1" };
}

async function post(address: string, door: string, body: unknown): Promise<Record<string, unknown>> {
  const headers = { "content-type": "application/json", origin: new URL(address).origin };
  const response = await fetch(address + door, { method: "POST", headers, body: JSON.stringify(body) });
  if (!response.ok) throw new Error(await response.text());
  return (await response.json()) as Record<string, unknown>;
}

/** The memory that a process holds, in bytes; null where the system does not tell. */
function memoryOf(pid: number | undefined): number | null {
  const status = fs.existsSync(`/proc/${pid}/status`) ? fs.readFileSync(`/proc/${pid}/status`, "utf8") : "";
  const found = /VmRSS:\s+(\d+) kB/.exec(status);
  return found && Number(found[1]) * 1024;
}

function copyTime(from: string, to: string): number {
  const start = performance.now();
  spawnSync("cp", [from, to]);
  fs.fsyncSync(fs.openSync(to, "r+"));
  const took = performance.now() - start;
  fs.rmSync(to);
  return took;
}

export const listingLine: BenchLine = {
  name: "a folder listed in place, until its films can be used",
  measure: async () => {
    const base = fs.mkdtempSync(path.join(os.tmpdir(), "bench-"));
    const many = path.join(base, "many");
    fs.mkdirSync(many);
    for (let number = 0; number < 3000; number++) {
      const file = path.join(many, `${number}.mp4`);
      sparseFilm(file, 0.1 * GB);
      // Films differ, in what they hold and in when they were made.
      fs.appendFileSync(file, String(number));
      fs.utimesSync(file, 1e9 + 60 * number, 1e9 + 60 * number);
    }
    const one = path.join(base, "one");
    fs.mkdirSync(one);
    sparseFilm(path.join(one, "long.mp4"), 10 * GB);
    const running = await startProgram(path.join(base, "workshop"));
    const at = await begin(running.address);
    const said: string[] = [];
    const list = async (folder: string) => {
      const start = performance.now();
      const { listed } = await post(running.address, "media/folders", { ...at, folder });
      return { listed, took: performance.now() - start };
    };
    const start = performance.now();
    const { took } = await list(one);
    const lookedAt = async (count: number) => {
      for (let looked = 0; looked < count; await sleep(count > 1 ? 500 : 20)) {
        const now = await (await fetch(`${running.address}media/index?build=build-1&since=1e9`)).json();
        looked = (now as { looked: number }).looked;
      }
    };
    await lookedAt(1);
    said.push(
      `one film of 10 GB: listed in ${seconds(took)}, its frames known after ${seconds(performance.now() - start)} (goal: under 5 s)`,
    );
    const all = await list(many);
    said.push(`${all.listed} films, 300 GB: listed in ${seconds(all.took)}`);
    const again = await list(many);
    said.push(`the same once more, all known: ${seconds(again.took)}`);
    const lookStart = performance.now();
    await lookedAt(3001);
    said.push(`all looked at after ${seconds(performance.now() - lookStart)}`);
    fs.renameSync(many, `${many} moved`);
    const moved = await list(`${many} moved`);
    said.push(`the same under another name of their folder, all known again: ${seconds(moved.took)}`);
    await stopProgram(running);
    fs.rmSync(base, { recursive: true, force: true });
    return said;
  },
};

export const bringInLine: BenchLine = {
  name: "3 GB brought in through the browser, until they are verified and listed",
  measure: async () => {
    const base = fs.mkdtempSync(path.join(os.tmpdir(), "bench-"));
    const file = path.join(base, "strip down.mp4");
    const sha256 = noisyFilm(file, 3 * GB);
    const copied = copyTime(file, path.join(base, "copy.mp4"));
    const running = await startProgram(path.join(base, "workshop"));
    const { build } = await begin(running.address);
    const browser = await chromium.launch({
      ...(process.env.CHROMIUM_PATH ? { executablePath: process.env.CHROMIUM_PATH } : {}),
      args: ["--no-sandbox"],
    });
    const page = await browser.newPage();
    await page.goto(`${running.address}builds/${build}`);
    const before = memoryOf(running.process.pid);
    let most = before ?? 0;
    const watch = setInterval(() => {
      most = Math.max(most, memoryOf(running.process.pid) ?? 0);
    }, 100);
    const start = performance.now();
    await page.getByLabel("Drop films here").setInputFiles(file);
    await page.getByRole("link", { name: "strip down.mp4" }).waitFor({ timeout: 600_000 });
    const took = performance.now() - start;
    clearInterval(watch);
    const kept = path.join(running.folder, "recordings", "strip down.mp4");
    const same = spawnSync("sha256sum", [kept], { encoding: "utf8" }).stdout.startsWith(sha256);
    await browser.close();
    await stopProgram(running);
    fs.rmSync(base, { recursive: true, force: true });
    return [
      `${seconds(took)}; cp and sync of the same: ${seconds(copied)} (${(copied / took).toFixed(2)} of its speed)`,
      `bytes on disk ${same ? "are" : "ARE NOT"} the bytes of the file, by sha256sum`,
      before === null
        ? "this system does not tell how much memory a process holds"
        : `memory of the program: ${megabytes(before)} before, at most ${megabytes(most)} meanwhile: ${megabytes(most - before)} for the film (goal: under 300 MB)`,
    ];
  },
};
