import { confusedWith } from "./compare.ts";
import { allThreads } from "./tables.ts";
import { inch, type Thread } from "./thread.ts";

/** What was measured of a thread. A screw measures a little less than its nominal diameter. */
export interface LikeAsked {
  /** Outside diameter of the screw, in mm. */
  diameter?: number;
  /** Pitch in mm. */
  pitch?: number;
  /** Threads an inch, instead of the pitch. */
  tpi?: number;
  /** How far below nominal a screw may measure, in mm; without it, what wear and the usual tolerances allow. */
  tolerance?: number;
}

/** A thread that the measurements can belong to. */
export interface LikeThread {
  thread: Thread;
  /** Measured diameter less nominal, in mm; a screw's is zero or below. */
  diameterOff?: number;
  /** Measured pitch less nominal, in mm. */
  pitchOff?: number;
  /** Rank: 0 fits on the nose, 1 lies at the edge of what is allowed. */
  misfit: number;
  /** Threads of the tables that are easily taken for this one. */
  confusedWith: Thread[];
}

/**
 * Threads that a measured diameter and pitch can be, best first. A screw may measure up to the tolerance below its
 * nominal diameter and half of a tenth of that above; a pitch within 1.5 per cent, as a screw-pitch gauge tells them.
 */
export function threadsLike(asked: LikeAsked): LikeThread[] {
  const pitch = asked.pitch ?? (asked.tpi === undefined ? undefined : inch / asked.tpi);
  if (pitch === undefined && asked.diameter === undefined) return [];
  return allThreads
    .map((thread) => fitOf(thread, asked.diameter, pitch, asked.tolerance))
    .filter((like) => like.misfit <= 1)
    .sort((a, b) => a.misfit - b.misfit || a.thread.major - b.thread.major);
}

/** What a screw may usually measure below its nominal diameter, in mm: it grows with the pitch. */
export const usualUndersize = (thread: Thread): number => 0.06 + 0.14 * thread.pitch;

const pitchAllowance = 0.015;

function fitOf(thread: Thread, diameter?: number, pitch?: number, tolerance?: number): LikeThread {
  const under = tolerance ?? usualUndersize(thread);
  const over = Math.max(0.04, under / 5);
  const diameterOff = diameter === undefined ? undefined : diameter - thread.major;
  const pitchOff = pitch === undefined ? undefined : pitch - thread.pitch;
  const byDiameter =
    diameterOff === undefined ? 0 : diameterOff > 0 ? diameterOff / over : -diameterOff / under;
  const byPitch = pitchOff === undefined ? 0 : Math.abs(pitchOff) / (pitchAllowance * thread.pitch);
  return {
    thread,
    ...(diameterOff !== undefined && { diameterOff }),
    ...(pitchOff !== undefined && { pitchOff }),
    misfit: Math.max(byDiameter, byPitch),
    get confusedWith() {
      return confusedWith(thread);
    },
  };
}
