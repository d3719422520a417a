import { createHash } from "node:crypto";
import fs from "node:fs/promises";
import path from "node:path";
import { type BuildDocument, buildFolder } from "#lib/build/index.ts";
import { ToldError } from "#lib/finding/index.ts";
import { errorCode, openInside } from "#lib/media/index.ts";

/** Why a build folder cannot be read: what was found and where, what was expected, what to do. */
export class FolderError extends ToldError {}

/** A build folder that has been read: the build whole, and the files that lie beside `build.json`. */
export interface ReadFolder {
  document: BuildDocument;
  folder: string;
  /** Paths in the folder by the id of the row they belong to; only of files that are there. */
  files: ReadonlyMap<string, string>;
  /** Files that `build.json` names and the folder has not, or that are not what their hash says. */
  missing: { id: string; path: string; why: string }[];
}

const MOST_JSON = 200_000_000;
const MOST_STILL = 80_000_000;

/**
 * Reads a build folder. Nothing in it is changed; nothing outside it is read, whatever its names say.
 *
 * @throws FolderError when there is no `build.json`, or it is not of the documented form.
 */
export async function readFolder(folder: string): Promise<ReadFolder> {
  const { files: named, captions, cuts, form: _form, version: _version, ...rest } = await readJson(folder);
  const withText = new Set([...captions, ...cuts].map((row) => row.id));
  const files = new Map<string, string>();
  const missing: ReadFolder["missing"] = [];
  const texts = new Map<string, string>();
  const hashes = new Map(rest.stills.map((still) => [still.id, still.sha256]));
  for (const [id, place] of Object.entries(named)) {
    try {
      await lookAtFile(folder, place, hashes.get(id));
      if (withText.has(id)) texts.set(id, await readText(folder, place));
      files.set(id, place);
    } catch (error) {
      missing.push({ id, path: place, why: error instanceof Error ? error.message : String(error) });
    }
  }
  // A still whose picture is not there stays a still without one: a moment to take it from again.
  const stills = rest.stills.map((still) => (files.has(still.id) ? still : { ...still, sha256: "" }));
  const document: BuildDocument = {
    ...rest,
    stills,
    captions: captions.map((track) => ({ ...track, text: texts.get(track.id) ?? "" })),
    cuts: cuts.map((cut) => ({ ...cut, text: texts.get(cut.id) ?? "" })),
  };
  return { document, folder, files, missing };
}

async function readJson(folder: string) {
  const bytes = await readInside(folder, "build.json", MOST_JSON).catch((error: unknown) => {
    throw new FolderError({
      found: `There is no readable build.json in ${folder} (${error instanceof ToldError ? error.found : errorCode(error) || String(error)}).`,
      expected: "A build folder: build.json with its captions and stills beside it.",
      todo: "Name the folder itself, not a file in it or the folder above.",
    });
  });
  let value: unknown;
  try {
    value = JSON.parse(bytes.toString("utf8").replace(/^\uFEFF/, ""));
  } catch (error) {
    throw new FolderError({
      found: `build.json is not JSON: ${error instanceof Error ? error.message : error}.`,
      expected: "One JSON object of the form in docs/build-folder.md.",
      todo: "Mend it at that place, or export the build again.",
    });
  }
  const checked = buildFolder.safeParse(value);
  if (checked.success) return checked.data;
  const issues = checked.error.issues
    .slice(0, 5)
    .map((issue) => `${issue.path.join(".") || "(the whole)"}: ${issue.message}`);
  throw new FolderError({
    found: `build.json does not have the form of a build: ${issues.join("; ")}.`,
    expected: "The form in docs/build-folder.md (docs/build-folder.schema.json checks it).",
    todo: "Mend the named places, or export the build again with this version.",
  });
}

async function lookAtFile(folder: string, place: string, sha256: string | undefined): Promise<void> {
  if (sha256 === undefined) {
    const opened = await openInside(folder, place);
    await opened.handle.close();
    return;
  }
  const bytes = await readInside(folder, place, MOST_STILL);
  const found = createHash("sha256").update(bytes).digest("hex");
  if (found !== sha256)
    throw new Error(`its bytes have the hash ${found.slice(0, 12)}…, not ${sha256.slice(0, 12)}…`);
}

/** The bytes of a file inside a build folder. */
export async function readInside(folder: string, place: string, limit: number): Promise<Buffer> {
  const { handle, size } = await openInside(folder, place);
  try {
    if (size > limit) throw new Error(`it has ${size} bytes, more than ${limit}`);
    return await handle.readFile();
  } finally {
    await handle.close();
  }
}

async function readText(folder: string, place: string): Promise<string> {
  return (await readInside(folder, place, 20_000_000)).toString("utf8");
}

/** Where a file of a read folder lies on this computer; null where it has none. */
export function pathIn(read: ReadFolder, id: string): string | null {
  const place = read.files.get(id);
  return place === undefined ? null : path.join(read.folder, ...place.split("/"));
}

/** Whether a folder is there and empty, or not there. What a writing left that was cut short does not count. */
export async function isFree(folder: string): Promise<boolean> {
  const names = await fs.readdir(folder).catch(() => []);
  return names.every((name) => /^\.writing-[0-9a-f-]{36}$/.test(name));
}
