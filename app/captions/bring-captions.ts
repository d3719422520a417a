import { type CaptionTrack, present, type Recording } from "#lib/build/index.ts";
import { type CaptionProblem, decodeCaptions, mostCaptionBytes, readCaptions } from "#lib/captions/index.ts";

import type { BuildSession } from "../session/build-session.ts";

/** Whether a file is one of captions, by its name. */
export const isCaptionFile = (name: string) => /\.(vtt|srt|txt)$/i.test(name);

/** The captions that a recording has, if it has any. */
export function tracksOf(session: BuildSession, recordingId: string): CaptionTrack[] {
  return present(session.document.captions).filter((track) => track.recordingId === recordingId);
}

/**
 * Takes a caption file in, or in place of the one that the recording has: what was decided about its drafts stays.
 *
 * @returns what went wrong, in words; null when it was taken
 */
export async function bringCaptions(
  session: BuildSession,
  recording: Recording,
  file: File,
): Promise<string | null> {
  if (file.size > mostCaptionBytes)
    return `${file.name} has ${Math.round(file.size / 1e6)} MB. A caption file has at most ${mostCaptionBytes / 1e6} MB. Choose the captions themselves, not the film.`;
  const bytes = new Uint8Array(await file.arrayBuffer());
  const { cues, problems } = readCaptions(bytes);
  if (cues.length === 0) return `${file.name}: ${sayProblem(problems[0])} Nothing was changed.`;
  const [known] = tracksOf(session, recording.id);
  const row: CaptionTrack = {
    ...(known ?? {
      id: crypto.randomUUID(),
      buildId: recording.buildId,
      recordingId: recording.id,
      clock: "recording",
      gone: null,
      rev: 0,
    }),
    name: file.name.slice(0, 500),
    text: decodeCaptions(bytes).text,
  };
  session.change(`Captions ${known ? "replaced" : "brought in"}: ${row.name}`.slice(0, 500), [
    { table: "captionTrack", row },
  ]);
  return null;
}

export function sayProblem(problem: CaptionProblem | undefined): string {
  return problem ? `Line ${problem.line}: ${problem.found} ${problem.expected} ${problem.todo}` : "";
}
