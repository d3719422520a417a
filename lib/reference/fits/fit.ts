import { type Designation, rational, read, toNumber } from "#lib/quantity/index.ts";
import { type Source, sourceNamed } from "../source.ts";
import { designationsIn } from "../threads/named.ts";
import { across, shaftsAbove, shaftsBelow } from "./deviations.ts";
import { toleranceGrade } from "./grades.ts";

/** Limits of a hole or a shaft. Deviations in µm from the nominal size, sizes in mm. */
export interface Limits {
  name: string;
  nominal: number;
  /** Upper and lower deviation in µm. */
  upper: number;
  lower: number;
  /** Largest and smallest size in mm. */
  most: number;
  least: number;
  sources: Source[];
}

/** A hole and a shaft together. Clearances in µm; below zero they are interference. */
export interface Fit {
  name: string;
  nominal: number;
  hole?: Limits;
  shaft?: Limits;
  kind?: "clearance" | "transition" | "interference";
  maxClearance?: number;
  minClearance?: number;
  sources: Source[];
}

const atSize = <R extends { over: number; upTo: number }>(rows: R[], size: number): R | undefined =>
  rows.find(({ over, upTo }) => size > over && size <= upTo);

/** A fundamental deviation in µm: which side it fixes, and by how much. */
export interface Deviation {
  which: "upper" | "lower";
  um: number;
  source: Source;
}

/** The fundamental deviation of a shaft letter at a size in mm; `grade` matters for j and k. ISO 286-1, to 500 mm. */
export function shaftDeviation(letter: string, size: number, grade: number): Deviation | undefined {
  const source = sourceNamed("iso286");
  if (letter === "h" && size <= 500) return { which: "upper", um: 0, source };
  if (letter === "j" || letter === "k") {
    const row = atSize(across, size);
    const um = letter === "k" ? (grade >= 4 && grade <= 7 ? row?.k : row && 0) : row?.[`j${grade}` as "j6"];
    return um === undefined ? undefined : { which: "lower", um, source };
  }
  const below = atSize(shaftsBelow, size);
  const above = atSize(shaftsAbove, size);
  const es = below?.[letter as "g"];
  const ei = above?.[letter as "m"];
  if (typeof es === "number") return { which: "upper", um: es, source };
  return typeof ei === "number" ? { which: "lower", um: ei, source } : undefined;
}

/**
 * The fundamental deviation of a hole letter. A to H mirror the shaft. K, M, N up to grade 8 and P to ZC up to grade
 * 7 are the shaft's mirrored and raised by delta, the grade less the next finer one (ISO 286-1, 4.3.2.4); over 3 mm.
 */
export function holeDeviation(letter: string, size: number, grade: number): Deviation | undefined {
  const source = sourceNamed("iso286");
  if (letter === "J") {
    const um = atSize(across, size)?.[`J${grade}` as "J6"];
    return um === undefined ? undefined : { which: "upper", um, source };
  }
  const mirrored = shaftDeviation(letter.toLowerCase(), size, letter === "K" && grade <= 8 ? 6 : grade);
  if (!mirrored) return undefined;
  if (mirrored.which === "upper") return { which: "lower", um: mirrored.um === 0 ? 0 : -mirrored.um, source };
  if (letter === "K" && grade > 8 && size > 3) return undefined;
  if (letter === "N" && grade > 8) return { which: "upper", um: size > 3 ? 0 : -4, source };
  if (letter === "M" && grade === 6 && size > 250 && size <= 315) return { which: "upper", um: -9, source };
  const raised = size > 3 && grade <= ("KMN".includes(letter) ? 8 : 7);
  const delta = raised ? stepBelow(size, grade) : 0;
  const um = -mirrored.um + delta;
  return { which: "upper", um: um === 0 ? 0 : um, source };
}

