import { randomBytes } from "node:crypto";
import { type FileHandle, open, readFile, rename, rm } from "node:fs/promises";
import type { Frames } from "#lib/time/index.ts";
import { decodeFrames, encodeFrames } from "./frames-bytes.ts";

/** Writes a frame table to disk: whole under its name, or not there. */
export async function writeFramesFile(path: string, frames: Frames): Promise<void> {
  const growing = `${path}.${randomBytes(6).toString("hex")}.part`;
  let handle: FileHandle | null = null;
  try {
    handle = await open(growing, "wx");
    await handle.writeFile(encodeFrames(frames));
    await handle.sync();
    await handle.close();
    await rename(growing, path);
  } catch (error) {
    await handle?.close().catch(() => undefined);
    await rm(growing, { force: true }).catch(() => undefined);
    throw error;
  }
}

/** Reads a frame table back. @throws MediaError `bad-frame-table`, or what reading the file throws */
export async function readFramesFile(path: string): Promise<ReturnType<typeof decodeFrames>> {
  return decodeFrames(await readFile(path));
}
