import type { IncomingMessage, ServerResponse } from "node:http";
import path from "node:path";
import { z } from "zod";
import { FolderError, readManifest } from "#lib/folder/index.ts";
import { serveFile } from "#lib/media/index.ts";
import { type OpenWorkshop, Refused } from "#lib/store/index.ts";
import {
  carriersOf,
  differencesSince,
  type OpenedRelease,
  openRelease,
  writeReading,
} from "../read-release.ts";
import { releaseBuild, releaseFolder } from "../release.ts";
import { answer, readJson } from "./answer.ts";
import { ask, askedForPath, wholePath } from "./asked.ts";

const asking = z.object({
  id: z.string().regex(/^[A-Za-z0-9_-]{8,100}$/),
  build: z.string().min(1).max(100),
  changed: z.string().max(20_000),
  again: z.string().max(20_000),
  mended: z.array(z.string().max(100)).max(10_000),
});

/**
 * Releases: POST /release makes one; GET /release/ID/NAME is a file of one, as it was published. Of one can be asked
 * what `differences` there are to another or to the build as it is, and which `carriers` say the same at a mark; POST
 * to `reading` writes it as a folder for a web server.
 */
export async function releasesDoor(
  opened: OpenWorkshop,
  req: IncomingMessage,
  res: ServerResponse,
  asked: { id: string; name: string },
): Promise<void> {
  try {
    if (asked.id === "" && req.method === "POST") {
      const today = new Date().toISOString().slice(0, 10);
      answer(res, 200, {
        rows: await releaseBuild(opened, { ...ask(asking, await readJson(req)), date: today }),
      });
    } else if (asked.name === "differences") {
      const to = new URL(req.url ?? "/", "http://localhost").searchParams.get("to");
      const from = await mustOpen(opened, asked.id);
      answer(res, 200, { differences: await differencesSince(opened, from, to) });
    } else if (asked.name === "carriers") {
      const markId = new URL(req.url ?? "/", "http://localhost").searchParams.get("mark");
      answer(res, 200, { carriers: await carriersOf(opened, await mustOpen(opened, asked.id), { markId }) });
    } else if (asked.name === "reading" && req.method === "POST") {
      const { folder } = ask(folderForm, await readJson(req), askedForPath);
      const files = await writeReading(opened, await mustOpen(opened, asked.id), folder);
      answer(res, 200, { files: files.length });
    } else await sendFile(opened, req, res, asked);
  } catch (error) {
    if (!(error instanceof FolderError)) throw error;
    const { found, expected, todo } = error;
    answer(res, 404, { found, expected, todo });
  }
}

async function mustOpen(opened: OpenWorkshop, id: string): Promise<OpenedRelease> {
  const release = await openRelease(opened, id);
  if (release) return release;
  throw new Refused({
    found: "There is no such release in this workshop.",
    expected: "A release of one of its builds.",
    todo: "Load the page again.",
  });
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

const folderForm = z.object({ folder: wholePath });
