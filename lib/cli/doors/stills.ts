import fs from "node:fs/promises";
import type { IncomingMessage, ServerResponse } from "node:http";
import path from "node:path";
import { bakePicture, serveFile, syncFolder } from "#lib/media/index.ts";
import type { OpenWorkshop, Workshop } from "#lib/store/index.ts";
import { answer, readBody } from "./answer.ts";

/** The largest picture file that is taken, in bytes. */
const MOST_BYTES = 80_000_000;

export function stillPath(workshop: Workshop, sha256: string): string {
  return path.join(workshop.stills, `${sha256}.jpg`);
}

/**
 * Puts a still's bytes away under their own hash; on disk when this returns. The same picture is kept once; a file of
 * that name which has been damaged is replaced.
 */
export async function keepStill(workshop: Workshop, sha256: string, jpeg: Uint8Array): Promise<void> {
  const file = stillPath(workshop, sha256);
  if ((await fs.readFile(file).catch(() => null))?.equals(jpeg)) return;
  const growing = `${file}.${crypto.randomUUID()}.part`;
  const handle = await fs.open(growing, "wx");
  try {
    await handle.writeFile(jpeg);
    await handle.sync();
  } finally {
    await handle.close();
  }
  await fs.rename(growing, file);
  await syncFolder(workshop.stills);
}

/** Takes a picture, turns it upright, takes off what a camera wrote beside it, and keeps it. */
export async function takePicture(
  { workshop }: OpenWorkshop,
  req: IncomingMessage,
  res: ServerResponse,
): Promise<void> {
  const { jpeg, width, height, sha256 } = await bakePicture(await readBody(req, MOST_BYTES));
  await keepStill(workshop, sha256, jpeg);
  answer(res, 200, { sha256, width, height });
}

export async function serveStill(
  { workshop }: OpenWorkshop,
  req: IncomingMessage,
  res: ServerResponse,
  sha256: string,
): Promise<void> {
  const file = stillPath(workshop, sha256);
  if (!/^[0-9a-f]{64}$/.test(sha256) || !(await fs.stat(file).catch(() => null))) {
    answer(res, 404, { found: "No such still.", expected: "", todo: "" });
    return;
  }
  // A still is named by its own hash, so that it never changes under its address.
  await serveFile(req, res, {
    file,
    type: "image/jpeg",
    headers: { "cache-control": "private, max-age=31536000, immutable" },
  });
}
