import { type Source, sourceNamed } from "../source.ts";

/** Swept volume of one cylinder, in the cube of the unit of bore and stroke: π/4 × bore² × stroke. */
export const sweptVolume = (bore: number, stroke: number): number => (Math.PI / 4) * bore ** 2 * stroke;

/** Compression ratio by geometry: (swept + clearance) / clearance. The trapped ratio of a ported engine is less. */
export const compressionRatio = (swept: number, clearance: number): number => (swept + clearance) / clearance;

/** Mean piston speed in m/s: 2 × stroke × turns a second. Stroke in mm. */
export const meanPistonSpeed = (stroke: number, rpm: number): number => (2 * stroke * rpm) / 60_000;

/** What a ring's end gap grows by when the bore wears by an amount on diameter: π × wear. */
export const ringGapGrowth = (wear: number): number => Math.PI * wear;

/** Top and second ring gap by a piston maker's rule, in the unit of the bore: factor × bore, and 1.25 times that. */
export function ringGaps(bore: number, factor = 0.0045): { top: number; second: number; source: Source } {
  return { top: factor * bore, second: 1.25 * factor * bore, source: sourceNamed("ringMaker") };
}

/** A span that common practice calls usual: to warn on, never to call an error. */
export interface Guidance {
  what: string;
  /** In the unit asked with, or in `unit`. */
  low: number;
  high: number;
  unit: string;
  source: Source;
}

const guide = (what: string, low: number, high: number, unit: string): Guidance => ({
  what,
  low: Number(low.toPrecision(12)),
  high: Number(high.toPrecision(12)),
  unit,
  source: sourceNamed("guidance"),
});

/** Ring end gap, old plain-iron rings: 0.003 to 0.004 of the bore; makers' rules go to 0.0045. Guidance only. */
export const ringGapGuide = (bore: number, unit: string): Guidance =>
  guide("ring end gap", 0.003 * bore, 0.004 * bore, unit);

/** The same with the maker's rule as its upper end: beyond it a gap is questioned. */
export const ringGapLimits = (bore: number, unit: string): Guidance =>
  guide("ring end gap", 0.003 * bore, 0.0045 * bore, unit);

/** Skirt clearance of an aluminium piston in an air-cooled bore: about 0.0008 to 0.0016 of the bore. Guidance only. */
export const skirtClearanceGuide = (bore: number, unit: string): Guidance =>
  guide("skirt clearance, aluminium piston, air-cooled", 0.0008 * bore, 0.0016 * bore, unit);

/** Diametral clearance of a plain bearing: about 0.0007 to 0.0025 of the journal. Guidance only. */
export const plainBearingGuide = (journal: number, unit: string): Guidance =>
  guide("plain-bearing diametral clearance", 0.0007 * journal, 0.0025 * journal, unit);

/** Valve clearance, pushrod engine, mm. Nil on cold alloy engines occurs. Guidance only. */
export const valveClearanceGuide = guide("valve clearance", 0.05, 0.5, "mm");

/** Spark-plug gap with coil ignition, mm; magneto 0.4 to 0.5. Guidance only. */
export const plugGapGuide = guide("spark-plug gap, coil ignition", 0.45, 1.1, "mm");
export const plugGapMagnetoGuide = guide("spark-plug gap, magneto", 0.4, 0.5, "mm");

/** Soak in degreaser or penetrating oil, hours. Guidance only. */
export const soakGuide = guide("degreaser or penetrating-oil soak", 0.25, 48, "h");

/** Dip of a zinc casting in a cold bath, hours: two and a half at the most. Guidance only. */
export const zincDipGuide = guide("zinc casting in a cold dip", 0, 2.5, "h");

export type GuideVerdict = "usual" | "below" | "above";

/** Where a value lies against a guide. */
export const againstGuide = (value: number, { low, high }: Guidance): GuideVerdict =>
  value < low - 1e-12 ? "below" : value > high + 1e-12 ? "above" : "usual";

/**
 * What may have been meant by a figure outside a guide: the same figure a tenth, a hundredth, ten times or with
 * 25.4 put right, where that lies inside it. "0.12 in" for a ring gap of 0.009 to 0.014 in gives 0.012.
 */
export function likelySlips(
  value: number,
  guidance: Pick<Guidance, "low" | "high">,
): { value: number; slip: string }[] {
  const slips: [number, string][] = [
    [0.1, "decimal place"],
    [10, "decimal place"],
    [0.01, "decimal place"],
    [100, "decimal place"],
    [25.4, "inches for millimetres"],
    [1 / 25.4, "millimetres for inches"],
  ];
  return slips
    .map(([factor, slip]) => ({ value: Number((value * factor).toPrecision(12)), slip }))
    .filter((one) => one.value >= guidance.low * 0.95 && one.value <= guidance.high * 1.05);
}
