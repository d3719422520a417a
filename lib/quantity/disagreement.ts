import { converted, disagrees } from "./agreement.ts";
import { convertRational } from "./convert.ts";
import { formatQuantity, hardSpace } from "./format.ts";
import { add, compare, type Rational, rational } from "./rational.ts";
import { toDigits, toPlaces } from "./round.ts";
import type { Quantity, Reading } from "./types.ts";
import { unitByCode } from "./units.ts";

/** Two figures for one value that cannot both be right: what was written, and what the other one gives. */
export interface Disagreement {
  found: string;
  expected: string;
  /** Found over expected: near 10, 12 or 25.4 it tells the slip. Null where it cannot be told. */
  ratio: number | null;
}

/** Where a reading contradicts itself: a value and its conversion, or a sum and its total; else null. */
export function disagreement(reading: Reading): Disagreement | null {
  if (reading.kind === "sum") return sumDisagreement(reading);
  if (reading.kind === "list") return reading.parts.map(disagreement).find((one) => one !== null) ?? null;
  if (reading.kind !== "quantity") return null;
  const [first, ...others] = reading.quantities;
  const wrong = first && others.find((other) => disagrees(first, other));
  return first && wrong ? between(first, wrong) : null;
}

function between(first: Quantity, second: Quantity): Disagreement {
  const should = converted(first, first.value, second);
  const far = first.high && second.high ? converted(first, first.high, second) : null;
  const digits = should === null ? "" : toDigits(should, 4);
  const symbol = second.unit || (unitByCode(second.ucum)?.symbol ?? "");
  const both = far === null ? digits : `${digits}–${toDigits(far, 4)}`;
  const expected = `${both}${symbol ? hardSpace : ""}${symbol}`;
  return { found: formatQuantity(second), expected, ratio: ratioOf(rational(second.value.exact), should) };
}

function ratioOf(found: Rational, expected: Rational | null): number | null {
  return expected === null || expected.n === 0n
    ? null
    : Number(found.n * expected.d) / Number(found.d * expected.n);
}

function sumDisagreement({ quantities, total }: Reading & { kind: "sum" }): Disagreement | null {
  if (!total || quantities.some((one) => one.dimension !== total.dimension)) return null;
  const sum = quantities
    .map((one) => convertRational(rational(one.value.exact), one.ucum, total.ucum, "difference"))
    .reduce(add);
  const places = total.value.style.kind === "decimal" ? total.value.style.places : 4;
  if (compare(rational(toPlaces(sum, places)), rational(total.value.exact)) === 0) return null;
  if (compare(sum, rational(total.value.exact)) === 0) return null;
  const expected = formatQuantity({ ...total, value: { ...total.value, exact: toPlaces(sum, places) } });
  return { found: formatQuantity(total), expected, ratio: ratioOf(rational(total.value.exact), sum) };
}
