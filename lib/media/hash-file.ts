import { createHash } from "node:crypto";
import { openInside } from "./place.ts";
import { MediaError, sayBytes } from "./trouble.ts";

export interface HashOptions {
  signal?: AbortSignal;
  /** Told after each piece how many bytes have been read; what it returns is waited for, so that others may go first. */
  onBytes?: (read: number, size: number) => unknown;
}

/** What the bytes of a file come to. */
export interface FileHash {
  /** Lower-case hexadecimal. */
  sha256: string;
  /** Bytes. */
  size: number;
  /** Time of change, in whole milliseconds since 1970. */
  mtimeMs: number;
}

/** Bytes read at a time: the thread that answers requests is held up for about two milliseconds by each. */
const pieceBytes = 1_048_576;

/**
 * Reads a file to its end and gives the SHA-256 of its bytes (FIPS 180-4), holding one piece at a time.
 *
 * @throws MediaError of a `PlaceTroubleKind`, or `changed-meanwhile` when it was written to while it was being read;
 *   the signal's reason when that is given up
 */
export async function hashFile(root: string, path: string, options: HashOptions = {}): Promise<FileHash> {
  const { signal, onBytes } = options;
  const { handle, size, mtimeMs } = await openInside(root, path);
  try {
    const hash = createHash("sha256");
    const piece = Buffer.allocUnsafe(pieceBytes);
    let read = 0;
    // One that goes on growing would never come to its end.
    while (read <= size) {
      signal?.throwIfAborted();
      const { bytesRead } = await handle.read(piece, 0, pieceBytes, read);
      if (bytesRead === 0) break;
      hash.update(piece.subarray(0, bytesRead));
      read += bytesRead;
      await onBytes?.(read, size);
    }
    const after = await handle.stat();
    if (read !== size || Math.trunc(after.mtimeMs) !== mtimeMs) throw changedMeanwhile(size, read);
    return { sha256: hash.digest("hex"), size, mtimeMs };
  } finally {
    await handle.close();
  }
}

function changedMeanwhile(size: number, read: number): MediaError<"changed-meanwhile"> {
  return new MediaError({
    kind: "changed-meanwhile",
    found: `The file was written to while it was being read (${sayBytes(size)} before, ${sayBytes(read)} after).`,
    expected: "A recording that the camera or a copying program has finished with.",
    todo: "Wait until the copying has ended, then list its folder again.",
  });
}
