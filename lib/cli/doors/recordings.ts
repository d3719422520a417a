import fs from "node:fs";
import type { IncomingMessage, ServerResponse } from "node:http";
import path from "node:path";
import { z } from "zod";
import { newRecording, type Recording } from "#lib/build/index.ts";
import {
  listFolder,
  mediaType,
  openInside,
  probe,
  receiveFile,
  serveFile,
  unplayableTrouble,
  writeFramesFile,
} from "#lib/media/index.ts";
import {
  addPlace,
  apply,
  knownPaths,
  loadBuild,
  type OpenWorkshop,
  placesOf,
  Refused,
  rootFor,
  type Written,
} from "#lib/store/index.ts";
import { answer, readJson } from "./answer.ts";

/** Serves the bytes of a recording, of its copy that plays where there is one; ranges and all. */
export async function serveRecording(
  { client }: OpenWorkshop,
  req: IncomingMessage,
  res: ServerResponse,
  id: string,
): Promise<void> {
  for (const place of await placesOf(client, id)) {
    const opened = await openInside(place.root, place.path).catch(() => null);
    if (!opened) continue;
    await serveFile(req, res, { file: opened.handle, type: mediaType(place.path) });
    return;
  }
  answer(res, 404, {
    found: "The file of this recording is not where it was.",
    expected: "The file in its folder, or the drive it lies on plugged in.",
    todo: "Plug the drive in, or put the file back; the marks made on it are kept.",
  });
}

/** Where the frame table of a recording lies; it can be made again by looking at the file. */
export function framesPath({ workshop }: OpenWorkshop, id: string): string {
  return path.join(workshop.made, `${encodeURIComponent(id)}.frames`);
}

export async function serveFrames(
  opened: OpenWorkshop,
  req: IncomingMessage,
  res: ServerResponse,
  id: string,
): Promise<void> {
  const file = framesPath(opened, id);
  if (!fs.existsSync(file)) await lookAt(opened, id);
  if (!fs.existsSync(file)) {
    answer(res, 404, { found: "The frames of this recording are not known.", expected: "", todo: "" });
    return;
  }
  await serveFile(req, res, { file, type: "application/octet-stream" });
}

/** Brings a file in: streams it into the workshop, lists it in its sitting, and looks at it. */
export async function bringIn(
  opened: OpenWorkshop,
  req: IncomingMessage,
  res: ServerResponse,
  query: URLSearchParams,
): Promise<void> {
  const { client, workshop } = opened;
  const buildId = query.get("build") ?? "";
  const sittingId = query.get("sitting") ?? "";
  await mustExist(opened, buildId, sittingId);
  const name = (query.get("name") ?? "recording").slice(0, 300);
  const expected = Number(req.headers["content-length"]);
  const received = await receiveFile(req, {
    folder: workshop.recordings,
    name,
    ...(Number.isFinite(expected) ? { expectedBytes: expected } : {}),
  });
  const recording = newRecording({
    id: crypto.randomUUID(),
    buildId,
    sittingId,
    name,
    sha256: received.sha256,
  });
  const rows = await list(opened, recording);
  const rootId = await rootFor(client, workshop.recordings, true);
  const { size, mtimeMs } = fs.statSync(received.path);
  await addPlace(client, rootId, {
    recordingId: recording.id,
    path: received.diskName,
    size,
    modifiedAt: mtimeMs,
    role: "original",
  });
  answer(res, 200, { rows: [...rows, ...(await lookAt(opened, recording.id))] });
}

const folderRequest = z.object({
  build: z.string(),
  sitting: z.string(),
  folder: z.string().min(1).max(4000),
});

/** Lists the recordings of a folder in place: nothing is copied, changed or deleted there. */
export async function listInPlace(
  opened: OpenWorkshop,
  req: IncomingMessage,
  res: ServerResponse,
): Promise<void> {
  const { client } = opened;
  const asked = folderRequest.safeParse(await readJson(req));
  if (!asked.success)
    throw new Refused({ found: "No folder was named.", expected: "A folder.", todo: "Name one." });
  const { build, sitting, folder } = asked.data;
  await mustExist(opened, build, sitting);
  if (!path.isAbsolute(folder)) {
    throw new Refused({
      found: `“${folder}” does not say where on this computer it is.`,
      expected: "A whole path, from the drive or the root down.",
      todo: "Copy the path from the file manager.",
    });
  }
  const listing = await listFolder(folder);
  const rootId = await rootFor(client, folder, false);
  const known = await knownPaths(client, rootId);
  const rows: Written[] = [];
  for (const file of listing.files.filter((one) => !known.has(one.path))) {
    const recording = newRecording({
      id: crypto.randomUUID(),
      buildId: build,
      sittingId: sitting,
      name: file.path,
    });
    rows.push(...(await list(opened, recording)));
    await addPlace(client, rootId, {
      recordingId: recording.id,
      path: file.path,
      size: file.size,
      modifiedAt: file.mtimeMs,
      role: "original",
    });
  }
  answer(res, 200, {
    rows,
    listed: rows.length,
    known: listing.files.length - rows.length,
    ignored: listing.ignored,
    unreadable: listing.unreadable.length,
    stoppedAt: listing.stoppedAt,
  });
  // Looked at afterwards, one by one: a full drive is usable before it has been read.
  for (const { row } of rows) await lookAt(opened, row.id).catch((error: unknown) => console.error(error));
}

async function list({ client }: OpenWorkshop, recording: Recording): Promise<Written[]> {
  const applied = await apply(client, {
    id: crypto.randomUUID(),
    buildId: recording.buildId,
    label: `Recording ${recording.name}`,
    puts: [{ table: "recording", id: recording.id, rev: 0, set: { ...recording } }],
  });
  return applied.rows;
}

/** Looks at a recording's file: its length, frames and size, or what is wrong with it. Kept as the program's note. */
export async function lookAt(opened: OpenWorkshop, id: string): Promise<Written[]> {
  const { client } = opened;
  const row = await client.recording.findUnique({ where: { id } });
  const place = (await placesOf(client, id)).find((one) => one.role === "original");
  if (!row || !place) return [];
  const film = await probe(path.join(place.root, ...place.path.split("/")));
  const trouble = film.ok ? unplayableTrouble(film) : film;
  if (film.ok) await writeFramesFile(framesPath(opened, id), film.frames);
  const set = {
    probe: film.ok
      ? {
          duration: film.duration,
          frameCount: film.frames.starts.length,
          width: film.width,
          height: film.height,
          rotation: film.rotation,
          videoCodec: film.videoCodec,
          audioCodec: film.audioCodec,
          playable: film.playable,
        }
      : null,
    trouble: trouble && { found: trouble.found, expected: trouble.expected, todo: trouble.todo },
    ...(film.ok && film.createdAt ? { madeAt: film.createdAt, madeAtTrust: film.createdAtTrust } : {}),
  };
  const applied = await apply(
    client,
    {
      id: crypto.randomUUID(),
      buildId: row.buildId,
      label: `Looked at ${row.name}`,
      puts: [{ table: "recording", id, rev: row.rev, set }],
    },
    "noted",
  );
  return applied.rows;
}

async function mustExist({ client }: OpenWorkshop, buildId: string, sittingId: string): Promise<void> {
  const sitting = await client.sitting.findUnique({ where: { id: sittingId } });
  if (sitting?.buildId === buildId) return;
  const document = await loadBuild(client, buildId);
  throw new Refused({
    found: document ? "The sitting is not one of this build." : "There is no such build in this workshop.",
    expected: "A sitting of the build was expected.",
    todo: "Load the page again and choose the sitting.",
  });
}
