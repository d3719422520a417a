import type { Part } from "../part.ts";
import { at } from "../text.ts";
import { designationPart } from "./part.ts";

const numberThenDrill =
  /(?:No\.?\s?|#|number\s)(\d{1,2})(?:\s(?:twist\s)?(?:drill|bit)s?)(?![\p{L}\p{N}])/iuy;
const drillThenNumber =
  /drill(?:\sbit)?,?\s(?:size\s)?(?:No\.?\s?|#|number\s)(\d{1,2})(?![\p{L}\p{N}./-])/iuy;
const letterNamed = /(?:drill\s)?(?:letter|Letter)\s([A-Za-z])(?:\s(?:drill|bit))?(?![\p{L}\p{N}])/uy;
const letterThenDrill = /([A-Z])\s(?:size\s)?(?:twist\s)?(?:drill|bit)(?![\p{L}\p{N}])/uy;
const drillThenLetter = /[Dd]rill,?\s(?:size\s)?([B-Z])(?![\p{L}\p{N}.])/uy;

/** Number and letter drills: "No. 7 drill", "drill #29", "letter F". Sizes run from 80 to 1 and from A to Z (ANSI B94.11M). */
export function drillAt(text: string, place: number): Part | null {
  const number = at(numberThenDrill, text, place) ?? at(drillThenNumber, text, place);
  if (number && Number(number.groups[1]) >= 1 && Number(number.groups[1]) <= 97) {
    const size = `${Number(number.groups[1])}`;
    return designationPart(
      { type: "drill", name: `No. ${size} drill`, scale: "number", size },
      place,
      number.end,
    );
  }
  const letter =
    at(letterNamed, text, place) ?? at(letterThenDrill, text, place) ?? at(drillThenLetter, text, place);
  if (!letter) return null;
  const size = (letter.groups[1] ?? "").toUpperCase();
  return designationPart(
    { type: "drill", name: `letter ${size} drill`, scale: "letter", size },
    place,
    letter.end,
  );
}
