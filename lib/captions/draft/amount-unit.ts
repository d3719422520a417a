import { spokenFigures } from "../lexicon/number-words.ts";
import type { Amount, Memory } from "./amount.ts";
import { numberAt } from "./number.ts";
import { dimensionOf } from "./si.ts";
import type { Spoken } from "./spoken.ts";
import type { Token } from "./stream.ts";
import { type SaidUnit, unitAt } from "./unit.ts";
import { chooseUnit } from "./unit-choice.ts";

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
export function withUnit(memory: Memory, number: Spoken, limit: number): Amount {
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
