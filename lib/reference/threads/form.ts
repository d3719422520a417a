/**
 * Basic sizes of a thread from its outside diameter and pitch, in whatever unit they are given.
 * No tolerance: the part in hand is smaller (a screw) or larger (a nut) than these.
 */
export interface BasicSizes {
  /** Effective (pitch) diameter. */
  effective: number;
  /** Minor (core) diameter. */
  minor: number;
}

/** ISO metric and unified, 60°: d2 = d - 0.649519 P, D1 = d - 1.082532 P (ISO 68-1, ISO 724; ASME B1.1). */
export const isoForm = (major: number, pitch: number): BasicSizes => ({
  effective: major - 0.649519 * pitch,
  minor: major - 1.082532 * pitch,
});

/** Whitworth form, 55°: depth 0.640327 p (BS 84; ISO 228-1). */
export const whitworthForm = (major: number, pitch: number): BasicSizes => ({
  effective: major - 0.640327 * pitch,
  minor: major - 1.280654 * pitch,
});

/** Cycle form, 60° rounded: depth 0.5327 p (BS 811, second-hand). */
export const cycleForm = (major: number, pitch: number): BasicSizes => ({
  effective: major - 0.5327 * pitch,
  minor: major - 1.0654 * pitch,
});

/** BA form, 47.5°: depth 0.6 p (BS 93). The standard then rounds, so that its table is to be used. */
export const baForm = (major: number, pitch: number): BasicSizes => ({
  effective: major - 0.6 * pitch,
  minor: major - 1.2 * pitch,
});

/** BA sizes before the standard's rounding, in mm: p = 0.9ⁿ, D = 6 p^1.2 (BS 93). */
export function baFormula(number: number): { major: number; pitch: number } {
  const pitch = 0.9 ** number;
  return { pitch, major: 6 * pitch ** 1.2 };
}
