import type { Severity } from "#lib/finding/index.ts";
import {
  add,
  compare,
  maximum,
  minimum,
  type Rational,
  subtract,
  toNumber,
  zero,
} from "#lib/rational/index.ts";
import { type FrameRate, type Segment, type Span, shownOf, sourceTime } from "#lib/time/index.ts";

/**
 * An edit list as it was read: stretches of reels that stand in a film. Which recording a reel is, is another matter.
 * Film time counts from the film's first frame; source time is the reel's own, whatever its first frame bears.
 */
export interface EditList {
  name: string;
  rate: FrameRate;
  duration: Rational;
  /** `source` is the key of a reel. In no promised order. */
  segments: Segment[];
  reels: Reel[];
  /** Remarks that the list has on moments of the film. */
  locators: Locator[];
  problems: ListProblem[];
}

/** A source as an edit list names it. */
export interface Reel {
  key: string;
  /** Everything the list calls it: reel, clip, file. */
  names: string[];
  /** What is used of it, in seconds of its own time. */
  used: Span;
  /** The time its first frame bears in these segments, in seconds, where the list says it; else null. */
  startsAt: Rational | null;
}

export interface Locator {
  /** Seconds of film. */
  at: number;
  colour: string;
  comment: string;
}

/** What cannot be read of a list, or only with a doubt, and where. It never stops the rest from being read. */
export interface ListProblem {
  severity: Severity;
  /** "line 12", or a path inside the file. */
  where: string;
  found: string;
  expected: string;
  todo: string;
}

/** More are not listed: whoever has that many has the wrong file. */
export const mostProblems = 100;
/** No moment of a film or a reel lies further out, in seconds. */
export const furthest = 10_000_000;

/** A list of problems that stops growing. */
export class Problems {
  readonly all: ListProblem[] = [];

  say(severity: Severity, where: string, found: string, expected: string, todo: string): void {
    if (this.all.length >= mostProblems) return;
    if (this.all.some((one) => one.where === where && one.found === found)) return;
    this.all.push({ severity, where, found, expected, todo });
  }
}

/** A stretch of film, half-open. */
export interface Stretch {
  start: Rational;
  end: Rational;
}

/** The parts of segments that stretches lying over them leave to be seen. `covered` is in order and disjoint. */
export function uncovered(segments: readonly Segment[], covered: readonly Stretch[]): Segment[] {
  return segments.flatMap((segment) => {
    const parts: Segment[] = [];
    let start = segment.start;
    for (let index = firstEndingAfter(covered, segment.start); index < covered.length; index++) {
      const over = covered[index] as Stretch;
      if (compare(over.start, segment.end) >= 0) break;
      if (compare(over.start, start) > 0) parts.push(trimmed(segment, start, over.start));
      start = over.end;
    }
    if (compare(start, segment.end) < 0) parts.push(trimmed(segment, start, segment.end));
    return parts;
  });
}

/** A segment with less of it in the film. */
export function trimmed(segment: Segment, start: Rational, end: Rational): Segment {
  return { ...segment, from: sourceTime(segment, start), start, end };
}

function firstEndingAfter(stretches: readonly Stretch[], moment: Rational): number {
  let [low, high] = [0, stretches.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if (compare((stretches[middle] as Stretch).end, moment) > 0) high = middle;
    else low = middle + 1;
  }
  return low;
}

/** Adds a stretch to those that are covered, which stay in order and disjoint. */
export function cover(covered: Stretch[], { start, end }: Stretch): void {
  if (compare(start, end) >= 0) return;
  const first = firstEndingAfter(covered, start);
  let last = first;
  let whole = { start, end };
  for (; last < covered.length; last++) {
    const one = covered[last] as Stretch;
    if (compare(one.start, whole.end) > 0) break;
    whole = { start: minimum(one.start, whole.start), end: maximum(one.end, whole.end) };
  }
  covered.splice(first, last - first, whole);
}

/** What the segments use of each reel. */
export function usedOf(segments: readonly Segment[], frame: Rational): Map<string, Span> {
  const used = new Map<string, Span>();
  for (const segment of segments) {
    const shown = shownOf(frame, segment);
    const [start, end] = [toNumber(shown.start), toNumber(shown.end)];
    const known = used.get(segment.source);
    used.set(segment.source, {
      start: Math.min(start, known?.start ?? start),
      end: Math.max(end, known?.end ?? end),
    });
  }
  return used;
}

/** A segment moved in its source: what bore `startsAt` is the source's beginning. */
export function fromBeginning(segment: Segment, startsAt: Rational): Segment {
  return { ...segment, from: subtract(segment.from, startsAt) };
}

/** Whether a time is one that a film may have. */
export function isReachable(time: Rational): boolean {
  const far = { n: BigInt(furthest), d: 1n };
  return compare(time, far) <= 0 && compare(add(time, far), zero) >= 0;
}
