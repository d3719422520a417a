import { cutOfFilm } from "#lib/procedure/index.ts";
import type { CheckedProcedure, FilmOfProcedure } from "#lib/procedure/tree.ts";
import { toNumber } from "#lib/rational/index.ts";
import { filmSpans, makeCut } from "#lib/time/index.ts";
import { type Output, textFile } from "../output.ts";
import { type VttCue, webVtt } from "./webvtt.ts";

/** A caption of a recording, in seconds of its own clock. */
export interface RecordingCue extends VttCue {
  recordingId: string;
}

/**
 * Captions of the recordings in the film's time: `captions.vtt` (WebVTT). What was cut up comes in parts, what stands
 * in the film twice comes twice; where the film runs backwards or stands still nobody is heard.
 */
export async function toCaptions(
  { procedure }: Pick<CheckedProcedure, "procedure">,
  cues: readonly RecordingCue[],
): Promise<Output> {
  const { film } = procedure;
  if (!film || cues.length === 0) return { files: [], losses: [] };
  const { moved, lost } = cuesInFilm(cues, film);
  const losses =
    lost === 0 ? [] : [`captions.vtt: ${lost} of ${cues.length} captions are not heard in the film.`];
  return { files: moved.length === 0 ? [] : [textFile("captions.vtt", webVtt(moved))], losses };
}

/** Captions where they are heard in the film, and how many are nowhere. */
export function cuesInFilm(
  cues: readonly RecordingCue[],
  film: FilmOfProcedure,
): { moved: VttCue[]; lost: number } {
  const { frame, segments, duration } = cutOfFilm(film);
  const heard = makeCut(
    segments.filter(({ speed }) => toNumber(speed) > 0),
    frame,
    duration,
  );
  let lost = 0;
  const moved = cues.flatMap(({ recordingId, start, end, text }) => {
    const spans = filmSpans(heard, recordingId, { start, end });
    if (spans.length === 0) lost += 1;
    return spans.map((span) => ({ ...span, text }));
  });
  return { moved, lost };
}
