import { smallNumbers, spokenFigures } from "../lexicon/number-words.ts";
import { made, type Spoken } from "./spoken.ts";
import type { Token } from "./stream.ts";

/** A whole number: "18", "1,350", "a hundred and sixty", "sixteen hundred", "seven thousand two hundred". */
export function wholeAt(tokens: readonly Token[], place: number, limit: number): Spoken | null {
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

/** A number below a hundred, in words: "twenty seven". */
export function smallAt(tokens: readonly Token[], place: number, limit: number): Spoken | null {
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
