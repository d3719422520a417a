import { number, sheet, source, words } from "../sheet.ts";
import type { Source } from "../source.ts";
import { inch } from "../threads/thread.ts";

export type JawScale = "Whitworth" | "BA" | "metric" | "AF";

/** A spanner, or the hexagon it fits. */
export interface Jaw {
  /** What is stamped on it: "1/4 W, 5/16 BSF", "2 BA", "10 mm", "7/16 AF". */
  name: string;
  scale: JawScale;
  /** Across flats in mm. */
  mm: number;
  /** Threads whose heads have this size, as far as a table says. */
  heads: string[];
  source: Source;
}

/**
 * Whitworth and BSF hexagons, inches across flats. `w` is the size stamped for the older, larger Whitworth
 * hexagon; a BSF head, and a Whitworth head of the war years and after (BS 1083), is one size smaller.
 */
const whitworth = sheet(
  { w: words, bs: words, inches: number, source },
  `
  w     bs    inches source
  1/8   -     0.338  whitworthHexMemory
  3/16  1/4   0.445  whitworthHex
  1/4   5/16  0.525  whitworthHex
  5/16  3/8   0.600  whitworthHex
  3/8   7/16  0.710  whitworthPairs
  7/16  1/2   0.820  whitworthHex
  1/2   9/16  0.920  whitworthHex
  9/16  5/8   1.010  whitworthHex
  5/8   11/16 1.100  whitworthHex
  11/16 3/4   1.200  whitworthHex
  3/4   7/8   1.300  whitworthHex
  7/8   1     1.480  whitworthHexMemory
  1     1-1/8 1.670  whitworthHexMemory
  1-1/8 1-1/4 1.860  whitworthHexMemory
  1-1/4 1-3/8 2.050  whitworthHexMemory
  1-3/8 1-1/2 2.220  whitworthHexMemory
  1-1/2 1-5/8 2.410  whitworthHexMemory
  `,
);

/** BA hexagons, inches across flats: 1.75 times the diameter. */
const ba = sheet(
  { size: words, inches: number, source },
  `
  size inches source
  0    0.413  baHex
  1    0.365  baHex
  2    0.324  baHex
  3    0.282  baHex
  4    0.248  baHex
  5    0.220  baHex
  6    0.193  baHex
  7    0.172  baHex
  8    0.152  baHex
  9    0.131  baHex
  10   0.117  baHex
  `,
);

/** Metric hexagons of ISO 272, mm across flats, and the older sizes of DIN 931 and 934. */
const metric = sheet(
  { thread: words, mm: number, source },
  `
  thread mm   source
  M1.6   3.2  iso272
  M2     4    iso272
  M2.5   5    iso272
  M3     5.5  iso272
  M3.5   6    iso272
  M4     7    iso272
  M5     8    iso272
  M6     10   iso272
  M7     11   iso272memory
  M8     13   iso272
  M10    16   iso272
  M10    17   din931
  M12    18   iso272
  M12    19   din931
  M14    21   iso272memory
  M14    22   din931
  M16    24   iso272
  M18    27   iso272
  M20    30   iso272
  M22    34   iso272
  M22    32   din931
  M24    36   iso272
  M27    41   iso272
  M30    46   iso272
  M33    50   iso272
  M36    55   iso272
  M39    60   iso272
  M42    65   iso272
  M45    70   iso272
  M48    75   iso272
  M52    80   iso272
  M56    85   iso272
  M60    90   iso272
  M64    95   iso272memory
  `,
);

/** Inch hexagons, across flats (AF), and the unified bolt whose head has that size. */
const inches = sheet(
  { thread: words, size: words, source },
  `
  thread   size    source
  #8       1/4     asmeB1821memory
  #10      5/16    asmeB1821memory
  1/4      7/16    asmeB1821
  5/16     1/2     asmeB1821
  3/8      9/16    asmeB1821
  7/16     5/8     asmeB1821
  7/16_nut 11/16   asmeB1821memory
  1/2      3/4     asmeB1821
  9/16     13/16   asmeB1821
  9/16_nut 7/8     asmeB1821memory
  5/8      15/16   asmeB1821
  3/4      1-1/8   asmeB1821
  7/8      1-5/16  asmeB1821
  1        1-1/2   asmeB1821
  1-1/8    1-11/16 asmeB1821memory
  1-1/4    1-7/8   asmeB1821memory
  1-3/8    2-1/16  asmeB1821memory
  1-1/2    2-1/4   asmeB1821memory
  `,
);

export const whitworthRows = whitworth;
export const baRows = ba;
export const metricRows = metric;
export const inchRows = inches;

export const whitworthJaws: Jaw[] = whitworth.map(({ w, bs, inches: size, source }) => ({
  name: bs === "-" ? `${w} W` : `${w} W, ${bs} BS`,
  scale: "Whitworth",
  mm: size * inch,
  heads: [
    `${w} BSW (large hexagon)`,
    ...(bs === "-" ? [] : [`${bs} BSF`, `${bs} BSW (small hexagon, BS 1083)`]),
  ],
  source,
}));

export const baJaws: Jaw[] = ba.map(({ size, inches: flats, source }) => ({
  name: `${size} BA`,
  scale: "BA",
  mm: flats * inch,
  heads: [`${size} BA`],
  source,
}));
