import { gapsBetween, type Span, toSittingTime } from "#lib/time/index.ts";
import type { Recording } from "./rows.ts";

/** What was not filmed in a sitting, as far as is known. */
export interface Gaps {
  /** Whose clock the gaps are told in: the wall's in seconds since 1970, or the sitting's. */
  clock: "wall" | "sitting";
  gaps: Span[];
  /** Recordings of which it is not known when they were made; they may lie in a gap. */
  unknown: number;
}

/** A shorter pause is a change of hands, not a gap; seconds. */
export const shortestGap = 60;

type Filmed = Pick<Recording, "offset" | "rate" | "madeAt" | "probe" | "trouble">;

/**
 * The stretches of a sitting in which no camera ran, between the first recording and the last. Where the restorer has
 * set the clocks of the recordings, those count, told in wall time if one of them says when it was made; else the
 * times in the files do.
 */
export function gapsOf(recordings: readonly Filmed[], atLeast = shortestGap): Gaps {
  const looked = recordings.filter((one) => one.probe !== null);
  const set = looked.some(hasClock);
  const placed = set ? looked : looked.filter((one) => wallOf(one) !== null);
  const spans = placed.map((one) => (set ? sittingSpan(one) : wallSpan(one)));
  const gaps = gapsBetween(spans, atLeast);
  // A file in which there is no film fills no gap.
  const films = recordings.filter((one) => one.probe !== null || one.trouble === null);
  const unknown = films.length - placed.length;
  if (!set) return { clock: "wall", gaps, unknown };
  const anchor = anchorOf(looked);
  if (anchor === null) return { clock: "sitting", gaps, unknown };
  const toWall = ({ start, end }: Span) => ({ start: anchor + start, end: anchor + end });
  return { clock: "wall", gaps: gaps.map(toWall), unknown };
}

/** Whether somebody has said how a recording's clock lies on its sitting's. */
export function hasClock({ offset, rate }: Pick<Recording, "offset" | "rate">): boolean {
  return offset !== 0 || rate !== 1;
}

/** When a recording was begun by its file, in seconds since 1970; null when it does not say. */
export function wallOf({ madeAt }: Pick<Recording, "madeAt">): number | null {
  const ms = Date.parse(madeAt ?? "");
  return Number.isNaN(ms) ? null : ms / 1000;
}

/** When the sitting's clock stands at zero, by the first recording that says when it was made. */
function anchorOf(recordings: readonly Filmed[]): number | null {
  const [first] = recordings.filter((one) => wallOf(one) !== null).sort((a, b) => a.offset - b.offset);
  return first ? (wallOf(first) as number) - first.offset : null;
}

function sittingSpan(one: Filmed): Span {
  return { start: one.offset, end: toSittingTime(one, one.probe?.duration ?? 0) };
}

function wallSpan(one: Filmed): Span {
  const start = wallOf(one) as number;
  return { start, end: start + one.rate * (one.probe?.duration ?? 0) };
}
