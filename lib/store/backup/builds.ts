import fs from "node:fs/promises";
import path from "node:path";
import { type BuildDocument, present } from "#lib/build/index.ts";
import { writeFolder } from "#lib/folder/index.ts";
import { diskName } from "#lib/media/index.ts";
import { isFull, writeWhole } from "../disk.ts";
import { loadBuild } from "../load.ts";
import { openWorkshop } from "../open.ts";
import type { PrismaClient } from "../prisma-client/client.ts";
import { MigrationError } from "../sqlite/migrate.ts";
import { openToRead, type ReadPlace, readPlaces } from "../sqlite/read.ts";
import { writeGotchas } from "./gotchas.ts";
import { buildReadme, marksText } from "./texts.ts";

/** A build as it stands in a backup. */
export interface WrittenBuild {
  title: string;
  machine: string;
  /** Its folder in the backup, with `/`. */
  folder: string;
}

/**
 * Writes what a person reads without the program, out of the database: the gotcha book below `gotchas/`, and each
 * build that is not struck out as a build folder of its own, below `builds/`, with its marks as a text to read. What
 * cannot be written is told of; the database holds it all the same.
 */
export async function writeReadable(
  backup: string,
  programRoot: string,
): Promise<{ builds: WrittenBuild[]; failed: { path: string; why: string }[] }> {
  const builds: WrittenBuild[] = [];
  const failed: { path: string; why: string }[] = [];
  const attempt = async (place: string, work: () => Promise<unknown>) => {
    try {
      await work();
    } catch (error) {
      if (isFull(error)) throw error;
      failed.push({ path: place, why: (error as Error).message });
    }
  };
  const places = placesIn(backup);
  const scratch = path.join(backup, ".reading");
  try {
    const client = await readingCopy(backup, scratch, programRoot);
    try {
      await attempt("gotchas/", () => writeGotchas(backup, client));
      const rows = await client.build.findMany({ where: { gone: null }, orderBy: { title: "asc" } });
      for (const { id } of rows) {
        await attempt(`builds/ (${id})`, async () => {
          const document = (await loadBuild(client, id)) as BuildDocument;
          builds.push(await writeBuild(backup, document, places));
        });
      }
    } finally {
      await client.$disconnect();
    }
  } catch (error) {
    // A workshop of a later version: its builds cannot be read here, its rows and files are kept all the same.
    if (!(error instanceof MigrationError)) throw error;
    failed.push({ path: "builds/", why: error.message });
    failed.push({ path: "gotchas/", why: error.message });
  } finally {
    await fs.rm(scratch, { recursive: true, force: true });
  }
  return { builds, failed };
}

function placesIn(backup: string): ReadPlace[] {
  const database = openToRead(path.join(backup, "workshop.db"));
  try {
    return readPlaces(database).filter((place) => place.role === "original");
  } finally {
    database.close();
  }
}

/** A backup's database, as a copy of it that is brought to this version's form. */
async function readingCopy(backup: string, scratch: string, programRoot: string): Promise<PrismaClient> {
  await fs.mkdir(scratch);
  await fs.copyFile(path.join(backup, "workshop.db"), path.join(scratch, "workshop.db"));
  return openWorkshop(scratch, programRoot).client;
}

async function writeBuild(
  backup: string,
  document: BuildDocument,
  places: readonly ReadPlace[],
): Promise<WrittenBuild> {
  const { build, machine } = document;
  const folder = await freeFolder(path.join(backup, "builds"), diskName(build.title || "build"));
  await writeFolder(document, folder, {
    still: (sha256) => fs.readFile(path.join(backup, "stills", `${sha256}.jpg`)).catch(() => null),
    // The films of the workshop lie in the backup once, beside all builds.
    recording: async () => null,
  });
  const films = present(document.recordings).map(({ id, name }) => ({ name, at: whereIs(places, id) }));
  await writeWhole(path.join(folder, "README.txt"), buildReadme(document, films));
  await writeWhole(path.join(folder, "marks.txt"), marksText(document));
  return { title: build.title, machine: machine.name, folder: `builds/${path.basename(folder)}` };
}

async function freeFolder(parent: string, name: string): Promise<string> {
  for (let number = 1; ; number++) {
    const folder = path.join(parent, number === 1 ? name : `${name}-${number}`);
    if (!(await fs.lstat(folder).catch(() => null))) return folder;
  }
}

function whereIs(places: readonly ReadPlace[], recording: string): string {
  const place = places.find((one) => one.recordingId === recording);
  if (!place) return "no file is known";
  if (place.own) return `../../recordings/${place.path}`;
  return `not in this backup; it was listed at ${place.root}, ${place.path}`;
}
