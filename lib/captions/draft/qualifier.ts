import { before, behind } from "../lexicon/qualifiers.ts";
import type { Amount } from "./amount.ts";
import { numberAt } from "./number.ts";
import { PhraseBook } from "./phrase.ts";
import { dimensionOf } from "./si.ts";
import type { Token } from "./stream.ts";
import { unitAt } from "./unit.ts";

/** Whether a value is meant to the letter, roughly, or as a limit or a range. */
export type HowMeant = "exact" | "about" | "min" | "max" | "range";

/** An amount with the words that say how it is meant. */
export interface Qualified {
  qualifier: HowMeant;
  /** A range or a limit that is itself called "about". */
  approx: boolean;
  /** Plus or minus, in the unit of the amount. */
  tolerance?: { value: number; typed: string };
  /** The words of the amount with those of its qualifier, half-open in tokens. */
  from: number;
  to: number;
}

type Entry = "about" | "max" | "min";
const entries = (lists: Record<Entry, readonly string[]>) =>
  (["about", "max", "min"] as const).flatMap((name) => lists[name].map((text) => [text, name] as const));
const lead = new PhraseBook<Entry>(entries(before));
const tail = new PhraseBook<Entry>(entries(behind));

/** Reads the words around an amount, within its sentence. */
export function qualify(tokens: readonly Token[], amount: Amount, from: number, limit: number): Qualified {
  const found: Entry[] = amount.roughly ? ["about"] : [];
  let start = amount.from;
  for (let turn = 0; turn < 2; turn++) {
    const one = endingAt(tokens, start, from);
    if (!one) break;
    found.push(one.entry);
    start = one.from;
  }
  const plus = toleranceAt(tokens, amount, limit);
  let end = plus?.to ?? amount.to;
  const after = plus ? null : tail.at(tokens, end, limit);
  if (after && !isComparison(tokens, after.to, limit)) {
    found.push(after.entry);
    end = after.to;
  }
  const hard = found.find((entry) => entry !== "about");
  const about = found.includes("about");
  const qualifier = amount.high !== undefined ? "range" : (hard ?? (about ? "about" : "exact"));
  return {
    qualifier,
    approx: about && qualifier !== "about",
    ...(plus ? { tolerance: { value: plus.value, typed: plus.typed } } : {}),
    from: start,
    to: end,
  };
}

/** "six max", "three at the outside": such words stand behind a value, whether its unit is said or not. */
export function isLimitBehind(tokens: readonly Token[], place: number, limit: number): boolean {
  const entry = tail.at(tokens, place, limit)?.entry;
  return entry === "max" || entry === "min";
}

/** Words that may stand between commas: "it's, say, 12 thou". */
const asides = new Set("say i call maybe perhaps probably like roughly".split(" "));

/** The longest phrase that ends where the number begins. */
function endingAt(tokens: readonly Token[], end: number, from: number) {
  for (let place = Math.max(from, end - 6); place < end; place++) {
    const one = lead.at(tokens, place, end);
    const stop = tokens[end - 1]?.stop;
    if (one?.to === end && (stop === "" || (stop === "," && asides.has(tokens[place]?.word ?? ""))))
      return one;
  }
  return null;
}

/** "or more than that": no qualifier of the amount before it. */
function isComparison(tokens: readonly Token[], place: number, limit: number): boolean {
  return place < limit && tokens[place]?.word === "than";
}

const around = [
  ["plus", "or", "minus"],
  ["give", "or", "take"],
  ["plus", "minus"],
  ["either", "way"],
];

/** "plus or minus two thou", "give or take a 32nd", in the unit of the amount or its own. */
export function toleranceAt(tokens: readonly Token[], amount: Amount, limit: number) {
  const most = Math.min(tokens.length, limit + 8);
  for (let place = amount.to; place < Math.min(most, amount.to + 8); place++) {
    const words = around.find((list) => list.every((word, i) => tokens[place + i]?.word === word));
    if (!words) continue;
    const number = numberAt(tokens, place + words.length, most);
    if (!number || amount.unit === null) return null;
    const unit = unitAt(tokens, number.to, most);
    const same = !unit || unit.name === amount.unit || dimensionOf(unit.name) !== amount.dimension;
    if (!same) return null;
    return { value: number.value, typed: number.typed, to: number.to };
  }
  return null;
}
