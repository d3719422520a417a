import { number, sheet, source } from "../sheet.ts";
import { inch, type Thread } from "./thread.ts";

/** British Association threads, BS 93: all figures in mm, after the standard's own rounding. */
const rows = sheet(
  { ba: number, pitch: number, major: number, effective: number, minor: number, source },
  `
  ba pitch major effective minor source
  0  1.00  6.00  5.400 4.80 bs93
  1  0.90  5.30  4.760 4.22 bs93
  2  0.81  4.70  4.215 3.73 bs93
  3  0.73  4.10  3.660 3.22 bs93
  4  0.66  3.60  3.205 2.81 bs93
  5  0.59  3.20  2.845 2.49 bs93
  6  0.53  2.80  2.480 2.16 bs93
  7  0.48  2.50  2.210 1.92 bs93
  8  0.43  2.20  1.940 1.68 bs93
  9  0.39  1.90  1.665 1.43 bs93
  10 0.35  1.70  1.490 1.28 bs93
  11 0.31  1.50  1.315 1.13 bs93
  12 0.28  1.30  1.130 0.96 bs93
  13 0.25  1.20  1.050 0.90 bs93
  14 0.23  1.00  0.860 0.72 bs93
  15 0.21  0.90  0.775 0.65 bs93
  16 0.19  0.79  0.675 0.56 bs93
  `,
);

/** BA threads with their basic sizes. */
export const baThreads: Thread[] = rows.map(({ ba, source, ...sizes }) => ({
  name: `${ba} BA`,
  system: "BA",
  series: "BA",
  size: `${ba}`,
  form: "47.5° rounded (BA)",
  angle: 47.5,
  ...sizes,
  native: "mm",
  source,
  formSource: source,
}));

/** Threads an inch to which a pitch in mm comes. */
export const tpiOfPitch = (pitch: number): number => inch / pitch;
