import type { TypedValue } from "#lib/mark/index.ts";
import { hardSpace, otherSystem, type Quantity, type Reading, read, units } from "#lib/quantity/index.ts";

/** A value as an output prints it: the letters that were typed, and the same in the other system of units. */
export interface PrintedValue {
  typed: string;
  /** Null where nothing was read, where both systems were typed, or where there is no other unit. */
  other: string | null;
}

export function printedValue(value: TypedValue): PrintedValue {
  const quantity = onlyQuantity(value);
  return { typed: value.typed.trim(), other: quantity ? otherSystemOf(quantity) : null };
}

/** The unit of a value as it was typed, the first where there are several: "in" of "0.4965 in". Empty where none is. */
export function unitOf(value: TypedValue | undefined): string {
  return value ? unitRead(read(value.typed)) : "";
}

function unitRead(reading: Reading): string {
  if (reading.kind === "question") return reading.candidates[0] ? unitRead(reading.candidates[0]) : "";
  return reading.kind === "quantity" ? (reading.quantities[0]?.unit ?? "") : "";
}

const firstWords = new Set(["off", ...units.flatMap(({ spellings }) => spellings.map(firstWord))]);

/** Short units of two words, such as "N m": with a short number before them they still fit a narrow cell in one piece. */
const pairs = units
  .flatMap(({ spellings }) => spellings)
  .filter((spelling) => /^\p{L}+ \p{L}+$/u.test(spelling) && spelling.length <= 7);
const afterShortNumber = `(?<=(?:^|[\\s(])[\\d.,/-]{1,5}${hardSpace})`;
const pairBehind = new RegExp(`${afterShortNumber}(?:${pairs.join("|")})(?![\\p{L}\\d])`, "gu");

/**
 * Ties each number to the unit behind it with a no-break space, so that no line ends between them. Other spaces
 * may break, also those that came as no-break ones: a whole value tied together is too long for a narrow cell.
 */
export function tieUnits(text: string): string {
  return text
    .replaceAll(hardSpace, " ")
    .replace(/(\d)[ \t]+(?=\d+\/\d)/g, `$1${hardSpace}`)
    .replace(/([±+−])[ \t]+(?=\d)/g, `$1${hardSpace}`)
    .replace(/(\d)[ \t]+(?=([^\s\d]\S{0,24}))/g, (all, digit: string, word: string) =>
      isUnit(word) ? `${digit}${hardSpace}` : all,
    )
    .replace(pairBehind, (unit) => unit.replace(" ", hardSpace));
}

function isUnit(word: string): boolean {
  return firstWords.has(word) || firstWords.has(word.replace(/[.,;:)\]]+$/, ""));
}

function firstWord(spelling: string): string {
  return spelling.split(" ")[0] as string;
}

/** What was read of a value, where that is one quantity. It lies on disk, so its form is not taken on trust. */
function onlyQuantity(value: TypedValue): Quantity | null {
  const reading = value.read as Partial<Reading & { kind: "quantity" }> | null | undefined;
  if (reading?.kind !== "quantity" || !Array.isArray(reading.quantities)) return null;
  return reading.quantities.length === 1 ? (reading.quantities[0] as Quantity) : null;
}

function otherSystemOf(quantity: Quantity): string | null {
  try {
    return otherSystem(quantity);
  } catch {
    return null;
  }
}
