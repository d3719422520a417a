import { wordNumberAt } from "../number-words.ts";
import { at } from "../text.ts";

/** Threads to the inch written behind a size. */
export interface Count {
  tpi: string;
  /** What joins it to the size: "-", "x", "by" or a space. */
  sign: string;
  /** True where "tpi" stands behind it. */
  named: boolean;
  end: number;
}

const joins = /-|\s?[x×X]\s?|\s-\s|\sby\s|[ \u00a0]{1,2}/iy;
const figures = /(\d{1,3}(?:\.5)?)(?![\d.,]?\d|\s?\/)/y;

/** The word for threads to the inch. */
export const tpiWord = /\s?(?:tpi|t\.p\.i\.?|threads (?:per|to the|an) inch)(?![\p{L}\p{N}])/iuy;

/** "-20", " x 26 tpi", " by 22", " 18", " twenty", or null. */
export function countAt(text: string, place: number): Count | null {
  const sign = at(joins, text, place);
  const found = sign && (figuresAt(text, sign.end) ?? wordsAt(text, sign.end));
  if (!sign || !found || found.tpi < 3 || found.tpi > 120) return null;
  const word = at(tpiWord, text, found.end);
  return {
    tpi: `${found.tpi}`,
    sign: sign.groups[0].trim() || " ",
    named: word !== null,
    end: word?.end ?? found.end,
  };
}

function figuresAt(text: string, place: number): { tpi: number; end: number } | null {
  const found = at(figures, text, place);
  return found && { tpi: Number(found.groups[1]), end: found.end };
}

function wordsAt(text: string, place: number): { tpi: number; end: number } | null {
  const found = wordNumberAt(text, place);
  const tpi = found?.values[0]?.number;
  return found && tpi !== undefined && Number.isInteger(tpi) ? { tpi, end: found.end } : null;
}
