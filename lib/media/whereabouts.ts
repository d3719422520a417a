import { lstat, stat } from "node:fs/promises";
import { join } from "node:path";
import { errorCode, sayBytes, type Trouble } from "./trouble.ts";

/** Where a file was when it was last seen. */
export interface SeenFile {
  /** The folder that was listed, as a whole path. */
  root: string;
  /** From there downwards, with `/`. */
  path: string;
  /** Bytes. */
  size: number;
}

export type AwayKind = "root-missing" | "file-missing" | "other-file" | "no-access";

/** Why a file is not where it was, in words for the person. */
export type Away = Trouble<AwayKind>;

const kept = "What was marked on it is kept.";

/**
 * Says why a file is not where it was, or null when a file of that length is there. Nothing is opened.
 *
 * @param rootsAway folders found to be away in this round: a drive that is gone is asked once
 */
export async function whyAway(file: SeenFile, rootsAway = new Map<string, boolean>()): Promise<Away | null> {
  const { root, path, size } = file;
  if (!rootsAway.has(root)) rootsAway.set(root, !(await isFolder(root)));
  if (rootsAway.get(root)) return rootMissing(root);
  try {
    const found = await lstat(join(root, path));
    return found.isFile() && found.size === size ? null : otherFile(file, found.isFile() ? found.size : null);
  } catch (error) {
    const code = errorCode(error);
    return code === "ENOENT" || code === "ENOTDIR" ? fileMissing(file) : noAccess(file, code);
  }
}

async function isFolder(path: string): Promise<boolean> {
  return (await stat(path).catch(() => null))?.isDirectory() ?? false;
}

function rootMissing(root: string): Away {
  return {
    kind: "root-missing",
    found: `The drive or folder ${root} is not there.`,
    expected: "This film lies in it.",
    todo: `Plug the drive in. If it goes by another name now, list its folder under that name: its films are known again. ${kept}`,
  };
}

function fileMissing({ root, path }: SeenFile): Away {
  return {
    kind: "file-missing",
    found: `${path} is not in ${root} any more.`,
    expected: "The film was there when that folder was listed.",
    todo: `If it was renamed or moved, list the folder where it lies now: it is known again. ${kept}`,
  };
}

function otherFile({ root, path, size }: SeenFile, found: number | null): Away {
  const what = found === null ? "Something that is no file" : `Another file (${sayBytes(found)})`;
  return {
    kind: "other-file",
    found: `${what} lies at ${path} in ${root}.`,
    expected: `A film of ${sayBytes(size)} was there.`,
    todo: `Put the film back, or list the folder where it lies now: it is known again. ${kept}`,
  };
}

function noAccess({ root, path }: SeenFile, code: string): Away {
  return {
    kind: "no-access",
    found: `${path} in ${root} cannot be reached (${code}).`,
    expected: "A film that you may read.",
    todo: `See whether the drive is in order and whether you may read the file. ${kept}`,
  };
}
