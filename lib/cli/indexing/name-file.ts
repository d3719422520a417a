import path from "node:path";
import type { Recording } from "#lib/build/index.ts";
import { fingerprint, hashFile, openInside, probe, sayBytes } from "#lib/media/index.ts";
import {
  addPlace,
  foldRecording,
  type OpenWorkshop,
  originals,
  placesOf,
  Refused,
  rootFor,
  type Written,
} from "#lib/store/index.ts";
import { sayMoment } from "#lib/time/index.ts";

/**
 * Takes a file that the restorer names as the film of a recording whose own is away. It must be that film: by its
 * length and ends where they are known, else by its hash, else by its running time and number of frames.
 *
 * @param file a whole path on this computer
 * @throws Refused when it is another film, MediaError when it cannot be opened. Nothing is changed then.
 */
export async function nameFile(opened: OpenWorkshop, id: string, file: string): Promise<Written[]> {
  const { client } = opened;
  if (!path.isAbsolute(file)) {
    throw new Refused({
      found: `“${file.slice(0, 200)}” does not say where on this computer it is.`,
      expected: "The whole path of a film, from the drive or the root down.",
      todo: "Copy the path from the file manager.",
    });
  }
  const [folder, name] = [path.dirname(file), path.basename(file)];
  const { handle, size, mtimeMs } = await openInside(folder, name);
  await handle.close();
  const print = await fingerprint(folder, name);
  await mustBeIt(opened, id, { folder, name, size, print });
  const rootId = await rootFor(client, folder, false);
  const place = { path: name, size, modifiedAt: mtimeMs, fingerprint: print };
  await addPlace(client, rootId, { ...place, recordingId: id, role: "original" });
  const rows: Written[] = [];
  for (const other of await originals(client)) {
    // Listed under its new name as if it were a film of its own: it is this one.
    if (other.rootId !== rootId || other.path !== name || other.recordingId === id) continue;
    rows.push(...(await foldRecording(client, other.recordingId, id, { anySitting: true })));
  }
  return rows;
}

interface NamedFile {
  folder: string;
  name: string;
  size: number;
  print: string;
}

async function mustBeIt(opened: OpenWorkshop, id: string, file: NamedFile): Promise<void> {
  const known = (await placesOf(opened.client, id)).filter((place) => place.role === "original");
  const alike = known.find((place) => place.size === file.size);
  if (known.length > 0 && !alike) {
    const sizes = known.map((place) => sayBytes(place.size)).join(" or ");
    throw notIt(`That file has ${sayBytes(file.size)}.`, `The film of this recording has ${sizes}.`);
  }
  if (alike?.fingerprint) {
    if (alike.fingerprint === file.print) return;
    throw notIt(
      "That file is as long, but begins or ends otherwise.",
      "The same first and last megabyte as the film had.",
    );
  }
  const row = await opened.client.recording.findUniqueOrThrow({ where: { id } });
  if (row.sha256 !== null) {
    if ((await hashFile(file.folder, file.name)).sha256 === row.sha256) return;
    throw notIt("That file holds other bytes.", `The SHA-256 ${row.sha256.slice(0, 12)}… of this recording.`);
  }
  await mustRunAsLong(file, JSON.parse(row.probeJson) as Recording["probe"]);
}

async function mustRunAsLong(file: NamedFile, probed: Recording["probe"]): Promise<void> {
  if (!probed) return;
  const film = await probe(path.join(file.folder, file.name));
  const frames = film.ok ? film.frames.starts.length : 0;
  if (film.ok && frames === probed.frameCount && Math.abs(film.duration - probed.duration) < 0.001) return;
  const found = film.ok ? `That film runs for ${sayMoment(film.duration)} in ${frames} frames.` : film.found;
  throw notIt(found, `This recording runs for ${sayMoment(probed.duration)} in ${probed.frameCount} frames.`);
}

function notIt(found: string, expected: string): Refused {
  const todo = "Name the film that was marked. To use another one, list it beside this recording.";
  return new Refused({ found, expected, todo });
}
