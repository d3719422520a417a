import { hasClock, wallOf } from "./gaps.ts";
import type { Recording } from "./rows.ts";

/** A clock that the files themselves suggest for a recording. It is shown and asked about, never set by itself. */
export interface ProposedClock {
  recording: string;
  offset: number;
  rate: number;
  /** Why, and how far that can be trusted, in words for the person. */
  trust: string;
}

/** Nearer than this a proposal says nothing new; seconds. */
const SAME = 0.05;

/** A camera that cuts its film into parts begins the next within this many seconds (common practice, no source). */
const NEXT_PART = 5;

/**
 * Proposes where the recordings of a sitting lie on its clock: parts of one film, cut up by the camera, follow each
 * other; else the times in the files tell. Clocks that the restorer has set stand, and the others are proposed beside
 * them. Nothing is proposed for what neither says.
 */
export function proposeClocks(recordings: readonly Recording[]): ProposedClock[] {
  const looked = recordings.filter((one) => one.probe !== null);
  const reference = referenceOf(looked);
  const placed = new Map(
    looked.filter((one) => one === reference || hasClock(one)).map((one) => [one.id, one]),
  );
  const proposals: ProposedClock[] = [];
  for (const one of looked.filter((other) => !placed.has(other.id)).sort(byTimeThenName)) {
    const before = [...placed.values()].find((other) => followsOn(other, one) !== null);
    const proposal = before ? afterPart(one, before) : reference && byTime(one, reference);
    if (!proposal) continue;
    placed.set(one.id, { ...one, offset: proposal.offset, rate: proposal.rate });
    if (Math.abs(proposal.offset - one.offset) > SAME || proposal.rate !== one.rate) proposals.push(proposal);
  }
  return proposals;
}

function afterPart(one: Recording, before: Recording): ProposedClock {
  const offset = before.offset + before.rate * (before.probe?.duration ?? 0);
  const trust = `Follows ${before.name}: ${followsOn(before, one)}`;
  return { recording: one.id, offset, rate: before.rate, trust };
}

function byTime(one: Recording, reference: Recording): ProposedClock | null {
  const [then, began] = [wallOf(one), wallOf(reference)];
  if (then === null || began === null) return null;
  const offset = reference.offset + (then - began);
  const trust = `By the times in the files, against ${reference.name}. ${one.madeAtTrust}`.trim();
  return { recording: one.id, offset, rate: 1, trust };
}

/** The recording that the others are placed by: one whose clock was set, else the first that says when it was made. */
function referenceOf(recordings: readonly Recording[]): Recording | null {
  const timed = recordings.filter((one) => wallOf(one) !== null).sort(byTimeThenName);
  const [byName] = [...recordings].sort((a, b) => compare(a.name, b.name));
  return timed.find(hasClock) ?? timed[0] ?? byName ?? null;
}

/**
 * Why `next` seems to be the part of one film that follows `one`; null when it does not. Their names must differ by
 * one number that goes up by one, their pictures must be alike, and their times must not say otherwise.
 */
export function followsOn(one: Recording, next: Recording): string | null {
  const step = nameStep(one.name, next.name);
  if (step === null || !one.probe || !next.probe) return null;
  const alike = (["width", "height", "rotation", "videoCodec"] as const).every(
    (what) => one.probe?.[what] === next.probe?.[what],
  );
  if (!alike) return null;
  const [began, then] = [wallOf(one), wallOf(next)];
  if (began === null || then === null) {
    return step === "last" && began === then
      ? "by their names alone; neither file says when it was made."
      : null;
  }
  if (Math.abs(then - began - one.probe.duration) <= NEXT_PART)
    return "its name is the next, and it begins when the other ends, by the times in the files.";
  // Some cameras write the time of the first part into all of them.
  return then === began ? "its name is the next, and both files bear the time of the first part." : null;
}

/** Where in two names the one number lies that goes up by one: the last of the name, or an inner one; else null. */
function nameStep(oneName: string, nextName: string): "last" | "inner" | null {
  const [one, ending] = withoutEnding(oneName);
  const [next, nextEnding] = withoutEnding(nextName);
  if (one.length !== next.length || one === next || ending !== nextEnding) return null;
  let from = 0;
  while (one[from] === next[from]) from++;
  let to = one.length;
  while (one[to - 1] === next[to - 1]) to--;
  const [a, b] = [one.slice(from, to), next.slice(from, to)];
  if (!/^\d+$/.test(a) || !/^\d+$/.test(b) || Number(b) - Number(a) !== 1) return null;
  return /\d/.test(one.slice(to)) ? "inner" : "last";
}

function withoutEnding(name: string): [string, string] {
  const dot = name.lastIndexOf(".");
  return dot < 0 ? [name, ""] : [name.slice(0, dot), name.slice(dot).toLowerCase()];
}

function byTimeThenName(a: Recording, b: Recording): number {
  return (wallOf(a) ?? Infinity) - (wallOf(b) ?? Infinity) || compare(a.name, b.name);
}

function compare(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
