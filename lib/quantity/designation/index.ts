import type { Part } from "../part.ts";
import { isAt } from "../text.ts";
import type { ReadOptions } from "../types.ts";
import { ballAndRollerAt } from "./bearing.ts";
import { drillAt } from "./drill.ts";
import { fitAt } from "./fit.ts";
import { gaugeAt } from "./gauge.ts";
import { numberedAt } from "./numbered.ts";
import { strengthAt } from "./strength.ts";
import { baThreadAt } from "./thread-ba.ts";
import { inchThreadAt } from "./thread-inch.ts";
import { metricThreadAt } from "./thread-metric.ts";
import { pipeThreadAt } from "./thread-pipe.ts";

type Reader = (text: string, place: number, options: ReadOptions) => Part | null;

/** A number in figures, or the first letters of one in words, may begin it. */
const number = String.raw`[\d.#½⅓⅔¼¾⅛⅜⅝⅞]|an?\s|(?:no|num|one|two|thr|fou|fiv|six|sev|eig|nin|ten|ele|twe|fif|qua|hal|zer)`;
const begins = (words: string): RegExp => new RegExp(`${number}|${words}`, "iy");

/** Kinds of designation in the order in which they are tried, each with what it can begin with. */
const kinds: [RegExp, Reader][] = [
  [/[MmT]/y, metricThreadAt],
  [/\d{1,2}\s?-?\s?B|B\.?A|(?:No|#)|[a-z]{3,9}\s?-?\s?B/iy, baThreadAt],
  [begins("[GR]|BS|NP"), pipeThreadAt],
  [/(?:No\.?\s?)?[\d/]{1,6}[\s-]{0,2}[AaBbSsGgIi]|AWG|B&S|S\.?W/iy, gaugeAt],
  [/[#NnDdLlA-Z]/y, drillAt],
  [/[#NnMmTt]|\d\s?-?\s?M/y, numberedAt],
  [begins("UN|B\\.?S|C\\.?[EY]|AN|USS|Whit"), inchThreadAt],
  [/\d{3}|[A-Zbrnts]/y, ballAndRollerAt],
  [/[\d⌀A-Z]/y, fitAt],
  [/[PpCcGgSsA]/y, strengthAt],
];

/** The designation at a place, or null. */
export function designationAt(text: string, place: number, options: ReadOptions): Part | null {
  for (const [begin, reader] of kinds) {
    const part = isAt(begin, text, place) ? reader(text, place, options) : null;
    if (part) return part;
  }
  return null;
}
