import type { IncomingMessage, ServerResponse } from "node:http";
import { z } from "zod";
import { type OpenWorkshop, readLastBackup } from "#lib/store/index.ts";
import { type KeepJob, startKeepJob } from "../keep-job.ts";
import { answer, readJson } from "./answer.ts";
import { ask, askedForPath, wholePath } from "./asked.ts";

const wanted = {
  backup: z.object({ folder: wholePath }),
  audit: z.object({ rebuild: z.boolean().default(false), films: z.boolean().default(false) }),
};
type Kind = keyof typeof wanted;

/** The last backup and the last audit that this process has begun, for each workshop. */
const jobs = new Map<string, KeepJob>();

/**
 * Backup and audit: POST begins one, GET says how far it is and what came of it, DELETE stops it. A second POST while
 * one runs begins nothing.
 */
export async function keepDoor(
  opened: OpenWorkshop,
  req: IncomingMessage,
  res: ServerResponse,
  { kind, root }: { kind: string; root: string },
): Promise<void> {
  if (kind !== "backup" && kind !== "audit") {
    answer(res, 404, { found: "Nothing is kept there.", expected: "", todo: "" });
    return;
  }
  const name = `${kind} ${opened.workshop.folder}`;
  if (req.method === "DELETE") jobs.get(name)?.stop();
  if (req.method === "POST") {
    const args = await argumentsOf(kind, req);
    // Between this question and its answer nothing is waited for: of two that come at once, one begins.
    if (jobs.get(name)?.state !== "running") jobs.set(name, startKeepJob(root, opened.workshop.folder, args));
  }
  const job = jobs.get(name);
  answer(res, 200, {
    state: job?.state ?? "none",
    progress: job?.progress ?? null,
    result: job?.result ?? null,
    wrong: job?.wrong ?? false,
    last: await readLastBackup(opened.client),
  });
}

async function argumentsOf(kind: Kind, req: IncomingMessage): Promise<string[]> {
  const body = await readJson(req);
  if (kind === "audit") {
    const { rebuild, films } = ask(wanted.audit, body);
    return ["audit", "--json", ...(rebuild ? ["--rebuild"] : []), ...(films ? ["--films"] : [])];
  }
  const { folder } = ask(wanted.backup, body, askedForPath);
  // After "--" a path is a path, whatever it begins with.
  return ["backup", "--json", "--", folder];
}
