import { existsSync } from "node:fs";
import path from "node:path";
import { probed, type Recording } from "#lib/build/index.ts";
import {
  fingerprint,
  type HashOptions,
  hashFile,
  type ProbeResult,
  probe,
  unplayableTrouble,
  whyAway,
  writeFramesFile,
} from "#lib/media/index.ts";
import {
  type KnownPlace,
  noteRecording,
  type OpenWorkshop,
  placesOf,
  renewPlace,
  type Written,
} from "#lib/store/index.ts";
import { fileOf, originalsNow } from "./whereabouts.ts";

/** Where the frame table of a recording lies; it can be made again by looking at the file. */
export function framesPath({ workshop }: OpenWorkshop, id: string): string {
  return path.join(workshop.made, `${encodeURIComponent(id)}.frames`);
}

/**
 * Looks at a recording's file, if that has not been done: its length, frames and size, or what is wrong with it, and
 * what it is known again by. Kept as the program's note.
 *
 * @returns the rows that were written; null when its file is not there to be looked at, which is no fault of the film
 */
export async function lookAt(opened: OpenWorkshop, id: string): Promise<Written[] | null> {
  const places = await readEnds(opened, id);
  const [place] = places;
  if (!place) return null;
  if (await wasLookedAt(opened, id)) return [];
  const film = await probe(fileOf(place));
  // A drive that went meanwhile says nothing of the film.
  if (!film.ok && (film.kind === "missing" || (await whyAway(place)) !== null)) return null;
  if (film.ok) await writeFramesFile(framesPath(opened, id), film.frames);
  const copied = (await placesOf(opened.client, id)).some((one) => one.role === "copy");
  return noteRecording(opened.client, id, (row) => ({
    label: `Looked at ${row.name}`,
    set: whatWasSeen(film, row, copied),
  }));
}

/** Reads the ends of a recording's originals that have not been read. @returns the places that hold it now */
async function readEnds(opened: OpenWorkshop, id: string): Promise<KnownPlace[]> {
  const there: KnownPlace[] = [];
  for (const place of await originalsNow(opened, id)) {
    const print = await fingerprint(place.root, place.path).catch(() => null);
    if (print === null || (place.fingerprint !== "" && print !== place.fingerprint)) continue;
    if (place.fingerprint === "") await renewPlace(opened.client, place.id, { fingerprint: print });
    there.push({ ...place, fingerprint: print });
  }
  return there;
}

async function wasLookedAt(opened: OpenWorkshop, id: string): Promise<boolean> {
  const row = await opened.client.recording.findUnique({ where: { id } });
  if (!row) return true;
  return row.probeJson === "null" ? row.troubleJson !== "null" : existsSync(framesPath(opened, id));
}

/** @param copied whether there is a copy that plays, whatever the original is */
function whatWasSeen(film: ProbeResult, row: Recording, copied: boolean): Partial<Recording> {
  const trouble = film.ok ? (copied ? null : unplayableTrouble(film)) : film;
  const said = trouble && { found: trouble.found, expected: trouble.expected, todo: trouble.todo };
  if (!film.ok) return { probe: null, trouble: said };
  const { duration, frames, width, height, rotation, videoCodec, audioCodec, playable } = film;
  const told = {
    duration,
    frameCount: frames.starts.length,
    width,
    height,
    rotation,
    videoCodec,
    audioCodec,
    playable: playable || copied,
  };
  const seen = probed.safeParse(told);
  if (!seen.success) return { probe: null, trouble: impossible(seen.error.issues[0]) };
  // What the restorer has said of the time stands.
  const time =
    film.createdAt && row.madeAt === null ? { madeAt: film.createdAt, madeAtTrust: film.createdAtTrust } : {};
  return { probe: seen.data, trouble: said, ...time };
}

/** A film may say anything of itself. */
function impossible(issue: { path: PropertyKey[]; message: string } | undefined): Recording["trouble"] {
  return {
    found: `The film says of itself what no film can be: ${issue?.path.join(".")}: ${issue?.message}.`,
    expected: "A film of less than 116 days, whose index is whole.",
    todo: "Copy it again from the camera, and see whether another program plays it.",
  };
}

/**
 * Reads a recording's file to its end and notes the SHA-256 of its bytes.
 *
 * @returns the rows that were written; null when its file is not there
 * @throws MediaError when it changed meanwhile or cannot be read; the signal's reason when that is given up
 */
export async function readWhole(
  opened: OpenWorkshop,
  id: string,
  options: HashOptions = {},
): Promise<Written[] | null> {
  const [place] = await originalsNow(opened, id);
  if (!place) return null;
  const { sha256, size, mtimeMs } = await hashFile(place.root, place.path, options);
  if (size !== place.size) return null;
  await renewPlace(opened.client, place.id, { modifiedAt: mtimeMs });
  return noteRecording(opened.client, id, (row) => ({ label: `Read ${row.name} whole`, set: { sha256 } }));
}

/** Forgets what was seen of a recording whose file holds other bytes now, so that it is looked at again. */
export function forgetLook(opened: OpenWorkshop, id: string): Promise<Written[]> {
  return noteRecording(opened.client, id, (row) => ({
    label: `The file of ${row.name} holds other bytes now`,
    set: { probe: null, trouble: null, sha256: null },
  }));
}

/** Gives a recording that was called by its file's name the file's new name. */
export function renameAfterFile(
  opened: OpenWorkshop,
  id: string,
  from: string,
  to: string,
): Promise<Written[]> {
  return noteRecording(opened.client, id, (row) => ({
    label: `${row.name} lies at ${to} now`,
    set: row.name === from ? { name: to.slice(-500) } : {},
  }));
}
