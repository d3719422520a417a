import type { Part } from "../part.ts";
import { at } from "../text.ts";
import { designationPart } from "./part.ts";

const suffix = String.raw`(?:[-\s/]?(?:2RSR?1?|RSR?1?|2RZ|2Z|ZZ|LLU|LLB|DDU|VV|C[2345]|NR|TN9?|P6))`;
const sealed = new RegExp(
  String.raw`((?:6\d{2,4}|16\d{3}|[12]\d{3}|22\d{3}|3\d{4}|7\d{3}|62\/\d{2}|63\/\d{2}))(${suffix}{1,3})(?![\p{L}\p{N}])`,
  "uy",
);
const lettered =
  /((?:NU|NJ|NUP|RLS|RMS|LRJ|MRJ|KLNJ|LJ|MJ|HK|BK|LM|NA)[ -]?\d{1,6}(?:[ -]\d\/\d{1,2}|\/\d{1,2})?[A-Z]?)((?:[- ]?(?:2RS|ZZ|C[2345]|[MJE]))?)(?![\p{L}\p{N}])/uy;
const called = new RegExp(
  String.raw`(?:(?:ball|roller|needle|thrust|sealed)\s(?:race\s)?)?bearings?,?\s(?:no\.?\s|number\s)?(\d{3,5})(${suffix}{0,3})(?![\p{L}\p{N}.]|\s?(?:mm|in|rpm)\b)`,
  "iuy",
);
const callsBehind = new RegExp(
  String.raw`(\d{3,5})(${suffix}{0,3})\s(?:ball\s|roller\s|needle\s|thrust\s|sealed\s)?(?:bearing|race)s?(?![\p{L}\p{N}])`,
  "iuy",
);

/** Bearing numbers: "6205-2RS", "bearing 6205", "NU 205", "RLS 5". A bare 6205 stays a number. Form: ISO 15 series, makers' lists. */
export function ballAndRollerAt(text: string, place: number): Part | null {
  const found =
    at(sealed, text, place) ??
    at(lettered, text, place) ??
    at(called, text, place) ??
    at(callsBehind, text, place);
  if (!found) return null;
  const number = (found.groups[1] ?? "").replace(/\s/g, " ");
  const rest = (found.groups[2] ?? "")
    .replace(/[-\s/]+/g, " ")
    .trim()
    .toUpperCase();
  const name = rest === "" ? number : `${number}-${rest.replaceAll(" ", "-")}`;
  return designationPart({ type: "bearing", name, number, suffix: rest }, place, found.end);
}
