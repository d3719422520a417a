import { compare, zero } from "#lib/rational/index.ts";
import { type Cut, filmToRecording, makeCut } from "#lib/time/index.ts";

/** A caption, in seconds of whatever clock it keeps. */
interface Caption {
  start: number;
  end: number;
  text: string;
}

/** What became of the captions of a film. */
export interface CaptionsOfRecordings<Cue> {
  /** Captions in seconds of each recording, in the order of their start, by the recording's id. */
  recordings: Map<string, Cue[]>;
  /** Those that are heard over nothing that was recorded: a title, a gap, a picture that stands still. */
  without: Cue[];
}

/** In less than this nothing is said; seconds. A piece so short is a caption that hangs over a cut. */
const shortest = 0.5;
/** Where the film shows a stretch twice it is heard twice, and comes back once; seconds. */
const sameTime = 0.05;

/**
 * Captions of the edited film, brought back to the recordings they were spoken in: once for each place they come from.
 * One that a cut parts goes to both sides with all its words, for nobody knows which were said where. Where the film
 * runs backwards or stands still nobody is heard, as on the way out.
 */
export function captionsOfRecordings<Cue extends Caption>(
  cues: readonly Cue[],
  cut: Cut,
): CaptionsOfRecordings<Cue> {
  const heard = makeCut(
    cut.segments.filter(({ speed }) => compare(speed, zero) > 0),
    cut.frame,
    cut.duration,
  );
  const recordings = new Map<string, Cue[]>();
  const without: Cue[] = [];
  for (const cue of cues) {
    const places = placesOf(heard, cue);
    if (places.length === 0) without.push(cue);
    for (const { source, start, end } of places) put(recordings, source, { ...cue, start, end });
  }
  for (const of of recordings.values()) of.sort((a, b) => a.start - b.start || a.end - b.end);
  return { recordings, without };
}

function placesOf(cut: Cut, cue: Caption) {
  const places = filmToRecording(cut, cue);
  const longest = Math.max(...places.map(({ start, end }) => end - start));
  return places.filter(({ start, end }) => end - start >= Math.min(shortest, longest));
}

function put<Cue extends Caption>(recordings: Map<string, Cue[]>, id: string, cue: Cue): void {
  const its = recordings.get(id) ?? [];
  const near = (a: number, b: number) => Math.abs(a - b) < sameTime;
  const known = its.some(
    ({ start, end, text }) => text === cue.text && near(start, cue.start) && near(end, cue.end),
  );
  if (!known) its.push(cue);
  recordings.set(id, its);
}
