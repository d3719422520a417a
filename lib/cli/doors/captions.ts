import fs from "node:fs/promises";
import type { IncomingMessage, ServerResponse } from "node:http";
import path from "node:path";
import { findFfmpeg, MediaError } from "#lib/media/index.ts";
import {
  apply,
  type OpenWorkshop,
  placesOf,
  Refused,
  readRecording,
  readSettings,
} from "#lib/store/index.ts";
import { type CaptionProgress, captionsFromSound } from "../caption-command.ts";
import { answer } from "./answer.ts";

/** Captions that are being made from a recording's sound, or were, since the program began. */
interface Making {
  state: "making" | "done" | "failed";
  progress: CaptionProgress;
  words: string;
  stop: AbortController;
}

const making = new Map<string, Making>();

/**
 * Captions by the restorer's own command: POST begins it, GET says how far it is, DELETE stops it. Nothing is run while
 * none is set.
 */
export async function captionsDoor(
  opened: OpenWorkshop,
  req: IncomingMessage,
  res: ServerResponse,
  id: string,
): Promise<void> {
  const { captionCommand } = await readSettings(opened.client);
  if (req.method === "DELETE") making.get(id)?.stop.abort();
  if (req.method === "POST" && making.get(id)?.state !== "making") await begin(opened, id, captionCommand);
  const now = making.get(id);
  answer(res, 200, {
    set: captionCommand.trim() !== "",
    state: now?.state ?? "none",
    progress: now?.progress ?? null,
    words: now?.words ?? "",
  });
}

async function begin(opened: OpenWorkshop, id: string, command: string): Promise<void> {
  if (command.trim() === "") {
    throw new Refused({
      found: "No command is set that makes captions from sound, so nothing was run.",
      expected: "A command of your own under Keys and settings.",
      todo: "Set one there, or bring a caption file.",
    });
  }
  const { client, workshop } = opened;
  const recording = await readRecording(client, id);
  const original = (await placesOf(client, id)).find((place) => place.role === "original");
  if (!recording || !original) {
    throw new Refused({ found: "The film is not there.", expected: "Its file.", todo: "Put it back." });
  }
  await fs.mkdir(workshop.made, { recursive: true });
  // Two may have asked at once.
  if (making.get(id)?.state === "making") return;
  const duration = recording.probe?.duration ?? 0;
  const job: Making = {
    state: "making",
    progress: { doing: "sound", fraction: null, line: "" },
    words: "",
    stop: new AbortController(),
  };
  making.set(id, job);
  void captionsFromSound({
    command,
    film: path.join(original.root, ...original.path.split("/")),
    duration,
    ffmpeg: await findFfmpeg().catch(() => null),
    within: workshop.made,
    limit: 1000 * (4 * duration + 1800),
    signal: job.stop.signal,
    onProgress: (progress) => {
      job.progress = progress;
    },
  })
    .then((text) => keep(opened, id, text))
    .then(
      () => {
        job.state = "done";
      },
      (error: unknown) => {
        job.state = "failed";
        job.words = job.stop.signal.aborted ? "Stopped. Nothing was changed." : wordsOf(error);
      },
    );
}

/** The captions as those of the recording; in place of the ones it has, and undone like any change. */
async function keep({ client }: OpenWorkshop, recordingId: string, text: string): Promise<void> {
  const { buildId, name } = await client.recording.findUniqueOrThrow({ where: { id: recordingId } });
  const known = await client.captionTrack.findFirst({
    where: { recordingId, gone: null },
    orderBy: { id: "asc" },
  });
  const made = { name: `${name.replace(/\.[^.]*$/, "")}, from its sound`, text, clock: "recording" };
  const put = known
    ? { id: known.id, rev: known.rev, set: made }
    : { id: crypto.randomUUID(), rev: 0, set: { ...made, buildId, recordingId } };
  const label = `Captions made from the sound of ${name}`.slice(0, 500);
  await apply(client, { id: crypto.randomUUID(), buildId, label, puts: [{ table: "captionTrack", ...put }] });
}

function wordsOf(error: unknown): string {
  if (error instanceof Refused || error instanceof MediaError)
    return `${error.found} ${error.expected} ${error.todo}`;
  return error instanceof Error ? error.message : String(error);
}
