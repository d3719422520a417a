import { cutOfFilm } from "#lib/procedure/index.ts";
import type {
  CheckedProcedure,
  FilmOfProcedure,
  MarkMoment,
  Procedure,
  RecordingLine,
} from "#lib/procedure/tree.ts";
import { compare, minimum, subtract, toNumber, zero } from "#lib/rational/index.ts";
import { type Cut, type PlacedSegment, readRate, type Segment, shownOf } from "#lib/time/index.ts";
import { cleanTree, type Replaced, replacedSentence, textCleaner } from "../clean.ts";
import { contentHash } from "../content-hash.ts";
import { type Output, type PublishOptions, textFile } from "../output.ts";
import { sheetState } from "../state.ts";
import { titleOf } from "../words.ts";
import { clip, type Forms, formsAt, gap, marker, speedEffect, timeline, track, transition } from "./forms.ts";

/** Where no rate is known times are written in thousandths of a second. */
const thousandths = 1000;
/** Markers have colours; here one says a caution, and the other nothing. */
const colours = { caution: "RED", other: "WHITE" } as const;

/**
 * The marks as markers of an OpenTimelineIO timeline: `marks.otio`. Where there is an edited film it is the timeline,
 * and a mark lies at each of its places in it; else each recording is a track with its marks.
 */
export async function toOtio(checked: CheckedProcedure, options: PublishOptions): Promise<Output> {
  const replaced: Replaced = new Map();
  const procedure = cleanTree(checked.procedure, textCleaner(replaced));
  const state = sheetState(checked, options, contentHash(checked)).line;
  const about = { "witness-mark": { build: procedure.buildId, sheet: state } };
  const made = procedure.film
    ? ofFilm(procedure, procedure.film, about)
    : { timeline: ofRecordings(procedure, about), losses: [] };
  const cleaned = replacedSentence(replaced, "\ufffd", "JSON cannot carry them");
  return {
    files: [textFile("marks.otio", `${JSON.stringify(made.timeline, null, 2)}\n`)],
    losses: [
      "OpenTimelineIO markers carry each mark's kind, words and step, and not its other fields.",
      ...made.losses,
      ...(cleaned ? [`OpenTimelineIO: ${cleaned}`] : []),
    ],
  };
}

function ofRecordings(procedure: Procedure, about: object): object {
  const { recordings, moments } = procedure;
  const forms = formsAt(thousandths);
  const tracks = recordings.map((recording) => {
    const own = moments.filter(({ moment }) => moment.recordingId === recording.id);
    const markers = own.map((mark) => markerAt(mark, mark.moment.at, mark.moment.until ?? null, forms));
    const range = available(recording, forms);
    const parts = {
      name: recording.name,
      url: recording.name,
      range,
      available: range,
      effects: [],
      markers,
    };
    return track(recording.name, [clip({ ...parts, metadata: identity(recording) })]);
  });
  return timeline(titleOf(procedure), tracks, [], about);
}

function ofFilm(procedure: Procedure, film: FilmOfProcedure, about: object) {
  const rate = readRate(film.rate);
  const forms = formsAt(rate ? toNumber(rate) : thousandths);
  const cut = cutOfFilm(film);
  const recordings = new Map(procedure.recordings.map((one) => [one.id, one]));
  const layers = layersOf(cut.segments);
  const tracks = layers.map((layer, index) =>
    track(`V${index + 1}`, filmTrack(layer, cut, recordings, forms)),
  );
  const markers = procedure.moments.flatMap((mark) =>
    (mark.moment.film ?? []).map(({ at, until }) => markerAt(mark, at, until, forms)),
  );
  const out = procedure.moments.filter(({ moment }) => moment.film?.length === 0).length;
  const losses = [
    ...(out === 0 ? [] : [`OpenTimelineIO: ${out} marks are not in the film and have no marker.`]),
    ...(layers.length < 2
      ? []
      : [
          "OpenTimelineIO: what overlaps in the film and is no dissolve stands on several tracks, where the upper one hides the lower.",
        ]),
  ];
  return { timeline: timeline(film.name || titleOf(procedure), tracks, markers, about), losses };
}

function markerAt(
  { mark, kind, words, step }: MarkMoment,
  at: number,
  until: number | null,
  forms: Forms,
): object {
  const range = forms.range(at, until === null ? 0 : until - at);
  const colour = kind === "caution" ? colours.caution : colours.other;
  return marker(words || kind || "unsorted", range, colour, { "witness-mark": { mark, kind, step } });
}

function available({ duration }: RecordingLine, forms: Forms): object | null {
  return duration === null ? null : forms.range(0, duration);
}

function identity({ id, sha256 }: RecordingLine): object {
  return { "witness-mark": { recording: id, sha256 } };
}

/** Segments in as few tracks as hold them: one may overlap the next where that is a dissolve. */
function layersOf(segments: readonly PlacedSegment[]): PlacedSegment[][] {
  const layers: PlacedSegment[][] = [];
  for (const segment of segments) {
    const layer = layers.find((one) => follows(one, segment));
    if (layer) layer.push(segment);
    else layers.push([segment]);
  }
  return layers;
}

/** Whether a segment can come next in a track: after the last one, or dissolving out of it. */
function follows(layer: readonly PlacedSegment[], next: PlacedSegment): boolean {
  const [before, last] = [layer.at(-2), layer.at(-1) as PlacedSegment];
  if (compare(last.end, next.start) <= 0) return true;
  const dissolves = compare(last.start, next.start) < 0 && compare(last.end, next.end) <= 0;
  return dissolves && (!before || compare(before.end, next.start) <= 0);
}

function filmTrack(
  layer: readonly PlacedSegment[],
  cut: Cut,
  recordings: ReadonlyMap<string, RecordingLine>,
  forms: Forms,
): object[] {
  return layer.flatMap((segment, index) => {
    const [before, next] = [layer[index - 1], layer[index + 1]];
    const free = toNumber(subtract(segment.start, before?.end ?? zero));
    // What a dissolve shows of the one before lies beyond the seam.
    const end = next ? minimum(segment.end, next.start) : segment.end;
    const item = filmClip({ ...segment, end }, cut, recordings.get(segment.source), forms);
    if (free < 0) return [transition(forms.time(0), forms.time(-free)), item];
    return free > 0 ? [gap(forms.range(0, free)), item] : [item];
  });
}

function filmClip(
  segment: Segment,
  { frame }: Cut,
  recording: RecordingLine | undefined,
  forms: Forms,
): object {
  const start = toNumber(shownOf(frame, segment).start);
  const long = toNumber(subtract(segment.end, segment.start));
  const name = recording?.name ?? segment.source;
  return clip({
    name,
    url: name,
    range: forms.range(start, long),
    available: recording ? available(recording, forms) : null,
    effects: speedEffect(toNumber(segment.speed)),
    markers: [],
    metadata: recording ? identity(recording) : {},
  });
}
