import fs from "node:fs";
import type { IncomingMessage, ServerResponse } from "node:http";
import { z } from "zod";
import { newRecording } from "#lib/build/index.ts";
import { mediaType, receiveFile, serveFile } from "#lib/media/index.ts";
import { listRecordings, type OpenWorkshop, placesOf, readRecording, rootFor } from "#lib/store/index.ts";
import {
  framesPath,
  indexingOf,
  listInPlace,
  lookAt,
  mustExist,
  nameFile,
  openPlace,
  whereaboutsOf,
} from "../indexing/index.ts";
import { answer, readJson } from "./answer.ts";
import { ask, askedForPath, wholePath } from "./asked.ts";

export { framesPath, lookAt } from "../indexing/index.ts";

/** Serves the bytes of a recording, of its copy that plays where there is one; ranges and all. */
export async function serveRecording(
  opened: OpenWorkshop,
  req: IncomingMessage,
  res: ServerResponse,
  id: string,
): Promise<void> {
  for (const place of await placesOf(opened.client, id)) {
    const file = await openPlace(opened, place);
    if (!file) continue;
    await serveFile(req, res, { file: file.handle, type: mediaType(place.path) });
    return;
  }
  const { away } = await whereaboutsOf(opened, id);
  answer(res, 404, {
    found: away?.found ?? "The file of this recording holds other bytes than it did.",
    expected: away?.expected ?? "The film that was marked.",
    todo:
      away?.todo ?? "Put the film back, or list the folder where it lies now. What was marked on it is kept.",
  });
}

/** The frame table of a recording, made again from its film when it is not there. */
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

/** Where the files of a recording lie, and in words why it cannot be shown when it cannot. */
export async function tellWhereabouts(opened: OpenWorkshop, res: ServerResponse, id: string): Promise<void> {
  if (await readRecording(opened.client, id)) answer(res, 200, await whereaboutsOf(opened, id));
  else answer(res, 404, { found: "There is no such recording.", expected: "", todo: "Load the page again." });
}

/** Takes a file that the restorer names as the film of a recording. */
export async function takeNamedFile(
  opened: OpenWorkshop,
  req: IncomingMessage,
  res: ServerResponse,
  id: string,
): Promise<void> {
  const { file } = ask(z.object({ file: wholePath }), await readJson(req), askedForPath);
  if (!(await readRecording(opened.client, id))) {
    answer(res, 404, { found: "There is no such recording.", expected: "", todo: "Load the page again." });
    return;
  }
  const rows = await nameFile(opened, id, file);
  indexingOf(opened).wake();
  answer(res, 200, { rows });
}

/** Brings a file in with one request: streams it into the workshop, lists it in its sitting, and looks at it. */
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
  const { sha256 } = received;
  const recording = newRecording({ id: crypto.randomUUID(), buildId, sittingId, name, sha256 });
  const { size, mtimeMs: modifiedAt } = fs.statSync(received.path);
  const rootId = await rootFor(client, workshop.recordings, true);
  const place = { path: received.diskName, size, modifiedAt };
  const rows = await listRecordings(client, rootId, [{ recording, place }], `Recording ${name}`);
  answer(res, 200, { rows: [...rows, ...((await lookAt(opened, recording.id)) ?? [])] });
}

const folderRequest = z.object({
  build: z.string(),
  sitting: z.string(),
  folder: wholePath,
});

/** Lists the recordings of a folder in place; they are usable at once, and looked at afterwards. */
export async function listFolderInPlace(
  opened: OpenWorkshop,
  req: IncomingMessage,
  res: ServerResponse,
): Promise<void> {
  const { build, sitting, folder } = ask(folderRequest, await readJson(req), askedForPath);
  await mustExist(opened, build, sitting);
  answer(res, 200, await listInPlace(opened, folder, { buildId: build, sittingId: sitting }));
  indexingOf(opened).wake();
}
