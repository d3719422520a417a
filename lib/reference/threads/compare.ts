import { type Source, sourceNamed } from "../source.ts";
import { allThreads } from "./tables.ts";
import type { Thread } from "./thread.ts";

/** Two threads side by side. */
export interface ThreadComparison {
  first: Thread;
  second: Thread;
  /** What agrees: "diameter", "pitch", "angle", or "near diameter", "near pitch". */
  same: string[];
  /** What differs: "angle 55 / 60", "tpi 12 / 13", "pitch 1 / 1.25 mm". */
  differ: string[];
  /** Whether they are meant for each other: same form, diameter and pitch. */
  interchangeable: boolean;
  /** Whether one is known to start in the other; null where nobody was found to say. */
  willStart: boolean | null;
  sources: Source[];
}

const equal = (a: number, b: number): boolean => Math.abs(a - b) < 0.0015 * Math.max(a, b);
const nearSize = (a: number, b: number): boolean => Math.abs(a - b) < 0.05 * Math.max(a, b);
const nearPitch = (a: number, b: number): boolean => Math.abs(a - b) < 0.04 * Math.max(a, b);
const round = (value: number): string => `${Number(value.toFixed(3))}`;

/** What two threads have in common and what not. */
export function compareThreads(first: Thread, second: Thread): ThreadComparison {
  const same: string[] = [];
  const differ: string[] = [];
  const note = (label: string, agrees: boolean, near: boolean, words: string): void => {
    if (agrees) same.push(label);
    else {
      if (near) same.push(`near ${label}`);
      differ.push(words);
    }
  };
  const diameters = equal(first.major, second.major);
  const pitches = equal(first.pitch, second.pitch);
  note("diameter", diameters, nearSize(first.major, second.major), sayDiameters(first, second));
  note("pitch", pitches, nearPitch(first.pitch, second.pitch), sayPitches(first, second));
  note("angle", first.angle === second.angle, false, `angle ${first.angle} / ${second.angle}`);
  if (first.form !== second.form) differ.push(`form ${first.form} / ${second.form}`);
  const interchangeable = diameters && pitches && first.form === second.form;
  const known = knownStart(first, second);
  return {
    first,
    second,
    same,
    differ,
    interchangeable,
    willStart: interchangeable ? true : (known?.willStart ?? null),
    sources: [first.source, second.source, ...(known ? [sourceNamed("confusables")] : [])],
  };
}

function sayDiameters(first: Thread, second: Thread): string {
  return `diameter ${round(first.major)} / ${round(second.major)} mm`;
}

function sayPitches(first: Thread, second: Thread): string {
  return first.tpi !== undefined && second.tpi !== undefined
    ? `tpi ${first.tpi} / ${second.tpi}`
    : `pitch ${round(first.pitch)} / ${round(second.pitch)} mm`;
}

/**
 * What was read about starting one thread in another: UNC and BSW of one diameter and one pitch start (1/4-20 and
 * 1/4 BSW), UNC and BSW of 1/2 in do not, their pitches being 13 and 12 to the inch.
 */
function knownStart(first: Thread, second: Thread): { willStart: boolean } | undefined {
  const pair = [first, second].map((thread) => thread.series).sort();
  if (pair.join() !== "BSW,UNC" || first.size !== second.size) return undefined;
  return { willStart: equal(first.pitch, second.pitch) };
}

/** Threads of other series that are easily taken for this one, the likest first. */
export function confusedWith(thread: Thread): Thread[] {
  const taper = (one: Thread): boolean => one.system === "NPT";
  const pipe = (one: Thread): boolean => taper(one) || one.system === "BSP";
  return allThreads
    .filter((other) => other !== thread && other.name !== thread.name)
    .filter((other) => {
      if (pipe(thread) && pipe(other)) return thread.system !== other.system && thread.size === other.size;
      if (pipe(thread) !== pipe(other)) return false;
      return (
        Math.abs(other.major - thread.major) < 0.035 * thread.major &&
        Math.abs(other.pitch - thread.pitch) < 0.13 * thread.pitch
      );
    })
    .sort((a, b) => apart(a, thread) - apart(b, thread))
    .slice(0, 6);
}

const apart = (a: Thread, b: Thread): number =>
  Math.abs(a.major - b.major) / b.major + Math.abs(a.pitch - b.pitch) / b.pitch;
