import { number, numberOrNone, sheet, source } from "../sheet.ts";
import { type Source, sourceNamed } from "../source.ts";
import { inch } from "../threads/thread.ts";
import { awgInches } from "./wire.ts";

/** Chassis wiring, in the open, American wire gauge: an upper guide in amperes; and the largest fuse in fixed wiring. */
const awgCurrents = sheet(
  { gauge: number, chassis: number, fixed: numberOrNone, source },
  `
  gauge chassis fixed source
  -3    380     -     hyperphysicsMemory
  -2    328     -     hyperphysicsMemory
  -1    283     -     hyperphysicsMemory
  0     245     -     hyperphysicsMemory
  1     211     -     hyperphysicsMemory
  2     181     -     hyperphysicsMemory
  3     158     -     hyperphysicsMemory
  4     135     -     hyperphysicsMemory
  5     118     -     hyperphysicsMemory
  6     101     -     hyperphysicsMemory
  7     89      -     hyperphysicsMemory
  8     73      -     hyperphysicsMemory
  9     64      -     hyperphysicsMemory
  10    55      30    hyperphysicsMemory
  11    47      -     hyperphysicsMemory
  12    41      20    hyperphysicsMemory
  13    35      -     hyperphysicsMemory
  14    32      15    hyperphysics
  15    28      -     hyperphysicsMemory
  16    22      10    hyperphysicsMemory
  17    19      -     hyperphysicsMemory
  18    16      7     hyperphysics
  19    14      -     hyperphysicsMemory
  20    11      -     hyperphysicsMemory
  21    9       -     hyperphysicsMemory
  22    7       -     hyperphysics
  23    4.7     -     hyperphysicsMemory
  24    3.5     -     hyperphysicsMemory
  25    2.7     -     hyperphysicsMemory
  26    2.2     -     hyperphysicsMemory
  27    1.7     -     hyperphysicsMemory
  28    1.4     -     hyperphysicsMemory
  29    1.2     -     hyperphysicsMemory
  30    0.86    -     hyperphysicsMemory
  `,
);

/** Copper wire of an American gauge: section, resistance at 20 °C, and the currents that tables allow. */
export interface CopperWire {
  gauge: number;
  /** mm². */
  area: number;
  ohmPerKm: number;
  ohmPer1000ft: number;
  /** Upper guide in amperes for a chassis in free air; not for fixed wiring. */
  chassis?: { amperes: number; source: Source };
  /** Largest overcurrent protection in fixed wiring, amperes; local codes decide. */
  fixed?: { amperes: number; source: Source };
  source: Source;
}

/** Resistivity of annealed copper at 20 °C, Ω mm²/m (IEC 60028). */
export const copperResistivity = 1 / 58;

/** What is known of a copper wire of American gauge. */
export function copperWire(gauge: number): CopperWire {
  const area = (Math.PI / 4) * (awgInches(gauge) * inch) ** 2;
  const ohmPerKm = (1000 * copperResistivity) / area;
  const row = awgCurrents.find((one) => one.gauge === gauge);
  return {
    gauge,
    area,
    ohmPerKm,
    ohmPer1000ft: ohmPerKm * 0.3048,
    ...(row && { chassis: { amperes: row.chassis, source: row.source } }),
    ...(row?.fixed !== undefined && { fixed: { amperes: row.fixed, source: sourceNamed("nec") } }),
    source: sourceNamed("copper"),
  };
}

/** Resistance of copper at another temperature: R20 (1 + 0.00393 (t - 20)), °C, near room temperature (IEC 60028). */
export const copperAt = (ohmAt20: number, celsius: number): number =>
  ohmAt20 * (1 + 0.00393 * (celsius - 20));
