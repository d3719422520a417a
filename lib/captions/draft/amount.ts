import { spokenFigures } from "../lexicon/number-words.ts";
import { electricalWords } from "../lexicon/unit-contexts.ts";
import type { English } from "./english.ts";
import { mayBeginNumber, numberAt, type Spoken } from "./number.ts";
import { dimensionOf } from "./si.ts";
import type { Token } from "./stream.ts";
import { threadAt } from "./thread.ts";
import { type SaidUnit, unitAt } from "./unit.ts";
import { chooseUnit } from "./unit-choice.ts";

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
function measuresAt(memory: Memory, place: number, limit: number): Amount[] {
  const one = numberHere(memory, place, limit);
  if (!one) return [];
  const amount = withUnit(memory, one, limit);
  const ranged = rangeOf(memory, amount, limit);
  if (ranged) return [ranged];
  return productOf(memory, amount, limit) ?? [amount];
}

/** A number; or one that is meant by an article or a word heard wrongly: "an inch", "inch and a half", "for thou". */
function numberHere(memory: Memory, place: number, limit: number): Spoken | null {
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

function bare(number: Spoken): Amount {
  const { value, typed, form, over, lone, year, paired, roughly, from, to } = number;
  return {
    from,
    to,
    value,
    typed,
    form,
    ...(over === undefined ? {} : { over }),
    ...(lone ? { lone } : {}),
    ...(year ? { year } : {}),
    ...(paired ? { paired } : {}),
    ...(roughly ? { roughly } : {}),
    unit: null,
    dimension: null,
    unitFrom: "none",
  };
}

/** Takes the unit behind a number, and what belongs to the number behind the unit: "an inch and a quarter". */
function withUnit(memory: Memory, number: Spoken, limit: number): Amount {
  const { tokens } = memory;
  const amount = bare(number);
  const long = number.paired && codeAt(memory, number, number.paired.to, limit);
  // "two twelve inch sides" are two.
  if (long && number.paired && !["[in_i]", "[ft_i]", "{tooth}"].includes(long.code)) {
    const { value } = number.paired;
    return settle({ ...amount, value, typed: `${value}` }, long);
  }
  if (number.typed === "1" && number.to > number.from && isUnitOrTwo(memory, number, limit)) {
    const unit = codeAt(memory, number, number.to, limit);
    if (unit) return { ...settle(amount, unit), high: 2, typedHigh: "2", to: unit.to + 2 };
  }
  const unit = codeAt(memory, number, number.to, limit) ?? partOfUnit(memory, number, limit);
  if (!unit) return amount;
  const settled = withFigure(tokens, settle(amount, unit), limit);
  return withSmaller(memory, perTime(tokens, withPart(tokens, settled, limit), limit), limit);
}

/** "two meg two", "four k seven": 2.2 and 4.7. */
function withFigure(tokens: readonly Token[], amount: Amount, limit: number): Amount {
  if ((amount.unit !== "kOhm" && amount.unit !== "MOhm") || amount.form !== "whole" || amount.to >= limit)
    return amount;
  const token = tokens[amount.to];
  const figure = /^\d$/.test(token?.word ?? "") ? token?.word : spokenFigures.get(token?.word ?? "");
  if (figure === undefined || tokens[amount.to - 1]?.stop !== "" || unitAt(tokens, amount.to + 1, limit))
    return amount;
  const typed = `${amount.typed}.${figure}`;
  return { ...amount, typed, value: Number(typed), form: "decimal", to: amount.to + 1 };
}

const flows = new Set(["L", "mL", "[gal_us]", "[gal_br]"]);

/** "forty seconds a day"; "four gallons a minute". */
function perTime(tokens: readonly Token[], amount: Amount, limit: number): Amount {
  const [a, b] = [tokens[amount.to]?.word, tokens[amount.to + 1]?.word];
  if (flows.has(amount.unit ?? "") && (a === "a" || a === "per") && b === "minute" && amount.to + 1 < limit)
    return settle(amount, { code: `${amount.unit}/min`, to: amount.to + 2 });
  if (amount.dimension !== "time" || (a !== "a" && a !== "per") || amount.to + 1 >= limit) return amount;
  return b === "day" || b === "week" ? { ...amount, per: b, to: amount.to + 2 } : amount;
}

interface Coded {
  code: string;
  to: number;
}

function settle(amount: Amount, { code, to }: Coded): Amount {
  return { ...amount, unit: code, dimension: dimensionOf(code), to, unitFrom: "said" };
}

function codeAt(memory: Memory, number: Spoken, place: number, limit: number): Coded | null {
  const unit = unitAt(memory.tokens, place, limit, number.to === number.from);
  // "half an hour" is no rate, "3/8 bar stock" no pressure.
  if (!unit || (number.form === "fraction" && (unit.name === "each" || unit.name === "bar"))) return null;
  return coded(memory, number, unit);
}

function coded(memory: Memory, number: Spoken, unit: SaidUnit): Coded | null {
  const { last, tokens } = memory;
  const near = last !== null && number.from - last.to < 25;
  const code = chooseUnit(unit, {
    tokens,
    english: memory.english,
    electrical: memory.electrical,
    lastDimension: near ? last.dimension : null,
    lastLength: memory.lastLength,
    value: number.value,
    from: number.from,
  });
  return code === null ? null : { code, to: unit.to };
}

/** "a sixteenth of an inch", "half a mil", "a third of a pint". */
function partOfUnit(memory: Memory, number: Spoken, limit: number): Coded | null {
  if (number.form !== "fraction" && !(number.form === "decimal" && number.value < 1)) return null;
  const { tokens } = memory;
  let place = number.to;
  if (tokens[place]?.word === "of") place++;
  if (!["a", "an", "the"].includes(tokens[place]?.word ?? "") || place + 1 >= limit) return null;
  const unit = unitAt(tokens, place + 1, limit);
  return unit ? coded(memory, number, unit) : null;
}

/** "a thou or two". */
function isUnitOrTwo({ tokens }: Memory, number: Spoken, limit: number): boolean {
  const unit = unitAt(tokens, number.to, limit);
  if (!unit || unit.to + 2 > limit) return false;
  return tokens[unit.to]?.word === "or" && ["two", "2", "so"].includes(tokens[unit.to + 1]?.word ?? "")
    ? tokens[unit.to + 1]?.word !== "so"
    : false;
}

/** "an inch and a quarter", "a turn and a half", "two inches and three eighths". */
function withPart(tokens: readonly Token[], amount: Amount, limit: number): Amount {
  if (amount.form !== "whole" || tokens[amount.to]?.word !== "and" || tokens[amount.to - 1]?.stop !== "")
    return amount;
  const part = numberAt(tokens, amount.to + 1, limit);
  if (part?.form !== "fraction" || part.lone || part.value >= 1 || tokens[part.from]?.word === "one")
    return amount;
  const again =
    tokens[part.to]?.word === "of" && ["a", "an", "the"].includes(tokens[part.to + 1]?.word ?? "");
  if (unitAt(tokens, part.to, limit) || again) return amount;
  return {
    ...amount,
    value: amount.value + part.value,
    typed: `${amount.typed}-${part.typed}`,
    form: "mixed",
    ...(part.over === undefined ? {} : { over: part.over }),
    to: part.to,
  };
}

const smaller: Record<string, [string, number]> = {
  "[ft_i]": ["[in_i]", 12],
  "[in_i]": ["[mil_i]", 1000],
  "[lb_av]": ["[oz_av]", 16],
  h: ["min", 60],
  min: ["s", 60],
};

/** "five foot three inches", "six pounds four ounces", "three inch and nine thou". */
function withSmaller(memory: Memory, amount: Amount, limit: number): Amount {
  const rule = smaller[amount.unit ?? ""];
  const { tokens } = memory;
  if (!rule || amount.form !== "whole" || tokens[amount.to - 1]?.stop !== "") return amount;
  const number = numberAt(tokens, tokens[amount.to]?.word === "and" ? amount.to + 1 : amount.to, limit);
  const unit = number && unitAt(tokens, number.to, limit);
  const code = number && unit ? coded(memory, number, unit) : null;
  if (!number) return amount;
  if (
    !unit &&
    amount.unit === "[ft_i]" &&
    number.value < 12 &&
    number.form !== "fraction" &&
    endsHere(tokens, number.to, limit)
  ) {
    const value = amount.value * 12 + number.value;
    return {
      ...settle({ ...amount, value, typed: `${value}` }, { code: "[in_i]", to: number.to }),
      form: number.form,
    };
  }
  if (code?.code !== rule[0]) return amount;
  if (amount.unit === "[in_i]") {
    const inches = amount.value + number.value / 1000;
    const typed = inches.toFixed(3);
    return { ...amount, value: Number(typed), typed, form: "decimal", to: code.to };
  }
  const value = amount.value * rule[1] + number.value;
  return { ...settle({ ...amount, value, typed: `${value}` }, code), form: number.form };
}

/** Whether nothing follows that the number could count: "ten foot six each". */
function endsHere(tokens: readonly Token[], to: number, limit: number): boolean {
  return (
    to >= limit ||
    tokens[to - 1]?.stop !== "" ||
    [
      "each",
      "long",
      "and",
      "high",
      "wide",
      "of",
      "overall",
      "round",
      "around",
      "tall",
      "deep",
      "across",
      "from",
      "between",
    ].includes(tokens[to]?.word ?? "")
  );
}

/** "two to four thou", "six or seven pounds", "15, 20 thou", "between 40 and 60 grams", "10-12". */
function rangeOf(memory: Memory, low: Amount, limit: number): Amount | null {
  const { tokens } = memory;
  const joiner = tokens[low.to];
  if (!joiner || low.to >= limit) return null;
  const between = ["between", "from"].includes(tokens[low.from - 1]?.word ?? "");
  const comma = tokens[low.to - 1]?.stop === ",";
  const word = joinerOf(joiner, between);
  if (word === null && !comma) return null;
  if (word !== null && tokens[low.to - 1]?.stop !== "" && word !== "or") return null;
  const number = numberHere(memory, word === null || word === "-" ? low.to : low.to + 1, limit);
  if (!number || isOneOf(number)) return null;
  const high = withUnit(memory, number, limit);
  if (high.value <= low.value) return null;
  if (word === "to" && isThousands(tokens, number) && low.unit === null && low.value < 100)
    return { ...rangeBetween(low, high), value: low.value * 1000, typed: `${low.value * 1000}` };
  const widest = word === "or" || comma ? 2.1 : 12;
  if (high.value > low.value * widest && low.value > 0) return null;
  if (comma && word === null && (high.unit === null || low.unit !== null || !sameForm(low, high)))
    return null;
  if (low.unit !== null && high.unit !== null && low.unit !== high.unit) return null;
  return rangeBetween(low, high);
}

/** "5 to 6 thousand": both are thousands. */
function isThousands(tokens: readonly Token[], { to, value }: Spoken): boolean {
  return tokens[to - 1]?.word === "thousand" && value < 100_000;
}

function rangeBetween(low: Amount, high: Amount): Amount {
  const unit = high.unit ?? low.unit;
  return {
    ...low,
    high: high.value,
    typedHigh: high.typed,
    to: high.to,
    unit,
    dimension: unit === null ? null : dimensionOf(unit),
    unitFrom: unit === null ? "none" : "said",
  };
}

function joinerOf(token: Token, between: boolean): "to" | "or" | "and" | "-" | null {
  if (token.word === "to" || token.word === "or") return token.word;
  if (token.word === "and" && between) return "and";
  return token.joint === "-" && token.figure ? "-" : null;
}

const isOneOf = (number: Spoken) => number.year === true;
const sameForm = (a: Amount, b: Amount) => (a.form === "whole") === (b.form === "whole");

/** "22 by 10 mil", "15 millimetres by 35": two measures with one unit. "3/16 by an inch and an eighth" gives the second its own. */
function productOf(memory: Memory, first: Amount, limit: number): Amount[] | null {
  const { tokens } = memory;
  const by = tokens[first.to];
  if (!by || first.to + 1 >= limit || !["by", "x", "×"].includes(by.word)) return null;
  const [second, ...more] = measuresAt(memory, first.to + 1, limit);
  if (!second || (first.unit !== null && first.dimension !== "length")) return null;
  if (first.unit !== null) {
    if (second.unit !== null) return [first, second, ...more];
    return [first, { ...second, unit: first.unit, dimension: "length", unitFrom: "shared" }, ...more];
  }
  const alike = second.unit !== "m" && second.unit !== "[ft_i]";
  if (second.unit !== null && second.dimension === "length" && alike) {
    const shared: Amount = { ...first, unit: second.unit, dimension: "length", unitFrom: "shared" };
    return [shared, second, ...more];
  }
  return [first, second, ...more];
}
