import { type Amount, type Memory, measuresAt, numberHere } from "./amount.ts";
import { withUnit } from "./amount-unit.ts";
import { dimensionOf } from "./si.ts";
import type { Spoken } from "./spoken.ts";
import type { Token } from "./stream.ts";

/** "two to four thou", "six or seven pounds", "15, 20 thou", "between 40 and 60 grams", "10-12". */
export function rangeOf(memory: Memory, low: Amount, limit: number): Amount | null {
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
export function productOf(memory: Memory, first: Amount, limit: number): Amount[] | null {
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
