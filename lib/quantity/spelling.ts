import { after, isAt } from "./text.ts";

/** One piece of the spelling of a unit: letters with their power, or a mark. */
const piece =
  /H[2₂]O|(?:[A-Za-zµΩωℓ₂ä]{1,24}|°)(?:\^?[23²³](?![\d/.,]?\d))?|''|["'%‰℃℉]|\((?:imp|imperial|US|UK|mechanical|metric|angle)\)/y;
const join = /\s?[-.·*/]\s?|\s{0,2}/y;
const slash = /\/\s?/y;

/** Where the pieces of a unit's spelling end, one after another, up to `most` of them. A slash may lead. */
export function pieceEnds(text: string, place: number, most: number): number[] {
  const ends: number[] = [];
  let from = place;
  if (text.charAt(place) === "/") from = after(slash, text, place);
  while (ends.length < most) {
    if (!isAt(piece, text, from)) break;
    ends.push(piece.lastIndex);
    from = after(join, text, piece.lastIndex);
  }
  return ends;
}

const onlyLetters = /^[A-Za-z]+$/;

/** One form for all ways to join the words of a unit: "lbf-ft", "lbf·ft" and "lbf ft" are the same. */
export function spellingKey(text: string): string {
  if (onlyLetters.test(text)) return text;
  return text
    .replace(/[-.·*\s]+/g, " ")
    .replace(/ ?\/ ?| per /g, "/")
    .replace(/\^/g, "")
    .replace(/[²₂]/g, "2")
    .replace(/³/g, "3")
    .trim();
}
