import {
  add,
  divide,
  type Exact,
  exact,
  multiply,
  type Rational,
  rational,
  subtract,
  toNumber,
  zero,
} from "./rational.ts";
import type { Dimension, Quantity, Role } from "./types.ts";
import { type Unit, unitByCode } from "./units.ts";

/** Pi to 50 decimals: conversions between degrees and radians are exact as far as any double can tell. */
const pi = rational("3.14159265358979323846264338327950288419716939937510");
/** Nought of each scale in kelvin. Source: SI Brochure, 9th ed.; NIST SP 811, B.9 (459.67 °F). */
const noughts: Record<string, Rational> = {
  Cel: rational("273.15"),
  "[degF]": divide(multiply(rational("459.67"), rational("5")), rational("9")),
};

function known(ucum: string): Unit {
  const unit = unitByCode(ucum);
  if (!unit) throw new RangeError(`“${ucum}” is not the UCUM code of a unit in the table`);
  return unit;
}

/** The whole factor of a unit, with pi where it has it. */
function scaleOf({ pi: power, factor }: Unit): Rational {
  if (power === 0) return factor;
  return power === 1 ? multiply(factor, pi) : divide(factor, pi);
}

/** An exact value in SI units as the nearest double. A difference of temperatures has no nought to be moved. */
export function siNumber(value: Exact | Rational, ucum: string, role?: Role): number {
  const scale = scaleOf(known(ucum));
  const nought = role === "difference" ? undefined : noughts[ucum];
  const quick = nought ? null : inDoubles(value, scale);
  if (quick !== null) return quick;
  const { n, d } = typeof value === "string" ? rational(value) : value;
  const scaled = { n: n * scale.n, d: d * scale.d };
  return toNumber(nought ? add(scaled, nought) : scaled);
}

/** The nearest double to a value times a scale, where doubles hold all their terms exactly; else null. */
function inDoubles(value: Exact | Rational, scale: Rational): number | null {
  const [n, d = 1] = typeof value === "string" ? value.split("/") : [value.n, value.d];
  const [top, bottom] = [Number(n) * Number(scale.n), Number(d) * Number(scale.d)];
  return Number.isSafeInteger(top) && Number.isSafeInteger(bottom) ? top / bottom : null;
}

/** A ratio is a number; everything else converts only within its dimension. */
function joins(one: Dimension, other: Dimension): boolean {
  const plain = (dimension: Dimension) => (dimension === "ratio" ? "number" : dimension);
  return plain(one) === plain(other);
}

/** As `convert`, on fractions. */
export function convertRational(value: Rational, from: string, to: string, role?: Role): Rational {
  const [source, target] = [known(from), known(to)];
  if (!joins(source.dimension, target.dimension)) {
    throw new RangeError(`${source.dimension} (${from}) is not ${target.dimension} (${to})`);
  }
  const bothPi = source.pi === target.pi;
  const si = bothPi ? multiply(value, source.factor) : multiply(value, scaleOf(source));
  const moved = role === "difference" ? si : subtract(add(si, noughts[from] ?? zero), noughts[to] ?? zero);
  return divide(moved, bothPi ? target.factor : scaleOf(target));
}

/**
 * A value of one unit in another of the same dimension, exactly: convert("11/8", "[in_i]", "mm") is "1397/40".
 * Pass "difference" for temperature differences. Throws a RangeError for unknown codes and for units of
 * different dimensions.
 */
export function convert(value: Exact, from: string, to: string, role?: Role): Exact {
  return exact(convertRational(rational(value), from, to, role));
}

/** A quantity's value in SI units as a double: metres, newton metres, kelvin, radians, turns a second. */
export function toSI(quantity: Quantity): number {
  return siNumber(quantity.value.exact, quantity.ucum, quantity.role);
}
