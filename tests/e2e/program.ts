import { type ChildProcess, spawn } from "node:child_process";
import path from "node:path";

const root = path.resolve(import.meta.dirname, "..", "..");

/** As `npm start` has it: what is thrown away soon is swept up sooner, which costs little and saves 40 MB. */
const flags = ["--max-semi-space-size=2"];

/** The program, running on a workshop of its own. */
export interface Running {
  address: string;
  folder: string;
  process: ChildProcess;
}

/** Starts the program as `npm start` does, once everything is built, on a free port. */
export async function startProgram(folder: string, env: Record<string, string> = {}): Promise<Running> {
  const child = spawn(process.execPath, [...flags, "lib/cli/start.mjs"], {
    cwd: root,
    env: { ...process.env, WORKSHOP_DIR: folder, PORT: "0", ...env },
    stdio: ["ignore", "pipe", "pipe"],
  });
  const said: string[] = [];
  child.stderr.on("data", (chunk: Buffer) => said.push(chunk.toString()));
  const address = await new Promise<string>((resolve, reject) => {
    child.stdout.on("data", (chunk: Buffer) => {
      said.push(chunk.toString());
      const found = /http:\/\/127\.0\.0\.1:\d+\//.exec(said.join(""));
      if (found) resolve(found[0]);
    });
    child.once("exit", (code) => reject(new Error(`the program ended with ${code}: ${said.join("")}`)));
  });
  return { address, folder, process: child };
}

export async function stopProgram(running: Running, signal: NodeJS.Signals = "SIGTERM"): Promise<void> {
  if (running.process.exitCode !== null || running.process.signalCode !== null) return;
  const gone = new Promise((resolve) => running.process.once("exit", resolve));
  running.process.kill(signal);
  await gone;
}
