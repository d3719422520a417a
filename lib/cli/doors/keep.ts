import type { IncomingMessage, ServerResponse } from "node:http";
import path from "node:path";
import { z } from "zod";
import { type OpenWorkshop, Refused, readLastBackup } from "#lib/store/index.ts";
import { type KeepJob, startKeepJob } from "../keep-job.ts";
import { answer, readJson } from "./answer.ts";

const wanted = {
  backup: z.object({ folder: z.string().min(1).max(4000) }),
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
  if (req.method === "POST" && jobs.get(name)?.state !== "running") {
    jobs.set(name, startKeepJob(root, opened.workshop.folder, await argumentsOf(kind, req)));
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
  const { folder } = ask(wanted.backup, body);
  if (!path.isAbsolute(folder)) {
    throw new Refused({
      found: `“${folder}” does not say where on this computer it is.`,
      expected: "A whole path, from the drive or the root down.",
      todo: "Copy the path from the file manager.",
    });
  }
  // After "--" a path is a path, whatever it begins with.
  return ["backup", "--json", "--", folder];
}

function ask<T>(form: z.ZodType<T>, value: unknown): T {
  const asked = form.safeParse(value);
  if (asked.success) return asked.data;
  const issue = asked.error.issues[0];
  throw new Refused({
    found: `The ${issue?.path.join(".") || "request"} does not fit: ${issue?.message}.`,
    expected: "The whole path of a folder on this computer.",
    todo: "Copy the path from the file manager.",
  });
}
