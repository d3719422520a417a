import { type Slip, slipsOf } from "../slips.ts";
import { type Source, sourceNamed } from "../source.ts";
import { inch, type Thread } from "../threads/thread.ts";
import { type StrengthClass, strengthClass } from "./classes.ts";

/** Nominal stress area in mm² of a metric thread: π/4 (d - 0.9382 P)², in mm (ISO 898-1). */
export const stressAreaMetric = (diameter: number, pitch: number): number =>
  (Math.PI / 4) * (diameter - 0.9382 * pitch) ** 2;

/** Tensile stress area in in² of a unified thread: 0.7854 (D - 0.9743/n)², in inches (ASME B1.1, appendix B). */
export const stressAreaInch = (diameter: number, tpi: number): number =>
  0.7854 * (diameter - 0.9743 / tpi) ** 2;

/** The stress area of a thread in mm². Not for threads of Whitworth, BA or cycle form: no formula was found for them. */
export function stressArea(thread: Thread): { mm2: number; source: Source } | undefined {
  if (thread.system === "ISO metric")
    return { mm2: stressAreaMetric(thread.major, thread.pitch), source: sourceNamed("stressArea") };
  if (thread.system !== "UN" || thread.tpi === undefined) return undefined;
  const in2 = stressAreaInch(thread.major / inch, thread.tpi);
  return { mm2: in2 * inch * inch, source: sourceNamed("stressAreaInch") };
}

/** Proof load in newtons: proof stress times stress area. */
export function proofLoad(
  thread: Thread,
  name: string,
): { newtons: number; class: StrengthClass; sources: Source[] } | undefined {
  const area = stressArea(thread);
  const strength = strengthClass(name, thread.major);
  return (
    area &&
    strength && {
      newtons: area.mm2 * strength.proof,
      class: strength,
      sources: [area.source, strength.source],
    }
  );
}

export type Lubrication = "dry" | "zinc" | "oiled";

/** The factor K of T = K d F for steel in steel: 0.20 dry, 0.17 zinc plated, 0.15 lubricated. Common practice. */
export const torqueFactor: Readonly<Record<Lubrication, number>> = { dry: 0.2, zinc: 0.17, oiled: 0.15 };

/** Tightening torque by rule, in N m; real figures scatter by about 30 per cent. */
export interface TorqueEstimate {
  newtonMetres: number;
  /** Clamp load in newtons: three quarters of the proof load. */
  clamp: number;
  factor: number;
  class: StrengthClass;
  sources: Source[];
}

/**
 * T = K d F with F = 0.75 of the proof load (Shigley, equations 8-27 and 8-31), steel in steel. Nothing for threads
 * without a stress area. Never to be used for a weak tapped casting or a thin flange: there the metal governs.
 */
export function torqueFor(
  thread: Thread,
  name: string,
  lubrication: Lubrication,
): TorqueEstimate | undefined {
  const load = proofLoad(thread, name);
  if (!load) return undefined;
  const factor = torqueFactor[lubrication];
  const clamp = 0.75 * load.newtons;
  return {
    newtonMetres: factor * (thread.major / 1000) * clamp,
    clamp,
    factor,
    class: load.class,
    sources: [sourceNamed("torque"), sourceNamed("torqueFactors"), ...load.sources],
  };
}

export type TappedMetal = "steel" | "cast iron" | "brass" | "bronze" | "aluminium" | "zinc";

const diameters: Readonly<Record<TappedMetal, number>> = {
  steel: 1,
  "cast iron": 1.5,
  brass: 1.5,
  bronze: 1.5,
  aluminium: 2,
  zinc: 2,
};

/** Least length of thread engaged, in mm, for a screw of a diameter in mm: a rule of thumb. */
export function leastEngagement(diameter: number, metal: TappedMetal): { mm: number; source: Source } {
  return { mm: diameters[metal] * diameter, source: sourceNamed("engagement") };
}

/**
 * A usual ceiling in N m for a screw tapped into a soft metal: about 0.75 to 0.95 of the 8.8 dry figure. Guidance,
 * no standard: "M6 into aluminium, 8 to 10 N m" is what workshops use.
 */
export function softMetalCeiling(thread: Thread): { low: number; high: number; source: Source } | undefined {
  const steel = torqueFor(thread, "8.8", "dry");
  if (!steel) return undefined;
  return {
    low: 0.76 * steel.newtonMetres,
    high: 0.95 * steel.newtonMetres,
    source: sourceNamed("softCasting"),
  };
}

/**
 * A stated torque (N m) against the rule's figure. Plausible from a fifth to one and a half times it: gaskets, soft
 * threads and thin flanges are tightened far less, a figure well above is more than the bolt bears. Guidance; K scatters.
 */
export function againstEstimate(
  stated: number,
  estimate: TorqueEstimate,
): { plausible: boolean; ratio: number; slips: Slip[] } {
  const ratio = stated / estimate.newtonMetres;
  const plausible = ratio >= 0.2 && ratio <= 1.5;
  return { plausible, ratio, slips: plausible ? [] : slipsOf(ratio, "torque", 0.3) };
}
