import { sourceNamed } from "../source.ts";

/** E3 to E24 of IEC 60063, as two digits a decade. They do not follow the formula everywhere: 27, 33, 47, 82 and others. */
const e24 = [
  10, 11, 12, 13, 15, 16, 18, 20, 22, 24, 27, 30, 33, 36, 39, 43, 47, 51, 56, 62, 68, 75, 82, 91,
] as const;
const every = (step: number): number[] => e24.filter((_, index) => index % step === 0);

/** E48 and E96: three digits, 10^(i/n), rounded; E192's 919 is 920, which is not among them. */
const computed = (count: number): number[] =>
  Array.from({ length: count }, (_, index) => Math.round(100 * 10 ** (index / count)));

/** Preferred values in one decade: two digits up to E24, three digits in E48 and E96. */
export const preferredSeries = {
  E3: every(8),
  E6: every(4),
  E12: every(2),
  E24: [...e24],
  E48: computed(48),
  E96: computed(96),
} as const;

export type SeriesName = keyof typeof preferredSeries;
export const seriesNames = Object.keys(preferredSeries) as SeriesName[];

/** Whether a value is of a series: 5.1 kΩ is in E24 and not in E12. */
export function isPreferred(value: number, series: SeriesName): boolean {
  const nearest = nearestPreferred(value, series);
  return nearest !== undefined && Math.abs(nearest - value) < 1e-9 * value;
}

/** The value of a series nearest to another, by ratio; nothing for zero and below. */
export function nearestPreferred(value: number, series: SeriesName): number | undefined {
  if (!(value > 0) || !Number.isFinite(value)) return undefined;
  const digits = preferredSeries[series];
  const scale = digits[0] === 10 ? 10 : 100;
  const decade = Math.floor(Math.log10(value));
  const candidates = [decade - 1, decade, decade + 1].flatMap((power) =>
    digits.map((digit) => Number(`${digit}e${power - Math.log10(scale)}`)),
  );
  const apart = (one: number): number => Math.abs(Math.log(one / value));
  return candidates.reduce((best, one) => (apart(one) < apart(best) ? one : best));
}

/** The coarsest series that has a value, or none: a 20 % figure of old radios (5, 25, 50) has none. */
export function coarsestSeries(value: number): SeriesName | undefined {
  return seriesNames.find((series) => isPreferred(value, series));
}

export const preferredSource = sourceNamed("iec60063");
