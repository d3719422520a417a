import { createHash } from "node:crypto";
import type { FileHandle } from "node:fs/promises";
import { openInside } from "./place.ts";

/** How much of either end of a file is read. */
const endBytes = 1_048_576;

/**
 * What a file is known again by before it has been read whole: the SHA-256 of its first megabyte, a point, and that
 * of its last (2²⁰ bytes each, the same where the file is shorter). A film holds the time of its making and its
 * first pictures there, so two films differ; two copies of one film do not.
 *
 * @returns an empty text for an empty file, which is not known by anything
 * @throws MediaError of a `PlaceTroubleKind`, or what reading the disk throws
 */
export async function fingerprint(root: string, path: string): Promise<string> {
  const { handle, size } = await openInside(root, path);
  try {
    if (size === 0) return "";
    const head = await hashOf(handle, 0, Math.min(size, endBytes));
    const tail = size <= endBytes ? head : await hashOf(handle, size - endBytes, endBytes);
    return `${head}.${tail}`;
  } finally {
    await handle.close();
  }
}

/** Whether two files begin alike, by their fingerprints: a file that has grown keeps its beginning. */
export function beginAlike(one: string, other: string): boolean {
  return one !== "" && one.split(".")[0] === other.split(".")[0];
}

async function hashOf(handle: FileHandle, from: number, length: number): Promise<string> {
  const { buffer, bytesRead } = await handle.read(Buffer.alloc(length), 0, length, from);
  return createHash("sha256").update(buffer.subarray(0, bytesRead)).digest("hex");
}
