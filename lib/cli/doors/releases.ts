import type { IncomingMessage, ServerResponse } from "node:http";
import path from "node:path";
import { z } from "zod";
import { FolderError, readManifest } from "#lib/folder/index.ts";
import { serveFile } from "#lib/media/index.ts";
import { type OpenWorkshop, Refused } from "#lib/store/index.ts";
import { releaseBuild, releaseFolder } from "../release.ts";
import { answer, readJson } from "./answer.ts";

const asking = z.object({
  id: z.string().regex(/^[A-Za-z0-9_-]{8,100}$/),
  build: z.string().min(1).max(100),
  changed: z.string().max(20_000),
  again: z.string().max(20_000),
  mended: z.array(z.string().max(100)).max(10_000),
});

/** Releases: POST /release makes one; GET /release/ID/NAME is a file of one, as it was published. */
export async function releasesDoor(
  opened: OpenWorkshop,
  req: IncomingMessage,
  res: ServerResponse,
  asked: { id: string; name: string },
): Promise<void> {
  try {
    if (asked.id === "" && req.method === "POST") {
      const today = new Date().toISOString().slice(0, 10);
      answer(res, 200, { rows: await releaseBuild(opened, { ...ask(await readJson(req)), date: today }) });
    } else await sendFile(opened, req, res, asked);
  } catch (error) {
    if (!(error instanceof FolderError)) throw error;
    const { found, expected, todo } = error;
    answer(res, 404, { found, expected, todo });
  }
}

/** Only what the release itself names is sent. */
async function sendFile(
  { workshop }: OpenWorkshop,
  req: IncomingMessage,
  res: ServerResponse,
  { id, name }: { id: string; name: string },
): Promise<void> {
  const folder = releaseFolder(workshop, id);
  const manifest = await readManifest(folder);
  const file = manifest.files.find((one) => one.path === name);
  if (!file) {
    answer(res, 404, { found: "The release has no such file.", expected: "", todo: "" });
    return;
  }
  const stem = name.replace(/\.[^.]*$/, "");
  const ending = path.extname(name);
  const shown = `${manifest.title} ${manifest.revision} ${stem}${ending}`.replace(
    /[^\x20-\x7e]|["\\/]/g,
    "_",
  );
  await serveFile(req, res, {
    file: path.join(folder, ...file.path.split("/")),
    type: typeOf(name),
    headers: {
      "content-disposition": `attachment; filename="${shown}"`,
      "cache-control": "private, max-age=31536000, immutable",
    },
  });
}

function typeOf(name: string): string {
  const types: Record<string, string> = {
    ".pdf": "application/pdf",
    ".html": "text/html; charset=utf-8",
    ".md": "text/markdown; charset=utf-8",
    ".csv": "text/csv; charset=utf-8",
    ".json": "application/json",
    ".jpg": "image/jpeg",
  };
  return types[path.extname(name)] ?? "application/octet-stream";
}

function ask(value: unknown): z.infer<typeof asking> {
  const asked = asking.safeParse(value);
  if (asked.success) return asked.data;
  const issue = asked.error.issues[0];
  throw new Refused({
    found: `The ${issue?.path.join(".") || "request"} does not fit: ${issue?.message}.`,
    expected: "What changed, what has to be done again, and the reports that are mended.",
    todo: "Load the page again.",
  });
}
