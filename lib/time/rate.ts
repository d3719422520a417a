import { compare, floor, ofNumber, over, type Rational, rational, toNumber } from "#lib/rational/index.ts";

/** Frames a second, exactly: 30000/1001 where people write 29.97. */
export type FrameRate = Rational;

/** The rates that timecode is counted at (SMPTE ST 12-1, ST 12-3), each in the letters it is written with. */
const published: readonly (readonly [string, string])[] = [
  ["23.976", "24000/1001"],
  ["24", "24"],
  ["25", "25"],
  ["29.97", "30000/1001"],
  ["30", "30"],
  ["47.952", "48000/1001"],
  ["48", "48"],
  ["50", "50"],
  ["59.94", "60000/1001"],
  ["60", "60"],
  ["100", "100"],
  ["119.88", "120000/1001"],
  ["120", "120"],
];

/** Rates to choose from, as they are written: "29.97". */
export const writtenRates: readonly string[] = published.map(([written]) => written);

const rates = published.map(([written, exact]) => ({ written, exact: rational(exact) }));

/** Nearer than this a written rate means a published one: 23.98 means 24000/1001. */
const slip = 0.005;
const fastest = 1_000_000;

/** The rate that a number means: the published one it is a rounding of, else the number itself. Null when it is none. */
export function rateOf(value: number): FrameRate | null {
  if (!(value > 0) || value > fastest) return null;
  const near = rates.find(({ exact }) => Math.abs(toNumber(exact) - value) < slip);
  return near ? near.exact : ofNumber(value);
}

/** Reads a rate as it is written: "25", "29.97", "30000/1001". Null when it is none. */
export function readRate(text: string): FrameRate | null {
  const parts = /^(\d{1,7}(?:\.\d{1,6})?)(?:\/(\d{1,7}))?$/.exec(text.trim());
  if (!parts) return null;
  const [, above = "", below] = parts;
  if (below === undefined) return rateOf(Number(above));
  if (Number(below) === 0 || above.includes(".") || Number(above) === 0) return null;
  return over(BigInt(above), BigInt(below));
}

/** A rate as people write it: "29.97" for 30000/1001, else as it is. */
export function sayRate(rate: FrameRate): string {
  const known = rates.find(({ exact }) => compare(exact, rate) === 0);
  return known ? known.written : String(Math.round(toNumber(rate) * 1000) / 1000);
}

/** How many frames timecode counts to the second: 30 for 30000/1001. */
export function countedTo(rate: FrameRate): bigint {
  const whole = floor(rate);
  return whole * rate.d === rate.n ? whole : whole + 1n;
}

/**
 * How many labels a drop-frame count leaves out at a minute: 2 at 30000/1001, 4 at 60000/1001 (SMPTE ST 12-1).
 * 0 where there is no drop-frame count of that rate, such as 24000/1001.
 */
export function droppedAtMinute(rate: FrameRate): bigint {
  const thirties = over(rate.n * 1001n, rate.d * 30000n);
  return thirties.d === 1n && thirties.n > 0n ? 2n * thirties.n : 0n;
}