function stepBelow(size: number, grade: number): number {
  const [it, finer] = [toleranceGrade(size, grade), toleranceGrade(size, grade - 1)];
  return it && finer ? it.um - finer.um : 0;
}

/** Limits of a class such as "H7" or "g6" at a nominal size in mm; nothing where ISO 286 to 500 mm has none. */
export function limitsOf(nominal: number, name: string): Limits | undefined {
  const [, letter = "", grade = ""] = /^([A-Za-z]{1,2})(0?\d{1,2})$/.exec(name) ?? [];
  const it = toleranceGrade(nominal, grade);
  if (!it) return undefined;
  const band = bandOf(letter, nominal, Number(grade), it.um);
  if (!band) return undefined;
  const size = (um: number): number => Number((nominal + um / 1000).toFixed(6));
  return {
    name,
    nominal,
    ...band,
    most: size(band.upper),
    least: size(band.lower),
    sources: [sourceNamed("iso286computed"), it.source, sourceNamed("iso286")],
  };
}

function bandOf(
  letter: string,
  nominal: number,
  grade: number,
  it: number,
): { upper: number; lower: number } | undefined {
  if (letter.toLowerCase() === "js") return { upper: it / 2, lower: -it / 2 };
  const hole = letter === letter.toUpperCase();
  const deviation = (hole ? holeDeviation : shaftDeviation)(letter, nominal, grade);
  if (!deviation) return undefined;
  const { which, um } = deviation;
  return which === "upper" ? { upper: um, lower: um - it } : { upper: um + it, lower: um };
}

/** A fit from its text: "25 H7/g6", "16 h6". Nothing where the text is no fit or the standard has no such class. */
export function fit(text: string): Fit | undefined {
  const found = designationsIn(read(text)).find((one) => one.type === "fit");
  return found?.type === "fit" ? fitOf(found) : undefined;
}

/** The fit that a designation names. */
export function fitOf(designation: Extract<Designation, { type: "fit" }>): Fit | undefined {
  if (designation.nominal === undefined) return undefined;
  const nominal = toNumber(rational(designation.nominal));
  const hole = designation.hole === undefined ? undefined : limitsOf(nominal, designation.hole);
  const shaft = designation.shaft === undefined ? undefined : limitsOf(nominal, designation.shaft);
  if ((designation.hole && !hole) || (designation.shaft && !shaft)) return undefined;
  return {
    name: designation.name,
    nominal,
    ...(hole && { hole }),
    ...(shaft && { shaft }),
    ...(hole && shaft && pairing(hole, shaft)),
    sources: (hole ?? shaft)?.sources ?? [],
  };
}

/** What a hole and a shaft make together. */
export function pairing(
  hole: Limits,
  shaft: Limits,
): { kind: NonNullable<Fit["kind"]>; maxClearance: number; minClearance: number } {
  const maxClearance = hole.upper - shaft.lower;
  const minClearance = hole.lower - shaft.upper;
  const kind = minClearance >= 0 ? "clearance" : maxClearance <= 0 ? "interference" : "transition";
  return { kind, maxClearance, minClearance };
}

/** Where a measured size (mm) lies against limits: how far outside in µm, or inside. */
export function againstLimits(
  measured: number,
  limits: Pick<Limits, "most" | "least">,
): { inside: boolean; over: number; under: number } {
  const over = Math.max(0, (measured - limits.most) * 1000);
  const under = Math.max(0, (limits.least - measured) * 1000);
  const whole = (um: number): number => Number(um.toFixed(3));
  return { inside: whole(over) === 0 && whole(under) === 0, over: whole(over), under: whole(under) };
}

/** Fits of a nominal size in mm with basic holes, in the order from loose to tight, as handbooks list them. */
export const usualFits: readonly string[] = [
  "H11/c11",
  "H9/d9",
  "H8/f7",
  "H7/g6",
  "H7/h6",
  "H7/k6",
  "H7/n6",
  "H7/p6",
  "H7/s6",
];
