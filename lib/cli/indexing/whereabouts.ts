import path from "node:path";
import { type Away, fingerprint, type OpenedFile, openInside, whyAway } from "#lib/media/index.ts";
import { type KnownPlace, type OpenWorkshop, placesOf, placesOfBuild, renewPlace } from "#lib/store/index.ts";

/** File systems keep whole milliseconds at best; times nearer than this are one time. */
const sameTimeMs = 2;

/** The whole path of a place. */
export function fileOf(place: Pick<KnownPlace, "root" | "path">): string {
  return path.join(place.root, ...place.path.split("/"));
}

/**
 * Opens the file of a place, when it still is the file that was seen there; null when it is away or another has taken
 * its name. Whoever asked closes the handle.
 */
export async function openPlace(opened: OpenWorkshop, place: KnownPlace): Promise<OpenedFile | null> {
  const file = await openInside(place.root, place.path).catch(() => null);
  if (!file) return null;
  if (file.size === place.size && (await isStillIt(opened, place, file.mtimeMs))) return file;
  await file.handle.close();
  return null;
}

/** A file of the same length whose time of change is another is known by its ends, where those were read. */
async function isStillIt({ client }: OpenWorkshop, place: KnownPlace, mtimeMs: number): Promise<boolean> {
  if (Math.abs(place.modifiedAt - mtimeMs) < sameTimeMs || place.fingerprint === "") return true;
  if ((await fingerprint(place.root, place.path).catch(() => "")) !== place.fingerprint) return false;
  await renewPlace(client, place.id, { modifiedAt: mtimeMs });
  return true;
}

/** The places of a recording's original that hold it now. */
export async function originalsNow(opened: OpenWorkshop, recordingId: string): Promise<KnownPlace[]> {
  const roots = new Map<string, boolean>();
  const there: KnownPlace[] = [];
  for (const place of await placesOf(opened.client, recordingId)) {
    if (place.role === "original" && (await whyAway(place, roots)) === null) there.push(place);
  }
  return there;
}

/** A recording whose original is nowhere to be reached, and why. */
export interface AwayRecording extends Away {
  recording: string;
}

/** The recordings of a build whose originals are at none of their places. */
export async function awayOf(opened: OpenWorkshop, buildId: string): Promise<AwayRecording[]> {
  const roots = new Map<string, boolean>();
  const away = new Map<string, Away | null>();
  for (const place of await placesOfBuild(opened.client, buildId)) {
    const { recordingId } = place;
    if (place.role !== "original" || away.get(recordingId) === null) continue;
    away.set(recordingId, await whyAway(place, roots));
  }
  return [...away].flatMap(([recording, why]) => (why ? [{ recording, ...why }] : []));
}

/** Where the files of one recording lie, and what is wrong where they do not. */
export interface Whereabouts {
  places: { file: string; role: KnownPlace["role"]; away: Away | null }[];
  /** Why the recording cannot be shown now; null when one of its places holds it. */
  away: Away | null;
}

export async function whereaboutsOf(opened: OpenWorkshop, recordingId: string): Promise<Whereabouts> {
  const roots = new Map<string, boolean>();
  const places: Whereabouts["places"] = [];
  for (const place of await placesOf(opened.client, recordingId)) {
    places.push({ file: fileOf(place), role: place.role, away: await whyAway(place, roots) });
  }
  const there = places.some((place) => place.away === null);
  return { places, away: there ? null : (places.find((place) => place.away)?.away ?? nowhere) };
}

/** What is said of a recording that came without its film. */
const nowhere: Away = {
  kind: "file-missing",
  found: "No film is known for this recording.",
  expected: "It came from a build folder that did not hold its film.",
  todo: "If you have it, say where it lies, on the build's page.",
};
