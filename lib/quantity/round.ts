import { absolute, compare, divide, multiply, over, type Rational, tenTo, toNumber } from "./rational.ts";

/**
 * The nearest whole multiple of `step`; a tie goes to the even multiple. One step only, never in stages.
 * Source: NIST SP 811 (2008), B.7.1 rule 3; ISO 80000-1, annex B.
 */
export function roundTo(value: Rational, step: Rational): Rational {
  const { n, d } = divide(value, step);
  const twice = 2n * n + d;
  const down = floorDivide(twice, 2n * d);
  const tie = twice % (2n * d) === 0n;
  return multiply(over(tie && down % 2n !== 0n ? down - 1n : down, 1n), step);
}

function floorDivide(a: bigint, b: bigint): bigint {
  const quotient = a / b;
  return a % b !== 0n && a < 0n !== b < 0n ? quotient - 1n : quotient;
}

/** A value rounded (half to even) to so many decimal places, as digits: "34.90", "-0.5". */
export function toPlaces(value: Rational, places: number): string {
  const rounded = roundTo(value, tenTo(-places));
  const { n } = multiply(absolute(rounded), tenTo(places));
  const digits = n.toString().padStart(places + 1, "0");
  const sign = rounded.n < 0n ? "-" : "";
  return places <= 0
    ? `${sign}${n * 10n ** BigInt(-places)}`
    : `${sign}${digits.slice(0, -places)}.${digits.slice(-places)}`;
}

/** A value rounded (half to even) to so many significant digits: ("6.9749515", 5) is "6.9750". */
export function toDigits(value: Rational, digits: number): string {
  if (value.n === 0n) return "0";
  return toPlaces(value, digits - 1 - power(value));
}

/** The power of ten of the leading digit: 2 for 345, -3 for 0.0042. Nought has none: 0. */
export function power(value: Rational): number {
  const size = absolute(value);
  if (size.n === 0n) return 0;
  const guess = Math.floor(Math.log10(toNumber(size)));
  if (compare(size, tenTo(guess)) < 0) return guess - 1;
  return compare(size, tenTo(guess + 1)) >= 0 ? guess + 1 : guess;
}

export function trimZeros(digits: string): string {
  return digits.includes(".") ? digits.replace(/0{1,60}$/, "").replace(/\.$/, "") : digits;
}
