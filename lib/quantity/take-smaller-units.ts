import { type Draft, unitAfter } from "./draft.ts";
import { fractionWordAt } from "./number-words.ts";
import { numberAt } from "./numbers.ts";
import { add, divide, multiply, over, type Rational, rational, toNumber } from "./rational.ts";
import { after, isAt } from "./text.ts";
import type { ReadOptions, Value } from "./types.ts";
import type { UnitAt } from "./unit-at.ts";
import { unitByCode } from "./units.ts";
import { type NumberAt, writtenValue } from "./value.ts";

const join = /\s?-?\s?(?:and\s|,\s)?/y;

/** "5 ft 3 in", "2 lb 3 oz", "1 h 30 min", "12° 30'": one value, reckoned in the last unit. */
export function takeSmallerUnits(draft: Draft, text: string, options: ReadOptions): void {
  for (let turn = 0; turn < 3; turn++) {
    if (!draft.unit || draft.second || draft.tolerance) return;
    const before = settled(draft.unit);
    if (before.codes.length !== 1) return;
    const next = numberAt(text, after(join, text, draft.end), options);
    const unit = next && (smallerUnitAfter(text, next, before, options) ?? inchesUnsaid(text, next, before));
    const [large, small] = [draft.first.values[0], next?.values[0]];
    if (!next || !unit || !large || !small || small.number >= ratioOf(before, unit) || !isWhole(large))
      return;
    const carried = multiply(rational(large.exact), exactRatio(before, unit));
    draft.larger.push({ count: large.exact, ucum: before.codes[0] ?? "", unit: before.spelling });
    draft.first = {
      values: [writtenValue(add(carried, rational(small.exact)), rational(small.step), small.style)],
      end: next.end,
    };
    draft.unit = unit;
    draft.end = unit.end;
  }
}

/** Before a smaller unit, degrees are an angle; tons and hundredweights are long ones: the short ones have no quarters. */
function settled(unit: UnitAt): UnitAt {
  const code = ["deg", "[lton_av]", "[lcwt_av]"].find((one) => unit.codes.includes(one));
  return code ? { ...unit, codes: [code], ask: undefined } : unit;
}

const smaller: Record<string, string[]> = {
  "[yd_i]": ["[ft_i]"],
  "[ft_i]": ["[in_i]"],
  "[lton_av]": ["[lcwt_av]"],
  "[lcwt_av]": ["28.[lb_av]", "[lb_av]"],
  "28.[lb_av]": ["[lb_av]"],
  "[stone_av]": ["[lb_av]"],
  "[lb_av]": ["[oz_av]"],
  d: ["h"],
  h: ["min"],
  min: ["s"],
  deg: ["'"],
  "'": ["''"],
  wk: ["d"],
};
/** After degrees, the marks of feet and inches are minutes and seconds; after hours, "m" is no metre. */
const behind: Record<string, Record<string, string>> = {
  deg: { "[ft_i]": "'", min: "'" },
  "'": { "[in_i]": "''", s: "''" },
  h: { m: "min" },
};

function smallerUnitAfter(
  text: string,
  number: NumberAt,
  large: UnitAt,
  options: ReadOptions,
): UnitAt | null {
  const found = unitAfter(text, number, number.end, options);
  const code = large.codes[0] ?? "";
  const unit = found && code === "[lton_av]" ? settled(found) : found;
  if (unit?.codes.length !== 1) return null;
  const own = behind[code]?.[unit.codes[0] ?? ""] ?? unit.codes[0] ?? "";
  return smaller[code]?.includes(own) ? { ...unit, codes: [own] } : null;
}

const ends = /\s{0,2}(?:$|[,;)])/y;

/** "5 ft 6" and 5'6 end in inches. */
function inchesUnsaid(text: string, number: NumberAt, large: UnitAt): UnitAt | null {
  if (large.codes[0] !== "[ft_i]" || !isAt(ends, text, number.end) || number.spoken) return null;
  return { codes: ["[in_i]"], spelling: large.spelling === "'" ? '"' : "in", end: number.end };
}

function exactRatio(large: UnitAt, small: UnitAt): Rational {
  const [one, two] = [unitByCode(large.codes[0] ?? ""), unitByCode(small.codes[0] ?? "")];
  return one && two ? divide(one.factor, two.factor) : over(1n, 1n);
}

const ratioOf = (large: UnitAt, small: UnitAt): number => toNumber(exactRatio(large, small));
const isWhole = (value: Value): boolean => rational(value.exact).d === 1n && rational(value.exact).n >= 0n;

const and = /\sand\s/iy;

/** "an inch and a half". */
export function takeHalf(draft: Draft, text: string): void {
  const value = draft.first.values[0];
  const part = isAt(and, text, draft.end) ? fractionWordAt(text, and.lastIndex) : null;
  if (!part || !draft.unit || draft.second || draft.tolerance || !value || !isWhole(value)) return;
  const sum = add(rational(value.exact), over(BigInt(part.n), BigInt(part.d)));
  const style = { kind: "fraction", over: part.d, join: " " } as const;
  draft.first = { ...draft.first, values: [writtenValue(sum, over(1n, BigInt(part.d)), style)] };
  draft.end = part.end;
}
