import fs from "node:fs/promises";
import path from "node:path";
import { type BuildDocument, present, toFolder } from "#lib/build/index.ts";
import { diskName, makeFolder, syncFolder, syncTree } from "#lib/media/index.ts";
import { FolderError, isFree } from "./read.ts";

/** What writing needs from where the build is kept. */
export interface Sources {
  /** JPEG bytes of a still; null where they are not there. */
  still: (sha256: string) => Promise<Uint8Array | null>;
  /** Path of a recording's original on this computer; null leaves the film out of the folder. */
  recording: (id: string) => Promise<string | null>;
}

/**
 * Writes a build as a folder of plain files that make sense without the program: `build.json`, `captions/`,
 * `cuts/`, `stills/` and, where asked for, `recordings/`. The folder must be new or empty. It grows under another name, and
 * everything is on disk when this returns; cut short, there is no half file under its own name.
 *
 * @returns paths of the files written, in the folder.
 */
export async function writeFolder(
  document: BuildDocument,
  folder: string,
  sources: Sources,
): Promise<string[]> {
  if (!(await isFree(folder))) {
    throw new FolderError({
      found: `There is something in ${folder} already.`,
      expected: "A new or empty folder.",
      todo: "Name another one; nothing there was changed.",
    });
  }
  const there = await fs.stat(folder).catch(() => null);
  const name = `.writing-${crypto.randomUUID()}`;
  const growing = there ? path.join(folder, name) : path.join(path.dirname(folder), name);
  try {
    await makeFolder(growing);
    const written = await writeFiles(document, growing, sources);
    await syncTree(growing);
    if (there) await moveInto(growing, folder);
    else await fs.rename(growing, folder);
    await syncFolder(path.dirname(growing));
    return written;
  } finally {
    await fs.rm(growing, { recursive: true, force: true }).catch(() => undefined);
  }
}

async function writeFiles(document: BuildDocument, folder: string, sources: Sources): Promise<string[]> {
  const files: Record<string, string> = {};
  const add = async (id: string, place: string, write: (to: string) => Promise<void>) => {
    const to = path.join(folder, ...place.split("/"));
    await fs.mkdir(path.dirname(to), { recursive: true });
    await write(to);
    await sync(to);
    files[id] = place;
  };
  for (const still of present(document.stills)) {
    const bytes = still.sha256 === "" ? null : await sources.still(still.sha256);
    if (bytes)
      await add(still.id, `stills/${still.sha256.slice(0, 16)}.jpg`, (to) => fs.writeFile(to, bytes));
  }
  for (const track of present(document.captions)) {
    await add(track.id, `captions/${freeName(track.name, files)}`, (to) => fs.writeFile(to, track.text));
  }
  for (const cut of present(document.cuts).filter(({ text }) => text !== "")) {
    const ending = cut.form === "otio" ? "otio" : "edl";
    const name = freeName(`${cut.name || "film"}.${ending}`, files);
    await add(cut.id, `cuts/${name}`, (to) => fs.writeFile(to, cut.text));
  }
  for (const recording of present(document.recordings)) {
    const from = await sources.recording(recording.id);
    if (from)
      await add(recording.id, `recordings/${freeName(recording.name, files)}`, (to) => fs.copyFile(from, to));
  }
  const json = `${JSON.stringify(toFolder(document, files), null, 2)}\n`;
  await fs.writeFile(path.join(folder, "build.json"), json);
  await sync(path.join(folder, "build.json"));
  return ["build.json", ...Object.values(files)];
}

/** Moves what was written into a folder that is there already; build.json, which makes it a build folder, last. */
async function moveInto(growing: string, folder: string): Promise<void> {
  const names = (await fs.readdir(growing)).filter((name) => name !== "build.json");
  for (const name of [...names, "build.json"]) {
    await fs.rename(path.join(growing, name), path.join(folder, name));
  }
}

async function sync(file: string): Promise<void> {
  const handle = await fs.open(file, "r+");
  await handle.sync().finally(() => handle.close());
}

/** A name for a file on any system, which no other file of the folder has. */
function freeName(name: string, files: Record<string, string>): string {
  const wanted = diskName(path.posix.basename(name.replaceAll("\\", "/")));
  const taken = new Set(Object.values(files).map((place) => path.posix.basename(place).toLowerCase()));
  for (let number = 1; ; number++) {
    const { name: stem, ext } = path.posix.parse(wanted);
    const candidate = number === 1 ? wanted : `${stem}-${number}${ext}`;
    if (!taken.has(candidate.toLowerCase())) return candidate;
  }
}
