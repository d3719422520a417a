import type { ThreadSystem } from "#lib/quantity/index.ts";
import type { Source } from "../source.ts";

/** The shape of the ridge: what decides whether two threads of like size and pitch belong together. */
export type ThreadForm =
  | "60° flat (ISO)"
  | "55° rounded (Whitworth)"
  | "47.5° rounded (BA)"
  | "60° rounded (cycle)"
  | "60° flat, taper 1:16";

/** One thread of a standard: basic sizes in mm, no tolerance. */
export interface Thread {
  /** In one fixed spelling: "M6x1", "1/4-20 UNC", "1/4 BSF", "2 BA", "G 1/4", "1/4 NPT", "1/4-26 BSC". */
  name: string;
  system: ThreadSystem;
  /** "ISO coarse", "ISO fine", "UNC", "UNF", "UNEF", "UNS", "BSW", "BSF", "BA", "BSP", "BSC", "NPT", … */
  series: string;
  /** Nominal size as written; for pipe threads it is not a diameter. */
  size: string;
  form: ThreadForm;
  /** Angle between the flanks in degrees. */
  angle: number;
  /** Major diameter in mm; for a taper thread the outside diameter of the pipe. */
  major: number;
  /** Effective (pitch) diameter in mm; not given for a taper thread. */
  effective?: number;
  /** Minor (core) diameter in mm; not given for a taper thread. */
  minor?: number;
  /** Pitch in mm. */
  pitch: number;
  /** Threads an inch, where the standard counts them. */
  tpi?: number;
  /** The system in which the standard gives its figures. */
  native: "mm" | "in";
  /** Where size and pitch were seen. */
  source: Source;
  /** Where the other diameters come from. */
  formSource: Source;
}

/** The side of an inch. */
export const inch = 25.4;

/** The number behind a size written as a fraction: "1-3/8" is 1.375. */
export function sizeOf(written: string): number {
  const [, whole, over, under] = /^(?:(\d+)(?:-|$))?(?:(\d+)\/(\d+))?$/.exec(written) ?? [];
  const value = Number(whole ?? 0) + (over ? Number(over) / Number(under) : 0);
  if (written === "" || !Number.isFinite(value) || value === 0) {
    const decimal = Number(written);
    if (written === "" || Number.isNaN(decimal)) throw new Error(`“${written}” is not a size`);
    return decimal;
  }
  return value;
}
