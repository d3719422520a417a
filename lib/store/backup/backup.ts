import fs from "node:fs/promises";
import path from "node:path";
import type { Finding } from "#lib/finding/index.ts";
import { errorCode, MediaError, syncFolder, syncTree } from "#lib/media/index.ts";
import type { OnProgress } from "../audit/look.ts";
import { Refused } from "../command.ts";
import { copyWhole, digest, isFull, walk, writeWhole } from "../disk.ts";
import { noteBackup } from "../sqlite/note-backup.ts";
import { appliedMigrations, openToRead, readPlaces } from "../sqlite/read.ts";
import { snapshot } from "../sqlite/snapshot.ts";
import type { Workshop } from "../workshop.ts";
import { writeReadable } from "./builds.ts";
import { lacksOf } from "./lacks.ts";
import { backupVersion, type KeptFile, type Manifest, writeManifest } from "./manifest.ts";
import { type BackupPlace, beginPlace, needRoom, settlePlace, unfinishedIn } from "./place.ts";
import { backupReadme } from "./texts.ts";
import { verifyBackup } from "./verify.ts";

/** What was written, read back and found the same. */
export interface Backup {
  folder: string;
  /** The moment of the database, ISO 8601 in UTC. */
  at: string;
  files: number;
  bytes: number;
  builds: number;
  /** Films that stay where they lie, and are not in it. */
  elsewhere: number;
  /** What was left out, and why. */
  leftOut: { path: string; why: string }[];
  /** What the workshop itself lacks: the backup could not hold it. */
  findings: Finding[];
  /** Backups in the same folder that were cut short. */
  unfinished: string[];
}

export interface BackupOptions {
  /** The folder of this program, where the migrations lie. */
  programRoot: string;
  now?: Date;
  onProgress?: OnProgress;
  /** Ends it; nothing stays then. */
  signal?: AbortSignal;
}

/** The folders of a workshop that a backup holds. `made` can be made again. */
const keptFolders = ["stills", "recordings", "releases"] as const;

/**
 * Makes a backup of a workshop, while it is being worked in, as plain files in a new dated folder. It grows under
 * another name, is read back, and has its own name only when it is whole; cut short, nothing has that name. It holds
 * its own process up, so the program runs it as another.
 *
 * @param parent the folder that holds backups; what lies there is never changed
 * @throws Refused when it cannot be written, or is not the same when it is read back. Nothing stays then.
 */
export async function backup(workshop: Workshop, parent: string, options: BackupOptions): Promise<Backup> {
  const { programRoot, now = new Date(), signal } = options;
  const onProgress: OnProgress = (progress) => {
    signal?.throwIfAborted();
    options.onProgress?.(progress);
  };
  openToRead(workshop.database).close();
  const place = await beginPlace(workshop, parent, now);
  try {
    await needRoom(place.parent, await bytesOf(workshop));
    const made = await write(workshop, place, { programRoot, now, onProgress });
    const { findings } = await verifyBackup(place.growing, onProgress);
    if (findings.some((one) => one.severity === "wrong")) throw notTheSame(findings);
    const folder = await settlePlace(place);
    await syncFolder(place.parent);
    const report = await reportOn(made, folder, place.parent);
    noteBackup(workshop.database, { at: report.at, folder, files: report.files, bytes: report.bytes });
    return report;
  } catch (error) {
    await fs.rm(place.growing, { recursive: true, force: true }).catch(() => undefined);
    throw inWords(error, place.parent);
  }
}

type Writing = Required<Pick<BackupOptions, "programRoot" | "now" | "onProgress">>;

interface Made {
  manifest: Manifest;
  builds: number;
  findings: Finding[];
}

async function write(workshop: Workshop, place: BackupPlace, options: Writing): Promise<Made> {
  const { growing } = place;
  options.onProgress({ words: "Copying the database", done: 0, of: 0 });
  // The database first: whatever it names was on disk before it was named.
  snapshot(workshop.database, path.join(growing, "workshop.db"));
  const copied = await copyFolders(workshop, growing, options.onProgress);
  options.onProgress({ words: "Writing the builds and the gotcha book", done: 0, of: 0 });
  const { builds, failed } = await writeReadable(growing, options.programRoot);
  const about = {
    form: "witness-mark-backup" as const,
    version: backupVersion as 1,
    at: options.now.toISOString(),
    workshop: workshop.folder,
    ...readAbout(path.join(growing, "workshop.db")),
    leftOut: [...copied.leftOut, ...failed],
  };
  await writeWhole(path.join(growing, "README.txt"), backupReadme(about, builds));
  const others = await digestOthers(growing, new Set(copied.files.map((file) => file.path)));
  const files = [...copied.files, ...others].sort((a, b) => (a.path < b.path ? -1 : 1));
  await writeManifest(growing, { ...about, files });
  await syncTree(growing);
  return { manifest: { ...about, files }, builds: builds.length, findings: lacksOf(growing, files) };
}

