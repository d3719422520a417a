import { beginAlike } from "./fingerprint.ts";
import type { ListedFile } from "./list-folder.ts";

/** A place where a recording was seen. */
export interface KnownFile {
  placeId: string;
  recordingId: string;
  rootId: string;
  path: string;
  /** Bytes. */
  size: number;
  /** Milliseconds since 1970. */
  modifiedAt: number;
  /** As `fingerprint` gives it; empty while it has not been read. */
  fingerprint: string;
  /** Whether the recording is no more than its name: no film was seen in its file, and nothing was marked on it. */
  bare: boolean;
}

/** What a listed file is. */
export type Recognised =
  /** Listed before at this path; `renew` when its time of change or its length is another. */
  | { kind: "known"; file: ListedFile; place: KnownFile; renew: "nothing" | "time" | "bytes" }
  /** A recording whose own place is empty: it was renamed or moved, and lies here now. */
  | { kind: "moved"; file: ListedFile; place: KnownFile; fingerprint: string }
  /** The very file of a recording that is still at its place, by another name or another way. */
  | { kind: "second"; file: ListedFile; place: KnownFile; fingerprint: string }
  /** Not known, or not known for certain; its fingerprint is empty where it was not asked for. */
  | { kind: "new"; file: ListedFile; fingerprint: string };

/** What is asked of the disk, and only where names, lengths and times do not tell. */
export interface Disk {
  /** Fingerprint of a listed file. */
  fingerprint: (file: ListedFile) => Promise<string>;
  /** Whether a place still holds the file it held. */
  isThere: (place: KnownFile) => Promise<boolean>;
  /** Whether a listed file and a place are one file on the disk. */
  isSame: (file: ListedFile, place: KnownFile) => Promise<boolean>;
}

/** File systems keep the time of change to different grains; two whole seconds is the coarsest (FAT). */
const sameTimeMs = 2000;

/**
 * Tells which files of a listed folder are recordings that are known already. A file is taken for a recording that
 * lay elsewhere only when that place is empty, and length, time of change, first and last megabyte all agree with one
 * recording alone; an empty file never is. Where it stays unclear the file is new, and nothing is hidden.
 *
 * @param rootId the folder that was listed
 */
export async function recognise(
  files: readonly ListedFile[],
  known: readonly KnownFile[],
  rootId: string,
  disk: Disk,
): Promise<Recognised[]> {
  const here = grouped(
    known.filter((place) => place.rootId === rootId),
    (place) => place.path,
  );
  const bySize = grouped(known, (place) => place.size);
  const taken = new Set<string>();
  const all: Recognised[] = [];
  const open: ListedFile[] = [];
  // What lies where it lay is settled first, so that no other file is taken for it.
  for (const file of files) {
    const place = here.get(file.path)?.find((one) => sameState(one, file));
    if (!place) open.push(file);
    else {
      taken.add(place.placeId);
      all.push({ kind: "known", file, place, renew: "nothing" });
    }
  }
  for (const file of open) {
    const claims = (here.get(file.path) ?? []).filter((place) => !taken.has(place.placeId));
    const alike = file.size === 0 ? [] : (bySize.get(file.size) ?? []);
    const one = await settle(file, { claims, alike, taken }, disk);
    if ("place" in one && one.kind !== "second") taken.add(one.place.placeId);
    all.push(one);
  }
  return all;
}

interface Candidates {
  /** Places by this very name, and places of files of this very length. */
  claims: readonly KnownFile[];
  alike: readonly KnownFile[];
  /** Places that are known to hold what they held. */
  taken: ReadonlySet<string>;
}

async function settle(file: ListedFile, candidates: Candidates, disk: Disk): Promise<Recognised> {
  const { claims, alike, taken } = candidates;
  if (claims.length === 0 && alike.length === 0) return { kind: "new", file, fingerprint: "" };
  const print = await disk.fingerprint(file);
  const touched = claims.find((place) => place.size === file.size && place.fingerprint === print);
  if (touched) return { kind: "known", file, place: touched, renew: "time" };
  const twins = alike.filter((place) => print !== "" && place.fingerprint === print);
  const free = twins.filter((place) => !taken.has(place.placeId));
  const moved = await movedFrom(file, free, disk);
  if (moved) return { kind: "moved", file, place: moved, fingerprint: print };
  for (const place of twins.slice(0, MOST_COPIES)) {
    const there = taken.has(place.placeId) || (await disk.isThere(place));
    if (there && (await disk.isSame(file, place))) return { kind: "second", file, place, fingerprint: print };
  }
  // A file that grew while it was being copied, or in which no film was seen, is still the recording of that name.
  const grown = claims.find(
    (place) => place.fingerprint === "" || place.bare || beginAlike(place.fingerprint, print),
  );
  if (grown) return { kind: "known", file, place: grown, renew: "bytes" };
  return { kind: "new", file, fingerprint: print };
}

/** The one empty place that a file has come from; null when there is none, or when it may be one of several. */
async function movedFrom(
  file: ListedFile,
  twins: readonly KnownFile[],
  disk: Disk,
): Promise<KnownFile | null> {
  const old = twins.filter((place) => sameTime(place, file));
  const named = await emptyOf(
    old.filter((place) => lastStep(place.path) === lastStep(file.path)),
    disk,
  );
  const empty = named.length > 0 ? named : await emptyOf(old, disk);
  return recordingsOf(empty).length === 1 ? (empty[0] ?? null) : null;
}

/** Of more copies than these nobody could say which is which. */
const MOST_COPIES = 50;

async function emptyOf(places: readonly KnownFile[], disk: Disk): Promise<KnownFile[]> {
  if (places.length > MOST_COPIES) return [];
  const empty: KnownFile[] = [];
  for (const place of places) if (!(await disk.isThere(place))) empty.push(place);
  return empty;
}

function grouped<Key>(places: readonly KnownFile[], by: (place: KnownFile) => Key): Map<Key, KnownFile[]> {
  const groups = new Map<Key, KnownFile[]>();
  for (const place of places) {
    const group = groups.get(by(place));
    if (group) group.push(place);
    else groups.set(by(place), [place]);
  }
  return groups;
}

function recordingsOf(places: readonly KnownFile[]): string[] {
  return [...new Set(places.map((place) => place.recordingId))];
}

function sameState(place: KnownFile, file: ListedFile): boolean {
  return place.size === file.size && Math.abs(place.modifiedAt - file.mtimeMs) < 2;
}

function sameTime(place: KnownFile, file: ListedFile): boolean {
  return Math.abs(place.modifiedAt - file.mtimeMs) < sameTimeMs;
}

function lastStep(path: string): string {
  return path.slice(path.lastIndexOf("/") + 1);
}
