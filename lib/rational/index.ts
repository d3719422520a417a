/**
 * Exact arithmetic on fractions of whole numbers. An inch is 25.4 mm exactly, and stays so.
 *
 * `Exact` is how a fraction travels and is stored: "11/8", "35", "-1/2", always in lowest terms.
 */

/** A fraction in lowest terms as text: "11/8", "35", "-1/2". */
export type Exact = string;

/** A fraction for reckoning with: `n / d`, lowest terms, `d` positive. */
export interface Rational {
  n: bigint;
  d: bigint;
}

export const zero: Rational = { n: 0n, d: 1n };
export const one: Rational = { n: 1n, d: 1n };

/** Up to here a double is a whole number exactly, and quicker. */
const wholeDoubles = 2n ** 53n;

function gcd(a: bigint, b: bigint): bigint {
  const size = a < 0n ? -a : a;
  if (size <= wholeDoubles && b <= wholeDoubles) return BigInt(commonOf(Number(size), Number(b)));
  return b === 0n ? size : gcd(b, size % b);
}

function commonOf(a: number, b: number): number {
  let x = a;
  let y = b;
  while (y !== 0) {
    const rest = x % y;
    x = y;
    y = rest;
  }
  return x;
}

/** `n / d` in lowest terms. Throws where `d` is nought: that is a caller's mistake. */
export function over(n: bigint, d: bigint): Rational {
  if (d === 0n) throw new RangeError("a fraction over nought");
  if (d === 1n) return { n, d };
  const sign = d < 0n ? -1n : 1n;
  const common = gcd(n, d * sign);
  if (common === 1n && sign === 1n) return { n, d };
  return common === 0n ? zero : { n: (n * sign) / common, d: (d * sign) / common };
}

/** Ten to the powers that decimals are written with. */
const tens = Array.from({ length: 40 }, (_, power) => 10n ** BigInt(power));
const tenToWhole = (power: number): bigint => tens[power] ?? 10n ** BigInt(power);

/** A decimal without exponent, "-12.50" or "3", as a fraction. */
export function decimal(text: string): Rational {
  const [whole = "0", places = ""] = text.split(".");
  return over(
    BigInt(`${whole === "" || whole === "-" ? `${whole}0` : whole}${places}`),
    tenToWhole(places.length),
  );
}

/** Reads an `Exact` back; also takes plain decimals. Throws on anything else. */
export function rational(exact: Exact): Rational {
  const [n = "", d] = exact.split("/");
  return d === undefined ? decimal(n) : over(BigInt(n), BigInt(d));
}

export function exact({ n, d }: Rational): Exact {
  return d === 1n ? `${n}` : `${n}/${d}`;
}

export const add = (a: Rational, b: Rational): Rational => over(a.n * b.d + b.n * a.d, a.d * b.d);
export const subtract = (a: Rational, b: Rational): Rational => over(a.n * b.d - b.n * a.d, a.d * b.d);
export const multiply = (a: Rational, b: Rational): Rational => over(a.n * b.n, a.d * b.d);
export const divide = (a: Rational, b: Rational): Rational => over(a.n * b.d, a.d * b.n);
export const negate = ({ n, d }: Rational): Rational => ({ n: -n, d });
export const absolute = ({ n, d }: Rational): Rational => ({ n: n < 0n ? -n : n, d });

/** Below nought when `a < b`, above when `a > b`, nought when they are the same. */
export function compare(a: Rational, b: Rational): number {
  const difference = a.n * b.d - b.n * a.d;
  return difference < 0n ? -1 : difference > 0n ? 1 : 0;
}

/** Ten to a whole power, negative powers too. */
export function tenTo(power: number): Rational {
  const size = tenToWhole(Math.abs(power));
  return power < 0 ? { n: 1n, d: size } : { n: size, d: 1n };
}

/** The nearest double. */
export function toNumber({ n, d }: Rational): number {
  const size = n < 0n ? -n : n;
  if (size <= wholeDoubles && d <= wholeDoubles) return Number(n) / Number(d);
  const spare = BigInt(Math.max(0, d.toString(2).length - size.toString(2).length + 70));
  const scaled = (size << spare) / d;
  const drop = BigInt(Math.max(0, scaled.toString(2).length - 64));
  const double = Number(scaled >> drop) * 2 ** (Number(drop) - Number(spare));
  return n < 0n ? -double : double;
}

export const minimum = (a: Rational, b: Rational): Rational => (compare(a, b) <= 0 ? a : b);
export const maximum = (a: Rational, b: Rational): Rational => (compare(a, b) >= 0 ? a : b);
export const floor = ({ n, d }: Rational): bigint => (n >= 0n ? n / d : -((d - 1n - n) / d));

/** The fraction that a double is, exactly: every double is one. Throws on what is not finite. */
export function ofNumber(value: number): Rational {
  if (!Number.isFinite(value)) throw new RangeError(`a finite number was expected, not ${value}`);
  let [n, d] = [value, 1n];
  while (!Number.isInteger(n)) [n, d] = [n * 2, d * 2n];
  return over(BigInt(n), d);
}