/** Copies the kept folders file by file. One that cannot be read is told of; the others are kept all the same. */
async function copyFolders(
  workshop: Workshop,
  growing: string,
  onProgress: OnProgress,
): Promise<{ files: KeptFile[]; leftOut: Manifest["leftOut"] }> {
  const files: KeptFile[] = [];
  const leftOut: Manifest["leftOut"] = [];
  for (const name of keptFolders) {
    const tree = await walk(workshop[name]);
    const of = tree.files.reduce((sum, file) => sum + file.bytes, 0);
    let done = 0;
    leftOut.push(...tree.leftOut.map((one) => ({ ...one, path: `${name}/${one.path}` })));
    for (const { path: place } of tree.files) {
      const onBytes = (bytes: number) => {
        done += bytes;
        onProgress({ words: `Copying ${name}`, done, of });
      };
      try {
        const read = await copyWhole(workshop[name], path.join(growing, name), place, onBytes);
        files.push({ path: `${name}/${place}`, ...read });
      } catch (error) {
        if (!isUnreadable(error)) throw error;
        await fs.rm(path.join(growing, name, ...place.split("/")), { force: true });
        leftOut.push({ path: `${name}/${place}`, why: (error as Error).message });
      }
    }
  }
  return { files, leftOut };
}

/** The hashes of what was written beside the copied files. */
async function digestOthers(growing: string, known: ReadonlySet<string>): Promise<KeptFile[]> {
  const { files } = await walk(growing);
  const others: KeptFile[] = [];
  for (const { path: place } of files) {
    if (!known.has(place)) others.push({ path: place, ...(await digest(growing, place)) });
  }
  return others;
}

function readAbout(file: string): Pick<Manifest, "migrations" | "elsewhere"> {
  const database = openToRead(file);
  try {
    const elsewhere = readPlaces(database)
      .filter((place) => !place.own)
      .map(({ recordingId, name, root, path: inside, size }) => ({
        recording: recordingId,
        name,
        folder: root,
        path: inside,
        bytes: size,
      }));
    return { migrations: appliedMigrations(database), elsewhere };
  } finally {
    database.close();
  }
}

async function reportOn(
  { manifest, builds, findings }: Made,
  folder: string,
  parent: string,
): Promise<Backup> {
  return {
    folder,
    at: manifest.at,
    files: manifest.files.length,
    bytes: manifest.files.reduce((sum, file) => sum + file.bytes, 0),
    builds,
    elsewhere: manifest.elsewhere.length,
    leftOut: manifest.leftOut,
    findings,
    unfinished: await unfinishedIn(parent),
  };
}

/** About how many bytes a backup comes to: the database is there twice while its builds are written. */
async function bytesOf(workshop: Workshop): Promise<number> {
  let bytes = (await fs.stat(workshop.database)).size * 3;
  for (const name of keptFolders) {
    const { files } = await walk(workshop[name]);
    const sum = files.reduce((all, file) => all + file.bytes, 0);
    // The stills lie in the folders of their builds too.
    bytes += name === "stills" ? sum * 2 : sum;
  }
  return bytes;
}

/** One bad file is no reason to lose the others: what the drive cannot read, and what is no file any more. */
function isUnreadable(error: unknown): boolean {
  return error instanceof MediaError || /^(EIO|EACCES|EPERM|ENOENT|ENXIO|EBADMSG)$/.test(errorCode(error));
}

function inWords(error: unknown, parent: string): unknown {
  if (!isFull(error)) return error;
  return new Refused({
    found: `The drive of ${parent} is full or cannot be written to. Nothing of this backup stayed there.`,
    expected: "Room for the whole backup.",
    todo: "Make room, or name a folder on another drive. The workshop and earlier backups are as they were.",
  });
}

function notTheSame(findings: readonly Finding[]): Refused {
  return new Refused({
    found: `The backup is not what was written: ${findings[0]?.found} ${findings.length > 1 ? `And ${findings.length - 1} more.` : ""}`,
    expected: "The same bytes when it is read back, and a whole database.",
    todo: "It was taken away again. Audit the workshop, and try another drive. Keep earlier backups.",
  });
}
