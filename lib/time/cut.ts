import {
  absolute,
  add,
  compare,
  divide,
  exact,
  maximum,
  minimum,
  multiply,
  ofNumber,
  over,
  type Rational,
  subtract,
  toNumber,
  zero,
} from "#lib/rational/index.ts";
import type { Span } from "./span.ts";

/**
 * A cut says which stretch of which source stands where in an edited film. Times are exact, in seconds.
 *
 * ```
 * source   ──────from═══════════▶────────      source time = from + speed × (film time − start)
 *                 │             │
 * film     ─────start═════════end)───────      half-open in the film
 * ```
 *
 * Every question is decided in film time, so that it has one answer whichever way a stretch runs: one that runs
 * backwards (`speed` below nought) holds the source moments below `from`, and its last one is not in it. A frozen one
 * (`speed` nought) shows the one frame that begins at `from`. Segments may overlap: in a dissolve both are seen.
 */
export interface Segment {
  /** What is shown: the id of a recording, or, while an edit list is read, the name of a reel. */
  source: string;
  start: Rational;
  end: Rational;
  from: Rational;
  /** Source seconds for each second of film. */
  speed: Rational;
}

export interface Cut {
  /** One frame of the film, in seconds: what a frozen stretch shows of its source. */
  frame: Rational;
  /** From the film's first frame to the end of its last, in seconds. */
  duration: Rational;
  /** By when they start in the film. */
  segments: readonly PlacedSegment[];
}

export interface PlacedSegment extends Segment {
  near: Near;
}

/**
 * The same as doubles. What it shows of its source is a hair wider here: a moment outside is not in it, one well
 * inside is, and only at the edges is it decided exactly.
 */
interface Near extends Span {
  film: number;
  from: number;
  speed: number;
}

/** A place in the film where a moment of a source is seen: a moment, or a stretch where the picture stands still. */
export interface FilmPlace {
  at: number;
  /** Where the stretch ends, for a frozen picture; else null. */
  until: number | null;
}

/** A moment of a source, in seconds of its own clock. */
export interface SourceMoment {
  source: string;
  at: number;
}

/** A stretch of a source. */
export interface SourceSpan extends Span {
  source: string;
}

/** Puts segments in their order, joins those that carry on without a seam, and leaves out empty ones. */
export function makeCut(segments: readonly Segment[], frame: Rational, duration?: Rational): Cut {
  const ordered = segments
    .filter((segment) => compare(segment.end, segment.start) > 0)
    .sort((a, b) => compare(a.start, b.start) || compare(a.end, b.end));
  const end = ordered.reduce((latest, segment) => maximum(latest, segment.end), zero);
  const segmentsPlaced = joined(ordered).map((segment) => ({ ...segment, near: nearOf(segment, frame) }));
  return { frame, duration: duration ?? end, segments: segmentsPlaced };
}

function joined(ordered: readonly Segment[]): Segment[] {
  const whole: Segment[] = [];
  /** The last segment that ends at a time, by source, speed, that time and where its source then is. */
  const ending = new Map<string, number>();
  const seam = ({ source, speed }: Segment, film: Rational, moment: Rational) =>
    [source, exact(speed), exact(film), exact(moment)].join("\n");
  for (const segment of ordered) {
    const before = ending.get(seam(segment, segment.start, segment.from));
    const index = before ?? whole.length;
    const one = { ...(before === undefined ? segment : (whole[before] as Segment)), end: segment.end };
    whole[index] = one;
    ending.set(seam(one, one.end, sourceTime(one, one.end)), index);
  }
  return whole;
}

function nearOf(segment: Segment, frame: Rational): Near {
  const { start, end } = shownOf(frame, segment);
  const [film, from, speed] = [toNumber(segment.start), toNumber(segment.from), toNumber(segment.speed)];
  return { start: toNumber(start) - hair, end: toNumber(end) + hair, film, from, speed };
}

/** More than doubles of a day's seconds are rounded by. */
const hair = 1e-6;

/** The source time that a segment shows at a moment of the film. */
export function sourceTime(segment: Segment, film: Rational): Rational {
  return add(segment.from, multiply(segment.speed, subtract(film, segment.start)));
}

/** Every place of the film where a moment of a source is seen: none, one or several, in the film's order. */
export function filmPlaces(cut: Cut, source: string, moment: number): FilmPlace[] {
  return cut.segments
    .filter((one) => one.source === source && one.near.start <= moment && moment <= one.near.end)
    .map((one) => placeIn(one, moment, cut.frame))
    .filter((place) => place !== null);
}

