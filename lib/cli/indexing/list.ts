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
  renewPlace,
  rootFor,
  type Written,
} from "#lib/store/index.ts";
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
  const renewed: Written[] = [];
  for (const one of all) renewed.push(...(await keepPlace(opened, rootId, one)));
  const label = `Films of the folder ${folder}`.slice(0, 500);
  const rows = await listRecordings(client, rootId, newOnes(all, at), label);
  const again = all.filter((one) => one.kind !== "new");
  return {
    rows: [...rows, ...renewed],
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
      const [one, other] = [
        await identity(path.join(folder, file.path)),
        await identity(fileOf(at(placeId))),
      ];
      return one.ino === other.ino && one.dev === other.dev;
    },
  };
}

/** Notes where a file lies now, each by itself: what has been found stays found if the rest is cut short. */
async function keepPlace(opened: OpenWorkshop, rootId: string, one: Recognised): Promise<Written[]> {
  if (one.kind === "new" || (one.kind === "known" && one.renew === "nothing")) return [];
  const { client } = opened;
  const { path: inRoot, size, mtimeMs: modifiedAt } = one.file;
  const { placeId, recordingId, path: before } = one.place;
  const facts = { path: inRoot, size, modifiedAt };
  if (one.kind === "second") {
    await addPlace(client, rootId, { ...facts, recordingId, role: "original", fingerprint: one.fingerprint });
    return [];
  }
  if (one.kind === "known" && one.renew === "bytes") {
    await renewPlace(client, placeId, { ...facts, fingerprint: "" });
    return forgetLook(opened, recordingId);
  }
  await renewPlace(client, placeId, { rootId, ...facts });
  return renameAfterFile(opened, recordingId, before, inRoot);
}

function newOnes(all: readonly Recognised[], at: { buildId: string; sittingId: string }): Listed[] {
  return all
    .filter((one) => one.kind === "new")
    .map(({ file, fingerprint: print }) => ({
      recording: newRecording({ id: crypto.randomUUID(), ...at, name: file.path.slice(-500) }),
      place: { path: file.path, size: file.size, modifiedAt: file.mtimeMs, fingerprint: print },
    }));
}
