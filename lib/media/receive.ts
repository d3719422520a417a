import { createHash, randomBytes } from "node:crypto";
import {
  type FileHandle,
  link,
  lstat,
  mkdir,
  open,
  readdir,
  rename,
  rm,
  stat,
  unlink,
} from "node:fs/promises";
import { basename, extname, join } from "node:path";
import type { Readable } from "node:stream";
import { diskName } from "./disk-name.ts";
import { syncFolder } from "./folders.ts";
import { errorCode, MediaError, sayBytes } from "./trouble.ts";

/** A file that has arrived whole and is on disk. */
export interface ReceivedFile {
  /** Where it lies now. */
  path: string;
  /** Its name in the folder; the user's own is whatever was asked for. */
  diskName: string;
  bytes: number;
  /** Lower-case hexadecimal. */
  sha256: string;
}

export interface ReceiveOptions {
  /** The folder it goes to; made when it is not there. */
  folder: string;
  /** The name the user's file has. */
  name: string;
  /** How many bytes were promised (Content-Length); fewer or more is an error. */
  expectedBytes?: number;
}

export type ReceiveTroubleKind = "upload-broken" | "disk-full" | "cannot-write";

const temporary = /^\.receiving-[0-9a-f]{16}\.part$/;

/**
 * Streams an upload to disk. Under its own name the file is either whole and synced, or not there: it grows under
 * a hidden name in the same folder, and is named when its last byte is safe. Whatever goes wrong, nothing stays.
 * After an error the rest of the body is unread: answer with `Connection: close`.
 *
 * @throws MediaError of a {@link ReceiveTroubleKind}
 */
export async function receiveFile(body: Readable, options: ReceiveOptions): Promise<ReceivedFile> {
  const { folder, name, expectedBytes } = options;
  const growing = join(folder, `.receiving-${randomBytes(8).toString("hex")}.part`);
  const count = { bytes: 0 };
  try {
    await mkdir(folder, { recursive: true });
    const sha256 = await write(body, growing, count);
    if (expectedBytes !== undefined && count.bytes !== expectedBytes) {
      throw Object.assign(new Error("length"), { code: "ERR_STREAM_PREMATURE_CLOSE" });
    }
    const path = await settle(growing, folder, diskName(name));
    await syncFolder(folder);
    return { path, diskName: basename(path), bytes: count.bytes, sha256 };
  } catch (error) {
    await rm(growing, { force: true }).catch(() => undefined);
    throw receiveError(error, count.bytes, expectedBytes);
  }
}

/**
 * Removes what uploads left behind that were cut by the end of the process. Only files that nobody has written
 * to for an hour: another process may be receiving into the same folder.
 *
 * @returns how many were removed
 */
export async function sweepUnfinished(folder: string, olderThanMs = 3_600_000): Promise<number> {
  let removed = 0;
  for (const name of await readdir(folder).catch(() => [])) {
    if (!temporary.test(name)) continue;
    const stats = await stat(join(folder, name)).catch(() => null);
    if (stats === null || Date.now() - stats.mtimeMs < olderThanMs) continue;
    await rm(join(folder, name), { force: true });
    removed++;
  }
  return removed;
}

async function write(body: Readable, path: string, count: { bytes: number }): Promise<string> {
  const hash = createHash("sha256");
  const handle = await open(path, "wx", 0o600);
  try {
    // The stream is not destroyed when writing fails: a request's would take the answer's socket with it.
    for await (const chunk of body.iterator({ destroyOnReturn: false })) {
      const bytes = Buffer.isBuffer(chunk) ? chunk : Buffer.from(chunk);
      hash.update(bytes);
      await writeWhole(handle, bytes);
      count.bytes += bytes.length;
    }
    await handle.sync();
  } finally {
    await handle.close();
  }
  return hash.digest("hex");
}

async function writeWhole(handle: FileHandle, bytes: Buffer): Promise<void> {
  for (let at = 0; at < bytes.length; ) {
    const { bytesWritten } = await handle.write(bytes, at);
    at += bytesWritten;
  }
}

/**
 * Gives a file its name. A link never replaces a file that is there already, which a renaming would.
 *
 * @param before told of each name before it is tried
 * @returns where the file lies now
 */
export async function settle(
  growing: string,
  folder: string,
  name: string,
  before: (name: string) => Promise<void> = async () => undefined,
): Promise<string> {
  const ending = extname(name);
  const stem = name.slice(0, name.length - ending.length);
  for (let attempt = 1; attempt <= 1000; attempt++) {
    const path = join(folder, attempt === 1 ? name : `${stem} (${attempt})${ending}`);
    try {
      if (await lstat(path).catch(() => null)) continue;
      await before(basename(path));
      await link(growing, path);
      await unlink(growing);
      return path;
    } catch (error) {
      if (errorCode(error) !== "EEXIST") break;
    }
  }
  // Cards and sticks (FAT, exFAT) know no links: a name nobody else can have.
  const path = join(folder, `${stem} ${randomBytes(8).toString("hex")}${ending}`);
  await before(basename(path));
  await rename(growing, path);
  return path;
}

export function receiveError(
  error: unknown,
  bytes: number,
  expectedBytes?: number,
): MediaError<ReceiveTroubleKind> {
  const code = errorCode(error);
  const expected =
    expectedBytes === undefined
      ? "The whole file was expected."
      : `${sayBytes(expectedBytes)} were expected.`;
  const arrived = `${sayBytes(bytes)} had arrived; nothing was kept.`;
  if (code === "ENOSPC" || code === "EDQUOT" || code === "EFBIG") {
    const todo = "Make room on the drive, or name the folder where the recording lies instead of copying it.";
    return new MediaError(
      { kind: "disk-full", found: `The drive is full: ${arrived}`, expected, todo },
      { cause: error },
    );
  }
  if (
    /^(ECONNRESET|ABORT_ERR|ERR_STREAM_|EPIPE|ERR_HTTP_)/.test(code) ||
    (error as Error)?.name === "AbortError"
  ) {
    const found = `The upload ended early: ${arrived}`;
    return new MediaError(
      { kind: "upload-broken", found, expected, todo: "Bring the file in again." },
      { cause: error },
    );
  }
  const found = `The file could not be written (${code || String(error)}): ${arrived}`;
  const todo =
    "See whether the folder is there and whether you may write to it, then bring the file in again.";
  return new MediaError({ kind: "cannot-write", found, expected, todo }, { cause: error });
}