function placeIn(segment: PlacedSegment, moment: number, frame: Rational): FilmPlace | null {
  const { start, end, film, from, speed } = segment.near;
  if (isFrozen(segment)) return frozenPlace(segment, ofNumber(moment), frame);
  const wellInside = start + 2 * hair < moment && moment < end - 2 * hair;
  return wellInside
    ? { at: film + (moment - from) / speed, until: null }
    : movingPlace(segment, ofNumber(moment));
}

function movingPlace(segment: Segment, moment: Rational): FilmPlace | null {
  const film = add(segment.start, divide(subtract(moment, segment.from), segment.speed));
  const inside = compare(film, segment.start) >= 0 && compare(film, segment.end) < 0;
  return inside ? { at: toNumber(film), until: null } : null;
}

function frozenPlace(segment: Segment, moment: Rational, frame: Rational): FilmPlace | null {
  const after = subtract(moment, segment.from);
  const inside = compare(after, zero) >= 0 && compare(after, frame) < 0;
  return inside ? { at: toNumber(segment.start), until: toNumber(segment.end) } : null;
}

/** The moments of the sources that are seen at a moment of the film: none in a gap, two in a dissolve. */
export function sourcesAt(cut: Cut, film: number): SourceMoment[] {
  const moment = ofNumber(film);
  return cut.segments
    .filter((segment) => compare(segment.start, moment) <= 0 && compare(moment, segment.end) < 0)
    .map((segment) => ({ source: segment.source, at: toNumber(shown(cut, segment, moment)) }));
}

/** What is shown; of a frozen frame its middle, which is what a moment means. */
function shown(cut: Cut, segment: Segment, film: Rational): Rational {
  if (isFrozen(segment)) return add(segment.from, multiply(cut.frame, over(1n, 2n)));
  return sourceTime(segment, film);
}

/** The stretches of the film in which something of a stretch of a source is seen; it may have been cut up. */
export function filmSpans(cut: Cut, source: string, span: Span): Span[] {
  const [from, until] = [ofNumber(span.start), ofNumber(span.end)];
  const spans = cut.segments
    .filter((one) => one.source === source && one.near.start <= span.end && span.start <= one.near.end)
    .map((segment) => inFilm(cut, segment, from, until))
    .filter((one) => one !== null);
  return meeting(spans);
}

function inFilm(cut: Cut, segment: Segment, from: Rational, until: Rational): Span | null {
  if (isFrozen(segment)) {
    const frozenEnd = add(segment.from, cut.frame);
    const seen = compare(until, segment.from) > 0 && compare(from, frozenEnd) < 0;
    return seen ? { start: toNumber(segment.start), end: toNumber(segment.end) } : null;
  }
  const film = (moment: Rational) =>
    add(segment.start, divide(subtract(moment, segment.from), segment.speed));
  const ends = [film(from), film(until)] as const;
  const start = maximum(segment.start, minimum(...ends));
  const end = minimum(segment.end, maximum(...ends));
  return compare(start, end) < 0 ? { start: toNumber(start), end: toNumber(end) } : null;
}

/** Joins spans that touch or overlap. */
function meeting(spans: readonly Span[]): Span[] {
  const whole: Span[] = [];
  for (const span of [...spans].sort((a, b) => a.start - b.start || a.end - b.end)) {
    const last = whole.at(-1);
    if (last && span.start <= last.end) last.end = Math.max(last.end, span.end);
    else whole.push({ ...span });
  }
  return whole;
}

/**
 * The stretches of the sources that are seen in a stretch of the film, in the film's order: how captions that keep
 * the film's clock come back to the recordings.
 */
export function filmToRecording(cut: Cut, span: Span): SourceSpan[] {
  const [from, until] = [ofNumber(span.start), ofNumber(span.end)];
  return cut.segments.flatMap((segment) => {
    const start = maximum(segment.start, from);
    const end = minimum(segment.end, until);
    if (compare(start, end) >= 0) return [];
    const ends = isFrozen(segment)
      ? ([segment.from, add(segment.from, cut.frame)] as const)
      : ([sourceTime(segment, start), sourceTime(segment, end)] as const);
    const { source } = segment;
    return [{ source, start: toNumber(minimum(...ends)), end: toNumber(maximum(...ends)) }];
  });
}

function isFrozen(segment: Segment): boolean {
  return compare(segment.speed, zero) === 0;
}

/** What a segment shows of its source, in seconds of the source; of a frozen one, one `frame`. */
export function shownOf(frame: Rational, segment: Segment): { start: Rational; end: Rational } {
  const long = isFrozen(segment)
    ? frame
    : multiply(absolute(segment.speed), subtract(segment.end, segment.start));
  const start = compare(segment.speed, zero) < 0 ? subtract(segment.from, long) : segment.from;
  return { start, end: add(start, long) };
}
