import { type ChildProcess, fork } from "node:child_process";
import path from "node:path";
import type { Progress } from "#lib/store/audit/index.ts";

/** A backup or an audit that runs, or has run, as a process of its own. */
export interface KeepJob {
  state: "running" | "done" | "failed";
  progress: Progress | null;
  /** The one JSON value that the command printed; null while it runs. */
  result: unknown;
  /** Whether something was found wrong: exit code 3. */
  wrong: boolean;
  stop: () => void;
}

/**
 * Runs a command of the command line on a workshop, as another process: reading gigabytes and checking a database
 * must not hold up a mark.
 *
 * @param root the folder of the program
 * @param args the command with its options, `--json` among them
 */
export function startKeepJob(root: string, workshop: string, args: readonly string[]): KeepJob {
  const child = fork(path.join(root, "lib/cli/witness.mjs"), args, {
    cwd: root,
    env: { ...process.env, WORKSHOP_DIR: workshop },
    execArgv: [],
    silent: true,
  });
  const job: KeepJob = {
    state: "running",
    progress: null,
    result: null,
    wrong: false,
    stop: () => void child.kill("SIGTERM"),
  };
  child.on("message", (message: { progress?: Progress }) => {
    if (message.progress) job.progress = message.progress;
  });
  follow(child, job);
  return job;
}

function follow(child: ChildProcess, job: KeepJob): void {
  const printed: Buffer[] = [];
  const complained: Buffer[] = [];
  child.stdout?.on("data", (chunk: Buffer) => printed.push(chunk));
  child.stderr?.on("data", (chunk: Buffer) => complained.push(chunk));
  child.on("error", (error) => fail(job, error.message));
  child.on("close", (code) => {
    if (job.state !== "running") return;
    const text = Buffer.concat(printed).toString("utf8");
    try {
      job.result = JSON.parse(text);
    } catch {
      fail(job, Buffer.concat(complained).toString("utf8").slice(0, 2000) || `It ended early (${code}).`);
      return;
    }
    job.state = code === 0 || code === 3 ? "done" : "failed";
    job.wrong = code === 3;
  });
}

function fail(job: KeepJob, found: string): void {
  job.state = "failed";
  job.result = { found, expected: "", todo: "The workshop is as it was. Try again." };
}
