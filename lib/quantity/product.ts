import { siNumber } from "./convert.ts";
import { type MeasureAt, measureAt } from "./measure.ts";
import type { Part } from "./part.ts";
import { at, isAt } from "./text.ts";
import type { Quantity, Reading, ReadOptions } from "./types.ts";
import { unitByCode } from "./units.ts";

const times = /\s{0,2}(?:[x×X*]|\bby\b)\s{0,2}(?=[\d.,½⅓⅔¼¾⅛⅜⅝⅞a-z⌀])/iy;
const nameAfter = /\s([A-Za-z][A-Za-z./]{0,11}(?: [a-z]{1,12})?)(?=\s{0,2}(?:[x×*]|\bby\b)\s?[\d.½¼¾⅛⅜⅝⅞])/iy;
const lastName = /\s(ID|OD|wide|width|thick|long|deep|high|W|H|L|bore|stroke|face|tall)\b/y;
const legend = /\s?[([]\s?([A-Za-z][A-Za-z. ]{0,20}(?:\s?[x×*]\s?[A-Za-z][A-Za-z. ]{0,20}){1,3})\s?[)\]]/y;

/** A sign of multiplication close ahead. */
const timesAhead = /[^xX×*]{1,60}[xX×*]|.{1,60}\bby\b/y;

/** "25 x 52 x 15 mm (bore x OD x width)": two to four measures multiplied, or null. */
export function productAt(text: string, place: number, options: ReadOptions): Part | null {
  if (!isAt(timesAhead, text, place)) return null;
  const factors: Quantity[] = [];
  const names: string[] = [];
  let end = place;
  while (factors.length < 4) {
    const measure = factorAt(text, end, options, factors.length > 0);
    const factor = measure?.quantities[0];
    if (!measure || !factor) break;
    factors.push(factor);
    const name =
      at(nameAfter, text, measure.end) ?? (factors.length > 1 ? at(lastName, text, measure.end) : null);
    names.push(name?.groups[1] ?? "");
    end = name?.end ?? measure.end;
    if (!isAt(times, text, end)) break;
  }
  if (factors.length < 2 || !factors.every(isSize)) return null;
  const counted = countOf(factors);
  if (counted) return { reading: counted, start: place, end };
  const key = at(legend, text, end);
  const listed = key ? (key.groups[1] ?? "").split(/[x×*]/).map((one) => one.trim()) : [];
  const named = listed.length === factors.length;
  const quantities = sharedUnit(factors);
  const shown = named ? listed : names.some(Boolean) ? names : null;
  const reading = { kind: "product" as const, quantities, ...(shown ? { names: shown } : {}) };
  return { reading, start: place, end: named && key ? key.end : end };
}

/** "3 x 0.010 in": three shims, and no strip of three inches by ten thou. */
function countOf(factors: Quantity[]): Reading | null {
  const count = factors.find(({ ucum, value }) => ucum === "1" && /^[1-9]\d?$/.test(value.exact));
  const size = factors.find((one) => one.dimension === "length" && one.ucum !== "1");
  if (!count || !size || factors.length !== 2) return null;
  if (size.ucum !== "[mil_i]" && count.value.number < 50 * size.value.number) return null;
  const pieces = { ...withUnit(count, { ...count, ucum: "{off}", unit: "off" }) };
  const parts = factors.map(
    (one): Reading => ({ kind: "quantity", quantities: [one === count ? pieces : one] }),
  );
  return { kind: "list", parts };
}

/** Only sizes and counts are multiplied so: "2 x 6 V" are two things. */
const isSize = ({ dimension }: Quantity): boolean =>
  dimension === "length" || dimension === "number" || dimension === "count";

function factorAt(text: string, place: number, options: ReadOptions, further: boolean): MeasureAt | null {
  const from = further ? (at(times, text, place)?.end ?? -1) : place;
  const measure = from < 0 ? null : measureAt(text, from, options);
  if (!measure) return null;
  const quantities = pointed.test(text) ? grouped(measure) : measure.quantities;
  return quantities.length === 1 ? { ...measure, quantities } : null;
}

const pointed = /\d\.\d/;

/** Beside "0.6" the comma of "3,300" groups thousands. */
const grouped = ({ quantities }: MeasureAt): Quantity[] =>
  quantities.length < 2 ? quantities : quantities.filter((one) => /^\d+$/.test(one.value.exact));

/** Factors without a unit have that of the next one that has: "25 x 52 x 15 mm" are all millimetres. */
function sharedUnit(factors: Quantity[]): Quantity[] {
  const [last] = factors.slice(-1);
  const shared =
    last && last.dimension === "length" ? last : factors.find((one) => one.dimension === "length");
  return factors.map((one) => (one.ucum === "1" && shared ? withUnit(one, shared) : one));
}

/** The same figures in the unit of another quantity. */
export function withUnit(one: Quantity, model: Quantity): Quantity {
  const si = (exact: string) => siNumber(exact, model.ucum, model.role);
  return {
    ...one,
    dimension: unitByCode(model.ucum)?.dimension ?? one.dimension,
    ucum: model.ucum,
    unit: model.unit,
    si: si(one.value.exact),
    ...(one.high ? { siHigh: si(one.high.exact) } : {}),
  };
}
