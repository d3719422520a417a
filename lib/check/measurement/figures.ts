import { hardSpace, type Quantity, toNumber, unitByCode } from "#lib/quantity/index.ts";
import { slipsOf } from "#lib/reference/index.ts";
import type { Fact } from "./sight.ts";

/** One of a quantity's unit in SI units. */
export function scaleOf(ucum: string): number {
  const unit = unitByCode(ucum);
  return unit ? toNumber(unit.factor) * Math.PI ** unit.pi : 1;
}

/** Not a number of many digits: 0.30000000000000004 is 0.3. */
export const plain = (value: number, digits = 4): string => `${Number(value.toPrecision(digits))}`;

/** A value in SI units, said in the unit of another: "0.4 mm". */
export function sayIn(si: number, like: Pick<Quantity, "ucum" | "unit" | "role">, digits = 4): string {
  const symbol = like.unit || (unitByCode(like.ucum)?.symbol ?? "");
  const kelvin = like.role === "difference" ? 0 : ({ Cel: 273.15, "[degF]": 459.67 / 1.8 }[like.ucum] ?? 0);
  const text = plain((si - kelvin) / scaleOf(like.ucum), digits);
  return symbol === "" || symbol === "1" ? text : `${text}${hardSpace}${symbol}`;
}

/** A value's own step, in SI units. */
export function stepOf({ quantity }: Fact): number {
  const [over = "0", under = "1"] = quantity.value.step.split("/");
  return (Number(over) / Number(under)) * scaleOf(quantity.ucum);
}

/** How far a value may lie from what it was worked out to be: its step, for a fraction of an inch 0.1 mm. */
export const roomOf = (fact: Fact): number =>
  fact.quantity.value.style.kind === "fraction" && fact.dimension === "length" ? 1e-4 : stepOf(fact);

/** What a figure may have been meant for: the same figure with a known slip put right. */
export function slipWords(found: number, expected: number, dimension: string): string | null {
  const kind =
    dimension === "torque" || dimension === "length" || dimension === "pressure" || dimension === "volume"
      ? dimension
      : "any";
  return slipsOf(found / expected, kind, 0.12)[0]?.words ?? null;
}

/** Within a share of one another. */
export const near = (a: number, b: number, share: number): boolean =>
  Math.abs(a - b) <= share * Math.max(Math.abs(a), Math.abs(b));

/** A term of a ratio as a number: "15/2" is 7.5. */
export function termNumber(term: string): number {
  const [over = "0", under = "1"] = term.split("/");
  return Number(over) / Number(under);
}

const numberWords: Record<string, number> = {
  one: 1,
  two: 2,
  three: 3,
  four: 4,
  five: 5,
  six: 6,
  eight: 8,
  ten: 10,
  twelve: 12,
  twenty: 20,
};

/** A number written as a word, in figures or with a fraction: "two", "2", "2-1/2", "1/3". What is none is NaN. */
export function numberIn(text: string): number {
  const [, whole = "0", over, under] = /^(?:(\d+)[- ])?(\d+)\/(\d+)$/.exec(text) ?? [];
  return over ? Number(whole) + Number(over) / Number(under) : (numberWords[text] ?? Number(text));
}
