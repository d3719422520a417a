import type { ClockSetting } from "./sitting.ts";

/** One event as two clocks have it: in seconds of a recording's own clock, and of its sitting's. */
export interface MomentPair {
  recording: number;
  sitting: number;
}

/** What makes a clock doubtful. It is asked about, never refused. */
export type ClockDoubt =
  /** The rate is out by more than two clocks ever are. */
  | "rate"
  /** The moments lie so near each other that a slip in reading them makes the rate. */
  | "too-near"
  /** More moments than are needed, and they do not agree. */
  | "disagree";

export type ClockFromMoments =
  | {
      ok: true;
      clock: ClockSetting;
      /** How far the moment that fits least lies from the clock, in seconds of the sitting. */
      residual: number;
      /** How far the rate may be out if each moment was read a frame too early or too late; 0 when it was given. */
      rateSlip: number;
      doubts: ClockDoubt[];
    }
  /** `backwards`: what comes first in one comes last in the other. */
  | { ok: false; why: "no-moment" | "same-moment" | "backwards" };

/**
 * Two cameras of one job differ by less than one second in a thousand (common practice, no source: they run by
 * quartz). What differs more is most likely another event.
 */
export const plausibleRate = 0.001;

/**
 * The clock of a recording from events that can be seen or heard in it and whose sitting time is known. One gives
 * the offset, and keeps the rate; two give both; more are fitted by least squares, and say how well they agree.
 *
 * @param options.rate the rate to keep when there is only one moment; 1 unless told
 * @param options.slip how far off a moment may have been read, in seconds: a frame of either recording
 */
export function clockFromMoments(
  pairs: readonly MomentPair[],
  { rate: kept = 1, slip = 0.04 }: { rate?: number; slip?: number } = {},
): ClockFromMoments {
  const usable = pairs.filter((pair) => Number.isFinite(pair.recording) && Number.isFinite(pair.sitting));
  const [first] = usable;
  if (!first) return { ok: false, why: "no-moment" };
  const single = usable.length === 1;
  const rate = single ? kept : slopeOf(usable);
  if (rate === null) return { ok: false, why: "same-moment" };
  if (!(rate > 0)) return { ok: false, why: "backwards" };
  const offset = mean(usable, (pair) => pair.sitting - rate * pair.recording);
  const misses = usable.map((pair) => Math.abs(offset + rate * pair.recording - pair.sitting));
  const residual = single ? 0 : Math.max(...misses);
  const times = usable.map((pair) => pair.recording);
  const rateSlip = single ? 0 : (2 * slip) / (Math.max(...times) - Math.min(...times));
  const doubts: ClockDoubt[] = [];
  if (Math.abs(rate - 1) > plausibleRate) doubts.push("rate");
  if (rateSlip > plausibleRate) doubts.push("too-near");
  if (residual > 2 * slip) doubts.push("disagree");
  return { ok: true, clock: { offset, rate }, residual, rateSlip, doubts };
}

/** The slope of the straight line that fits best; null when all moments are one. */
function slopeOf(pairs: readonly MomentPair[]): number | null {
  const x = mean(pairs, (pair) => pair.recording);
  const y = mean(pairs, (pair) => pair.sitting);
  let [above, below] = [0, 0];
  for (const pair of pairs) {
    above += (pair.recording - x) * (pair.sitting - y);
    below += (pair.recording - x) ** 2;
  }
  return below > 1e-6 ? above / below : null;
}

function mean<T>(values: readonly T[], of: (value: T) => number): number {
  return values.reduce((sum, value) => sum + of(value), 0) / values.length;
}
