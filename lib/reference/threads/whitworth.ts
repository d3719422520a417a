import { number, sheet, source, words } from "../sheet.ts";
import { sourceNamed } from "../source.ts";
import { whitworthForm } from "./form.ts";
import { inch, sizeOf, type Thread } from "./thread.ts";

/** British Standard Whitworth (BSW) and fine (BSF): size in inches, threads an inch. Sizes marked BSW stand in the coarse series. */
const rows = sheet(
  { size: words, tpi: number, series: words, source },
  `
  size  tpi   series source
  1/16  60    BSW bs84
  3/32  48    BSW bs84
  1/8   40    BSW bs84
  5/32  32    BSW bs84
  3/16  24    BSW bs84
  7/32  24    BSW bs84
  1/4   20    BSW bs84
  5/16  18    BSW bs84
  3/8   16    BSW bs84
  7/16  14    BSW bs84
  1/2   12    BSW bs84
  9/16  12    BSW bs84
  5/8   11    BSW bs84
  11/16 11    BSW bs84
  3/4   10    BSW bs84
  7/8   9     BSW bs84
  1     8     BSW bs84
  1-1/8 7     BSW bs84
  1-1/4 7     BSW bs84
  1-3/8 6     BSW bs84
  1-1/2 6     BSW bs84
  1-5/8 5     BSW bs84
  1-3/4 5     BSW bs84
  1-7/8 4.5   BSW bs84
  2     4.5   BSW bs84
  2-1/4 4     BSW bs84
  2-1/2 4     BSW bs84
  2-3/4 3.5   BSW bs84
  3     3.5   BSW bs84
  3-1/4 3.25  BSW bs84
  3-1/2 3.25  BSW bs84
  3-3/4 3     BSW bs84
  4     3     BSW bs84
  4-1/2 2.875 BSW bs84large
  5     2.75  BSW bs84
  5-1/2 2.625 BSW bs84
  6     2.5   BSW bs84
  3/16  32    BSF bs84
  7/32  28    BSF bs84
  1/4   26    BSF bs84
  9/32  26    BSF bs84
  5/16  22    BSF bs84
  3/8   20    BSF bs84
  7/16  18    BSF bs84
  1/2   16    BSF bs84
  9/16  16    BSF bs84
  5/8   14    BSF bs84
  11/16 14    BSF bs84
  3/4   12    BSF bs84
  13/16 12    BSF bs84
  7/8   11    BSF bs84
  1     10    BSF bs84
  1-1/8 9     BSF bs84
  1-1/4 9     BSF bs84
  1-3/8 8     BSF bs84
  1-1/2 8     BSF bs84
  1-5/8 8     BSF bs84
  1-3/4 7     BSF bs84
  2     7     BSF bs84
  2-1/4 6     BSF bs84
  2-1/2 6     BSF bs84
  2-3/4 6     BSF bs84
  3     5     BSF bs84
  3-1/4 5     BSF bs84
  3-1/2 4.5   BSF bs84
  3-3/4 4.5   BSF bs84
  4     4.5   BSF bs84
  4-1/4 4     BSF bs84
  `,
);

/** Brass thread: Whitworth form, 26 to the inch whatever the diameter. */
const brass = ["1/4", "5/16", "3/8", "7/16", "1/2", "9/16", "5/8", "3/4", "7/8", "1"];

/** Threads of Whitworth form with their basic sizes. */
export const whitworthThreads: Thread[] = [
  ...rows.map((row) => whitworthThread(row)),
  ...brass.map((size) => whitworthThread({ size, tpi: 26, series: "BSB", source: sourceNamed("brass26") })),
];

function whitworthThread(row: {
  size: string;
  tpi: number;
  series: string;
  source: Thread["source"];
}): Thread {
  const major = sizeOf(row.size) * inch;
  return {
    name: `${row.size} ${row.series}`,
    system: row.series as "BSW" | "BSF" | "BSB",
    series: row.series,
    size: row.size,
    form: "55° rounded (Whitworth)",
    angle: 55,
    major,
    ...whitworthForm(major, inch / row.tpi),
    pitch: inch / row.tpi,
    tpi: row.tpi,
    native: "in",
    source: row.source,
    formSource: sourceNamed("bs84formula"),
  };
}
