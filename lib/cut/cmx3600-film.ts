import {
  absolute,
  add,
  compare,
  decimal,
  divide,
  minimum,
  multiply,
  one,
  over,
  type Rational,
  subtract,
  toNumber,
  zero,
} from "#lib/rational/index.ts";
import { countedTo, type FrameRate, type Segment, sourceTime, timeOfFrame } from "#lib/time/index.ts";
import { type Event, keyOf } from "./cmx3600-events.ts";
import type { EventLine } from "./cmx3600-line.ts";
import { cover, type Problems, type Stretch, uncovered } from "./edit-list.ts";

/** Lines that make one event: a transition has two with one number. */
export function groupsOf(events: readonly Event[]): Event[][] {
  const groups: Event[][] = [];
  for (const event of events.filter(isPicture)) {
    const group = groups.at(-1);
    if (group?.[0]?.number === event.number) group.push(event);
    else groups.push([event]);
  }
  return groups;
}

function isPicture({ channels }: EventLine): boolean {
  return !/^(?:A\d*|AA|NONE|A\d+(?:A\d+)*)$/i.test(channels);
}

/** The source that shows nothing of a recording: black, bars, a generated picture. */
function isGenerated({ reel }: EventLine): boolean {
  return /^(?:BL|BLK|BLACK|BARS?)$/i.test(reel);
}

interface Layer {
  segments: Segment[];
  covers: readonly Stretch[];
  line: number;
}

/** Puts the events down in the film. A later one lies over an earlier one. */
export function layDown(groups: Event[][], origin: bigint, rate: FrameRate, problems: Problems): Segment[] {
  const layers: Layer[] = [];
  let before: Segment | null = null;
  for (const group of groups) {
    const laid: Segment[] = [];
    for (const event of group) {
      const segment = segmentOf(event, origin, rate, problems);
      if (event.transition !== "cut" && before) {
        const tail = tailOf(before, segment, event, rate);
        if (tail && !event.transition.startsWith("key")) laid.push(tail);
      }
      if (!isGenerated(event) && event.record.in < event.record.out) laid.push(segment);
      before = isGenerated(event) ? null : segment;
    }
    const covers = group.some((event) => event.transition.startsWith("key")) ? [] : laid;
    layers.push({ segments: laid, covers, line: group[0]?.line ?? 0 });
  }
  return seen(layers, problems);
}

/** What each event leaves to be seen of those before it. */
function seen(layers: readonly Layer[], problems: Problems): Segment[] {
  const covered: Stretch[] = [];
  const left: Segment[] = [];
  for (const { segments, covers, line } of layers.toReversed()) {
    const parts = uncovered(segments, covered);
    if (parts.length !== segments.length || parts.some((part, index) => lengthDiffers(part, segments[index])))
      sayOverlap(line, problems);
    left.push(...parts);
    for (const one of covers) cover(covered, one);
  }
  return left;
}

function sayOverlap(line: number, problems: Problems): void {
  problems.say(
    "doubtful",
    `line ${line}`,
    "Another event lies over this one in the film.",
    "Events that follow each other.",
    "The later one is taken to be seen. Look whether the film comes out right.",
  );
}

function lengthDiffers(part: Segment, whole: Segment | undefined): boolean {
  return !whole || compare(part.start, whole.start) !== 0 || compare(part.end, whole.end) !== 0;
}

function segmentOf(event: Event, origin: bigint, rate: FrameRate, problems: Problems): Segment {
  const at = (frame: bigint) => timeOfFrame(frame, rate);
  const [start, end] = [at(event.record.in - origin), at(event.record.out - origin)];
  const speed = speedOf(event, rate, problems);
  const [low, high] =
    event.source.in <= event.source.out
      ? [event.source.in, event.source.out]
      : [event.source.out, event.source.in];
  const from = compare(speed, zero) < 0 ? at(high) : at(low);
  return { source: keyOf(event), start, end, from, speed };
}

/** How fast a reel is played: as the stretches say it, where they agree with what M2 rounds. */
function speedOf(event: Event, rate: FrameRate, problems: Problems): Rational {
  const film = event.record.out - event.record.in;
  const source = event.source.out - event.source.in;
  if (film === 0n && event.fps === null) return one;
  if (event.fps === null) {
    if (source !== film) sayMismatch(event, source, film, problems);
    return one;
  }
  const written = divide(decimal(event.fps.replace("+", "")), over(countedTo(rate), 1n));
  if (film === 0n || compare(written, zero) === 0) return written;
  const said = over(source < 0n ? -source : source, film);
  const near =
    Math.abs(toNumber(subtract(said, absolute(written)))) <= 0.1 / toNumber(rate) + 1 / Number(film);
  if (!near) return written;
  return compare(written, zero) < 0 ? multiply(said, over(-1n, 1n)) : said;
}

function sayMismatch({ line, number }: Event, source: bigint, film: bigint, problems: Problems): void {
  problems.say(
    "doubtful",
    `line ${line}`,
    `Event ${number} takes ${source} frames of its reel and fills ${film} of the film, and no M2 line says a speed.`,
    "The same number of frames, or an M2 line.",
    "It is taken to run at its own speed from its source in. Look whether the film comes out right.",
  );
}

/** What is still seen of the picture before, while a transition to this one lasts. */
function tailOf(before: Segment, next: Segment, event: Event, rate: FrameRate): Segment | null {
  if (compare(before.start, next.start) > 0 || event.frames === 0) return null;
  const whole = add(next.start, timeOfFrame(BigInt(event.frames), rate));
  const end = minimum(whole, next.end);
  return { ...before, from: sourceTime(before, next.start), start: next.start, end };
}
