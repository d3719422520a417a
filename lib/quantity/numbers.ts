import { fractionWordAt, wordNumberAt } from "./number-words.ts";
import { add, decimal, over, type Rational, rational, tenTo } from "./rational.ts";
import { at, isDigitAt } from "./text.ts";
import type { NumberStyle, ReadOptions, Value } from "./types.ts";
import { type NumberAt, writtenValue } from "./value.ts";

const run = /\d{1,30}(?:[.,]\d{1,30}){0,9}|[.,]\d{1,30}/y;
const hardGroups = /\d{1,3}(?:\u00a0\d{3}){1,6}(?:[.,]\d{1,20})?(?![\d/])/y;
const softGroups = /[1-9]\d{0,2}(?: \d{3}){1,6}(?![\d/.,:x×-]|\s?\/)/y;
const exponent = /[eE]([+-]?\d{1,2})(?![\w.])/y;
const signAhead = /([+-]\s?|minus\s|plus\s)(?=[\d.,½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅐⅛⅜⅝⅞⅑⅒])/iy;
const onlyDigits = /^\d+$/;
const glyphs = "½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅐⅛⅜⅝⅞⅑⅒";
const glyphValues = "1/2 1/3 2/3 1/4 3/4 1/5 2/5 3/5 4/5 1/6 5/6 1/7 1/8 3/8 5/8 7/8 1/9 1/10".split(" ");

/** The number at a place; a sign in front is taken only where `signed`. */
export function numberAt(text: string, place: number, options: ReadOptions, signed = false): NumberAt | null {
  if (place >= text.length) return null;
  const sign = signed ? at(signAhead, text, place) : null;
  const start = sign?.end ?? place;
  const found = glyphAt(text, start) ?? groupedAt(text, start) ?? digitsAt(text, start, options);
  if (!found) return sign ? null : wordNumberAt(text, place);
  if (!sign) return found;
  return {
    ...found,
    values: found.values.map((value) => withSign(value, /^(?:-|minus)/i.test(sign.groups[0]))),
  };
}

function withSign(value: Value, negative: boolean): Value {
  if (!negative) return { ...value, style: { ...value.style, plus: true } };
  const { n, d } = rational(value.exact);
  return writtenValue(over(-n, d), rational(value.step), value.style);
}

function digitsAt(text: string, place: number, options: ReadOptions): NumberAt | null {
  const found = at(run, text, place);
  if (!found || isDigitAt(text, found.end)) return null;
  const digits = found.groups[0];
  if (onlyDigits.test(digits)) return wholeOrFraction(text, digits, found.end);
  return separated(digits, found.end, options, text);
}

function wholeOrFraction(text: string, digits: string, end: number): NumberAt {
  const whole = decimal(digits);
  const fraction = plainFraction(text, digits, end) ?? mixed(text, whole, end);
  if (fraction) return fraction;
  const power = at(exponent, text, end);
  if (power) return raised(whole, 0, Number(power.groups[1]), power.end);
  return { values: [writtenValue(whole, rational("1"), { kind: "decimal", places: 0 })], end };
}

const slashAndFigures = /\s?\/\s?(\d{1,5})(?![\d.,]*\d|\/\d)(?:st|nd|rd|ths?|s)?/y;

function plainFraction(text: string, digits: string, end: number): NumberAt | null {
  const found = at(slashAndFigures, text, end);
  const [n, d] = [Number(digits), Number(found?.groups[1] ?? 0)];
  if (
    !found ||
    !(isFraction(n, d) || (n === 1 && d > 0 && at(seconds, text, found.end))) ||
    (!lowest(n, d) && at(notParted, text, found.end))
  )
    return null;
  if (n > 1 && d > 2 && d % 4 !== 0 && at(twoValues, text, found.end)) return null;
  const style: NumberStyle = { kind: "fraction", over: d, join: "-", ...(n >= d ? { improper: true } : {}) };
  return {
    values: [writtenValue(over(BigInt(digits), BigInt(d)), over(1n, BigInt(d)), style)],
    end: found.end,
  };
}

/** A shutter's time: "1/125 s". */
const seconds = /\s?s(?:ec(?:ond)?s?)?\b/iy;

/** Units of which two values stand side by side more often than a fraction in higher terms: "8/16 Ω". */
const notParted = /\s?(?:[ΩVAWJN]|ohm|volt|amp|watt|psi|bar|Hz|rpm)/iy;

/** Units that nobody parts in thirds or fifths: "3/5 thou", "5/6 ft lb" are two values. */
const twoValues = /\s?(?:thou|(?:lbf?s?|ft|foot)[\s.-]{0,2}(?:lb|ft|foot|pound))/iy;

/** Written fractions have a denominator that is a power of two or ten, or are small and in lowest terms: 220/240 is none. */
function isFraction(n: number, d: number): boolean {
  if (d === 0) return false;
  if ([2, 4, 8, 16, 32, 64, 128, 10, 100, 1000].includes(d)) return n < d || (n < 16 * d && lowest(n, d));
  return n < d && n <= 11 && d <= 100 && lowest(n, d);
}

function lowest(n: number, d: number): boolean {
  for (let k = 2; k <= n; k++) if (n % k === 0 && d % k === 0) return false;
  return n > 0;
}

const mixedFigures =
  /(-|[ \u00a0]|\s?(?:and|&)\s?)(\d{1,5})\s?\/\s?(\d{1,5})(?![\d.,]*\d|\/\d)(?:st|nd|rd|ths?|s)?/y;
const mixedGlyph = /(-| |\u00a0|)([½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅐⅛⅜⅝⅞⅑⅒])/y;
const mixedWords = /\s(?:and|&)\s/y;

