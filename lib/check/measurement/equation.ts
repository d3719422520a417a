import { type Quantity, type Reading, unitByCode } from "#lib/quantity/index.ts";
import { near, plain, scaleOf } from "./figures.ts";
import { type Decimal, readOnce } from "./sight.ts";

/** What an expression comes to beside what was written as its result. */
export interface Misreckoned {
  said: string;
  should: string;
}

/** What stands between terms and their result, in signs or in words. */
const makes =
  /\s*=\s*|,?\s+(?:(?:which |that )?(?:makes?|making|comes? to|coming to|gives?|giving|totals?|totalling|adds? up to|adding up to|leaves?|leaving)|together|in all|altogether|all told|in total|total)(?:\s+(?:makes?|making|of|is|are|comes? to))?\s+/i;
const joined =
  /(?<=[^,]), ([^,+=]{1,30}\d[^,+=]{0,20}?) (?:in all|together|altogether|all told|in total|total)$/i;
const adds = /\s*\+\s*|\s+plus\s+|\s+[-−–]\s+|\s+(?:less|minus)\s+/gi;
/** Figures named one after another of which not all are added. */
const notAdded =
  /\b(?:gross|tare|net|less|minus|bs|fs|back-?sight|fore-?sight|before|after|of which|was|from|between|spare|left)\b/i;
const listed = /,\s+(?:and\s+)?|\s+and\s+/i;
const multiplies =
  /\s*[×*÷]\s*|\s*\bx\s*(?=[\d.π])|(?<=\d)x(?=\d)|\s+\/\s+|\s+(?:times|by|divided by|of|at|off at|off)\s+(?=[\d.π])/gi;

/** Whether a text may hold a sum at all; cheaper than to look for one. */
const mayBe =
  /=|\b(?:makes?|making|com(?:es?|ing) to|giv(?:es?|ing)|total|together|in all|altogether|all told|adds? up|leav(?:es?|ing))\b/i;

/** The first expression of a text whose result is not what its terms give. */
export function misreckonedIn(text: string, decimal: Decimal): Misreckoned | null {
  if (!mayBe.test(text)) return null;
  const sides = text.replace(joined, " = $1").split(makes);
  const list = !/=/.test(text.replace(joined, ""));
  for (let i = 0; i + 1 < sides.length; i++) {
    const [left, right] = [lastClause(sides[i] ?? "", list), firstClause(sides[i + 1] ?? "")];
    const wrong =
      compared(left, right, list, decimal) ?? (sides.length === 2 ? reversed(left, right, decimal) : null);
    if (wrong) return wrong;
  }
  return null;
}

