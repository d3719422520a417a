/** Whether an instrument reads finely enough for a tolerance: a tenth of its width, by the shop's rule. All in one unit. */
export function resolutionSuits(
  width: number,
  resolution: number,
): { suits: boolean; needed: number; ratio: number } {
  return { suits: resolution <= width / 10 + 1e-12, needed: width / 10, ratio: resolution / width };
}

/** Test uncertainty ratio: width of the tolerance over twice the 95 % uncertainty; 4 or more is wanted (Z540.3). */
export function uncertaintyRatio(width: number, u95: number): { ratio: number; enough: boolean } {
  const ratio = width / (2 * u95);
  return { ratio, enough: ratio >= 4 - 1e-12 };
}

/** Standard uncertainty from a resolution w: w/√12 (GUM). */
export const uncertaintyOfResolution = (resolution: number): number => resolution / Math.sqrt(12);

/** Standard uncertainty from limits ± a that are all as likely: a/√3 (GUM). */
export const uncertaintyOfLimits = (half: number): number => half / Math.sqrt(3);

/** Combined standard uncertainty of a sum or difference: root of the sum of squares (GUM). */
export const combinedUncertainty = (...parts: number[]): number => Math.hypot(...parts);

/** Expanded uncertainty U = k u; k 2 for about 95 % (GUM). */
export const expandedUncertainty = (combined: number, k = 2): number => k * combined;

/**
 * A figure against an upper limit, both ways of ASTM E29: rounded to the last place of the limit, and as it stands.
 * `round` rounds to so many places, ties to even.
 */
export function againstMaximum(
  observed: number,
  limit: number,
  rounded: number,
): { roundingMethod: boolean; absoluteMethod: boolean } {
  return { roundingMethod: rounded <= limit + 1e-12, absoluteMethod: observed <= limit + 1e-12 };
}
