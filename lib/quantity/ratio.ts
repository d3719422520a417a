import { numberAt } from "./numbers.ts";
import type { Part } from "./part.ts";
import { type Lead, leadAt } from "./qualifiers.ts";
import { compare, divide, exact, one, type Rational, rational, subtract } from "./rational.ts";
import { afterSpaces, at, endsWord, isAt } from "./text.ts";
import type { Quantity, Reading, ReadOptions } from "./types.ts";
import { unitAt } from "./unit-at.ts";
import { writtenValue } from "./value.ts";

interface Terms {
  terms: Rational[];
  end: number;
}

const signAhead = /.{1,50}?(?::|\s(?:to|in|times)\b)/iy;
const colon = /:(?!\s)|\s:\s/y;
const to = /\sto\s/iy;
const oneIn = /(?:1|one)\sin\s(?=\d|[a-z])/iy;
const times = /\stimes(?![\p{L}\p{N}])(?!\s(?:a|an|per)\b)/iuy;
const dilution = /\bdilut|\bsolution\b|\bstrength\b/i;

/** "50:1", "50 to 1", "1 in 40", "3 times as fast", or null. */
export function ratioAt(text: string, place: number, options: ReadOptions): Part | null {
  if (!isAt(signAhead, text, place)) return null;
  const lead = leadAt(text, place);
  const found =
    oneInAt(text, lead.end, options) ?? toOneAt(text, lead.end, options) ?? colonAt(text, lead.end, options);
  if (!found || found.terms.some(({ n }) => n <= 0n)) return null;
  const plain: Part = { reading: ratioReading(found.terms, lead), start: place, end: found.end };
  return found.terms.length === 2 && dilution.test(text) ? asked(plain, found.terms, lead) : plain;
}

/** A plain number without a unit behind it. */
function termAt(text: string, place: number, options: ReadOptions): { value: Rational; end: number } | null {
  const number = numberAt(text, place, options);
  const [value] = number?.values ?? [];
  return number && value && !number.ask ? { value: rational(value.exact), end: number.end } : null;
}

const unitFollows = (text: string, place: number, options: ReadOptions): boolean =>
  unitAt(text, afterSpaces(text, place), options) !== null;

/** "1 in 40": a slope, or one part in so many. */
function oneInAt(text: string, place: number, options: ReadOptions): Terms | null {
  const sign = at(oneIn, text, place);
  const run = sign && termAt(text, sign.end, options);
  return run && !unitFollows(text, run.end, options) ? { terms: [one, run.value], end: run.end } : null;
}

/** "50 to 1", "four to one", "3 times". */
function toOneAt(text: string, place: number, options: ReadOptions): Terms | null {
  const first = termAt(text, place, options);
  if (!first) return null;
  const often = at(times, text, first.end);
  if (often) return { terms: [first.value, one], end: often.end };
  const sign = at(to, text, first.end);
  const last = sign && termAt(text, sign.end, options);
  if (!last || compare(last.value, one) !== 0 || unitFollows(text, last.end, options)) return null;
  return { terms: [first.value, one], end: last.end };
}

/** "50:1", "3:2:1". */
function colonAt(text: string, place: number, options: ReadOptions): Terms | null {
  const terms: Rational[] = [];
  let end = place;
  while (terms.length < 4) {
    const sign = terms.length === 0 ? { end: place } : at(colon, text, end);
    const next = sign && termAt(text, sign.end, options);
    if (!next) break;
    terms.push(next.value);
    end = next.end;
  }
  return terms.length >= 2 && endsWord(text, end) && !unitFollows(text, end, options) ? { terms, end } : null;
}

/** "1:10" of a dilution is one part in ten, or one part and ten: the writer is asked. */
function asked(plain: Part, [a = one, b = one]: Rational[], lead: Lead): Part {
  const [small, large] = compare(a, b) <= 0 ? [a, b] : [b, a];
  const rest = subtract(large, small);
  const inWhole = rest.n > 0n ? [ratioReading([small, rest], lead)] : [];
  const ask = "a dilution may count the parts added to the rest, or the parts in the whole";
  return { ...plain, reading: { kind: "question", ask, candidates: [plain.reading, ...inWhole] } };
}

function ratioReading(terms: Rational[], { qualifier, roughly }: Lead): Reading {
  const [a = one, b = one] = terms;
  const value = writtenValue(divide(a, b), one, { kind: "decimal", places: 0 });
  const quantity: Quantity = {
    dimension: "ratio",
    ucum: "1",
    unit: "",
    value,
    qualifier: qualifier ?? (roughly ? "about" : "exact"),
    terms: terms.map(exact),
    si: value.number,
  };
  return { kind: "quantity", quantities: [quantity] };
}
