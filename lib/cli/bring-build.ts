import fs, { createReadStream } from "node:fs";
import path from "node:path";
import type { BuildDocument } from "#lib/build/index.ts";
import { pathIn, type ReadFolder, readFolder, readInside, writeFolder } from "#lib/folder/index.ts";
import { receiveFile } from "#lib/media/index.ts";
import {
  addPlace,
  type ImportChoice,
  type Imported,
  importBuild,
  loadBuild,
  type OpenWorkshop,
  placesOf,
  rootFor,
} from "#lib/store/index.ts";
import { lookAt } from "./doors/recordings.ts";
import { keepStill, stillPath } from "./doors/stills.ts";

/** Brings a build folder into the workshop: its rows, stills and captions, and the films that lie in it. */
export async function bringBuild(
  opened: OpenWorkshop,
  folder: string,
  choice: ImportChoice | null,
): Promise<Imported & { missing: ReadFolder["missing"] }> {
  const read = await readFolder(folder);
  // Pictures first: a row never names a still that is not on disk.
  for (const still of read.document.stills) {
    const place = read.files.get(still.id);
    if (place) await keepStill(opened.workshop, still.sha256, await readInside(folder, place, 80_000_000));
  }
  const imported = await importBuild(opened.client, read.document, choice);
  if (imported.kind === "imported") await bringFilms(opened, read, imported.document);
  return { ...imported, missing: read.missing };
}

/** Copies the folder's films into the workshop, each known by the recording it belongs to. */
async function bringFilms(opened: OpenWorkshop, read: ReadFolder, document: BuildDocument): Promise<void> {
  for (const [index, recording] of read.document.recordings.entries()) {
    const from = pathIn(read, recording.id);
    // "Keep both" gave the rows new ids and left their order as it was.
    const id =
      document.recordings.find((one) => one.id === recording.id)?.id ?? document.recordings[index]?.id;
    if (!from || !id || (await placesOf(opened.client, id)).length > 0) continue;
    const { recordings } = opened.workshop;
    const received = await receiveFile(createReadStream(from), {
      folder: recordings,
      name: path.basename(from),
    });
    const { size, mtimeMs } = fs.statSync(received.path);
    await addPlace(opened.client, await rootFor(opened.client, recordings, true), {
      recordingId: id,
      path: received.diskName,
      size,
      modifiedAt: mtimeMs,
      role: "original",
    });
    await lookAt(opened, id);
  }
}

/** Writes a build as a folder of plain files. Null when there is no such build. */
export async function sendBuild(
  { client, workshop }: OpenWorkshop,
  buildId: string,
  folder: string,
  withFilms: boolean,
): Promise<string[] | null> {
  const document = await loadBuild(client, buildId);
  if (!document) return null;
  return writeFolder(document, folder, {
    still: async (sha256) => fs.promises.readFile(stillPath(workshop, sha256)).catch(() => null),
    recording: async (id) => {
      const place = withFilms
        ? (await placesOf(client, id)).find((one) => one.role === "original")
        : undefined;
      const file = place && path.join(place.root, ...place.path.split("/"));
      return file && fs.existsSync(file) ? file : null;
    },
  });
}
