import type { Part } from "../part.ts";
import { at } from "../text.ts";
import type { Designation } from "../types.ts";
import { designationPart, designationQuestion } from "./part.ts";

const size = String.raw`([1-9]\/0|0{2,6}|\d{1,2})`;
const sizeFirst = new RegExp(
  String.raw`(?:No\.?\s?)?${size}\s?-?(AWG|B&S|SWG|S\.W\.G\.?|Imperial wire gauge)(?![\p{L}\p{N}])`,
  "iuy",
);
const systemFirst = new RegExp(
  String.raw`(AWG|B&S|SWG|S\.W\.G\.?)\s?(?:No\.?\s?|#)?${size}(?![\p{L}\p{N}./])`,
  "iuy",
);
const unnamed = new RegExp(String.raw`${size}[\s-]?(?:gauge|gage|ga\b\.?)(?![\p{L}\p{N}])`, "iuy");

/** Wire gauges: "18 AWG" (ASTM B258), "SWG 16" (BS 3737). "18 gauge" without a system is asked about. */
export function gaugeAt(text: string, place: number): Part | null {
  const named = at(sizeFirst, text, place);
  if (named) return part(named.groups[2], named.groups[1], place, named.end);
  const led = at(systemFirst, text, place);
  if (led) return part(led.groups[1], led.groups[2], place, led.end);
  const bare = at(unnamed, text, place);
  if (!bare) return null;
  const number = bare.groups[1] ?? "";
  const ask = `“${bare.groups[0]}” may be ${number} SWG (imperial wire), ${number} AWG (American wire) or ${number} in the steel sheet gauge`;
  const sheet: Designation = {
    type: "sheet gauge",
    name: `${number} gauge steel sheet`,
    system: "MSG",
    size: number,
  };
  return designationQuestion(ask, [wire("SWG", number), wire("AWG", number), sheet], place, bare.end);
}

function part(letters = "", number = "", start = 0, end = 0): Part {
  return designationPart(wire(/^(?:awg|b&s)/i.test(letters) ? "AWG" : "SWG", number), start, end);
}

function wire(system: "AWG" | "SWG", written: string): Designation {
  const size = /^0{2,6}$/.test(written)
    ? `${written.length}/0`
    : /\//.test(written)
      ? written
      : `${Number(written)}`;
  return { type: "wire gauge", name: `${size} ${system}`, system, size };
}
