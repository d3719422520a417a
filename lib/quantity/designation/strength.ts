import type { Part } from "../part.ts";
import { at } from "../text.ts";
import { designationPart } from "./part.ts";

const classed =
  /(?:property\s)?(?:class|grade|gr\.?)\s(4\.6|4\.8|5\.6|5\.8|6\.8|8\.8|9\.8|10\.9|12\.9)(?![\p{L}\p{N}])/iuy;
const stainless = /A[1-5]-(?:50|70|80|100)(?![\p{L}\p{N}])/uy;
const graded =
  /(?:SAE\s(?:grade\s)?|SAE J429 (?:grade\s)?|grade\s|gr\.?\s)([1258](?:\.[12])?)(?![\p{L}\p{N}.])/iuy;

/** Classes of strength on their own: "class 8.8" (ISO 898-1), "A2-70" (ISO 3506-1), "grade 5" (SAE J429). */
export function strengthAt(text: string, place: number): Part | null {
  const iso = at(classed, text, place);
  if (iso) return part("ISO 898-1", iso.groups[1] ?? "", place, iso.end, "class ");
  const steel = at(stainless, text, place);
  if (steel) return part("ISO 3506", steel.groups[0], place, steel.end, "");
  const sae = at(graded, text, place);
  return sae ? part("SAE J429", sae.groups[1] ?? "", place, sae.end, "grade ") : null;
}

function part(
  scheme: "ISO 898-1" | "ISO 3506" | "SAE J429",
  grade: string,
  start: number,
  end: number,
  word: string,
): Part {
  return designationPart({ type: "strength", name: `${word}${grade}`, scheme, grade }, start, end);
}
