import { pieceEnds, spellingKey } from "./spelling.ts";
import { after, at, endsWord, isAt, isDigitAt, singleSpaced } from "./text.ts";
import type { ReadOptions } from "./types.ts";
import { ambiguityOf, mostPieces, unitByCode, unitBySpelling } from "./units.ts";

/** A unit found at a place: one code, or several with the question they raise. */
export interface UnitAt {
  codes: string[];
  ask?: string;
  spelling: string;
  end: number;
}

/** Words after "in" that show it to be no inch: "5 in the box". */
const notInches =
  /\s(?:the|an?|all|stock|total|this|that|each|my|hand|place|situ|series|parallel|one|\d{1,4}(?:[.,]\d{1,3})?\s?(?:ml|l|L|litres?|liters?|gallons?|gals?|pints?|quarts?))(?=\s|$)/y;
/** Signs behind which a letter may stand: 5'6". */
const endingSign = /["'°%]$/;
const dotted = /\.(?=$|[\s,;)])/y;
const abbreviated = new Set(
  "in ft lb oz sec min hr yd ins lbs ozs secs mins hrs dia pc sq cu gal pt qt".split(" "),
);

/** The longest unit spelt at a place, or null. */
export function unitAt(text: string, place: number, options: ReadOptions): UnitAt | null {
  for (const end of likelyEnds(text, place)) {
    const spelling = text.slice(place, end);
    const known = endsWord(text, end) || endingSign.test(spelling) ? meaning(spelling, options) : null;
    if (
      !known ||
      (spelling === "in" && isAt(notInches, text, end)) ||
      isPartOfUnknown(text, end) ||
      isNoUnit(text, place, end)
    )
      continue;
    const last = abbreviated.has(spelling) ? after(dotted, text, end) : end;
    return { ...known, spelling: singleSpaced(text.slice(place, last)), end: last };
  }
  return null;
}

/** Where a spelling may end, the longest first; none where no spelling begins with the first piece. */
function likelyEnds(text: string, place: number): number[] {
  const [first] = pieceEnds(text, place, 1);
  const most = first === undefined ? 0 : mostPieces(text.slice(place, first));
  return most === 0 ? [] : pieceEnds(text, place, most).reverse();
}

const gravity = /[a-z]\.[a-z]/y;

/** "1.28 s.g." has no seconds, and the 1st gear weighs no stone. */
const isNoUnit = (text: string, place: number, end: number): boolean =>
  (end - place === 1 && isAt(gravity, text, place)) ||
  (end - place === 2 && isDigitAt(text, place - 1) && text.startsWith("st", place));

const divisor = /(?:\/|\sper\s)([A-Za-zµΩ]{1,12}[²³]?)(?![\p{L}\p{N}/])/uy;

/** "5 kg/kW": a unit divided by another, together unknown, is not the first of them. */
function isPartOfUnknown(text: string, place: number): boolean {
  const word = at(divisor, text, place)?.groups[1];
  return word !== undefined && unitBySpelling(spellingKey(word)) !== null;
}

function meaning(spelling: string, options: ReadOptions): { codes: string[]; ask?: string } | null {
  const key = spellingKey(spelling);
  const ambiguity = ambiguityOf(key, options.expect);
  if (!ambiguity) {
    const unit = unitBySpelling(key);
    return unit && { codes: [unit.ucum] };
  }
  const { region, expect } = options;
  const regional = region === "GB" || region === "US" ? ambiguity.regions[region] : undefined;
  const candidates = regional ?? ambiguity.candidates;
  const fitting = candidates.filter((code) => unitByCode(code)?.dimension === expect);
  const codes = fitting.length > 0 ? fitting : candidates;
  return codes.length === 1 ? { codes } : { codes, ask: `“${spelling.trim()}” may be ${ambiguity.ask}` };
}
