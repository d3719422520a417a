import { measureAt } from "./measure.ts";
import type { Part } from "./part.ts";
import { withUnit } from "./product.ts";
import { negate, rational } from "./rational.ts";
import { at, isAt } from "./text.ts";
import type { Quantity, ReadOptions } from "./types.ts";
import { writtenValue } from "./value.ts";

const sumAhead = /[\d.,/ \u00a0½¼¾⅛⅜⅝⅞-]{1,20}[a-z"']{0,5}(?:\s[+-]\s|\+)/iy;
const plus = /\s([+-])\s(?=[\d.½¼¾⅛⅜⅝⅞])|([+])(?=\d)/y;
const equals = /\s?=\s?/y;
const mostTerms = 12;
const longestTerm = 60;

/** "0.75 + 0.50 + 0.25 = 1.75 in": terms, and the total where it is written; or null. */
export function sumAt(text: string, place: number, options: ReadOptions): Part | null {
  if (!isAt(sumAhead, text, place)) return null;
  const terms: Quantity[] = [];
  let end = place;
  let sign: string | undefined = "+";
  let subtracts = false;
  while (sign && terms.length < mostTerms) {
    const term = termAt(text, end, options);
    if (!term) return null;
    subtracts ||= sign === "-";
    terms.push(sign === "-" ? negative(term.quantity) : term.quantity);
    end = term.end;
    const next = at(plus, text, end);
    sign = next ? (next.groups[1] ?? next.groups[2]) : undefined;
    end = next?.end ?? end;
  }
  const result = at(equals, text, end);
  const total = result && measureAt(text, result.end, options);
  const [sum] = total?.quantities ?? [];
  if (!alike([...terms, ...(sum ? [sum] : [])])) return null;
  if (terms.length < 2 || (!sum && subtracts)) return null;
  return part(terms, sum, place, total?.end ?? end);
}

/** Only what has one dimension is added: "25 N·m + 90°" are two things. */
function alike(terms: Quantity[]): boolean {
  return new Set(terms.map((one) => one.dimension).filter((dimension) => dimension !== "number")).size <= 1;
}

/** A term stops before the next sign, so each is read from its own stretch of the text. */
function termAt(
  text: string,
  place: number,
  options: ReadOptions,
): { quantity: Quantity; end: number } | null {
  const ahead = text.slice(place, place + longestTerm);
  const stop = ahead.search(/\s[+-]\s|\+(?=\d)|\s?=/);
  const found = measureAt(text.slice(0, stop < 0 ? text.length : place + stop), place, options);
  const [quantity] = found?.quantities ?? [];
  return found && quantity && found.quantities.length === 1 && !quantity.high
    ? { quantity, end: found.end }
    : null;
}

function negative(term: Quantity): Quantity {
  const value = writtenValue(negate(rational(term.value.exact)), rational(term.value.step), term.value.style);
  return { ...term, value, si: 0 - term.si };
}

function part(terms: Quantity[], total: Quantity | undefined, start: number, end: number): Part {
  const model = [total, ...terms.toReversed()].find((one) => one && one.ucum !== "1");
  const filled = (one: Quantity) => (one.ucum === "1" && model ? withUnit(one, model) : one);
  const reading = {
    kind: "sum" as const,
    quantities: terms.map(filled),
    ...(total ? { total: filled(total) } : {}),
  };
  return { reading, start, end };
}
