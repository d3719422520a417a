import { exact, over, type Rational, rational, toNumber } from "./rational.ts";
import type { NumberStyle, Value } from "./types.ts";

/** A number found at a place: usually one value; several, with a question, where "1,234" is not plain. */
export interface NumberAt {
  values: Value[];
  ask?: string;
  end: number;
  /** Written in words; `loosely` where these may be no number at all: "one of them", "half nuts". */
  spoken?: "surely" | "loosely";
}

/** A value of an exact number, the step it is written to, and the way it is written. */
export function writtenValue(number: Rational, step: Rational, style: NumberStyle): Value {
  return { exact: exact(number), number: toNumber(number), step: exact(step), style };
}

/** A whole number as a value. */
export function wholeValue(number: number): Value {
  return writtenValue(over(BigInt(number), 1n), rational("1"), { kind: "decimal", places: 0 });
}
