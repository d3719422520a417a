import { ambiguousTable, expectedTable } from "./ambiguous-units.ts";
import { divide, multiply, one, type Rational, rational } from "./rational.ts";
import { pieceEnds, spellingKey } from "./spelling.ts";
import { plainSigns } from "./text.ts";
import type { Dimension } from "./types.ts";
import { rareTable, unitTable } from "./unit-table.ts";

/** One row of the unit table. */
export interface Unit {
  ucum: string;
  dimension: Dimension;
  /** Exact factor to the SI unit, times pi where `pi` is 1. */
  factor: Rational;
  pi: 0 | 1 | -1;
  /** The spelling used where nobody's own is at hand. */
  symbol: string;
  spellings: string[];
  /** UCUM code of the unit the other system uses for it. */
  other: string | null;
  source: string;
}

/** A spelling that may be several units, with what settles it. */
export interface Ambiguity {
  candidates: string[];
  regions: { GB?: string[]; US?: string[] };
  ask: string;
}

const cells = (table: string): string[][] =>
  table
    .trim()
    .split("\n")
    .map((line) => line.split("|").map((cell) => cell.trim()));

function factorOf(text: string): { factor: Rational; pi: 0 | 1 | -1 } {
  let pi: 0 | 1 | -1 = 0;
  let factor = one;
  for (const [, sign = "*", term = ""] of text.matchAll(/([*/]?)([^*/]+)/g)) {
    if (term === "pi") pi = sign === "/" ? -1 : 1;
    else factor = (sign === "/" ? divide : multiply)(factor, rational(term));
  }
  return { factor, pi };
}

function unitOf([
  ucum = "",
  dimension = "",
  factor = "",
  spelt = "",
  other = "",
  source = "",
]: string[]): Unit {
  const spellings = spelt.split(", ");
  return {
    ucum,
    dimension: dimension as Dimension,
    ...factorOf(factor),
    symbol: spellings[0] ?? ucum,
    spellings,
    other: other || null,
    source,
  };
}

/** Every unit known, in the order of the table. */
export const units: readonly Unit[] = cells(`${unitTable.trim()}\n${rareTable.trim()}`).map(unitOf);

const sortedCode = (ucum: string): string =>
  /^[^/]+\.[^/]+$/.test(ucum) ? ucum.split(".").sort().join(".") : ucum;
const byCode = new Map(
  units.flatMap(
    (unit) =>
      [
        [unit.ucum, unit],
        [sortedCode(unit.ucum), unit],
      ] as const,
  ),
);
const plain: Unit = {
  ucum: "1",
  dimension: "number",
  factor: one,
  pi: 0,
  symbol: "",
  spellings: [],
  other: null,
  source: "",
};
byCode.set("1", plain);

/** The unit of a UCUM code ("[lbf_av].[ft_i]" and "[ft_i].[lbf_av]" are one), or null. */
export function unitByCode(ucum: string): Unit | null {
  return byCode.get(ucum) ?? byCode.get(sortedCode(ucum)) ?? null;
}

/** Of every first piece of a spelling, the most pieces that a spelling beginning with it has. */
const piecesOfFirst = new Map<string, number>();

function learnPieces(spelling: string): void {
  const plain = plainSigns(spelling).replaceAll("/", " per ");
  for (const form of [plainSigns(spelling), plain]) {
    const ends = pieceEnds(form, 0, 9);
    const first = form.slice(0, ends[0] ?? 0).toLowerCase();
    piecesOfFirst.set(first, Math.max(ends.length, piecesOfFirst.get(first) ?? 0));
  }
}

/** The most pieces of a spelling that begins with this piece; 0 where none does. */
export const mostPieces = (first: string): number => piecesOfFirst.get(first.toLowerCase()) ?? 0;

const bySpelling = new Map<string, Unit>();
const folded = new Map<string, Unit | null>();
for (const unit of units) for (const spelling of unit.spellings) learn(spelling, unit);

function learn(spelling: string, unit: Unit): void {
  learnPieces(spelling);
  const key = spellingKey(spelling);
  for (const form of new Set([key, key.replaceAll(" ", "")])) {
    learnPieces(form);
    if (!bySpelling.has(form)) bySpelling.set(form, unit);
    const fold = form.toLowerCase();
    const same = folded.get(fold);
    folded.set(fold, same === undefined || same === unit ? unit : null);
  }
}

/** The spellings that are not plain, for each dimension of a field; under "" whatever the field. */
const ambiguities = new Map<string, Map<string, Ambiguity>>();
for (const [spelt = "", ...row] of cells(ambiguousTable)) learnAmbiguity(spelt, "", row);
for (const [spelt = "", expected = "", ...row] of cells(expectedTable)) learnAmbiguity(spelt, expected, row);

function learnAmbiguity(
  spelt: string,
  expected: string,
  [codes = "", GB = "-", US = "-", ask = ""]: string[],
): void {
  const regions = {
    ...(GB === "-" ? {} : { GB: GB.split(", ") }),
    ...(US === "-" ? {} : { US: US.split(", ") }),
  };
  const ofField = ambiguities.get(expected) ?? new Map<string, Ambiguity>();
  ambiguities.set(expected, ofField);
  for (const spelling of spelt.split(", ")) {
    const key = spellingKey(spelling);
    const ambiguity = { candidates: codes.split(", "), regions, ask };
    learnPieces(spelling);
    learnPieces(key.replaceAll(" ", ""));
    for (const form of [key, key.replaceAll(" ", "")]) ofField.set(form, ambiguity);
  }
}

/** The unit spelt so: by the letters as they stand, else without regard to capitals where that is plain. */
export function unitBySpelling(key: string): Unit | null {
  return bySpelling.get(key) ?? (key.length > 1 ? (folded.get(key.toLowerCase()) ?? null) : null);
}

/** What a spelling may mean where it is not plain; `expected` is the dimension of the field, if known. */
export function ambiguityOf(key: string, expected?: Dimension): Ambiguity | null {
  return (expected === undefined ? null : ambiguityIn(expected, key)) ?? ambiguityIn("", key);
}

function ambiguityIn(field: string, key: string): Ambiguity | null {
  const known = ambiguities.get(field);
  return known?.get(key) ?? (key.length > 2 ? known?.get(key.toLowerCase()) : undefined) ?? null;
}
