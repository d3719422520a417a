import { ordinalParts, partWords, smallNumbers, twoWordParts } from "../lexicon/number-words.ts";
import type { Spoken } from "./spoken.ts";
import type { Token } from "./stream.ts";
import { unitAt } from "./unit.ts";
import { smallAt } from "./whole-number.ts";

/** Fractions that are one letter. */
export const glyphs: ReadonlyMap<string, string> = new Map(
  Object.entries({
    "½": "1/2",
    "¼": "1/4",
    "¾": "3/4",
    "⅓": "1/3",
    "⅔": "2/3",
    "⅛": "1/8",
    "⅜": "3/8",
    "⅝": "5/8",
    "⅞": "7/8",
  }),
);

/** "3/8", "three eighths", "a sixteenth", "half", "three thirty seconds", "5 16ths". */
export function fractionAt(tokens: readonly Token[], place: number, limit: number): Spoken | null {
  if (place >= limit) return null;
  const token = tokens[place] as Token;
  const written = glyphs.get(token.word) ?? /^\d+\/\d+/.exec(token.word)?.[0];
  if (written !== undefined) return fromWritten(written, place, place + 1);
  const [n, at] = numeratorAt(tokens, place, limit);
  const part = n === null ? null : partAt(tokens, at, limit);
  if (part && n !== null) {
    if (n >= part.d || (at === place && part.d > 4 && !hasUnitBehind(tokens, part.to, limit))) return null;
    if (isOrdinal(tokens, at, part.to, limit, n)) return null;
    return { ...fraction(n, part.d, place, part.to), ...(at === place ? { lone: true as const } : {}) };
  }
  return null;
}

/** What is divided: 1 for "a", "an" or nothing; or a number below 64. */
function numeratorAt(tokens: readonly Token[], place: number, limit: number): [number | null, number] {
  const token = tokens[place] as Token;
  const lone = partAt(tokens, place, limit);
  if (lone && lone.to === place + 1) return [1, place];
  if (token.word === "a" || token.word === "an") return [1, place + 1];
  if (/^\d{1,2}$/.test(token.word)) return [Number(token.word), place + 1];
  // "three thirty seconds": only the first word is divided.
  const first = smallNumbers.get(token.word);
  if (first === undefined || first === 0) return [null, place];
  if (partAt(tokens, place + 1, limit)) return [first, place + 1];
  const small = smallAt(tokens, place, limit);
  return small ? [small.value, small.to] : [null, place];
}

function partAt(tokens: readonly Token[], place: number, limit: number): { d: number; to: number } | null {
  const token = tokens[place];
  if (!token || place >= limit) return null;
  for (const [first, second, d] of twoWordParts) {
    const next = tokens[place + 1];
    if (token.word === first && token.stop === "" && place + 1 < limit && next && second.has(next.word))
      return { d, to: place + 2 };
  }
  const d = partWords.get(token.word);
  return d === undefined ? null : { d, to: place + 1 };
}

/** "the third", "a third one": an ordinal, unless "of a" or a unit stands behind it. */
function isOrdinal(tokens: readonly Token[], part: number, to: number, limit: number, n: number): boolean {
  const word = tokens[part]?.word ?? "";
  if (!ordinalParts.has(word)) return false;
  if (n > 1 || word === "eighth" || word === "sixteenth") return false;
  if (word === "hundredth" && tokens[part - 1]?.word === "a") return false;
  return !hasUnitBehind(tokens, to, limit);
}

const behindParts = new Set(
  "of inch inches mil mm millimetre millimeter pint turn thou hour second bore bar rod plate shaft silver steel brass bronze copper aluminium aluminum stock wire sheet square round hex dowel drill ball gauge thick".split(
    " ",
  ),
);

function hasUnitBehind(tokens: readonly Token[], to: number, limit: number): boolean {
  return to < limit && (behindParts.has(tokens[to]?.word ?? "") || unitAt(tokens, to, limit) !== null);
}

function fromWritten(text: string, from: number, to: number): Spoken | null {
  const [n = 0, d = 0] = text.split("/").map(Number);
  return d > 0 && d <= 1000 && n > 0 && n < 1000 ? fraction(n, d, from, to) : null;
}

function fraction(n: number, d: number, from: number, to: number): Spoken {
  return { value: n / d, typed: `${n}/${d}`, form: "fraction", over: d, from, to };
}
