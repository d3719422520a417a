import { at } from "../text.ts";

/** Marks of ISO 898-1 (bolts) and ISO 3506-1 (stainless). Read in secondary tables. */
const marks =
  /[\s,(-]{0,3}(?:(?:property\s)?class\s|grade\s|gr\.?\s)?(4\.6|4\.8|5\.6|5\.8|6\.8|8\.8|9\.8|10\.9|12\.9|A[1-5]-(?:50|70|80|100))(?![\p{L}\p{N}.]\p{N}?|\s?(?:mm|in|N|lb|kg|V|A|%)\b)\)?/iuy;

/** A class of strength written behind a thread: "8.8", "class 10.9", "A2-70". */
export function strengthMarkAt(text: string, place: number): { mark: string; end: number } | null {
  const found = at(marks, text, place);
  return found && { mark: (found.groups[1] ?? "").toUpperCase(), end: found.end };
}
