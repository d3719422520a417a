import { number, sheet, source, words } from "../sheet.ts";
import { sourceNamed } from "../source.ts";
import { isoForm } from "./form.ts";
import { inch, sizeOf, type Thread } from "./thread.ts";

/** Unified threads: size (number or inches), threads an inch, series. */
const rows = sheet(
  { size: words, tpi: number, series: words, source },
  `
  size    tpi series source
  #0      80  UNF  asmeB11
  #1      64  UNC  asmeB11
  #1      72  UNF  asmeB11
  #2      56  UNC  asmeB11
  #2      64  UNF  asmeB11
  #3      48  UNC  asmeB11
  #3      56  UNF  asmeB11
  #4      40  UNC  asmeB11
  #4      48  UNF  asmeB11
  #5      40  UNC  asmeB11
  #5      44  UNF  asmeB11
  #6      32  UNC  asmeB11
  #6      40  UNF  asmeB11
  #8      32  UNC  asmeB11
  #8      36  UNF  asmeB11
  #10     24  UNC  asmeB11
  #10     32  UNF  asmeB11
  #12     24  UNC  asmeB11
  #12     28  UNF  asmeB11
  #12     32  UNEF asmeB11
  1/4     20  UNC  asmeB11
  1/4     28  UNF  asmeB11
  1/4     32  UNEF asmeB11
  5/16    18  UNC  asmeB11
  5/16    24  UNF  asmeB11
  5/16    32  UNEF asmeB11
  3/8     16  UNC  asmeB11
  3/8     24  UNF  asmeB11
  3/8     32  UNEF asmeB11
  7/16    14  UNC  asmeB11
  7/16    20  UNF  asmeB11
  7/16    28  UNEF asmeB11
  1/2     13  UNC  asmeB11
  1/2     20  UNF  asmeB11
  1/2     28  UNEF asmeB11
  9/16    12  UNC  asmeB11
  9/16    18  UNF  asmeB11
  9/16    24  UNEF asmeB11
  5/8     11  UNC  asmeB11
  5/8     18  UNF  asmeB11
  5/8     24  UNEF asmeB11
  11/16   24  UNEF asmeB11
  3/4     10  UNC  asmeB11
  3/4     16  UNF  asmeB11
  3/4     20  UNEF asmeB11
  13/16   20  UNEF asmeB11
  7/8     9   UNC  asmeB11
  7/8     14  UNF  asmeB11
  7/8     20  UNEF asmeB11
  15/16   20  UNEF asmeB11
  1       8   UNC  asmeB11
  1       12  UNF  asmeB11
  1       14  UNS  unsMemory
  1       20  UNEF asmeB11
  1-1/16  18  UNEF asmeB11
  1-1/8   7   UNC  asmeB11
  1-1/8   12  UNF  asmeB11
  1-1/8   18  UNEF asmeB11
  1-1/4   7   UNC  asmeB11
  1-1/4   12  UNF  asmeB11
  1-1/4   18  UNEF asmeB11
  1-5/16  18  UNEF asmeB11
  1-3/8   6   UNC  asmeB11
  1-3/8   12  UNF  asmeB11
  1-3/8   18  UNEF asmeB11
  1-7/16  18  UNEF asmeB11
  1-1/2   6   UNC  asmeB11
  1-1/2   12  UNF  asmeB11
  1-1/2   18  UNEF asmeB11
  1-9/16  18  UNEF asmeB11
  1-5/8   18  UNEF asmeB11
  1-11/16 18  UNEF asmeB11
  1-3/4   5   UNC  asmeB11
  2       4.5 UNC  asmeB11
  2-1/4   4.5 UNC  asmeB11
  2-1/2   4   UNC  asmeB11
  2-3/4   4   UNC  asmeB11
  3       4   UNC  asmeB11
  3-1/4   4   UNC  asmeB11
  3-1/2   4   UNC  asmeB11
  3-3/4   4   UNC  asmeB11
  4       4   UNC  asmeB11
  `,
);

/** Major diameter of a numbered screw in inches: 0.060 + 0.013 × number (ASME B1.1, B18.6.1). */
export const numberedDiameter = (screw: number): number => (60 + 13 * screw) / 1000;

const majorOf = (size: string): number =>
  size.startsWith("#") ? numberedDiameter(Number(size.slice(1))) : sizeOf(size);

/** Unified threads with their basic sizes. */
export const unifiedThreads: Thread[] = rows.map(({ size, tpi, series, source }) => {
  const major = majorOf(size) * inch;
  return {
    name: `${size}-${tpi} ${series}`,
    system: "UN",
    series,
    size,
    form: "60° flat (ISO)",
    angle: 60,
    major,
    ...isoForm(major, inch / tpi),
    pitch: inch / tpi,
    tpi,
    native: "in",
    source,
    formSource: sourceNamed("asmeB11formula"),
  };
});
