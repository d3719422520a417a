import { rational, toPlaces } from "#lib/quantity/index.ts";
import type { Source } from "../source.ts";

/** One figure with its source. A length has `mm` and is shown in both systems; anything else is `value`. */
export interface Figure {
  label: string;
  mm?: number;
  value?: string;
  /** The same in the other system. */
  other?: string;
  source: Source;
}

/** Things side by side: a column each, a row for what is compared. */
export interface SideBySide {
  caption: string;
  columns: string[];
  rows: { label: string; cells: string[] }[];
  sources: Source[];
}

/** One answer: what it is about, the answer in a sentence, the figures, and what it is easily confused with. */
export interface Entry {
  title: string;
  about: string;
  says?: string;
  figures: Figure[];
  beside?: SideBySide;
  notes: string[];
}

/** What the reference says to a text. */
export interface Reply {
  /** How the text was read. */
  read: string;
  /** What has to be asked, where the text has several meanings; the entries then answer each. */
  ask?: string;
  entries: Entry[];
  /** Why there is no answer, and what can be asked instead. */
  nothing?: string;
}

const digits = (value: number): string => {
  const text = value.toFixed(9);
  return text.includes("e") ? "0" : text;
};

/** A length in millimetres to three places, as ISO 724 prints them; without trailing noughts. */
export const inMillimetres = (mm: number): string =>
  `${toPlaces(rational(digits(mm)), 3).replace(/\.?0+$/, "")}\u00a0mm`;

/** A length in inches to four places, as ASME B1.1 prints them. */
export const inInches = (mm: number): string => `${toPlaces(rational(digits(mm / 25.4)), 4)}\u00a0in`;

/** The same for a column headed "mm": no unit, and blanks for the noughts left away, so that points stand in line. */
export function columnMm(mm: number): string {
  const places = toPlaces(rational(digits(mm)), 3);
  const kept = places.replace(/\.?0+$/, "");
  return kept + "\u00a0".repeat(places.length - kept.length);
}

/** The same for a column headed "in". */
export const columnInches = (mm: number): string => toPlaces(rational(digits(mm / 25.4)), 4);

/** A length in both systems, in one line. */
export const bothWays = (mm: number): string => `${inInches(mm)} (${inMillimetres(mm)})`;

/** A number to so many places, without trailing noughts: 74 %, 25.5. */
export const short = (value: number, places = 2): string => `${Number(value.toFixed(places))}`;

/** A signed difference in mm, to two places: "+0.33 mm", "−0.03 mm". */
export const signed = (mm: number): string =>
  `${mm < -0.004 ? "−" : mm > 0.004 ? "+" : "±"}${Math.abs(mm).toFixed(2)}\u00a0mm`;

/** Sources without repetition, in order. */
export const distinct = (sources: readonly Source[]): Source[] => [...new Set(sources)];