/** What stands before an expression in the same text is no part of it. */
function lastClause(text: string, list: boolean): string {
  return (
    text
      .split(list ? /[;:(]/ : /[;:(]|,\s/)
      .at(-1)
      ?.trim() ?? ""
  );
}

const firstClause = (text: string): string => text.split(/[;()]|,\s|,$/)[0]?.trim() ?? "";

function compared(left: string, right: string, list: boolean, decimal: Decimal): Misreckoned | null {
  if (left === "" || right === "" || left.includes(")") || hasSign(right)) return null;
  if (list && left.search(adds) < 0 && notAdded.test(left)) return null;
  const results = valuesOf(right, decimal);
  if (results.length === 0) return null;
  const terms = termsOf(left, list);
  return terms.length > 1 ? sum(terms, results, decimal) : product(left, results, decimal);
}

/** "0.345 m = 4.215 m less 3.870 m"; a dash on the right is a range more often than a difference. */
const reversed = (left: string, right: string, decimal: Decimal): Misreckoned | null =>
  /\s[-−–]\s/.test(right) ? null : compared(right, left, false, decimal);

const hasSign = (text: string): boolean => text.search(adds) >= 0 || text.search(multiplies) >= 0;

interface Term {
  text: string;
  sign: 1 | -1;
  /** Taken away by a dash, which may stand for "to" as well. */
  dash: boolean;
}

function termsOf(text: string, list: boolean): Term[] {
  const terms: Term[] = [];
  let from = 0;
  let sign = "+";
  const push = (end?: number) =>
    terms.push({
      text: text.slice(from, end),
      sign: /[-−–]|less|minus/i.test(sign) ? -1 : 1,
      dash: /[-−–]/.test(sign),
    });
  for (const found of text.matchAll(adds)) {
    push(found.index);
    sign = found[0];
    from = found.index + found[0].length;
  }
  push();
  if (!list || terms.some((term) => term.sign < 0)) return terms;
  return withoutHeading(
    terms.flatMap((term) =>
      term.text.split(listed).map((part) => ({ text: part, sign: 1 as const, dash: false })),
    ),
  );
}

/** "Three leaves, 0.015, 0.012 and 0.004": the first says how many follow. */
const withoutHeading = (terms: Term[]): Term[] =>
  terms.length > 2 &&
  !/\d[.,/]|\d\s?[a-z"']{1,3}\b(?! )/i.test(terms[0]?.text ?? "") &&
  /[a-z]{3}/i.test(terms[0]?.text ?? "") &&
  /^\s*(?:[a-z]+|\d+)\s+[a-z]+/i.test(terms[0]?.text ?? "")
    ? terms.slice(1)
    : terms;

/** A value as it may have been meant: the number as written, and in SI units. */
interface Amount {
  number: number;
  si: number;
  /** Half of the last place written, as a number. */
  half: number;
  ucum: string;
  dimension: string;
  about: boolean;
  /** A word behind a bare number that may be a unit nobody here knows. */
  unknown: boolean;
}

function amountOf(quantity: Quantity, text: string): Amount {
  const [over = "0", under = "1"] = quantity.value.step.split("/");
  const counted = quantity.dimension === "count";
  return {
    number: quantity.larger ? quantity.si / scaleOf(quantity.ucum) : quantity.value.number,
    si: quantity.si,
    half: Number(over) / Number(under) / (quantity.value.style.kind === "fraction" ? 16 : 2),
    ucum: counted ? "1" : quantity.ucum,
    dimension: counted ? "number" : quantity.dimension,
    about: quantity.qualifier === "about",
    unknown: (counted || quantity.ucum === "1") && /\d\s*[a-z]+\.?$/i.test(text.trim()),
  };
}

/** Every value that a stretch of text with one figure may mean; none where it holds more or fewer. */
function valuesOf(text: string, decimal: Decimal): Amount[] {
  if (/^\s*(?:π|pi)\s*$/i.test(text))
    return [
      { number: Math.PI, si: Math.PI, half: 0, ucum: "1", dimension: "number", about: false, unknown: false },
    ];
  return meanings(readOnce(text.trim(), decimal))
    .filter((one) => !one.high && !one.terms)
    .map((one) => amountOf(one, text));
}

function meanings(reading: Reading): Quantity[] {
  if (reading.kind === "quantity" || reading.kind === "bare") return reading.quantities.slice(0, 1);
  if (reading.kind === "question") return reading.candidates.flatMap(meanings);
  return [];
}

/** Terms of one kind, added: in the unit they share, else in SI units. */
function sum(terms: Term[], results: Amount[], decimal: Decimal): Misreckoned | null {
  const read = terms.map((term) => ({
    sign: term.sign,
    values: [
      ...(hasFactors(term.text) ? factored(term.text, decimal) : []),
      ...valuesOf(term.text, decimal),
    ].slice(0, 2),
  }));
  if (read.some((term) => term.values.length === 0)) return null;
  const ways = choices(read.map((term) => term.values)).flatMap((values) =>
    results.map((result) => added(values, terms, result)),
  );
  const known = ways.filter((way) => way !== null);
  if (known.length === 0 || known.length < ways.length || known.some((way) => way.agrees)) return null;
  return known[0] ?? null;
}

interface Way extends Misreckoned {
  agrees: boolean;
}

function added(values: Amount[], terms: Term[], result: Amount): Way | null {
  const unit = [result, ...values.toReversed()].find((one) => one.ucum !== "1")?.ucum ?? "1";
  const written = values.at(-1)?.ucum;
  if (unit !== "1" && [result, ...values].some((one) => one.unknown)) return null;
  if (terms.some((term) => term.dash) && written !== "1" && result.ucum !== written) return null;
  const filled = [result, ...values].map((one) => (one.ucum === "1" ? inUnit(one, unit) : one));
  const [total, ...parts] = filled;
  if (!total || new Set(filled.map((one) => one.dimension)).size > 1) return null;
  const same = filled.every((one) => one.ucum === unit);
  if (!same && total.dimension === "temperature") return null;
  const scale = scaleOf(unit);
  const should = parts.reduce(
    (so, one, i) => so + (terms[i]?.sign ?? 1) * (same ? one.number : one.si / scale),
    0,
  );
  return way(should, same ? total.number : total.si / scale, result, unit, same ? 0 : 0.002);
}

function inUnit(one: Amount, ucum: string): Amount {
  if (ucum === "1") return one;
  return {
    ...one,
    ucum,
    si: one.number * scaleOf(ucum),
    dimension: unitByCode(ucum)?.dimension ?? one.dimension,
  };
}

function way(should: number, said: number, result: Amount, ucum: string, share: number): Way {
  const close =
    Math.abs(should - said) <= result.half * 1.02 + 1e-9 || near(should, said, result.about ? 0.03 : share);
  const words = (value: number) => `${plain(value, 6)} ${unitByCode(ucum)?.symbol ?? ""}`.trim();
  return { agrees: close, said: words(said), should: words(should) };
}

const hasFactors = (text: string): boolean => text.search(multiplies) >= 0;

/** "2 x 0.5 mm" as one term of a sum. */
function factored(text: string, decimal: Decimal): Amount[] {
  const { factors, divides } = factorsOf(text);
  const read = factors.map((factor) => valuesOf(factor, decimal));
  if (divides.some(Boolean)) return [];
  return choices(read).flatMap((values) => {
    const measured = values.filter((one) => one.ucum !== "1");
    const [one] = measured.length === 0 ? values : measured;
    if (!one || measured.length > 1) return [];
    const times = values.filter((other) => other !== one).reduce((so, other) => so * other.number, 1);
    return [{ ...one, number: one.number * times, si: one.si * times }];
  });
}

function factorsOf(text: string): { factors: string[]; divides: boolean[] } {
  const factors: string[] = [];
  const divides = [false];
  let from = 0;
  for (const found of text.matchAll(multiplies)) {
    factors.push(text.slice(from, found.index));
    divides.push(/[÷/]|divided/.test(found[0]));
    from = found.index + found[0].length;
  }
  return { factors: [...factors, text.slice(from)], divides };
}

/** Factors multiplied as numbers and in SI units: one of the two must give the result. */
function product(text: string, results: Amount[], decimal: Decimal): Misreckoned | null {
  const { factors, divides } = factorsOf(text);
  const read = factors.map((factor) => valuesOf(factor, decimal));
  if (factors.length < 2 || read.some((values) => values.length === 0)) return null;
  const ways = choices(read).flatMap((values) =>
    results.map((result) => multiplied(values, divides, result)),
  );
  return ways.some((one) => one.agrees) ? null : (ways[0] ?? null);
}

function multiplied(values: Amount[], divides: boolean[], result: Amount): Way {
  const all = (pick: (one: Amount) => number) =>
    values.reduce((so, one, i) => (divides[i] ? so / pick(one) : so * pick(one)), 1);
  const number = all((one) => one.number);
  const scale = scaleOf(result.ucum);
  const asWritten = values
    .filter((one) => one.dimension === result.dimension)
    .map((one) => (number * scaleOf(one.ucum)) / scale);
  const inSi = all((one) => one.si) / scale;
  const mixed = new Set(values.map((one) => one.dimension).filter((one) => one !== "number")).size > 1;
  const ways = [...(mixed ? [inSi, number] : [number, inSi]), ...asWritten].map((should) =>
    way(should, result.number, result, result.ucum, 0.008),
  );
  return ways.find((one) => one.agrees) ?? (ways[0] as Way);
}

/** One value of each, in every way; there are few. */
const choices = (lists: Amount[][]): Amount[][] =>
  lists.reduce<Amount[][]>(
    (so, list) => so.flatMap((head) => list.slice(0, 2).map((one) => [...head, one])).slice(0, 64),
    [[]],
  );
