import { constants, openSync } from "node:fs";
import { type FileHandle, open } from "node:fs/promises";
import { errorCode } from "./trouble.ts";

/**
 * Reading a file changes its time of last access on many systems. Linux can leave that out too, for the owner of the
 * file; where it may not, the file is opened for reading as usual.
 */
const noAccessTime = (constants as { O_NOATIME?: number }).O_NOATIME ?? 0;

/** Opens a file for reading so that not even its time of last access changes, where the system permits that. */
export async function openQuietly(path: string, moreFlags = 0): Promise<FileHandle> {
  const flags = constants.O_RDONLY | moreFlags;
  try {
    return await open(path, flags | noAccessTime);
  } catch (error) {
    if (noAccessTime === 0 || errorCode(error) !== "EPERM") throw error;
    return open(path, flags);
  }
}

/** The same, for the thread that may wait. @returns the descriptor, which the caller closes */
export function openQuietlySync(path: string): number {
  try {
    return openSync(path, constants.O_RDONLY | noAccessTime);
  } catch (error) {
    if (noAccessTime === 0 || errorCode(error) !== "EPERM") throw error;
    return openSync(path, constants.O_RDONLY);
  }
}
