import { type Source, sourceNamed } from "../source.ts";
import { inch, sizeOf } from "../threads/thread.ts";
import { letterDrillRows, numberDrillRows } from "./gauge-drills.ts";

export type DrillSet = "number" | "letter" | "fraction" | "metric";

/** A twist drill as it is sold. */
export interface Drill {
  /** "No. 7", "letter F", "27/64 in", "6.8 mm". */
  name: string;
  set: DrillSet;
  /** Diameter in mm. */
  mm: number;
  source: Source;
}

const gauged = (set: "number" | "letter", rows: typeof numberDrillRows): Drill[] =>
  rows.map(({ size, inches, source }) => ({
    name: set === "number" ? `No. ${size}` : `letter ${size}`,
    set,
    mm: Number((inches * inch).toFixed(6)),
    source,
  }));

export const numberDrills: readonly Drill[] = gauged("number", numberDrillRows);
export const letterDrills: readonly Drill[] = gauged("letter", letterDrillRows);

/** Drills by sixty-fourths of an inch up to 1-1/2 in. */
export const fractionDrills: readonly Drill[] = Array.from({ length: 96 }, (_, index) => {
  const sixtyFourths = index + 1;
  const size = fraction(sixtyFourths, 64);
  return {
    name: `${size} in`,
    set: "fraction",
    mm: (sixtyFourths / 64) * inch,
    source: sourceNamed("fractionStep"),
  };
});

/** Metric drills: by 0.05 mm up to 3 mm, by 0.1 mm up to 14 mm, by 0.25 mm up to 32 mm, by 0.5 mm up to 50 mm. */
export const metricDrills: readonly Drill[] = [
  ...steps(30, 300, 5),
  ...steps(310, 1400, 10),
  ...steps(1425, 3200, 25),
  ...steps(3250, 5000, 50),
].map((hundredths) => ({
  name: `${hundredths / 100} mm`,
  set: "metric",
  mm: hundredths / 100,
  source: sourceNamed("drillStep"),
}));

/** Every drill that is sold in a set. */
export const allDrills: readonly Drill[] = [
  ...numberDrills,
  ...letterDrills,
  ...fractionDrills,
  ...metricDrills,
];

/** A drill by its name as the tables write it, or by any millimetre or inch size: "No. 7", "F", "27/64 in", "10.2 mm". */
export function drillNamed(name: string): Drill | undefined {
  const found = allDrills.find((drill) => drill.name === name);
  if (found) return found;
  const [, size, unit] = /^(\S+)\s(mm|in)$/.exec(name) ?? [];
  if (size === undefined) return undefined;
  const mm = unit === "in" ? sizeOf(size) * inch : Number(size);
  return { name, set: unit === "in" ? "fraction" : "metric", mm, source: sourceNamed("drillStep") };
}

/** The drills nearest to a diameter in mm, nearest first; of the sets asked for, or of all. */
export function drillsNear(mm: number, count = 6, sets?: readonly DrillSet[]): Drill[] {
  return allDrills
    .filter((drill) => sets === undefined || sets.includes(drill.set))
    .sort((a, b) => Math.abs(a.mm - mm) - Math.abs(b.mm - mm))
    .slice(0, count);
}

function steps(from: number, to: number, by: number): number[] {
  return Array.from({ length: Math.floor((to - from) / by) + 1 }, (_, index) => from + by * index);
}

/** A count of parts in lowest terms: 32 of 64 is "1/2", 80 of 64 is "1-1/4". */
export function fraction(parts: number, of: number): string {
  const whole = Math.floor(parts / of);
  const rest = parts - whole * of;
  if (rest === 0) return `${whole}`;
  const divisor = common(rest, of);
  const part = `${rest / divisor}/${of / divisor}`;
  return whole === 0 ? part : `${whole}-${part}`;
}

function common(a: number, b: number): number {
  return b === 0 ? a : common(b, a % b);
}