function mixed(text: string, whole: Rational, end: number): NumberAt | null {
  const figures = at(mixedFigures, text, end);
  if (figures) {
    const [n, d] = [Number(figures.groups[2]), Number(figures.groups[3])];
    if (n < d && isFraction(n, d)) return mixedValue(whole, n, d, joinOf(figures.groups[1]), figures.end);
  }
  const glyph = at(mixedGlyph, text, end);
  if (glyph) {
    const [n, d] = glyphFraction(glyph.groups[2] ?? "");
    return mixedValue(whole, n, d, joinOf(glyph.groups[1]), glyph.end, true);
  }
  const words = at(mixedWords, text, end);
  const part = words && fractionWordAt(text, words.end);
  return part ? mixedValue(whole, part.n, part.d, " ", part.end) : null;
}

function joinOf(text = ""): string {
  if (text === "-" || text === "") return text;
  return text.trim() === "" ? " " : " and ";
}

function mixedValue(
  whole: Rational,
  n: number,
  d: number,
  join: string,
  end: number,
  glyph = false,
): NumberAt {
  const part = over(BigInt(n), BigInt(d));
  const style: NumberStyle = { kind: "fraction", over: d, join, ...(glyph ? { glyph: true } : {}) };
  return { values: [writtenValue(add(whole, part), over(1n, BigInt(d)), style)], end };
}

function glyphFraction(glyph: string): [number, number] {
  const [n = 1, d = 1] = (glyphValues[glyphs.indexOf(glyph)] ?? "1/1").split("/").map(Number);
  return [n, d];
}

function glyphAt(text: string, place: number): NumberAt | null {
  if (!glyphs.includes(text.charAt(place)) || place >= text.length) return null;
  const [n, d] = glyphFraction(text.charAt(place));
  return mixedValue(rational("0"), n, d, "", place + 1, true);
}

/** The glyph of a fraction, where there is one: "⅜" for 3/8. */
export function glyphOf(fraction: string): string | null {
  const index = glyphValues.indexOf(fraction);
  return index < 0 ? null : glyphs.charAt(index);
}

/** Digits parted by hard spaces are one number; parted by plain spaces they are asked about. */
function groupedAt(text: string, place: number): NumberAt | null {
  const hard = at(hardGroups, text, place);
  if (hard) {
    const [whole = "", sign, places = ""] = hard.groups[0].split(/([.,])/);
    return { values: [decimalValue(whole.replaceAll("\u00a0", ""), places, sign, "\u00a0")], end: hard.end };
  }
  const soft = at(softGroups, text, place);
  if (!soft) return null;
  const value = decimalValue(soft.groups[0].replaceAll(" ", ""), "", undefined, "\u00a0");
  return { values: [value], ask: `“${soft.groups[0]}” may be one number or several`, end: soft.end };
}

function separated(digits: string, end: number, options: ReadOptions, text: string): NumberAt | null {
  const signs = digits.replace(/\d+/g, "");
  if (signs.length === 1) return oneSign(digits, signs, end, options, text);
  const last = signs.at(-1) ?? "";
  const groups = digits.split(/[.,]/);
  const same = [...signs].every((sign) => sign === signs[0]);
  if (same && inThousands(groups)) {
    return { values: [decimalValue(groups.join(""), "", undefined, signs[0])], end };
  }
  const before = [...signs.slice(0, -1)];
  if (!same && before.every((sign) => sign === signs[0]) && inThousands(groups.slice(0, -1))) {
    return { values: [decimalValue(groups.slice(0, -1).join(""), groups.at(-1) ?? "", last, signs[0])], end };
  }
  if (signs[0] !== ",") return null;
  const first = digits.indexOf(",");
  return { values: [decimalValue(digits.slice(0, first), "", undefined)], end: end - digits.length + first };
}

const firstGroup = /^[1-9]\d{0,2}$/;
const inThousands = ([first = "", ...rest]: string[]): boolean =>
  first.length > 0 && first.length <= 3 && rest.every((group) => group.length === 3);

function oneSign(digits: string, sign: string, end: number, options: ReadOptions, text: string): NumberAt {
  const [whole = "", places = ""] = digits.split(sign);
  const asDecimal = decimalValue(whole, places, sign);
  const plain = options.decimal === sign || (sign === "." && options.decimal !== ",");
  const mayGroup = !plain && places.length === 3 && firstGroup.test(whole);
  const power = at(exponent, text, end);
  if (power) return raised(rational(asDecimal.exact), places.length, Number(power.groups[1]), power.end);
  if (!mayGroup) return { values: [asDecimal], end };
  const asGroup = decimalValue(`${whole}${places}`, "", undefined, sign);
  const other = sign === "," ? [asGroup, asDecimal] : [asDecimal, asGroup];
  return { values: other, ask: `“${digits}” may be ${whole}${places}, or ${whole} and a fraction`, end };
}

function raised(base: Rational, places: number, tens: number, end: number): NumberAt {
  const size = tenTo(tens);
  const value = over(base.n * size.n, base.d * size.d);
  const step = tenTo(tens - places);
  return { values: [writtenValue(value, step, { kind: "decimal", places, tens })], end };
}

function decimalValue(whole: string, places: string, sign?: string, group?: string): Value {
  const style: NumberStyle = { kind: "decimal", places: places.length };
  if (sign === ",") style.sign = ",";
  if (group && group !== sign) style.group = group;
  if (whole === "") style.bare = true;
  return writtenValue(decimal(`${whole || "0"}.${places || "0"}`), tenTo(-places.length), style);
}
