import { stat } from "node:fs/promises";
import path from "node:path";
import { newRecording } from "#lib/build/index.ts";
import {
  type Disk,
  type FolderListing,
  fingerprint,
  listFolder,
  type Recognised,
  recognise,
} from "#lib/media/index.ts";
import {
  addPlace,
  type Listed,
  listRecordings,
  type OpenWorkshop,
  type OriginalPlace,
  originals,
  type Renewal,
  renewPlaces,
  rootFor,
  type Written,
} from "#lib/store/index.ts";
import { takeCaptionsBeside } from "./captions-beside.ts";
import { forgetLook, renameAfterFile } from "./look.ts";
import { fileOf, openPlace } from "./whereabouts.ts";

/** What came of listing a folder. */
export interface ListedFolder {
  /** The rows that were written. */
  rows: Written[];
  /** How many are new, and how many were known already, wherever they lay. */
  listed: number;
  known: number;
  /** Of the known ones: those that belong to other builds. */
  elsewhere: number;
  /** Recordings that had been renamed or moved, and were known again. */
  found: { from: string; to: string }[];
  /** Files that are a second way to a recording that is still at its place. */
  second: number;
  ignored: number;
  unreadable: FolderListing["unreadable"];
  stoppedAt: FolderListing["stoppedAt"];
  /** How many recordings were given the captions that lie beside them. */
  captions: number;
  /** Caption files that belong to a recording and could not be read. */
  badCaptions: string[];
}

/**
 * Lists the recordings of a folder where they lie, in a sitting. Files that are known are not listed again; those
 * that were renamed or moved keep their recording with all its marks. Nothing is copied, changed or deleted there,
 * and only what may be known is opened, for reading.
 *
 * @param at the sitting, and its build
 * @throws MediaError when the folder cannot be read
 */
export async function listInPlace(
  opened: OpenWorkshop,
  folder: string,
  at: { buildId: string; sittingId: string },
): Promise<ListedFolder> {
  const { client } = opened;
  const listing = await listFolder(folder);
  const rootId = await rootFor(client, folder, false);
  const places = new Map((await originals(client)).map((place) => [place.id, place]));
  const known = [...places.values()].map((place) => ({ ...place, placeId: place.id }));
  const all = await recognise(listing.files, known, rootId, diskOf(opened, folder, places));
  const renewed = await keepPlaces(opened, rootId, all);
  const label = `Films of the folder ${folder}`.slice(0, 500);
  const fresh = newOnes(all, at);
  const rows = await listRecordings(client, rootId, fresh, label);
  const films = filmsOf(fresh, all);
  const beside = await takeCaptionsBeside(opened, folder, listing.captions, films, at.buildId);
  const again = all.filter((one) => one.kind !== "new");
  return {
    rows: [...rows, ...renewed, ...beside.rows],
    listed: rows.length,
    known: again.length,
    elsewhere: again.filter((one) => places.get(one.place.placeId)?.buildId !== at.buildId).length,
    found: all
      .filter((one) => one.kind === "moved")
      .map(({ place, file }) => ({ from: place.path, to: file.path })),
    second: again.filter((one) => one.kind === "second").length,
    ignored: listing.ignored,
    unreadable: listing.unreadable,
    stoppedAt: listing.stoppedAt,
    captions: beside.rows.length,
    badCaptions: beside.bad,
  };
}

/** What telling files apart may ask of the disk. What cannot be read is like nothing that is known. */
function diskOf(opened: OpenWorkshop, folder: string, places: ReadonlyMap<string, OriginalPlace>): Disk {
  const at = (id: string) => places.get(id) as OriginalPlace;
  const identity = (file: string) => stat(file, { bigint: true });
  return {
    fingerprint: (file) => fingerprint(folder, file.path).catch(() => ""),
    isThere: async ({ placeId }) => {
      const file = await openPlace(opened, at(placeId));
      await file?.handle.close();
      return file !== null;
    },
    isSame: async (file, { placeId }) => {
      const files = [path.join(folder, file.path), fileOf(at(placeId))];
      const [one, other] = await Promise.all(files.map((name) => identity(name).catch(() => null)));
      return !!one && !!other && one.ino === other.ino && one.dev === other.dev;
    },
  };
}

/** Notes where the known files lie now, and has those looked at anew that hold other bytes. */
async function keepPlaces(
  opened: OpenWorkshop,
  rootId: string,
  all: readonly Recognised[],
): Promise<Written[]> {
  const { client } = opened;
  await renewPlaces(
    client,
    all.flatMap((one) => renewalOf(one, rootId)),
  );
  const rows: Written[] = [];
  for (const one of all) {
    if (one.kind === "second") await addSecond(opened, rootId, one);
    else if (one.kind === "known" && one.renew === "bytes")
      rows.push(...(await forgetLook(opened, one.place.recordingId)));
    else if (one.kind === "moved" && one.place.path !== one.file.path)
      rows.push(...(await renameAfterFile(opened, one.place.recordingId, one.place.path, one.file.path)));
  }
  return rows;
}

function renewalOf(one: Recognised, rootId: string): Renewal[] {
  if (one.kind === "new" || one.kind === "second") return [];
  if (one.kind === "known" && one.renew === "nothing") return [];
  const { path: inRoot, size, mtimeMs: modifiedAt } = one.file;
  const unread = one.kind === "known" && one.renew === "bytes" ? { fingerprint: "" } : {};
  return [{ id: one.place.placeId, facts: { rootId, path: inRoot, size, modifiedAt, ...unread } }];
}

async function addSecond(
  { client }: OpenWorkshop,
  rootId: string,
  { file, place, fingerprint: print }: Extract<Recognised, { kind: "second" }>,
): Promise<void> {
  const { path: inRoot, size, mtimeMs: modifiedAt } = file;
  const { recordingId } = place;
  const role = "original";
  await addPlace(client, rootId, { path: inRoot, size, modifiedAt, recordingId, role, fingerprint: print });
}

function newOnes(all: readonly Recognised[], at: { buildId: string; sittingId: string }): Listed[] {
  return all
    .filter((one) => one.kind === "new")
    .map(({ file, fingerprint: print }) => ({
      recording: newRecording({ id: crypto.randomUUID(), ...at, name: file.path.slice(-500) }),
      place: { path: file.path, size: file.size, modifiedAt: file.mtimeMs, fingerprint: print },
    }));
}

/** The recordings of the files of a folder, by path. */
function filmsOf(fresh: readonly Listed[], all: readonly Recognised[]): Map<string, string> {
  return new Map([
    ...fresh.map(({ recording, place }) => [place.path, recording.id] as const),
    ...all.flatMap((one) => (one.kind === "new" ? [] : [[one.file.path, one.place.recordingId] as const])),
  ]);
}
