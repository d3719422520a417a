import { type BuildDocument, present } from "#lib/build/index.ts";
import { readCaptionText } from "#lib/captions/read/index.ts";
import type { RecordingCue } from "./to-captions.ts";

/** The captions of a build's recordings: of each the first that keep the recording's own clock. */
export function recordingCues(document: Pick<BuildDocument, "recordings" | "captions">): RecordingCue[] {
  return present(document.recordings).flatMap(({ id }) => {
    const track = present(document.captions).find(
      ({ recordingId, clock }) => recordingId === id && clock === "recording",
    );
    if (!track) return [];
    return readCaptionText(track.text).cues.map(({ start, end, text }) => ({
      recordingId: id,
      start,
      end,
      text,
    }));
  });
}
