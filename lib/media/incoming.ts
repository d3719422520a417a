import { type FileHandle, lstat, mkdir, open, readdir, readFile, rm, stat } from "node:fs/promises";
import { basename, join } from "node:path";
import { z } from "zod";
import { diskName } from "./disk-name.ts";
import { fingerprint } from "./fingerprint.ts";
import { syncFolder } from "./folders.ts";
import { hashFile } from "./hash-file.ts";
import { settle } from "./receive.ts";
import { errorCode, MediaError, sayBytes } from "./trouble.ts";

/**
 * Files that are arriving piece by piece. They lie in a hidden folder beside the recordings, each under an id, and
 * have a name among the recordings only when they are whole and checked. Beside each lies what is known of it:
 * `<id>.json` from its beginning (written by the tus store), and `<id>.checked` once its bytes have been verified.
 */
export function incomingFolder(recordings: string): string {
  return join(recordings, ".incoming");
}

/** An id of an arriving file: a UUID, so that it can name nothing else on the disk. */
export const incomingId = /^[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}$/;

/** A file that is arriving, or was broken off. */
export interface Incoming {
  id: string;
  /** Bytes it will have, and bytes that are there. */
  size: number;
  offset: number;
  /** What the sender told of it. */
  told: Record<string, string>;
}

const toldForm = z.object({
  size: z.number().int().min(0),
  metadata: z.record(z.string(), z.string().nullable()).default({}),
});

/** The arriving file of that id; null when there is none, or what is known of it was cut short. */
export async function readIncoming(folder: string, id: string): Promise<Incoming | null> {
  const known = await readTold(folder, id);
  const file = known && (await stat(join(folder, id)).catch(() => null));
  return file && { id, offset: file.size, ...known };
}

/** What was told of a file of that id, whether it still lies among the arriving ones or not. */
export async function readTold(folder: string, id: string): Promise<Pick<Incoming, "size" | "told"> | null> {
  if (!incomingId.test(id)) return null;
  try {
    const { size, metadata } = toldForm.parse(JSON.parse(await readFile(join(folder, `${id}.json`), "utf8")));
    const all = Object.entries(metadata).map(([name, value]) => [name, value ?? ""]);
    return { size, told: Object.fromEntries(all) };
  } catch {
    return null;
  }
}

/** All files that are arriving or were broken off, in no promised order. */
export async function listIncoming(folder: string): Promise<Incoming[]> {
  const names = await readdir(folder).catch(() => []);
  const all = await Promise.all(
    names.filter((name) => incomingId.test(name)).map((id) => readIncoming(folder, id)),
  );
  return all.filter((one) => one !== null);
}

const checkedForm = z.object({
  sha256: z.string().length(64),
  fingerprint: z.string(),
  /** The name it is about to have, or has, among the recordings. */
  diskName: z.string(),
});

/** A file that has arrived whole, has been verified, and has its name. */
export interface ArrivedFile extends z.infer<typeof checkedForm> {
  size: number;
  mtimeMs: number;
}

/**
 * Verifies a file that has arrived, puts it on disk and gives it its name among the recordings. Cut short at any
 * point it can be called again, and gives the same file; `forgetIncoming` ends it.
 *
 * @param sha256 what the sender's own file comes to
 * @throws MediaError `not-whole`, or `other-bytes` (then what arrived is thrown away, since it is of no use)
 */
export async function settleIncoming(
  recordings: string,
  incoming: Incoming,
  name: string,
  sha256: string,
): Promise<ArrivedFile> {
  const folder = incomingFolder(recordings);
  const { id, size, offset } = incoming;
  if (offset !== size) throw notWhole(size, offset);
  const known = await readChecked(folder, id);
  const checked = known ?? (await check(folder, incoming, sha256));
  const file = join(folder, id);
  const note = (diskName: string) => writeSynced(join(folder, `${id}.checked`), { ...checked, diskName });
  // A link that was made just before it was cut short is found by its being the same file.
  const linked = known !== null && (await isSameFile(file, join(recordings, known.diskName)));
  const path = linked
    ? join(recordings, known.diskName)
    : await settle(file, recordings, diskName(name), note);
  if (linked) await rm(file);
  await syncFolder(recordings);
  return arrived(path, checked);
}

/** A file that has its name already, though nobody was told so: the program was ended just then. */
export async function findSettled(recordings: string, id: string): Promise<ArrivedFile | null> {
  const checked = await readChecked(incomingFolder(recordings), id);
  if (!checked || checked.diskName === "") return null;
  const file = join(recordings, checked.diskName);
  const arriving = join(incomingFolder(recordings), id);
  // As long as it lies among the arriving ones only, it has not been settled.
  if ((await lstat(arriving).catch(() => null)) && !(await isSameFile(arriving, file))) return null;
  return arrived(file, checked).catch(() => null);
}

