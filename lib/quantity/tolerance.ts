import { numberAt } from "./numbers.ts";
import { compare, divide, negate, rational } from "./rational.ts";
import { after, afterSpaces, at, isAt } from "./text.ts";
import type { ReadOptions, Tolerance, Value } from "./types.ts";
import { wholeValue, writtenValue } from "./value.ts";

/** A tolerance found after a value. Its unit is read by whoever reads the value's; `ucum` is still empty. */
export interface ToleranceAt {
  tolerance: Tolerance;
  end: number;
}

const evenSign = /\s?(?:±|\+\s?\/\s?-|\+-|plus or minus|give or take)\s?/iy;
const holeOrShaft =
  /\s?((?:JS|[D-HJKNP])(?:[5-9]|1[0-3])|(?:js|ef|fg|cd|[a-hjkmnprstu])(?:[4-9]|1[0-3]))(?![\p{L}\p{N}/])/uy;

/** The tolerance at a place: "±0.02", "+0.02/-0.00", "±10 %", "H7". */
export function toleranceAt(
  text: string,
  place: number,
  value: Value,
  options: ReadOptions,
): ToleranceAt | null {
  return evenAt(text, place, options) ?? limitsAt(text, place, value, options) ?? classAt(text, place);
}

const percentSign = /\s?[,(]?\s?(?:±\s?|\+\/-\s?)?(?=\d{1,2}(?:[.,]\d{1,2})?\s?%)/y;

const percentBehind = /\s?%\)?/y;

/** "10 %" behind the value of a component, which always means either way. */
export function percentAt(text: string, place: number): ToleranceAt | null {
  const sign = at(percentSign, text, place);
  const size = sign && numberAt(text, sign.end, {});
  const plus = size?.values[0];
  if (!size || !plus || !isAt(percentBehind, text, size.end)) return null;
  const tolerance = { kind: "percent" as const, plus, minus: negative(plus), even: true };
  return { tolerance, end: percentBehind.lastIndex };
}

const percentWord = /\s?(?:%|per ?cent\b)/iy;

function evenAt(text: string, place: number, options: ReadOptions): ToleranceAt | null {
  const sign = at(evenSign, text, place);
  const size = sign && numberAt(text, sign.end, options);
  const plus = size?.values[0];
  if (!size || !plus) return null;
  const percent = at(percentWord, text, size.end);
  const minus = negative(plus);
  if (percent) return { tolerance: { kind: "percent", plus, minus, even: true }, end: percent.end };
  return { tolerance: { kind: "limits", plus, minus, ucum: "", even: true }, end: size.end };
}

const slash = /\s?[/,]/y;

/** Deviations with their own signs. A single one stands against nought, if it is small beside the value. */
function limitsAt(text: string, place: number, value: Value, options: ReadOptions): ToleranceAt | null {
  const first = deviationAt(text, place, options);
  if (!first) return null;
  const second = deviationAt(text, after(slash, text, first.end), options, true);
  if (!second && (place === afterSpaces(text, place) || !isSmall(first.value, value))) return null;
  const pair = [first.value, second?.value ?? wholeValue(0)] as const;
  const [plus, minus] =
    compare(rational(pair[0].exact), rational(pair[1].exact)) >= 0 ? pair : [pair[1], pair[0]];
  return { tolerance: { kind: "limits", plus, minus, ucum: "", even: false }, end: second?.end ?? first.end };
}

const signedFigure = /[+-][.,\d]/y;
const nought = /[+-]?0(?:[.,]0{1,9})?(?![\d./])/y;

function deviationAt(
  text: string,
  place: number,
  options: ReadOptions,
  second = false,
): { value: Value; end: number } | null {
  const start = afterSpaces(text, place);
  if (!isAt(signedFigure, text, start) && !(second && isAt(nought, text, start))) return null;
  const found = numberAt(text, start, options, true);
  const value = found?.values[0];
  return found && value ? { value, end: found.end } : null;
}

function isSmall(deviation: Value, value: Value): boolean {
  const size = rational(value.exact);
  if (size.n === 0n) return false;
  const share = divide(rational(deviation.exact), size);
  return compare(share.n < 0n ? negate(share) : share, rational("1/20")) <= 0;
}

function classAt(text: string, place: number): ToleranceAt | null {
  const found = at(holeOrShaft, text, place);
  return found && { tolerance: { kind: "class", name: found.groups[1] ?? "" }, end: found.end };
}

function negative(value: Value): Value {
  return writtenValue(negate(rational(value.exact)), rational(value.step), value.style);
}
