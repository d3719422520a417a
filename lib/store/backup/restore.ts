import fs from "node:fs/promises";
import path from "node:path";
import { errorCode, makeFolder, syncFolder, syncTree } from "#lib/media/index.ts";
import { type Audit, audit } from "../audit/index.ts";
import type { OnProgress } from "../audit/look.ts";
import { Refused } from "../command.ts";
import { copyWhole } from "../disk.ts";
import { openWorkshop } from "../open.ts";
import { workshopAt } from "../workshop.ts";
import { isInside, needRoom } from "./place.ts";
import { type Verified, verifyBackup } from "./verify.ts";

/** What was restored. */
export interface Restored {
  workshop: string;
  /** The moment the backup was made, ISO 8601 in UTC. */
  at: string;
  files: number;
  bytes: number;
  /** Files that the backup no longer had whole, and that were left out because that was asked for. */
  leftOut: string[];
  /** What an audit of the restored workshop says. */
  audit: Audit;
}

export interface RestoreOptions {
  /** The folder of this program, where the migrations lie. */
  programRoot: string;
  /** Restore what is whole of a backup in which other files are damaged. Its database must be whole all the same. */
  anyway?: boolean;
  onProgress?: OnProgress;
  signal?: AbortSignal;
}

/** What of a backup belongs in a workshop; the build folders, the book and the texts are for people. */
const belongs = /^(workshop\.db$|(stills|recordings|releases)\/)/;

/**
 * Brings a backup back as a workshop, on this computer or another. The backup is read through first and never
 * written to; the workshop grows under another name and has its own when it is whole.
 *
 * @param folder new or empty
 * @throws Refused when the folder holds anything, or the backup is not whole; MigrationError when it comes from a
 *   later version. Nothing is written then.
 */
export async function restore(backup: string, folder: string, options: RestoreOptions): Promise<Restored> {
  const { programRoot, anyway = false, signal } = options;
  const onProgress: OnProgress = (progress) => {
    signal?.throwIfAborted();
    options.onProgress?.(progress);
  };
  const target = path.resolve(folder);
  await mustBeFree(target, path.resolve(backup));
  const verified = await verifyBackup(backup, onProgress);
  refuseDamaged(verified, anyway);
  const files = verified.manifest.files.filter((file) => belongs.test(file.path));
  const whole = files.filter((file) => verified.whole.has(file.path));
  const bytes = whole.reduce((sum, file) => sum + file.bytes, 0);
  const growing = `${target}.restoring-${crypto.randomUUID().slice(0, 8)}`;
  try {
    await makeFolder(growing);
    await needRoom(growing, bytes);
    let done = 0;
    for (const file of whole) {
      await copyWhole(backup, growing, file.path, (more) => {
        done += more;
        onProgress({ words: "Copying", done, of: bytes });
      });
    }
    await bringUp(growing, programRoot);
    await syncTree(growing);
    await takeName(growing, target);
  } catch (error) {
    await fs.rm(growing, { recursive: true, force: true }).catch(() => undefined);
    throw error;
  }
  // Opened under its own name, its own folders are found where they lie now.
  await bringUp(target, programRoot);
  return {
    workshop: target,
    at: verified.manifest.at,
    files: whole.length,
    bytes,
    leftOut: files.filter((file) => !verified.whole.has(file.path)).map((file) => file.path),
    audit: await audit(workshopAt(target), { programRoot, onProgress }),
  };
}

async function mustBeFree(folder: string, backup: string): Promise<void> {
  if (isInside(backup, folder) || isInside(await realPlace(backup), await realPlace(folder))) {
    throw new Refused({
      found: `${folder} lies in the backup itself.`,
      expected: "A new or empty folder elsewhere: a backup is never written to.",
      todo: "Name another one with --workshop.",
    });
  }
  const names = await fs.readdir(folder).catch((error: unknown) => {
    if (errorCode(error) === "ENOENT") return [];
    throw new Refused({
      found: `${folder} cannot be read as a folder (${errorCode(error)}).`,
      expected: "A new or empty folder.",
      todo: "Name another one.",
    });
  });
  if (names.length === 0) return;
  throw new Refused({
    found: `There is something in ${folder} already: ${names.slice(0, 5).join(", ")}.`,
    expected: "A new or empty folder: a workshop is never written over.",
    todo: "Name another folder with --workshop, or move what is there. Nothing was changed.",
  });
}

/** Where a path leads, links followed as far as it is there. */
async function realPlace(place: string): Promise<string> {
  const real = await fs.realpath(place).catch(() => null);
  if (real !== null || path.dirname(place) === place) return real ?? place;
  return path.join(await realPlace(path.dirname(place)), path.basename(place));
}

function refuseDamaged({ findings, whole }: Verified, anyway: boolean): void {
  const wrong = findings.filter((one) => one.severity === "wrong");
  const database = wrong.some((one) => one.rule === "backup-database") || !whole.has("workshop.db");
  if (wrong.length === 0 || (anyway && !database)) return;
  const list = wrong.slice(0, 5).map((one) => one.found);
  throw new Refused({
    found: `The backup is not whole: ${list.join(" ")}${wrong.length > 5 ? ` And ${wrong.length - 5} more.` : ""}`,
    expected: "Every file as manifest.json says, and a whole database.",
    todo: database
      ? "Use another backup. The build folders in it can still be brought in one by one, and the gotcha book by gotchas/book.json."
      : "Use another backup, or restore what is whole of this one with --anyway. Nothing was written.",
  });
}

/** Opens the workshop once, so that its database has the form of this version and its folders are there. */
async function bringUp(folder: string, programRoot: string): Promise<void> {
  const { client } = openWorkshop(folder, programRoot);
  await client.$disconnect();
}

async function takeName(growing: string, target: string): Promise<void> {
  // An empty folder of that name makes way; one that has been filled meanwhile does not.
  await fs.rmdir(target).catch((error: unknown) => {
    if (errorCode(error) !== "ENOENT") throw error;
  });
  await fs.rename(growing, target);
  await syncFolder(path.dirname(target));
}
