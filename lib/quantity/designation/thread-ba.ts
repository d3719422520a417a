import { wordNumberAt } from "../number-words.ts";
import type { Part } from "../part.ts";
import { at } from "../text.ts";
import type { ReadOptions } from "../types.ts";
import { threadPart } from "./part.ts";

const figures = /(?:No\.?\s?|#)?(\d{1,2})\s?-?\s?B\.?\s?A\.?(?![\p{L}\p{N}&])/iuy;
const before = /B\.?A\.?\s?(?:No\.?\s?)?(\d{1,2})(?![\p{L}\p{N}./-])/uy;
const letters = /\s?-?\s?B\.?A\.?(?![\p{L}\p{N}&])/iuy;

/** "2 BA", "2BA", "BA 2", "two BA". British Association threads run from 0 to 25 (BS 93 gives 0 to 16). */
export function baThreadAt(text: string, place: number, options: ReadOptions): Part | null {
  const found = at(figures, text, place) ?? at(before, text, place);
  if (found) return part(Number(found.groups[1]), place, found.end, text, options);
  const word = wordNumberAt(text, place);
  const after = word && at(letters, text, word.end);
  const number = word?.values[0]?.number;
  return after && number !== undefined && Number.isInteger(number)
    ? part(number, place, after.end, text, options)
    : null;
}

function part(number: number, start: number, end: number, text: string, options: ReadOptions): Part | null {
  if (number > 25) return null;
  return threadPart(
    { type: "thread", name: `${number} BA`, system: "BA", size: `${number}` },
    start,
    end,
    text,
    options,
  );
}