/** What is left of files that have been settled or were cut short while they began: their ids. */
export async function idsOfIncoming(folder: string): Promise<string[]> {
  const names = await readdir(folder).catch(() => []);
  return [...new Set(names.map((name) => name.split(".")[0] ?? "").filter((id) => incomingId.test(id)))];
}

/**
 * Throws away files of which nothing has arrived for a day, and what is left of beginnings that were cut short. One of
 * which a part is there is kept until somebody lets it go.
 *
 * @returns how many were thrown away
 */
export async function sweepIncoming(folder: string, olderThanMs = 86_400_000): Promise<number> {
  let swept = 0;
  for (const id of await idsOfIncoming(folder)) {
    const files = await Promise.all(
      [id, `${id}.json`, `${id}.checked`].map((name) => stat(join(folder, name)).catch(() => null)),
    );
    const [bytes, told, checked] = files;
    const begun = checked !== null || (told !== null && (bytes?.size ?? 0) > 0);
    const latest = Math.max(...files.map((file) => file?.mtimeMs ?? 0));
    if (begun || Date.now() - latest < olderThanMs) continue;
    await forgetIncoming(folder, id);
    swept++;
  }
  return swept;
}

/** Throws away an arriving file and what is known of it; one that has its name among the recordings stays there. */
export async function forgetIncoming(folder: string, id: string): Promise<void> {
  if (!incomingId.test(id)) return;
  for (const name of [id, `${id}.checked`, `${id}.json`]) await rm(join(folder, name), { force: true });
}

async function check(
  folder: string,
  { id, size }: Incoming,
  sha256: string,
): Promise<z.infer<typeof checkedForm>> {
  await syncFile(join(folder, id));
  const found = await hashFile(folder, id);
  if (found.sha256 !== sha256.toLowerCase() || found.size !== size) {
    await forgetIncoming(folder, id);
    throw otherBytes(found.sha256, sha256);
  }
  return { sha256: found.sha256, fingerprint: await fingerprint(folder, id), diskName: "" };
}

async function arrived(path: string, checked: z.infer<typeof checkedForm>): Promise<ArrivedFile> {
  const { size, mtimeMs } = await stat(path);
  return { ...checked, diskName: basename(path), size, mtimeMs };
}

async function readChecked(folder: string, id: string): Promise<z.infer<typeof checkedForm> | null> {
  const text = await readFile(join(folder, `${id}.checked`), "utf8").catch(() => "");
  try {
    return checkedForm.parse(JSON.parse(text));
  } catch {
    return null;
  }
}

async function isSameFile(one: string, other: string): Promise<boolean> {
  const [a, b] = await Promise.all(
    [one, other].map((path) => lstat(path, { bigint: true }).catch(() => null)),
  );
  return !!a && !!b && a.ino === b.ino && a.dev === b.dev;
}

async function syncFile(path: string): Promise<void> {
  await using(await open(path, "r+"), (handle) => handle.sync());
}

async function writeSynced(path: string, value: unknown): Promise<void> {
  await using(await open(path, "w"), async (handle) => {
    await handle.writeFile(JSON.stringify(value));
    await handle.sync();
  });
}

async function using(handle: FileHandle, work: (handle: FileHandle) => Promise<void>): Promise<void> {
  try {
    await work(handle);
  } finally {
    await handle.close();
  }
}

/** Makes the folder of arriving files. @throws MediaError `cannot-write` */
export async function makeIncomingFolder(recordings: string): Promise<void> {
  await mkdir(incomingFolder(recordings), { recursive: true }).catch((error) => {
    throw new MediaError({
      kind: "cannot-write",
      found: `The folder of recordings cannot be written to (${errorCode(error)}).`,
      expected: `A folder at ${recordings} that you may write to.`,
      todo: "See whether its drive is there and not set to reading only.",
    });
  });
}

function notWhole(size: number, offset: number): MediaError<"not-whole"> {
  return new MediaError({
    kind: "not-whole",
    found: `${sayBytes(offset)} of ${sayBytes(size)} have arrived.`,
    expected: "The whole file.",
    todo: "Choose the file again: it goes on where it was broken off.",
  });
}

function otherBytes(found: string, expected: string): MediaError<"other-bytes"> {
  return new MediaError({
    kind: "other-bytes",
    found: `What arrived is not what was sent: its SHA-256 begins ${found.slice(0, 12)}.`,
    expected: `The file that was chosen comes to ${expected.slice(0, 12)}.`,
    todo: "It was thrown away; your own file is as it was. Bring it in again. If it happens once more, look after the drives and the memory.",
  });
}
