import { columnMm } from "../ask/reply.ts";
import type { Source } from "../source.ts";

/** A row: its cells, and every source that its figures have. */
export interface BookRow {
  cells: string[];
  sources: Source[];
}

/** A table as it is shown: a row a line, each with its sources. */
export interface BookTable {
  /** For addresses: "bsf", "iso-273". */
  id: string;
  title: string;
  standard: string;
  columns: string[];
  rows: () => BookRow[];
}

/** Tables that belong together. */
export interface BookChapter {
  title: string;
  tables: BookTable[];
}

/** Millimetres to three places, with blanks for the noughts left away, so that points stand in line. */
export const mm = (value: number | undefined): string => (value === undefined ? "–" : columnMm(value));

/** A size in mm as inches to four places. */
export const inches = (value: number | undefined): string =>
  value === undefined ? "–" : (value / 25.4).toFixed(4);

/** A number, or a dash. */
export const orDash = (value: number | string | undefined): string =>
  value === undefined ? "–" : `${value}`;
