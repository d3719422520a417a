import { measureAt } from "../measure.ts";
import { numberAt } from "../numbers.ts";
import type { Part } from "../part.ts";
import { productAt } from "../product.ts";
import { add, exact, multiply, rational } from "../rational.ts";
import { after, afterSpaces, at, endsWord, isAt, isDigitAt } from "../text.ts";
import type { ReadOptions, ThreadDesignation, Value } from "../types.ts";
import { unitAt } from "../unit-at.ts";
import { type Count, countAt, tpiWord } from "./inch-count.ts";
import { isSeriesHere, type Series, seriesAt } from "./inch-series.ts";
import { isListed, isListedNumber } from "./listed-threads.ts";
import { threadPart } from "./part.ts";
import { sizeText } from "./size.ts";

/** What is being read: the text, where the thread begins, and what was found of it so far. */
interface Found {
  size: Value | number;
  count: Count | null;
  series: Series | null;
  /** Where size, count and series end. */
  end: number;
}

/** Figures, and behind them a count of threads or what a count in words or a series begins with. */
const threadAhead =
  /[\d\s./"½⅓⅔¼¾⅛⅜⅝⅞-]{1,40}(?:in\b\.?|inch)?\s?[-,x×X]?\s?(?:(?<![\d.,/])\d{1,3}(?:\.5)?(?![\d.,]?\d|\s?\/)|[a-cefnostwzA-FMNOSTUWZ])/y;
const inchMark = /\s?-?(?:in\b\.?|inch\b|")/iy;
const numberSign = /(?:#|No\.?\s?|number\s)(?=\d{1,2}(?!\d))/iy;
const plainNumber = /(\d{1,2})(?![\d.,/]|\s?")/y;

/**
 * "1/4-20 UNC", "#10-32", "1/4 BSF", "3/8 x 26 tpi cycle", "BSW 3/8", "26 tpi cycle", "quarter twenty".
 * Forms: ASME B1.1 (unified), BS 84 (Whitworth, BSF), BS 811 (cycle), each read in secondary copies.
 */
export function inchThreadAt(text: string, place: number, options: ReadOptions): Part | null {
  if (isDigitAt(text, place) && !isAt(threadAhead, text, place)) return null;
  const found =
    numberedAt(text, place, options) ?? sizedAt(text, place, options) ?? seriesFirstAt(text, place, options);
  if (!found) return countOnly(text, place, options);
  const part = threadPart(threadOf(found), place, found.end, text, options);
  if (isWatts(found, text, options)) return wattsOrThread(part, text, place, options);
  return isPlain(found) ? part : asked(part, text, place, options);
}

const fixings = /\b(?:nut|bolt|stud|screw|spanner|thread|tap|die|BS[WF]?|hex)/i;

/** "1/4 W" with nothing about fixings beside it. */
const isWatts = ({ series, count, end }: Found, text: string, options: ReadOptions): boolean =>
  series?.system === "BSW" &&
  !count &&
  /W$/.test(text.slice(0, end)) &&
  !fixings.test(text) &&
  options.expect !== "length";

function wattsOrThread(thread: Part, text: string, place: number, options: ReadOptions): Part | null {
  const power = measureAt(text, place, options);
  if (power?.end !== thread.end || options.expect === "power") return null;
  const watts = { kind: "quantity" as const, quantities: power.quantities };
  const ask = "“W” may be watts or Whitworth";
  return { ...thread, reading: { kind: "question", ask, candidates: [watts, thread.reading] } };
}

/** Numbered sizes: "#10-32", "No. 8-32 UNC", "10 UNF"; "10-32" alone where the pair is a standard one. */
function numberedAt(text: string, place: number, options: ReadOptions): Found | null {
  const sign = at(numberSign, text, place);
  const figures = at(plainNumber, text, sign?.end ?? place);
  const size = Number(figures?.groups[1] ?? 99);
  if (!figures || size > 14) return null;
  const count = countAt(text, figures.end);
  const series = seriesAt(text, count?.end ?? figures.end);
  if (series && series.system !== "UN") return null;
  const end = series?.end ?? count?.end ?? figures.end;
  if (count && !sign && isWholeInches(size, Number(count.tpi))) return null;
  if (!count) return series && sign ? { size, count, series, end } : null;
  if (series) return { size, count, series, end };
  const known = count.sign === "-" && isListedNumber(size, Number(count.tpi));
  return known && !unitFollows(text, end, options) ? { size, count, series, end } : null;
}

/** "1-8 UNC": no numbered screw is so coarse; a bolt of an inch is. Source: ASME B1.1. */
const isWholeInches = (size: number, tpi: number): boolean =>
  size > 0 && size <= 6 && tpi <= 14 && !isListedNumber(size, tpi);

/** Sizes in inches: "1/4 BSF", "1/4-20", "9/16 in x 16 tpi BSF". */
function sizedAt(text: string, place: number, options: ReadOptions): Found | null {
  const number = numberAt(text, place, options);
  const size = number?.values[0];
  if (!number || !size || number.ask || size.number <= 0 || size.number > 12) return null;
  const unit = at(inchMark, text, number.end);
  const count = countAt(text, unit?.end ?? number.end);
  const series = seriesAt(text, count?.end ?? unit?.end ?? number.end);
  if (series && isSeriesHere(series, size, text, number.end)) return { size, count, series, end: series.end };
  if (!count) return null;
  if (count.named) return { size, count, series: null, end: count.end };
  if (
    unit ||
    size.style.kind !== "fraction" ||
    unitFollows(text, count.end, options) ||
    !endsWord(text, count.end)
  )
    return null;
  const found: Found = { size, count, series: null, end: count.end };
  return count.sign !== " " || isPlain(found) ? found : null;
}

const letter = /\p{L}/u;

/** "BSF 1/4", "UNC 3/8-16". */
function seriesFirstAt(text: string, place: number, options: ReadOptions): Found | null {
  const series = letter.test(text.charAt(place)) ? seriesAt(text, place) : null;
  if (!series || series.end - place < 3) return null;
  const number = numberAt(text, afterSpaces(text, series.end), options);
  const size = number?.values[0];
  if (!number || !size || size.style.kind !== "fraction" || size.number > 12) return null;
  const end = at(inchMark, text, number.end)?.end ?? number.end;
  const count = countAt(text, end);
  return { size, count, series, end: count?.end ?? end };
}

const gap = /\s?-?/y;

const unitFollows = (text: string, place: number, options: ReadOptions): boolean =>
  unitAt(text, after(gap, text, place), options) !== null;

/** Without a series, a size and a count are a thread for certain only where they are joined so, or are a standard pair. */
function isPlain({ size, count, series }: Found): boolean {
  if (series || !count || count.named || typeof size === "number" || count.sign === "-") return true;
  return isListed(sizeText(size), Number(count.tpi));
}

/** "9/64 x 40" may be a thread of 40 to the inch, or two measures. */
function asked(thread: Part, text: string, place: number, options: ReadOptions): Part | null {
  const product = productAt(text, place, options);
  if (!product) return thread;
  if (product.end !== thread.end) return null;
  const ask = "this may be a thread of so many to the inch, or two measures";
  return { ...thread, reading: { kind: "question", ask, candidates: [thread.reading, product.reading] } };
}

const lone = /(\d{1,2}(?:\.5)?)/y;

/** "26 tpi cycle": a series of one pitch, its size not said. */
function countOnly(text: string, place: number, options: ReadOptions): Part | null {
  const figures = at(lone, text, place);
  const word = figures && at(tpiWord, text, figures.end);
  const series = word && seriesAt(text, word.end);
  if (!figures || !series) return null;
  const tpi = figures.groups[1] ?? "";
  const thread: ThreadDesignation = {
    type: "thread",
    name: `${tpi} tpi ${series.letters}`,
    system: series.system,
    series: series.letters,
    size: "",
    tpi: exact(rational(tpi)),
  };
  return threadPart(thread, place, series.end, text, options);
}

function threadOf({ size, count, series }: Found): ThreadDesignation {
  const number = typeof size === "number";
  const shown = number ? `${size}` : sizeText(size);
  const tpi = count ? `-${count.tpi}` : "";
  return {
    type: "thread",
    name: `${number ? `#${shown}` : shown}${tpi}${series ? ` ${series.letters}` : ""}`,
    system: series?.system ?? (number ? "UN" : "unstated"),
    ...(series ? { series: series.letters } : {}),
    size: number ? `#${shown}` : shown,
    diameter: number ? numberedDiameter(size) : size.exact,
    ucum: "[in_i]",
    ...(count ? { tpi: exact(rational(count.tpi)) } : {}),
  };
}

/** Nominal diameter of a numbered size in inches: 0.060 + 0.013 n. Source: ASME B1.1 sizes, as GNU units 2.22 has them. */
function numberedDiameter(size: number): string {
  return exact(add(rational("0.060"), multiply(rational("0.013"), rational(`${size}`))));
}
