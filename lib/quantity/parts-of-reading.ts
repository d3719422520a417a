import { convertRational, siNumber } from "./convert.ts";
import { add, compare, type Exact, multiply, negate, type Rational, rational } from "./rational.ts";
import type { Quantity, Reading } from "./types.ts";

/** Every quantity of a reading, in the order written: conversions, factors, terms, and those of a list's parts. */
export function quantitiesOf(reading: Reading): Quantity[] {
  if (reading.kind === "list") return reading.parts.flatMap(quantitiesOf);
  if (reading.kind === "sum") return [...reading.quantities, ...(reading.total ? [reading.total] : [])];
  return "quantities" in reading ? reading.quantities : [];
}

/** The questions a reading leaves open, its own or those of its parts. */
export function questionsOf(reading: Reading): (Reading & { kind: "question" })[] {
  if (reading.kind === "question") return [reading];
  return reading.kind === "list" ? reading.parts.flatMap(questionsOf) : [];
}

/** The least and the most a quantity allows, in SI units; null where there is no bound on that side. */
export interface Bounds {
  low: number | null;
  high: number | null;
}

/**
 * The bounds of a quantity: of its range, its tolerance, or its limit; for a plain value both are the value.
 * A tolerance class has no figures here, and the size itself is given.
 */
export function boundsOf(quantity: Quantity): Bounds {
  const ends = exactBounds(quantity);
  const low = inSI(ends.low, quantity);
  return { low, high: ends.high === ends.low ? low : inSI(ends.high, quantity) };
}

type End = Exact | Rational | null;

const inSI = (end: End, { ucum, role }: Quantity): number | null =>
  end === null ? null : siNumber(end, ucum, role);

function exactBounds({ value, high, qualifier, tolerance, ucum }: Quantity): { low: End; high: End } {
  const { exact } = value;
  if (qualifier === "at least") return { low: exact, high: null };
  if (qualifier === "at most") return { low: null, high: exact };
  if (qualifier === "either way") return { low: negate(rational(exact)), high: exact };
  if (high) return ordered(rational(exact), rational(high.exact));
  if (!tolerance || tolerance.kind === "class") return { low: exact, high: exact };
  const size = rational(exact);
  const deviation = (exact: string) =>
    tolerance.kind === "percent"
      ? multiply(multiply(size, rational(exact)), rational("1/100"))
      : convertRational(rational(exact), tolerance.ucum, ucum, "difference");
  return ordered(add(size, deviation(tolerance.minus.exact)), add(size, deviation(tolerance.plus.exact)));
}

function ordered(a: Rational, b: Rational): { low: Rational; high: Rational } {
  return compare(a, b) <= 0 ? { low: a, high: b } : { low: b, high: a };
}
