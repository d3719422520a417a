import { createHash } from "node:crypto";
import fs, { type FileHandle } from "node:fs/promises";
import path from "node:path";
import { errorCode, openInside } from "#lib/media/index.ts";

/** A file below a folder, by its path from there with `/` on every system. */
export interface FoundFile {
  path: string;
  bytes: number;
}

/** What lies below a folder. */
export interface Tree {
  files: FoundFile[];
  /** What is no plain file, or cannot be read, or is still growing: see {@link isUnfinished}. */
  leftOut: { path: string; why: string }[];
}

/** Everything below a folder, by path; an empty tree where there is no such folder. No link is followed. */
export async function walk(folder: string, below = ""): Promise<Tree> {
  const tree: Tree = { files: [], leftOut: [] };
  const entries = await fs.readdir(path.join(folder, below), { withFileTypes: true }).catch((error) => {
    if (errorCode(error) !== "ENOENT") tree.leftOut.push({ path: below, why: errorCode(error) });
    return [];
  });
  for (const entry of entries.sort((a, b) => (a.name < b.name ? -1 : 1))) {
    const place = below === "" ? entry.name : `${below}/${entry.name}`;
    if (isUnfinished(entry.name)) {
      if (!(await isEmptyFolder(path.join(folder, place))))
        tree.leftOut.push({ path: place, why: hiddenOrUnfinished });
    } else if (entry.isDirectory()) {
      const inner = await walk(folder, place);
      tree.files.push(...inner.files);
      tree.leftOut.push(...inner.leftOut);
    } else if (entry.isFile()) {
      const stats = await fs.stat(path.join(folder, place)).catch(() => null);
      if (stats) tree.files.push({ path: place, bytes: stats.size });
    } else tree.leftOut.push({ path: place, why: "a link or a device, not a file" });
  }
  return tree;
}

async function isEmptyFolder(folder: string): Promise<boolean> {
  const names = await fs.readdir(folder).catch(() => ["a file"]);
  return names.length === 0;
}

/** Why something that is still growing is left out: nothing names it yet. */
export const hiddenOrUnfinished = "hidden or unfinished";

/** A name under which something grows until it is whole, or that a system hides. */
export function isUnfinished(name: string): boolean {
  return name.startsWith(".") || /\.[0-9a-f-]{36}\.part$/.test(name);
}

/** What the bytes of a file come to. */
export interface Digest {
  bytes: number;
  /** SHA-256, lower-case hexadecimal. */
  sha256: string;
}

/**
 * Reads a file below a folder to its end.
 *
 * @param onBytes told of each piece that was read
 * @throws MediaError where it is not there, no plain file, or leads out of the folder; the system's error where its
 *   bytes cannot be read
 */
export async function digest(
  folder: string,
  place: string,
  onBytes?: (bytes: number) => void,
): Promise<Digest> {
  const { handle } = await openInside(folder, place);
  return readThrough(handle, async (chunk) => onBytes?.(chunk.length));
}

/**
 * Copies a file below one folder to the same path below another. It is on disk when this returns, with the time of
 * change of the original. What lies there already is never replaced.
 */
export async function copyWhole(
  from: string,
  to: string,
  place: string,
  onBytes?: (bytes: number) => void,
): Promise<Digest> {
  const target = path.join(to, ...place.split("/"));
  await fs.mkdir(path.dirname(target), { recursive: true });
  const written = await fs.open(target, "wx");
  try {
    const { handle } = await openInside(from, place);
    const { atimeMs, mtimeMs } = await handle.stat();
    const read = await readThrough(handle, async (chunk) => {
      await written.writeFile(chunk);
      onBytes?.(chunk.length);
    });
    await written.utimes(atimeMs / 1000, mtimeMs / 1000);
    await written.sync();
    return read;
  } finally {
    await written.close();
  }
}

async function readThrough(
  handle: FileHandle,
  onChunk: (chunk: Buffer) => Promise<unknown>,
): Promise<Digest> {
  const hash = createHash("sha256");
  let bytes = 0;
  const stream = handle.createReadStream({ start: 0, highWaterMark: 1 << 20 });
  for await (const chunk of stream as AsyncIterable<Buffer>) {
    hash.update(chunk);
    await onChunk(chunk);
    bytes += chunk.length;
  }
  return { bytes, sha256: hash.digest("hex") };
}

/** Writes a new file and puts it on disk. */
export async function writeWhole(file: string, text: string): Promise<void> {
  await fs.mkdir(path.dirname(file), { recursive: true });
  const handle = await fs.open(file, "wx");
  try {
    await handle.writeFile(text);
    await handle.sync();
  } finally {
    await handle.close();
  }
}

/** Whether an error says that a drive takes nothing more. */
export function isFull(error: unknown): boolean {
  return /^(ENOSPC|EDQUOT|EFBIG|SQLITE_FULL|EROFS)$/.test(errorCode(error));
}
