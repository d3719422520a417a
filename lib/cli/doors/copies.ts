import fs from "node:fs";
import type { IncomingMessage, ServerResponse } from "node:http";
import path from "node:path";
import { findFfmpeg, playableCopy, probe } from "#lib/media/index.ts";
import {
  addPlace,
  apply,
  type OpenWorkshop,
  placesOf,
  Refused,
  readRecording,
  rootFor,
} from "#lib/store/index.ts";
import { answer } from "./answer.ts";

/** How far a copy is that is being made so that a recording plays here. */
interface Making {
  fraction: number;
  stop: AbortController;
  failed: string | null;
  done: boolean;
}

const making = new Map<string, Making>();

/**
 * A copy that plays, with the moments of the original: POST begins it, GET says how far it is, DELETE stops it. The
 * original is read and never written to.
 */
export async function copyDoor(
  opened: OpenWorkshop,
  req: IncomingMessage,
  res: ServerResponse,
  id: string,
): Promise<void> {
  if (req.method === "DELETE") making.get(id)?.stop.abort();
  if (req.method === "POST") await begin(opened, id);
  const now = making.get(id);
  answer(res, 200, {
    ffmpeg: (await findFfmpeg()) !== null,
    state: !now ? "none" : now.failed ? "failed" : now.done ? "done" : "making",
    fraction: now?.fraction ?? 0,
    words: now?.failed ?? "",
  });
}

async function begin(opened: OpenWorkshop, id: string): Promise<void> {
  const ffmpeg = await findFfmpeg();
  if (!ffmpeg) {
    throw new Refused({
      found: "ffmpeg was not found on this computer.",
      expected: "The program ffmpeg, on the path or named by FFMPEG_PATH.",
      todo: "Install ffmpeg from your system's packages and try again, or let the camera write H.264.",
    });
  }
  const { client, workshop } = opened;
  const recording = await readRecording(client, id);
  const original = (await placesOf(client, id)).find((place) => place.role === "original");
  if (!recording || !original)
    throw new Refused({ found: "The original is not there.", expected: "Its file.", todo: "Put it back." });
  // Nothing is waited for between this question and its answer: of two that come at once, one begins.
  const running = making.get(id);
  if (running && !running.done && !running.failed) return;
  const stop = new AbortController();
  const state: Making = { fraction: 0, stop, failed: null, done: false };
  making.set(id, state);
  const to = path.join(workshop.made, `${encodeURIComponent(id)}.copy.mp4`);
  const duration = recording.probe?.duration ?? 0;
  void playableCopy({
    ffmpeg,
    from: path.join(original.root, ...original.path.split("/")),
    to,
    duration,
    signal: stop.signal,
    onProgress: (fraction) => {
      state.fraction = fraction;
    },
  })
    .then(() => noteCopy(opened, id, to))
    .then(
      () => {
        state.done = true;
      },
      (error: unknown) => {
        state.failed = stop.signal.aborted
          ? "Stopped."
          : error instanceof Error
            ? error.message
            : String(error);
      },
    );
}

/** Lists a finished copy as a place of its recording, which now plays. */
async function noteCopy({ client, workshop }: OpenWorkshop, id: string, file: string): Promise<void> {
  const film = await probe(file);
  if (!film.ok || !film.playable)
    throw new Error("The copy was made and does not play here. Nothing was changed.");
  const { size, mtimeMs } = fs.statSync(file);
  const rootId = await rootFor(client, workshop.made, true);
  const place = {
    recordingId: id,
    path: path.basename(file),
    size,
    modifiedAt: mtimeMs,
    role: "copy" as const,
  };
  await addPlace(client, rootId, place);
  const row = await client.recording.findUniqueOrThrow({ where: { id } });
  const probed = JSON.parse(row.probeJson) as Record<string, unknown> | null;
  await apply(
    client,
    {
      id: crypto.randomUUID(),
      buildId: row.buildId,
      label: `Copy that plays of ${row.name}`,
      puts: [
        {
          table: "recording",
          id,
          rev: row.rev,
          set: { probe: probed && { ...probed, playable: true }, trouble: null },
        },
      ],
    },
    "noted",
  );
}
