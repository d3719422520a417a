import { type ClockSetting, toSittingTime } from "#lib/time/index.ts";
import { kindOf, type Mark } from "./mark.ts";

/** What the order of marks depends on beside the marks: the place of each sitting, the clock of each recording. */
export interface Clocks {
  /** Sitting ids in their order. */
  sittings: readonly string[];
  recordings: ReadonlyMap<string, ClockSetting>;
}

/** A mark's moment on its sitting's clock, in seconds; infinite for one without film, which lies at the end. */
export function sittingTime(mark: Mark, clocks: Clocks): number {
  if (mark.at === null) return Number.POSITIVE_INFINITY;
  const clock = mark.recordingId === null ? undefined : clocks.recordings.get(mark.recordingId);
  return clock ? toSittingTime(clock, mark.at) : mark.at;
}

/**
 * The order of marks: by sitting, then time, stored rank, kind and id. It never depends on when a mark was
 * made. Marks without film follow those with film, in their rank.
 */
export function compareMarks(clocks: Clocks): (a: Mark, b: Mark) => number {
  const place = new Map(clocks.sittings.map((id, index) => [id, index]));
  const sitting = (mark: Mark) => place.get(mark.sittingId) ?? clocks.sittings.length;
  return (a, b) =>
    compare(sitting(a), sitting(b)) ||
    compare(sittingTime(a, clocks), sittingTime(b, clocks)) ||
    compare(a.rank, b.rank) ||
    compare(kindOf(a.kind).order, kindOf(b.kind).order) ||
    compare(a.id, b.id);
}

function compare<T extends number | string>(a: T, b: T): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
