import { type ChildProcess, fork } from "node:child_process";
import fs from "node:fs";
import path from "node:path";

/** A process that is ready to begin. */
interface Ready {
  process: ChildProcess;
  ready: Promise<unknown>;
  complaints: Buffer[];
}

/** What a process acknowledged before it ended. */
export interface Ended<Acknowledged> {
  acknowledged: Acknowledged[];
  /** Whether it was killed; false when it had done all its work before. */
  killed: boolean;
}

const root = process.cwd();

/** How often something is done: the full count with LONG=1, else a part of it. */
export const times = (ordinary: number, full: number) => (process.env.LONG ? full : ordinary);

/** How long a test of full counts may take, in milliseconds. */
export const patience = 7_200_000;

/** Says what a run came to. What was acknowledged was looked for one by one, and a missing one has thrown. */
export function tell(what: string, { kills, acknowledged }: { kills: number; acknowledged: number }): void {
  console.log(`${what}: killed ${kills} times; ${acknowledged} acknowledged, ${acknowledged} found`);
}

/**
 * Bundles the code of the processes, which then start in half the time. esbuild comes with tsx. What is bundled must
 * lie in the project, so that packages are found from there.
 *
 * @returns the file to start, and the way to take it away again
 */
export async function bundleChild(): Promise<{ file: string; remove: () => void }> {
  const { build } = await import("esbuild");
  const folder = path.join(root, ".stamp", `kill-${process.pid}`);
  const entry = path.join(import.meta.dirname, "child.ts");
  const form = {
    bundle: true,
    splitting: true,
    platform: "node",
    format: "esm",
    packages: "external",
  } as const;
  await build({ entryPoints: [entry], outdir: folder, ...form });
  return {
    file: path.join(folder, "child.js"),
    remove: () => fs.rmSync(folder, { recursive: true, force: true }),
  };
}

/** Starts a process that will do this work, and has everything loaded when it is ready. */
export function startChild(work: string, file = path.join(import.meta.dirname, "child.ts")): Ready {
  const execArgv = file.endsWith(".ts") ? ["--import", "tsx"] : [];
  const child = fork(file, [work], { cwd: root, execArgv, silent: true });
  const complaints: Buffer[] = [];
  child.stderr?.on("data", (chunk: Buffer) => complaints.push(chunk));
  return { process: child, ready: new Promise((resolve) => child.once("message", resolve)), complaints };
}

/** When to kill: so long after so many acknowledgements. Whatever moment that hits, nothing may be lost. */
export interface Moment {
  acknowledgements: number;
  milliseconds: number;
}

/** Gives a process its order, lets it work, and kills it with SIGKILL at that moment; without one lets it end. */
export async function runChild<Acknowledged>(
  { process: child, ready, complaints }: Ready,
  order: object,
  moment: Moment | null,
): Promise<Ended<Acknowledged>> {
  await ready;
  let said = "";
  let due: NodeJS.Timeout | undefined;
  const killWhenDue = () => {
    if (!moment || due || said.split("\n").length - 1 < moment.acknowledgements) return;
    due = setTimeout(() => child.kill("SIGKILL"), moment.milliseconds);
  };
  child.stdout?.on("data", (chunk: Buffer) => {
    said += chunk.toString();
    killWhenDue();
  });
  const closed = new Promise<void>((resolve) => child.once("close", () => resolve()));
  child.send(order);
  killWhenDue();
  await closed;
  clearTimeout(due);
  if (child.exitCode !== null && child.exitCode !== 0) {
    throw new Error(`The process failed by itself: ${Buffer.concat(complaints).toString()}`);
  }
  // A line that was cut by the kill was not said.
  const lines = said.split("\n").slice(0, -1);
  return { acknowledged: lines.map((line) => JSON.parse(line)), killed: child.signalCode === "SIGKILL" };
}

export interface Killing<Acknowledged> {
  work: string;
  /** The file to start, where the code has been bundled. */
  file?: string;
  /** How many kills. A run that ends before its moment comes is looked at too, and does not count. */
  times: number;
  random: () => number;
  /** The most acknowledgements, and the most milliseconds after one, before it is killed. */
  within: Moment;
  order: (run: number) => object;
  /** What must be true after each kill. */
  look: (ended: Ended<Acknowledged>, run: number) => Promise<void>;
}

/**
 * Lets a process work and kills it, again and again, at moments that follow from a seed. The next process loads its
 * code while one works.
 *
 * @returns how often it was killed in the midst of its work, and how much was acknowledged in all
 */
export async function killAgainAndAgain<Acknowledged>(
  killing: Killing<Acknowledged>,
): Promise<{ kills: number; acknowledged: number }> {
  const { work, file, times, random, within, order, look } = killing;
  const counts = { kills: 0, acknowledged: 0 };
  const waiting: Ready[] = [];
  try {
    for (let run = 0; counts.kills < times; run++) {
      if (run >= 5 * times)
        throw new Error(`Only ${counts.kills} of ${run} runs lasted until they were killed.`);
      while (waiting.length < Math.min(2, times - counts.kills)) waiting.push(startChild(work, file));
      const child = waiting.shift() as Ready;
      const moment = {
        acknowledgements: Math.floor(random() * (within.acknowledgements + 1)),
        milliseconds: random() * within.milliseconds,
      };
      const ended = await runChild<Acknowledged>(child, order(run), moment);
      if (ended.killed) counts.kills += 1;
      counts.acknowledged += ended.acknowledged.length;
      await look(ended, run);
    }
  } finally {
    for (const { process: unused } of waiting) unused.kill("SIGKILL");
  }
  return counts;
}
