import { numberAt } from "../numbers.ts";
import type { Part } from "../part.ts";
import { after, at, isAt } from "../text.ts";
import type { Designation, ReadOptions } from "../types.ts";
import { designationPart } from "./part.ts";

const hole = String.raw`(JS|CD|EF|FG|ZA|ZB|ZC|[A-HJKMNPRSTUVXYZ])(0?1|\d{1,2})`;
const shaft = String.raw`(js|cd|ef|fg|za|zb|zc|[a-hjkmnprstuvxyz])(0?1|\d{1,2})`;
const pair = new RegExp(String.raw`\s?(?:mm\s)?${hole}\s?[/-]\s?${shaft}(?![\p{L}\p{N}])`, "uy");
const mark = /⌀\s?/y;
const classAhead = /[\s⌀\d.,]{0,16}(?:mm\s)?[A-Za-z]{1,2}\d/y;
const holeOnly = /\s?(JS|[D-HJKNP])([5-9]|1[0-3])(?![\p{L}\p{N}])/uy;
const shaftOnly = /\s?(js|ef|fg|cd|[a-hjkmnprstu])([4-9]|1[0-3])(?![\p{L}\p{N}])/uy;

/** Limits and fits: "25 H7/g6", "25 H7", "16 h6", "H7/g6". Sizes without a unit are millimetres (ISO 286-1). */
export function fitAt(text: string, place: number, options: ReadOptions): Part | null {
  if (!isAt(classAhead, text, place)) return null;
  const number = numberAt(text, after(mark, text, place), options);
  const size = number?.values[0];
  if (!number || number.spoken)
    return isAt(pair, text, place) ? classesAt(text, place, place, undefined) : null;
  return size && !number.ask && size.number > 0 && size.number <= 3150
    ? classesAt(text, place, number.end, size.exact)
    : null;
}

function classesAt(text: string, start: number, place: number, nominal: string | undefined): Part | null {
  const both = at(pair, text, place);
  if (both && Number(both.groups[2]) <= 18 && Number(both.groups[4]) <= 18) {
    const [, hole = "", h = "", shaft = "", s = ""] = both.groups;
    return part(start, both.end, nominal, hole + h, shaft + s);
  }
  const one = nominal === undefined ? null : at(holeOnly, text, place);
  if (one) return part(start, one.end, nominal, `${one.groups[1]}${one.groups[2]}`, undefined);
  const other = nominal === undefined ? null : at(shaftOnly, text, place);
  return other && part(start, other.end, nominal, undefined, `${other.groups[1]}${other.groups[2]}`);
}

function part(start: number, end: number, nominal?: string, hole?: string, shaft?: string): Part {
  const classes = [hole, shaft].filter(Boolean).join("/");
  const shown =
    nominal === undefined ? "" : `${Number(nominal.split("/")[0]) / Number(nominal.split("/")[1] ?? 1)} `;
  const designation: Designation = {
    type: "fit",
    name: `${shown}${classes}`,
    ucum: "mm",
    ...(nominal === undefined ? {} : { nominal }),
    ...(hole ? { hole } : {}),
    ...(shaft ? { shaft } : {}),
  };
  return designationPart(designation, start, end);
}
