import path from "node:path";
import { type Finding, sayCount } from "#lib/finding/index.ts";
import type { Progress } from "#lib/store/audit/index.ts";
import { Refused, type Workshop, workshopAt, workshopFolder } from "#lib/store/index.ts";
import { DONE, UsageError, WRONG } from "./usage.ts";

/** What backup, restore and audit have in common: which workshop, how far it is, what was found. */

/** The options that all three take. */
export const keepingOptions = {
  workshop: { type: "string" },
  json: { type: "boolean", default: false },
} as const;

export function workshopOf(named: string | undefined): Workshop {
  if (named === "") throw new UsageError("--workshop names the workshop's folder.");
  return workshopAt(named === undefined ? workshopFolder() : path.resolve(named));
}

/** The folder of this program, where the migrations lie. */
export function programRoot(): string {
  return process.env.WITNESS_MARK_ROOT ?? process.cwd();
}

/**
 * Tells how far the work is: to the process that started this one, or to a person at a terminal. Standard output
 * carries the result alone.
 */
export function progressTeller(): (progress: Progress) => void {
  let told = 0;
  let words = "";
  return (progress) => {
    const now = Date.now();
    if (now - told < 200 && progress.words === words) return;
    told = now;
    words = progress.words;
    if (process.send) process.send({ progress });
    else if (process.stderr.isTTY) process.stderr.write(`\r\u001b[K${sayProgress(progress)}`);
  };
}

function sayProgress({ words, done, of }: Progress): string {
  return of > 0 ? `${words}: ${Math.floor((done / of) * 100)} %` : words;
}

/** A signal that a stop from outside sets, so that what was begun is taken away again. */
export function stopSignal(): AbortSignal {
  const controller = new AbortController();
  const stop = () =>
    controller.abort(
      new Refused({ found: "Stopped.", expected: "", todo: "What had been written was taken away again." }),
    );
  process.once("SIGINT", stop);
  process.once("SIGTERM", stop);
  return controller.signal;
}

/** Prints what was found, in words. */
export function printFindings(findings: readonly Finding[]): void {
  for (const { severity, found, expected, todo } of findings) {
    console.log(`  ${severity}: ${found}\n      expected: ${expected}\n      do: ${todo}`);
  }
  if (findings.length > 0) console.log(`Found: ${sayCount(findings)}.`);
}

/** The exit code for what was found. */
export function codeOf(findings: readonly Finding[]): number {
  return findings.some((one) => one.severity === "wrong") ? WRONG : DONE;
}
