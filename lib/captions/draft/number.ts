import {
  noughts,
  ordinalParts,
  partWords,
  smallNumbers,
  spokenFigures,
  twoWordParts,
} from "../lexicon/number-words.ts";
import type { Token } from "./stream.ts";

/** A number as it was said, and as it is typed: "one and three eighths" is 1-3/8. */
export interface Spoken {
  value: number;
  typed: string;
  form: "whole" | "decimal" | "fraction" | "mixed";
  /** The part it was said in: 8 for eighths. */
  over?: number;
  /** Half-open, in tokens. */
  from: number;
  to: number;
  /** "two and a bit", "a hundred odd". */
  roughly?: true;
  /** "half", "quarter" without anything before it. */
  lone?: true;
  /** What else it may be: "four seventy" is 470 where a unit follows. */
  paired?: { value: number; to: number };
  /** "nineteen forty seven": more likely a year. */
  year?: true;
}

const glyphs: ReadonlyMap<string, string> = new Map(
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

const beginnings = new Set([
  ...smallNumbers.keys(),
  ...spokenFigures.keys(),
  ...partWords.keys(),
  ..."a an point minus negative hundred couple".split(" "),
]);

/** Whether a word can begin a number: most words cannot, and need no closer look. */
export function mayBeginNumber(token: Token | undefined): boolean {
  return token !== undefined && (token.figure || beginnings.has(token.word));
}

/** The number that begins at a place, in figures or in words, or null. Reads no further than `most`. */
export function numberAt(tokens: readonly Token[], place: number, most: number): Spoken | null {
  const limit = Math.min(most, tokens.length);
  const token = tokens[place];
  if (!token || place >= limit || !mayBeginNumber(token)) return null;
  const sign = token.word === "minus" || token.word === "negative";
  const start = sign ? place + 1 : place;
  const read = unsignedAt(tokens, start, limit);
  if (!read || (!sign && !token.minus)) return read;
  return { ...read, from: place, value: -read.value, typed: `-${read.typed}` };
}

function unsignedAt(tokens: readonly Token[], place: number, limit: number): Spoken | null {
  if (place >= limit) return null;
  const base =
    decimalAt(tokens, place, limit) ??
    fractionAt(tokens, place, limit) ??
    wholeAt(tokens, place, limit) ??
    coupleAt(tokens, place, limit);
  if (!base) return null;
  return base.form === "whole" ? (mixedAt(tokens, base, limit) ?? roughly(tokens, base, limit)) : base;
}

/** "0.625", ".015", "two point two", "point oh one five", "2 point 5". */
function decimalAt(tokens: readonly Token[], place: number, limit: number): Spoken | null {
  const token = tokens[place] as Token;
  if (token.figure && token.word.includes(".") && !token.word.includes("/")) {
    const typed = token.word.replaceAll(",", "");
    return made(Number(typed), typed.startsWith(".") ? `0${typed}` : typed, "decimal", place, place + 1);
  }
  const before = token.word === "point" ? null : pointBefore(tokens, place, limit);
  const point = before?.to ?? place;
  if (point >= limit || tokens[point]?.word !== "point" || tokens[point]?.stop !== "") return null;
  const { text, to } = figuresAfter(tokens, point + 1, limit);
  if (text === "") return null;
  const typed = `${before?.typed ?? "0"}.${text}`;
  return made(Number(typed), typed, "decimal", place, to);
}

/** What stands before "point". */
function pointBefore(tokens: readonly Token[], place: number, limit: number): Spoken | null {
  const token = tokens[place] as Token;
  const at = noughts.has(token.word)
    ? made(0, "0", "whole", place, place + 1)
    : wholeAt(tokens, place, limit);
  return at && tokens[at.to]?.word === "point" && tokens[at.to - 1]?.stop === "" ? at : null;
}

function figuresAfter(tokens: readonly Token[], place: number, limit: number): { text: string; to: number } {
  let text = "";
  let to = place;
  while (to < limit && text.length < 6 && (to === place || tokens[to - 1]?.stop === "")) {
    const token = tokens[to] as Token;
    const figure = /^\d{1,4}$/.test(token.word) ? token.word : spokenFigures.get(token.word);
    if (figure === undefined && text === "") {
      const small = smallAt(tokens, to, limit);
      return small && small.value >= 10 ? { text: `${small.value}`, to: small.to } : { text, to };
    }
    if (figure === undefined || (text !== "" && isPronoun(tokens, to))) break;
    text += figure;
    to++;
    if (token.figure) break;
  }
  return { text, to };
}

/** "one way", "one end": no figure. */
function isPronoun(tokens: readonly Token[], place: number): boolean {
  return (
    tokens[place]?.word === "one" &&
    ["way", "end", "side", "of", "more", "place"].includes(tokens[place + 1]?.word ?? "")
  );
}

/** "3/8", "three eighths", "a sixteenth", "half", "three thirty seconds", "5 16ths". */
function fractionAt(tokens: readonly Token[], place: number, limit: number): Spoken | null {
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
  return to < limit && behindParts.has(tokens[to]?.word ?? "");
}

function fromWritten(text: string, from: number, to: number): Spoken | null {
  const [n = 0, d = 0] = text.split("/").map(Number);
  return d > 0 && d <= 1000 && n > 0 && n < 1000 ? fraction(n, d, from, to) : null;
}

function fraction(n: number, d: number, from: number, to: number): Spoken {
  return { value: n / d, typed: `${n}/${d}`, form: "fraction", over: d, from, to };
}

/** A whole number: "18", "1,350", "a hundred and sixty", "sixteen hundred", "seven thousand two hundred". */
function wholeAt(tokens: readonly Token[], place: number, limit: number): Spoken | null {
  const token = tokens[place] as Token;
  if (token.figure) {
    if (!/^(?:\d{1,3}(?:,\d{3})+|\d{1,12})$/.test(token.word)) return null;
    const value = Number(token.word.replaceAll(",", ""));
    return thousands(tokens, made(value, `${value}`, "whole", place, place + 1), limit);
  }
  const figures = figureByFigure(tokens, place, limit);
  if (figures) return figures;
  const lead = token.word === "a" ? null : smallAt(tokens, place, limit);
  const round = token.word === "hundred";
  if (!lead && token.word !== "a" && !round) return null;
  const base = lead ?? made(1, "1", "whole", place, round ? place : place + 1);
  const hundred = hundreds(tokens, base, limit);
  const whole = round ? (hundred ?? base) : thousands(tokens, hundred ?? base, limit);
  if (!lead && whole.to === place + 1) return null;
  return hundred || whole !== base ? whole : withPair(tokens, whole, limit);
}

/** "four six five": three figures or more, one by one. */
function figureByFigure(tokens: readonly Token[], place: number, limit: number): Spoken | null {
  let typed = "";
  let to = place;
  while (to < limit && typed.length < 6 && (to === place || tokens[to - 1]?.stop === "")) {
    const figure = spokenFigures.get(tokens[to]?.word ?? "");
    if (figure === undefined || (typed === "" && figure === "0")) break;
    typed += figure;
    to++;
  }
  return typed.length >= 3 ? made(Number(typed), typed, "whole", place, to) : null;
}

function smallAt(tokens: readonly Token[], place: number, limit: number): Spoken | null {
  const first = smallNumbers.get(tokens[place]?.word ?? "");
  if (first === undefined || place >= limit) return null;
  const next = tokens[place + 1];
  const unit = next && place + 1 < limit ? smallNumbers.get(next.word) : undefined;
  const joins = first >= 20 && unit !== undefined && unit > 0 && unit < 10 && tokens[place]?.stop === "";
  const value = joins ? first + unit : first;
  return made(value, `${value}`, "whole", place, place + (joins ? 2 : 1));
}

function hundreds(tokens: readonly Token[], base: Spoken, limit: number): Spoken | null {
  if (base.to >= limit || tokens[base.to]?.word !== "hundred" || base.value >= 100) return null;
  const and = tokens[base.to + 1]?.word === "and" ? 1 : 0;
  const rest = tokens[base.to]?.stop === "" ? smallAt(tokens, base.to + 1 + and, limit) : null;
  const value = base.value * 100 + (rest?.value ?? 0);
  return made(value, `${value}`, "whole", base.from, rest?.to ?? base.to + 1);
}

function thousands(tokens: readonly Token[], base: Spoken, limit: number): Spoken {
  if (base.to >= limit || tokens[base.to]?.word !== "thousand" || base.value >= 1000) return base;
  const and = tokens[base.to + 1]?.word === "and" ? 1 : 0;
  const open = tokens[base.to]?.stop === "";
  const small = open ? smallAt(tokens, base.to + 1 + and, limit) : null;
  const rest = small ? (hundreds(tokens, small, limit) ?? (and === 1 ? small : null)) : null;
  const value = base.value * 1000 + (rest?.value ?? 0);
  return made(value, `${value}`, "whole", base.from, rest?.to ?? base.to + 1);
}

/** "a new one eighteen teeth": behind these "one" counts nothing. */
const afterAdjective = new Set(
  "new old other this that the which right wrong big small first last each every bigger smaller good bad".split(
    " ",
  ),
);

/** "four seventy", "thirty four fifty", "one oh five", "nineteen forty seven": two numbers said as one. */
function withPair(tokens: readonly Token[], base: Spoken, limit: number): Spoken {
  if (afterAdjective.has(tokens[base.from - 1]?.word ?? "") && base.value === 1) return base;
  const leads = base.value <= 20 || base.value % 10 !== 0;
  if (base.value < 1 || !leads || tokens[base.to - 1]?.stop !== "" || base.to >= limit) return base;
  const oh = tokens[base.to]?.word === "oh" || tokens[base.to]?.word === "o";
  const rest = smallAt(tokens, base.to + (oh ? 1 : 0), limit);
  if (!rest || (oh ? rest.value > 9 : rest.value < 10)) return base;
  const paired = { value: base.value * 100 + rest.value, to: rest.to };
  return { ...base, paired, ...(base.value >= 17 && paired.value < 2100 ? { year: true as const } : {}) };
}

/** "one and three eighths", "1-1/8", "2 and a quarter", "9½". */
function mixedAt(tokens: readonly Token[], whole: Spoken, limit: number): Spoken | null {
  const last = tokens[whole.to - 1] as Token;
  const next = tokens[whole.to];
  if (!next || whole.to >= limit || last.stop !== "") return null;
  const joined = next.word === "and" && next.stop === "" ? whole.to + 1 : null;
  const written = last.figure && next.figure && (next.word.includes("/") || glyphs.has(next.word));
  const part =
    joined !== null
      ? fractionAt(tokens, joined, limit)
      : written
        ? fractionAt(tokens, whole.to, limit)
        : null;
  if (!part || part.value >= 1 || (joined !== null && part.lone && part.over !== 2)) return null;
  return {
    value: whole.value + part.value,
    typed: `${whole.typed}-${part.typed}`,
    form: "mixed",
    ...(part.over === undefined ? {} : { over: part.over }),
    from: whole.from,
    to: part.to,
  };
}

function roughly(tokens: readonly Token[], whole: Spoken, limit: number): Spoken {
  const [a, b, c] = [0, 1, 2].map((i) => (whole.to + i < limit ? tokens[whole.to + i]?.word : undefined));
  if (a === "odd") return { ...whole, to: whole.to + 1, roughly: true };
  if (a === "and" && b === "a" && c === "bit") return { ...whole, to: whole.to + 3, roughly: true };
  return whole;
}

/** "a couple of thou". */
function coupleAt(tokens: readonly Token[], place: number, limit: number): Spoken | null {
  const start = tokens[place]?.word === "a" ? place + 1 : place;
  if (tokens[start]?.word !== "couple" || start + 1 >= limit) return null;
  const to = tokens[start + 1]?.word === "of" ? start + 2 : start + 1;
  return { ...made(2, "2", "whole", place, to), roughly: true };
}

function made(value: number, typed: string, form: Spoken["form"], from: number, to: number): Spoken {
  return { value, typed, form, from, to };
}
