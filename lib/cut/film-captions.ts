import { type BuildDocument, type CaptionTrack, present, type Recording } from "#lib/build/index.ts";
import { type CaptionProblem, type Cue, readCaptionText, toWebVtt } from "#lib/captions/index.ts";
import { captionsOfRecordings } from "./captions.ts";
import type { Film } from "./film.ts";

/** What bringing in the captions of an edited film comes to. Nothing is kept by it. */
export interface FilmCaptions {
  /** Caption tracks to keep, a recording each; one that came from a film before is replaced. */
  tracks: { recording: Recording; cues: number; row: CaptionTrack }[];
  /** Recordings that have captions of their own: those stay, and nothing of the film's is kept for them. */
  own: Recording[];
  /** Captions of the film, and those among them that come from no recording. */
  cues: readonly Cue[];
  without: readonly Cue[];
  problems: readonly CaptionProblem[];
}

/** What the name of a track ends with that came from a film. */
const fromFilm = ", from the film";

/**
 * A caption file of the edited film as captions of the recordings its cues come from, in their own time, so that
 * drafts and search can use them. `newId` gives the id of each track that is new.
 */
export function bringFilmCaptions(
  document: Pick<BuildDocument, "build" | "recordings" | "captions">,
  { cut }: Pick<Film, "cut">,
  file: { name: string; text: string },
  newId: () => string,
): FilmCaptions {
  const { cues, problems } = readCaptionText(file.text);
  const { recordings, without } = captionsOfRecordings(cues, cut);
  const result: FilmCaptions = { tracks: [], own: [], cues, without, problems };
  for (const recording of present(document.recordings)) {
    const its = recordings.get(recording.id);
    if (!its) continue;
    const known = present(document.captions).filter(({ recordingId }) => recordingId === recording.id);
    const before = known.find(({ name }) => name.endsWith(fromFilm));
    if (!before && known.some(({ clock }) => clock === "recording")) {
      result.own.push(recording);
      continue;
    }
    const row: CaptionTrack = {
      ...(before ?? {
        id: newId(),
        buildId: document.build.id,
        recordingId: recording.id,
        gone: null,
        rev: 0,
      }),
      name: `${file.name.slice(0, 400)}${fromFilm}`,
      clock: "recording",
      text: toWebVtt(its),
    };
    result.tracks.push({ recording, cues: its.length, row });
  }
  return result;
}
