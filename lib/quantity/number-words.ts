import { add, over, type Rational, rational } from "./rational.ts";
import { at } from "./text.ts";
import { type NumberAt, writtenValue } from "./value.ts";

const ones =
  "zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen".split(
    " ",
  );
const tens = "twenty thirty forty fifty sixty seventy eighty ninety".split(" ");
const count = new Map<string, number>([
  ...ones.map((word, i) => [word, i] as const),
  ...tens.map((word, i) => [word, 20 + 10 * i] as const),
]);
const parts = new Map<string, number>(
  Object.entries({
    half: 2,
    halves: 2,
    third: 3,
    quarter: 4,
    fourth: 4,
    fifth: 5,
    sixth: 6,
    eighth: 8,
  }).flatMap(([word, d]) => [[word, d] as const, [`${word}s`, d] as const]),
);
for (const [word, d] of [
  ["twelfth", 12],
  ["sixteenth", 16],
  ["thirty second", 32],
  ["thirty-second", 32],
  ["sixty fourth", 64],
  ["sixty-fourth", 64],
  ["16th", 16],
  ["8th", 8],
  ["32nd", 32],
  ["64th", 64],
] as const) {
  parts.set(word, d);
  parts.set(`${word}s`, d);
}

/** Words that a number in words can begin with. */
const begins = new Set([
  ...count.keys(),
  ...parts.keys(),
  "a",
  "an",
  "thirty",
  "sixty",
  "tenth",
  "hundredth",
  "thousandth",
]);
const firstWord = /[a-z0-9]{1,11}/iy;

const partWord =
  /(thirty[- ]seconds?|sixty[- ]fourths?|(?:16|8|32|64)(?:th|nd)s?|[a-z]{4,11})(?![\p{L}\p{N}])/iuy;
const tenthsOf =
  /(tenth|hundredth|thousandth)s?(?=\s+of\s+(?:an?|the)?\s*(?:inch|mm|millimet|turn|pint|lit|volt|amp|ohm))/iy;
const word = /([a-z]{3,9})(?![\p{L}\p{N}])/iuy;

/** A part of one in words; `lone` without a numerator: "half". */
export interface PartInWords {
  n: number;
  d: number;
  end: number;
  lone: boolean;
}

/** "a half", "three quarters", "an eighth", "a 32nd": a part of one, in words, or null. */
export function fractionWordAt(text: string, place: number): PartInWords | null {
  const lead = at(
    /(an?|one|two|three|five|seven|nine|eleven|thirteen|fifteen|\d{1,2})[- ](?!and\b)/iy,
    text,
    place,
  );
  const n = lead ? numerator(lead.groups[1] ?? "") : 1;
  const part = partAt(text, lead?.end ?? place);
  if (!part || (!lead && part.d > 16)) return null;
  return { n, d: part.d, end: part.end, lone: !lead };
}

function numerator(text: string): number {
  const lower = text.toLowerCase();
  if (lower === "a" || lower === "an") return 1;
  return count.get(lower) ?? Number(text);
}

function partAt(text: string, place: number): { d: number; end: number } | null {
  const small = at(tenthsOf, text, place);
  if (small) return { d: { t: 10, h: 100 }[text.charAt(place).toLowerCase()] ?? 1000, end: small.end };
  const found = at(partWord, text, place);
  const d = found && parts.get((found.groups[1] ?? "").toLowerCase());
  return found && d ? { d, end: found.end } : null;
}

/** A number in words: "fifteen", "twenty-six", "one and a half", "five eighths", "half". Null when there is none. */
export function wordNumberAt(text: string, place: number): NumberAt | null {
  const first = at(firstWord, text, place);
  if (!first || !begins.has(first.groups[0].toLowerCase())) return null;
  const part = fractionWordAt(text, place);
  if (part) return spoken(over(BigInt(part.n), BigInt(part.d)), part.d, part.end, part.lone);
  const whole = wholeWordsAt(text, place);
  if (!whole) return null;
  const and = at(/\s(?:and|&)\s/y, text, whole.end);
  const rest = and && fractionWordAt(text, and.end);
  if (!rest) return spoken(over(BigInt(whole.n), 1n), 1, whole.end, true);
  return spoken(
    add(over(BigInt(whole.n), 1n), over(BigInt(rest.n), BigInt(rest.d))),
    rest.d,
    rest.end,
    false,
  );
}

function spoken(value: Rational, d: number, end: number, loose: boolean): NumberAt {
  const style =
    d === 1 ? ({ kind: "decimal", places: 0 } as const) : ({ kind: "fraction", over: d, join: " " } as const);
  return {
    values: [writtenValue(value, d === 1 ? rational("1") : over(1n, BigInt(d)), style)],
    end,
    spoken: loose ? "loosely" : "surely",
  };
}

function wholeWordsAt(text: string, place: number): { n: number; end: number } | null {
  const first = countAt(text, place);
  if (!first) return null;
  const hundred = first.n < 10 ? at(/\shundred(?:\sand)?(?![\p{L}\p{N}])/iuy, text, first.end) : null;
  if (!hundred) return first;
  const rest = countAt(text, hundred.end + 1);
  return rest ? { n: first.n * 100 + rest.n, end: rest.end } : { n: first.n * 100, end: hundred.end };
}

function countAt(text: string, place: number): { n: number; end: number } | null {
  const found = at(word, text, place);
  const n = found && count.get((found.groups[1] ?? "").toLowerCase());
  if (!found || n === undefined || n === null) return null;
  const unit = n >= 20 ? at(/[- ]([a-z]{3,5})(?![\p{L}\p{N}])/iuy, text, found.end) : null;
  const more = unit && count.get((unit.groups[1] ?? "").toLowerCase());
  return unit && more && more < 10 ? { n: n + more, end: unit.end } : { n, end: found.end };
}
