import fs from "node:fs/promises";
import path from "node:path";
import { errorCode, sayBytes } from "#lib/media/index.ts";
import { Refused } from "../command.ts";
import type { Workshop } from "../workshop.ts";

/** What a backup is called while it grows: hidden, and not to be taken for a whole one. */
const growingName = /^\.witness-mark-[0-9A-Z-]+\.part$/;

/** Where a backup is written, and what it is called when it is whole. */
export interface BackupPlace {
  parent: string;
  growing: string;
  /** The name that is wanted: dated to the second. */
  name: string;
}

/**
 * Makes the folder in which a backup grows.
 *
 * @param parent the folder that holds backups; it is made when only its last step is missing
 * @throws Refused when it cannot be reached or written to, or lies in the workshop itself
 */
export async function beginPlace(workshop: Workshop, parent: string, at: Date): Promise<BackupPlace> {
  const full = path.resolve(parent);
  const above = await fs
    .realpath(path.dirname(full))
    .catch((error) => Promise.reject(cannotWrite(full, error)));
  await refuseInside(workshop, path.join(above, path.basename(full)));
  await fs.mkdir(full).catch((error: unknown) => {
    if (errorCode(error) !== "EEXIST") throw cannotWrite(full, error);
  });
  const real = await fs.realpath(full);
  await refuseInside(workshop, real);
  const name = `witness-mark-${at.toISOString().slice(0, 19).replaceAll(":", "")}Z`;
  const growing = path.join(real, `.${name}-${crypto.randomUUID().slice(0, 8).toUpperCase()}.part`);
  await fs.mkdir(growing).catch((error) => Promise.reject(cannotWrite(real, error)));
  return { parent: real, growing, name };
}

/** Whether a path is that of a folder, or lies below it. */
export function isInside(folder: string, place: string): boolean {
  const step = path.relative(folder, place);
  return step !== ".." && !step.startsWith(`..${path.sep}`) && !path.isAbsolute(step);
}

async function refuseInside(workshop: Workshop, folder: string): Promise<void> {
  if (!isInside(await fs.realpath(workshop.folder), folder)) return;
  throw new Refused({
    found: `${folder} lies in the workshop's own folder.`,
    expected:
      "A folder elsewhere, best on another drive: what destroys the workshop must not reach its backup.",
    todo: "Name a folder on another drive.",
  });
}

function cannotWrite(folder: string, error: unknown): Refused {
  return new Refused({
    found: `The folder ${folder} cannot be written to (${errorCode(error) || String(error)}).`,
    expected: "A folder that is there, and that you may write to.",
    todo: "Plug the drive in, or name another folder.",
  });
}

/** Sees that there is room before anything is copied. */
export async function needRoom(folder: string, bytes: number): Promise<void> {
  const { bavail, bsize } = await fs.statfs(folder);
  const free = bavail * bsize;
  if (free > bytes) return;
  throw new Refused({
    found: `There are ${sayBytes(free)} free at ${folder}.`,
    expected: `${sayBytes(bytes)} are needed.`,
    todo: "Make room there, or name a folder on another drive. Nothing was written.",
  });
}

/** Gives a whole backup its name. One that is there already is never replaced: the next number is taken. */
export async function settlePlace({ parent, growing, name }: BackupPlace): Promise<string> {
  for (let number = 1; ; number++) {
    const folder = path.join(parent, number === 1 ? name : `${name}-${number}`);
    if (await fs.lstat(folder).catch(() => null)) continue;
    await fs.rename(growing, folder);
    return folder;
  }
}

/** Backups that were cut short: they are told of, and left for the person to delete. */
export async function unfinishedIn(parent: string): Promise<string[]> {
  return (await fs.readdir(parent)).filter((name) => growingName.test(name));
}
