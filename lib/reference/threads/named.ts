import {
  type Designation,
  type Reading,
  rational,
  read,
  type ThreadDesignation,
  toNumber,
} from "#lib/quantity/index.ts";
import { allThreads } from "./tables.ts";
import { inch, type Thread } from "./thread.ts";

/**
 * The threads that a text names: one for "1/4 BSF", the coarse one first for "M6", one of each series for a
 * bare "1/4-20" or "3/8 UN". None when the text names no thread, or one that no table has.
 */
export function threadsNamed(text: string): Thread[] {
  return designationsIn(read(text)).flatMap((one) => (one.type === "thread" ? threadOf(one) : []));
}

/** The threads of the tables to which a designation can belong, the likeliest first. */
export function threadOf(thread: ThreadDesignation): Thread[] {
  const found = matching(thread);
  return found.length > 0 ? found : matching(inchesForNumber(thread));
}

const matching = (thread: ThreadDesignation): Thread[] =>
  allThreads.filter((row) => sameSystem(row, thread) && sameSize(row, thread) && samePitch(row, thread));

/** "1-8 UNC" is no number 1 screw with 8 to the inch, but the 1 in bolt: the number taken as inches. */
function inchesForNumber(thread: ThreadDesignation): ThreadDesignation {
  const whole = /^#([1-6])$/.exec(thread.size)?.[1];
  return whole === undefined ? thread : { ...thread, size: whole, diameter: whole, ucum: "[in_i]" };
}

/** Where no table has the pair of diameter and pitch: the threads that share one of the two, nearest in the other. */
export function unlistedNearest(thread: ThreadDesignation): Thread[] {
  const pitch = pitchOf(thread);
  if (pitch === undefined || threadOf(thread).length > 0) return [];
  const family = allThreads.filter((row) => sameSystem({ ...row, series: "" }, thread));
  const ofSize = family.filter((row) => sameSize(row, thread));
  const major = ofSize[0]?.major ?? diameterOf(thread);
  const ofPitch = family.filter((row) => near(row.pitch, pitch));
  const closest = (rows: Thread[], far: (row: Thread) => number): Thread[] =>
    [...rows].sort((a, b) => far(a) - far(b)).slice(0, 1);
  return [
    ...closest(ofSize, (row) => Math.abs(row.pitch - pitch)),
    ...(major === undefined ? [] : closest(ofPitch, (row) => Math.abs(row.major - major))),
  ];
}

/** All designations of a reading, through lists and questions. */
export function designationsIn(reading: Reading): Designation[] {
  if (reading.kind === "designation") return [reading.designation];
  if (reading.kind === "list") return reading.parts.flatMap(designationsIn);
  return reading.kind === "question" ? reading.candidates.flatMap(designationsIn) : [];
}

const near = (a: number, b: number): boolean => Math.abs(a - b) < 0.0006 * Math.max(a, b);

function sameSystem(row: Thread, thread: ThreadDesignation): boolean {
  if (thread.system === "unstated") return row.system !== "BA" && row.system !== "ISO metric";
  if (thread.system !== row.system) return false;
  return row.system !== "UN" || row.series === "" || !/^UN[A-Z]/.test(thread.series ?? "")
    ? true
    : row.series === thread.series;
}

function sameSize(row: Thread, thread: ThreadDesignation): boolean {
  const pipe = row.system === "BSP" || row.system === "NPT";
  if (pipe || row.system === "BA") return thread.system === row.system && row.size === thread.size;
  if (thread.size === "") return true;
  const diameter = diameterOf(thread);
  return diameter === undefined ? row.size === thread.size : near(row.major, diameter);
}

function samePitch(row: Thread, thread: ThreadDesignation): boolean {
  const pitch = pitchOf(thread);
  return pitch === undefined || near(row.pitch, pitch);
}

/** The diameter that a designation gives, in mm. */
export function diameterOf(thread: ThreadDesignation): number | undefined {
  if (thread.diameter === undefined) return undefined;
  return toNumber(rational(thread.diameter)) * (thread.ucum === "[in_i]" ? inch : 1);
}

/** The pitch that a designation gives, in mm. */
export function pitchOf(thread: ThreadDesignation): number | undefined {
  if (thread.pitch !== undefined) return toNumber(rational(thread.pitch));
  return thread.tpi === undefined ? undefined : inch / toNumber(rational(thread.tpi));
}
