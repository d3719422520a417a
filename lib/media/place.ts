import type { BigIntStats } from "node:fs";
import { constants } from "node:fs";
import { type FileHandle, realpath, stat } from "node:fs/promises";
import { join, sep } from "node:path";
import { openQuietly } from "./open-quietly.ts";
import { errorCode, MediaError } from "./trouble.ts";

/** A regular file inside a root folder, opened for reading. Whoever asked for it closes `handle`. */
export interface OpenedFile {
  handle: FileHandle;
  /** Where it really lies, with no link left in the path. */
  realPath: string;
  /** Bytes. */
  size: number;
  /** Time of change, in whole milliseconds since 1970. */
  mtimeMs: number;
  /** How many names the file has; above one, another name for it may lie outside the root. */
  names: number;
}

export type PlaceTroubleKind =
  | "bad-path"
  | "root-missing"
  | "file-missing"
  | "not-a-file"
  | "outside"
  | "no-access";

// Absent on Windows, where a pipe cannot lie in a folder and the real path is what counts.
const noFollow = constants.O_NOFOLLOW ?? 0;
const noWait = constants.O_NONBLOCK ?? 0;

/**
 * Opens a file where it lies, below a root folder. The order matters: open first, then see that it is a regular
 * file, then that its real path lies inside the real root, then that the real path is the file that was opened;
 * nothing can be swapped in between.
 *
 * @param relativePath written with `/`, whatever the system; no step may go up, and none may be a link that
 *   leaves the root. The last may be no link at all.
 * @throws MediaError of a {@link PlaceTroubleKind}
 */
export async function openInside(root: string, relativePath: string): Promise<OpenedFile> {
  checkRelativePath(relativePath);
  const realRoot = await realpath(root).catch((error) => {
    throw placeError("root-missing", `The folder ${quote(root)} cannot be reached (${errorCode(error)}).`);
  });
  const path = join(realRoot, relativePath);
  const handle = await openOnly(path, relativePath);
  try {
    return await checked(handle, realRoot, path, relativePath);
  } catch (error) {
    await handle.close();
    throw error;
  }
}

async function checked(
  handle: FileHandle,
  realRoot: string,
  path: string,
  asked: string,
): Promise<OpenedFile> {
  const opened = await handle.stat({ bigint: true });
  if (!opened.isFile()) throw placeError("not-a-file", `${quote(asked)} is a folder, a pipe or a device.`);
  const realPath = await realpath(path);
  const inside = realRoot.endsWith(sep) ? realRoot : realRoot + sep;
  if (!realPath.startsWith(inside)) throw placeError("outside", `${quote(asked)} leads out of its folder.`);
  if (!isSame(opened, await stat(realPath, { bigint: true }))) {
    throw placeError("outside", `${quote(asked)} was exchanged while it was being opened.`);
  }
  const { size, mtimeMs, nlink } = opened;
  return { handle, realPath, size: Number(size), mtimeMs: Number(mtimeMs), names: Number(nlink) };
}

function isSame(one: BigIntStats, other: BigIntStats): boolean {
  return one.ino === other.ino && one.dev === other.dev;
}

async function openOnly(path: string, asked: string): Promise<FileHandle> {
  try {
    return await openQuietly(path, noFollow | noWait);
  } catch (error) {
    const code = errorCode(error);
    if (code === "ELOOP" || code === "EMLINK") throw placeError("outside", `${quote(asked)} is a link.`);
    if (code === "ENOENT" || code === "ENOTDIR")
      throw placeError("file-missing", `${quote(asked)} is not there.`);
    // A pipe without a writer, a socket, a folder on Windows.
    if (code === "ENXIO" || code === "EISDIR" || code === "EOPNOTSUPP") {
      throw placeError("not-a-file", `${quote(asked)} is a folder, a pipe or a device.`);
    }
    throw placeError("no-access", `${quote(asked)} cannot be opened (${code || String(error)}).`);
  }
}

/**
 * Sees that a path names something below a folder without any step up, and means the same on every system.
 *
 * @throws MediaError `bad-path`
 */
export function checkRelativePath(path: string): void {
  const refuse = (why: string) => {
    throw placeError("bad-path", `The path ${quote(path)} ${why}.`);
  };
  if (path === "") refuse("is empty");
  if (path.includes("\0")) refuse("holds a NUL character");
  if (path.startsWith("/")) refuse("begins at the top of the disk");
  for (const step of path.split("/")) {
    if (step === "" || step === "." || step === "..") refuse(`holds the step ${quote(step)}`);
    // On Windows "\" parts steps, and ":" names a drive or a hidden stream of a file.
    if (sep === "\\" && /[\\:]/.test(step)) refuse("holds a character that Windows reads as a path");
  }
}

const expected = "A recording is a regular file inside a folder that was named for it.";
const todos: Record<PlaceTroubleKind, string> = {
  "bad-path": "Give the path from that folder downwards, with / between the steps.",
  "root-missing": "Plug the drive in, or name the folder where it is now.",
  "file-missing": "See whether it was moved or renamed, or whether its drive is plugged in.",
  "not-a-file": "Name the recording itself.",
  outside: "Put the recording itself into the folder instead of a link to it.",
  "no-access": "See whether you may read it, and whether another program holds it.",
};

function placeError(kind: PlaceTroubleKind, found: string): MediaError<PlaceTroubleKind> {
  return new MediaError({ kind, found, expected, todo: todos[kind] });
}

/** A path in a message: quoted, with anything that could upset a terminal or turn the line round written out. */
function quote(text: string): string {
  const plain = text.replace(
    /[\p{C}\p{Zl}\p{Zp}]/gu,
    (c) => `\\u{${(c.codePointAt(0) as number).toString(16)}}`,
  );
  return `“${plain.length > 120 ? `${plain.slice(0, 120)}…` : plain}”`;
}
