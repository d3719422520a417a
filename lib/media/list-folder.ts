import type { Dirent } from "node:fs";
import { lstat, opendir } from "node:fs/promises";
import { extname, join } from "node:path";
import { errorCode, MediaError } from "./trouble.ts";

/** A file that may be a recording, by the ending of its name. */
export interface ListedFile {
  /** From the root folder downwards, with `/` on every system. */
  path: string;
  /** Bytes. */
  size: number;
  /** Time of change, in whole milliseconds since 1970. */
  mtimeMs: number;
}

export interface FolderListing {
  /** In the order of their paths, by code unit. */
  files: ListedFile[];
  /** Files of captions, by the ending of their names; in no promised order. */
  captions: ListedFile[];
  /** How many other files lie there. */
  ignored: number;
  /** How many links were met; none is followed. */
  links: number;
  /** Places that could not be read, and why. */
  unreadable: { path: string; why: string }[];
  /** Set when a limit ended the walk before its end. */
  stoppedAt: "depth" | "entries" | null;
}

export interface ListOptions {
  /** How many folders deep; 12 unless told. */
  maxDepth?: number;
  /** How many entries of all sorts; 100,000 unless told. */
  maxEntries?: number;
  signal?: AbortSignal;
}

/** Endings of recordings: what plays here, and what a camera or an old computer may have written. */
export const recordingEndings: ReadonlySet<string> = new Set(
  ".mov .mp4 .m4v .mkv .webm .avi .mts .m2ts .ts .mpg .mpeg .mod .3gp .3g2 .wmv .flv .ogv .dv .mxf".split(
    " ",
  ),
);

const captionEndings: ReadonlySet<string> = new Set([".vtt", ".srt"]);

/**
 * Walks a folder and its folders for files that may be recordings. It opens none of them and follows no link.
 *
 * @throws MediaError `root-missing` when the folder itself cannot be read
 */
export async function listFolder(root: string, options: ListOptions = {}): Promise<FolderListing> {
  const { maxDepth = 12, maxEntries = 100_000, signal } = options;
  const listing: FolderListing = {
    files: [],
    captions: [],
    ignored: 0,
    links: 0,
    unreadable: [],
    stoppedAt: null,
  };
  const waiting = [{ path: "", depth: 0 }];
  let seen = 0;
  for (let folder = waiting.pop(); folder !== undefined; folder = waiting.pop()) {
    const entries = await readEntries(root, folder.path, maxEntries - seen, listing);
    seen += entries.length;
    for (const entry of entries) {
      signal?.throwIfAborted();
      const path = folder.path === "" ? entry.name : `${folder.path}/${entry.name}`;
      if (!entry.isDirectory()) await listFile(root, path, entry, listing);
      else if (isHidden(entry)) listing.ignored++;
      else if (folder.depth < maxDepth) waiting.push({ path, depth: folder.depth + 1 });
      else listing.stoppedAt = "depth";
    }
    if (listing.stoppedAt === "entries") break;
  }
  listing.files.sort((a, b) => (a.path < b.path ? -1 : 1));
  return listing;
}

async function readEntries(
  root: string,
  path: string,
  limit: number,
  listing: FolderListing,
): Promise<Dirent[]> {
  const entries: Dirent[] = [];
  try {
    for await (const entry of await opendir(join(root, path))) {
      if (entries.length === limit) {
        listing.stoppedAt = "entries";
        break;
      }
      entries.push(entry);
    }
  } catch (error) {
    if (path === "") throw rootMissing(error);
    listing.unreadable.push({ path, why: errorCode(error) || String(error) });
  }
  return entries;
}

async function listFile(root: string, path: string, entry: Dirent, listing: FolderListing): Promise<void> {
  const list = isHidden(entry) ? null : listFor(entry.name, listing);
  if (entry.isSymbolicLink()) listing.links++;
  else if (!list) listing.ignored++;
  else {
    try {
      const stats = await lstat(join(root, path));
      if (stats.isFile()) list.push({ path, size: stats.size, mtimeMs: Math.trunc(stats.mtimeMs) });
      else listing.ignored++;
    } catch (error) {
      listing.unreadable.push({ path, why: whyNot(path, error) });
    }
  }
}

function listFor(name: string, { files, captions }: FolderListing): ListedFile[] | null {
  const ending = extname(name).toLowerCase();
  return recordingEndings.has(ending) ? files : captionEndings.has(ending) ? captions : null;
}

/** macOS writes a hidden `._clip.mov` beside `clip.mov` on camera cards: same ending, no film. */
function isHidden(entry: Dirent): boolean {
  return entry.name.startsWith(".");
}

function whyNot(path: string, error: unknown): string {
  if (path.includes("\uFFFD")) return "its name is not valid text; rename it";
  return errorCode(error) || String(error);
}

function rootMissing(error: unknown): MediaError<"root-missing"> {
  return new MediaError({
    kind: "root-missing",
    found: `The folder cannot be read (${errorCode(error) || String(error)}).`,
    expected: "A folder of recordings that you may read.",
    todo: "Plug the drive in, or name the folder where it is now.",
  });
}
