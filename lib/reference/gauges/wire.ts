import { number, sheet, source } from "../sheet.ts";
import { type Source, sourceNamed } from "../source.ts";
import { inch } from "../threads/thread.ts";

export type GaugeSystem = "AWG" | "SWG" | "MSG" | "screw";

/** A gauge number's size. For sheet it is the thickness. */
export interface GaugeSize {
  name: string;
  system: GaugeSystem;
  /** Diameter or thickness in mm. */
  mm: number;
  source: Source;
}

/** The number behind a gauge as written: "4/0" is -3, "0000" is -3, "18" is 18. */
export function gaugeNumber(size: string): number {
  const [, zeros] = /^(\d)\/0$/.exec(size) ?? [];
  if (zeros !== undefined) return 1 - Number(zeros);
  return /^0{2,}$/.test(size) ? 1 - size.length : Number(size);
}

/** Diameter in inches of American wire gauge: 0.005 × 92^((36 - n)/39), 4/0 being -3 (ASTM B258). From 4/0 to 56. */
export const awgInches = (gauge: number): number => 0.005 * 92 ** ((36 - gauge) / 39);

/** Imperial standard wire gauge, BS 3737: corners of the curve in inches; between them it runs straight. */
const swgCorners = sheet(
  { gauge: number, inches: number, source },
  `
  gauge inches source
  -6    0.5    bs3737
  -5    0.464  bs3737
  -3    0.4    bs3737
  -2    0.372  bs3737
  3     0.252  bs3737
  6     0.192  bs3737
  10    0.128  bs3737
  14    0.08   bs3737
  19    0.04   bs3737
  23    0.024  bs3737
  26    0.018  bs3737
  28    0.0148 bs3737
  30    0.0124 bs3737
  39    0.0052 bs3737
  49    0.0012 bs3737
  50    0.001  bs3737
  `,
);

/** Manufacturers' standard gauge for sheet steel: corners in ounces to the square foot. */
const sheetCorners = sheet(
  { gauge: number, ounces: number, source },
  `
  gauge ounces source
  -5    300    msg
  1     180    msg
  14    50     msg
  16    40     msg
  17    36     msg
  20    24     msg
  26    12     msg
  31    7      msg
  36    4.5    msg
  38    4      msg
  `,
);

/** Diameter in inches of imperial standard wire gauge, 7/0 (-6) to 50; nothing outside. */
export const swgInches = (gauge: number): number | undefined =>
  between(
    swgCorners.map((corner) => [corner.gauge, corner.inches]),
    gauge,
  );

/** Thickness in inches of sheet steel by the Manufacturers' Standard Gage: weight over 501.84 lb/ft³. */
export function sheetInches(gauge: number): number | undefined {
  const ounces = between(
    sheetCorners.map((corner) => [corner.gauge, corner.ounces]),
    gauge,
  );
  return ounces === undefined ? undefined : (ounces / 16 / 501.84) * 12;
}

/** Major diameter in inches of a numbered screw, wood or machine: 0.060 + 0.013 × number. */
export const screwInches = (size: number): number => (60 + 13 * size) / 1000;

function between(corners: [number, number][], at: number): number | undefined {
  const next = corners.findIndex(([gauge]) => gauge >= at);
  const [upper, lower] = [corners[next], corners[Math.max(0, next - 1)]];
  if (!upper || !lower || at < (corners[0]?.[0] ?? 0)) return undefined;
  const [g1, v1] = upper;
  const [g0, v0] = lower;
  return g1 === g0 ? v1 : v0 + ((v1 - v0) * (at - g0)) / (g1 - g0);
}

/** What a gauge number measures in a system; nothing where the system does not go so far. */
export function gaugeSize(system: GaugeSystem, size: string): GaugeSize | undefined {
  const gauge = gaugeNumber(size);
  const inches = inchesOf(system, gauge);
  if (inches === undefined || !Number.isInteger(gauge)) return undefined;
  const source = { AWG: "b258", SWG: "bs3737", MSG: "msg", screw: "screwGauge" } as const;
  const words = {
    AWG: `${size} AWG`,
    SWG: `${size} SWG`,
    MSG: `${size} steel sheet`,
    screw: `No. ${size} screw`,
  };
  return { name: words[system], system, mm: inches * inch, source: sourceNamed(source[system]) };
}

function inchesOf(system: GaugeSystem, gauge: number): number | undefined {
  if (system === "AWG") return gauge >= -3 && gauge <= 56 ? awgInches(gauge) : undefined;
  if (system === "SWG") return swgInches(gauge);
  if (system === "MSG") return sheetInches(gauge);
  return gauge >= 0 && gauge <= 30 ? screwInches(gauge) : undefined;
}

/** Gauge numbers of a system near a diameter or thickness in mm, nearest first. */
export function gaugesNear(mm: number, systems: GaugeSystem[] = ["SWG", "AWG"], count = 3): GaugeSize[] {
  const sizes = Array.from({ length: 57 }, (_, index) => index - 6);
  return systems
    .flatMap((system) => sizes.flatMap((gauge) => gaugeSize(system, gaugeText(gauge)) ?? []))
    .sort((a, b) => Math.abs(a.mm - mm) - Math.abs(b.mm - mm))
    .slice(0, count * systems.length);
}

/** How a gauge number is written: -3 is "4/0". */
export const gaugeText = (gauge: number): string => (gauge < 0 ? `${1 - gauge}/0` : `${gauge}`);
