import { type ChildProcess, fork } from "node:child_process";
import { projectPath, projectRoot } from "../root.ts";
import type { PrintOrder, PrintResult } from "./order.ts";

/** How long setting a print may take, in milliseconds: long enough for the longest job on a busy machine. */
const timeLimit = 600_000;

/**
 * Has a print set in a child process of its own, whose memory goes with it. Throws an error that says what to
 * do where the child fails, or does not end within the limit.
 */
export async function print(order: PrintOrder, limit = timeLimit): Promise<PrintResult & { ok: true }> {
  const child = fork(projectPath("lib", "publish", "pdf", "child.ts"), [], {
    cwd: projectRoot(),
    execArgv: ["--import", "tsx"],
    env: withoutNodeOptions(process.env),
    serialization: "advanced",
    stdio: ["ignore", "ignore", "pipe", "ipc"],
  });
  try {
    const result = await resultOf(child, order, limit);
    if (!result.ok) throw new Error(failure(result.message));
    return result;
  } finally {
    child.kill("SIGKILL");
  }
}

function resultOf(child: ChildProcess, order: PrintOrder, limit: number): Promise<PrintResult> {
  let complaint = "";
  child.stderr?.on("data", (chunk) => {
    complaint = (complaint + String(chunk)).slice(-2000);
  });
  return new Promise((resolve, reject) => {
    const fail = (found: string) => {
      clearTimeout(timer);
      reject(new Error(failure(found)));
    };
    const timer = setTimeout(
      () => fail(`it was not done after ${limit / 1000} seconds and was stopped`),
      limit,
    );
    child.once("message", (result) => {
      clearTimeout(timer);
      resolve(result as PrintResult);
    });
    child.on("error", (error) => fail(error.message));
    child.once("exit", (code, signal) => fail(`its process ended (${signal ?? code}) ${complaint}`.trim()));
    child.send(order, (error) => {
      if (error) fail(error.message);
    });
  });
}

function failure(found: string): string {
  return `The PDF could not be set: ${found}. Nothing is lost. Print the HTML file instead, or leave out what was added last and try again.`;
}

/** Options of the parent's Node, such as a debugger's, are not the child's. */
function withoutNodeOptions({ NODE_OPTIONS: _, ...env }: NodeJS.ProcessEnv): NodeJS.ProcessEnv {
  return env;
}
