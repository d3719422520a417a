import { noughts, partWords, smallNumbers, spokenFigures } from "../lexicon/number-words.ts";
import { fractionAt, glyphs } from "./fraction.ts";
import { made, type Spoken } from "./spoken.ts";
import type { Token } from "./stream.ts";
import { smallAt, wholeAt } from "./whole-number.ts";

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

/** "forty odd", "two and a bit". */
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
