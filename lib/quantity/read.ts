import { centreTapAt } from "./centre-tap.ts";
import { colourBandsAt } from "./colour-bands.ts";
import { componentCodeAt } from "./component-code.ts";
import { bracketAfter } from "./conversion.ts";
import { designationAt } from "./designation/index.ts";
import { narrowed } from "./hints.ts";
import { type MeasureAt, measureAt } from "./measure.ts";
import type { Part } from "./part.ts";
import { productAt } from "./product.ts";
import { ratioAt } from "./ratio.ts";
import { withRise } from "./roles.ts";
import { sumAt } from "./sum.ts";
import { afterSpaces, isAt, plainSigns } from "./text.ts";
import { timeAt } from "./times.ts";
import type { Quantity, Reading, ReadOptions } from "./types.ts";
import { together, withNextUnit } from "./words.ts";

/** Raised whenever some text may be read otherwise than before. */
export const readerVersion = 4;

/** The longest text that is read as a quantity, in UTF-16 units. */
export const longestText = 500;

/**
 * Reads what a restorer writes as a quantity. Never throws and never guesses: what may mean several things
 * is a question with the readings it may have; what holds no quantity is `unread` and says why. The text
 * itself is the caller's to keep.
 */
export function read(text: string, options: ReadOptions = {}): Reading {
  if (text.trim() === "") return { kind: "empty" };
  if (text.length > longestText) {
    return {
      kind: "unread",
      why: `${text.length} characters are more than a quantity needs (${longestText} at most)`,
    };
  }
  const plain = plainSigns(text);
  const parts = partsOf(plain, options);
  if (parts.length === 0) parts.push(...wholeNumberInWords(plain, options));
  if (parts.length > 0) return together(plain, parts);
  if (/\d{31}/.test(plain)) return { kind: "unread", why: "a number of more than 30 digits" };
  const why = /\d/.test(plain)
    ? "no figure here that belongs to a unit or a known designation"
    : "no number in it";
  return { kind: "unread", why };
}

/** All quantities and designations of a longer text, each with the place of its letters. Bare numbers are left out. */
export function find(text: string, options: ReadOptions = {}): Part[] {
  const plain = plainSigns(text);
  return withNextUnit(plain, partsOf(plain, options)).filter((part) => part.reading.kind !== "bare");
}

/** "fifteen", where nothing else stands in the text. */
function wholeNumberInWords(text: string, options: ReadOptions): Part[] {
  const start = afterSpaces(text, 0);
  const measure = measureAt(text, start, options);
  if (!measure?.loose || text.slice(measure.end).trim() !== "") return [];
  return [{ reading: { kind: "bare", quantities: measure.quantities }, start, end: measure.end }];
}

function partsOf(text: string, options: ReadOptions): Part[] {
  const parts: Part[] = [];
  let place = 0;
  while (place < text.length) {
    const part = isAt(beginning, text, place) ? partAt(text, place, options) : null;
    if (part && part.end > place) parts.push(part);
    place = part && part.end > place ? part.end : nextPlace(text, place);
  }
  return parts;
}

/** What a quantity can begin with: a letter or a figure where a word begins, or a sign before one. */
const beginning = /(?<![\p{L}\p{N}])[\p{L}\p{N}]|[½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅐⅛⅜⅝⅞⅑⅒±~≈<>≥≤⌀#]|[-+.,][-+.,\d\s½¼¾⅛⅜⅝⅞/]/uy;

/** Dates and part numbers: "12/03/2024", "12-345-67". */
const chain = /\d{1,12}(?:(?:-\d{1,12}){2,12}|(?:\/\d{1,12}){2,12})(?![\d/])/y;
/** "350-0-350", which is neither. */
const tapped = /(\d{1,4})-0-\1\s?[Vv]/y;
/** Figures that are no number: "5/0", and the 10W-40 of an oil. */
const noNumber = /\d{1,12}\/0{1,12}(?![\d.,]|\s?(?:AWG|SWG|B&S))|\d{1,2}W-?\d{2}(?!\d)/iy;
const word = /[\p{L}\p{N}_]{1,40}/uy;

/** Where to try next: behind a word, a chain of figures, or one sign. */
function nextPlace(text: string, place: number): number {
  const pattern = [chain, noNumber, word].find((one) => isAt(one, text, place));
  return pattern ? pattern.lastIndex : place + 1;
}

function partAt(text: string, place: number, options: ReadOptions): Part | null {
  if (isAt(chain, text, place) && !isAt(tapped, text, place)) return null;
  if (isAt(noNumber, text, place)) return null;
  return (
    componentCodeAt(text, place, options) ??
    designationAt(text, place, options) ??
    colourBandsAt(text, place) ??
    centreTapAt(text, place, options) ??
    timeAt(text, place, options) ??
    sumAt(text, place, options) ??
    productAt(text, place, options) ??
    ratioWithConversion(text, place, options) ??
    quantityAt(text, place, options)
  );
}

function ratioWithConversion(text: string, place: number, options: ReadOptions): Part | null {
  const ratio = ratioAt(text, place, options);
  if (ratio?.reading.kind !== "quantity") return ratio;
  const [quantity] = ratio.reading.quantities;
  const other = quantity && bracketAfter(text, ratio.end, [quantity], options);
  if (!other) return ratio;
  return {
    ...ratio,
    end: other.end,
    reading: { kind: "quantity", quantities: [...ratio.reading.quantities, ...other.quantities] },
  };
}

/** How far the words that say how a quantity is meant may stand from it, in letters. */
const context = 60;

function quantityAt(text: string, place: number, options: ReadOptions): Part | null {
  const measure = measureAt(text, place, options);
  if (!measure || measure.loose || isOrdinal(text, measure)) return null;
  const near = text.slice(Math.max(0, place - context), measure.end + context);
  const first = narrowed(near, measure, options);
  const risen = { ...first, quantities: first.quantities.map((one) => withRise(one, near)) };
  const other = bracketAfter(text, risen.end, risen.quantities, options);
  const left = other ? other.fits : risen.quantities;
  const reading = readingOf(
    { ...risen, quantities: left },
    other?.quantities.map((one) => withRise(one, near)) ?? [],
  );
  return { reading, start: place, end: other?.end ?? risen.end };
}

/** "3rd", "2nd", "4A12": figures that letters cling to are no number. */
const isOrdinal = (text: string, { quantities, end }: MeasureAt): boolean =>
  quantities[0]?.ucum === "1" && letter.test(text.charAt(end));

const letter = /[\p{L}_]/u;

function readingOf(measure: MeasureAt, others: Quantity[]): Reading {
  const readings = measure.quantities.map((one): Reading => {
    const kind = one.ucum === "1" && others.length === 0 ? "bare" : "quantity";
    return { kind, quantities: [one, ...others] };
  });
  const [only] = readings;
  if (readings.length === 1 && only && measure.asks.length === 0) return only;
  if (readings.length === 1 && only && others.length > 0) return only;
  return { kind: "question", ask: measure.asks.join("; "), candidates: readings };
}
