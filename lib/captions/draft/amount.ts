import { electricalWords } from "../lexicon/unit-contexts.ts";
import { productOf, rangeOf } from "./amount-range.ts";
import { withUnit } from "./amount-unit.ts";
import type { English } from "./english.ts";
import { mayBeginNumber, numberAt } from "./number.ts";
import type { Spoken } from "./spoken.ts";
import type { Token } from "./stream.ts";
import { threadAt } from "./thread.ts";
import { unitAt } from "./unit.ts";

/** An amount as it was said, before anybody asks whether it is a measurement. */
export interface Amount {
  /** Number, unit and all, half-open in tokens. */
  from: number;
  to: number;
  value: number;
  /** The number as it is typed: "1-3/8". */
  typed: string;
  high?: number;
  typedHigh?: string;
  form: Spoken["form"];
  over?: number;
  lone?: true;
  year?: true;
  paired?: { value: number; to: number };
  roughly?: true;
  /** UCUM code; null for a bare number. */
  unit: string | null;
  dimension: string | null;
  /** How the unit came about: said, shared with the number behind it, from what was said before, or by custom. */
  unitFrom: "said" | "shared" | "carried" | "custom" | "none";
  /** Threads: "1/4 BSF". */
  designation?: string;
  /** "forty seconds a day": what a clock gains or loses in that time. */
  per?: "day" | "week";
}

/** What the scan remembers from one amount to the next. */
export interface Memory {
  tokens: readonly Token[];
  english: English;
  electrical: boolean;
  last: Amount | null;
  lastLength: string | null;
}

/** A memory that has heard nothing yet. */
export function newMemory(tokens: readonly Token[], english: English): Memory {
  const electrical = tokens.filter(({ word }) => electricalWords.has(word)).length >= 3;
  return { tokens, english, electrical, last: null, lastLength: null };
}

/** Keeps what later amounts may need. */
export function remember(memory: Memory, amount: Amount): void {
  memory.last = amount;
  if (amount.dimension === "length" && amount.designation === undefined && amount.unit !== "[ft_i]")
    memory.lastLength = amount.unit;
}

/** Words that begin an amount and are no number: "inch and a half", "for thou", "M6". */
const otherBeginnings = /^(?:inch|quart|pint|gallon|turn|thou|hour|for|to|too|ate|won|em|m[\dx.]*)$/;

/** All amounts that begin at a place, a thread and its length being two; none where nothing is counted. */
export function amountsAt(memory: Memory, place: number, limit: number): Amount[] {
  const token = memory.tokens[place];
  if (!mayBeginNumber(token) && !otherBeginnings.test(token?.word ?? "")) return [];
  const thread = threadAt(memory, place, limit);
  if (thread.length > 0) return thread;
  const ratio = ratioAt(memory.tokens, place, limit);
  if (ratio) return [ratio];
  return measuresAt(memory, place, limit);
}

/** "fifty to one", "4 to 1", "50:1". */
function ratioAt(tokens: readonly Token[], place: number, limit: number): Amount | null {
  const written = /^(\d{1,4}):1$/.exec(tokens[place]?.word ?? "")?.[1];
  if (written !== undefined) return ratio(place, place + 1, Number(written), written);
  const number = numberAt(tokens, place, limit);
  if (!number || number.value <= 1 || tokens[number.to - 1]?.stop !== "") return null;
  const [to, one] = [tokens[number.to], tokens[number.to + 1]];
  if (to?.word !== "to" || number.to + 1 >= limit || (one?.word !== "one" && one?.word !== "1")) return null;
  const behind = one.stop === "" ? tokens[number.to + 2]?.word : "";
  if (behind === "and" || behind === "hundred" || behind === "point" || behind === "thou") return null;
  return ratio(place, number.to + 2, number.value, number.typed);
}

function ratio(from: number, to: number, value: number, typed: string): Amount {
  return { from, to, value, typed, form: "whole", unit: "1", dimension: "ratio", unitFrom: "said" };
}

/** A number with its unit; or two numbers that share one: "22 by 10 mil", "15, 20 thou". */
export function measuresAt(memory: Memory, place: number, limit: number): Amount[] {
  const one = numberHere(memory, place, limit);
  if (!one) return [];
  const amount = withUnit(memory, one, limit);
  const ranged = rangeOf(memory, amount, limit);
  if (ranged) return [ranged];
  return productOf(memory, amount, limit) ?? [amount];
}

/** A number; or one that is meant by an article or a word heard wrongly: "an inch", "inch and a half", "for thou". */
export function numberHere(memory: Memory, place: number, limit: number): Spoken | null {
  const { tokens } = memory;
  const homophone = heardAs.get(tokens[place]?.word ?? "");
  if (homophone !== undefined && isThou(tokens[place + 1]?.word) && tokens[place]?.stop === "")
    return spoken(homophone, place, place + 1);
  const number = numberAt(tokens, place, limit);
  if (number) return number;
  const word = tokens[place]?.word;
  const isRate = tokens[place - 1]?.stop === "" && unitAt(tokens, place - 1, place, true) !== null;
  if ((word === "a" || word === "an") && articleUnits.has(tokens[place + 1]?.word ?? "") && !isRate)
    return { ...spoken(1, place, place + 1), form: "whole" };
  const half = tokens[place + 2]?.word === "and" && tokens[place + 3]?.word === "a";
  if (word === "a" && half && weighed.has(tokens[place + 1]?.word ?? "") && !isRate)
    return { ...spoken(1, place, place + 1), form: "whole" };
  if (halvedUnits.has(word ?? "") && tokens[place + 1]?.word === "and" && !countedAlready(memory, place)) {
    const part = numberAt(tokens, place + 2, limit);
    if (part?.form === "fraction") return { ...spoken(1, place, place) };
  }
  return null;
}

/** "inch and a half", "quart and a half": one is meant. */
const weighed = new Set("pound ounce foot gram kilo".split(" "));

const halvedUnits = new Set("inch quart pint gallon turn thou hour".split(" "));

function countedAlready({ tokens }: Memory, place: number): boolean {
  return mayBeginNumber(tokens[place - 1]) && tokens[place - 1]?.stop === "";
}

const heardAs: ReadonlyMap<string, number> = new Map(
  Object.entries({ for: 4, to: 2, too: 2, ate: 8, won: 1 }),
);

const isThou = (word: string | undefined) => word === "thou" || word === "though" || word === "thousandths";

const articleUnits = new Set(
  "inch thou thousandth millimetre millimeter mil mm centimetre centimeter pint quart gallon litre liter turn hour minute teaspoon tablespoon micron newton volt amp ohm degree".split(
    " ",
  ),
);

function spoken(value: number, from: number, to: number): Spoken {
  return { value, typed: `${value}`, form: "whole", from, to };
}
