import { number, sheet, source } from "../sheet.ts";
import type { Source } from "../source.ts";

/** Standard tolerances of ISO 286-1 in µm, by size in mm. The upper end of a size step belongs to it. */
export const gradeRows = sheet(
  {
    over: number,
    upTo: number,
    IT01: number,
    IT0: number,
    IT1: number,
    IT2: number,
    IT3: number,
    IT4: number,
    IT5: number,
    IT6: number,
    IT7: number,
    IT8: number,
    IT9: number,
    IT10: number,
    IT11: number,
    IT12: number,
    IT13: number,
    IT14: number,
    IT15: number,
    IT16: number,
    IT17: number,
    IT18: number,
    source,
  },
  `
  over upTo IT01  IT0   IT1   IT2   IT3   IT4   IT5   IT6   IT7   IT8   IT9   IT10  IT11  IT12  IT13  IT14  IT15  IT16  IT17  IT18  source
  0    3    0.3   0.5   0.8   1.2   2     3     4     6     10    14    25    40    60    100   140   250   400   600   1000  1400  iso286it
  3    6    0.4   0.6   1     1.5   2.5   4     5     8     12    18    30    48    75    120   180   300   480   750   1200  1800  iso286it
  6    10   0.4   0.6   1     1.5   2.5   4     6     9     15    22    36    58    90    150   220   360   580   900   1500  2200  iso286it
  10   18   0.5   0.8   1.2   2     3     5     8     11    18    27    43    70    110   180   270   430   700   1100  1800  2700  iso286it
  18   30   0.6   1     1.5   2.5   4     6     9     13    21    33    52    84    130   210   330   520   840   1300  2100  3300  iso286it
  30   50   0.6   1     1.5   2.5   4     7     11    16    25    39    62    100   160   250   390   620   1000  1600  2500  3900  iso286it
  50   80   0.8   1.2   2     3     5     8     13    19    30    46    74    120   190   300   460   740   1200  1900  3000  4600  iso286it
  80   120  1     1.5   2.5   4     6     10    15    22    35    54    87    140   220   350   540   870   1400  2200  3500  5400  iso286it
  120  180  1.2   2     3.5   5     8     12    18    25    40    63    100   160   250   400   630   1000  1600  2500  4000  6300  iso286it
  180  250  2     3     4.5   7     10    14    20    29    46    72    115   185   290   460   720   1150  1850  2900  4600  7200  iso286it
  250  315  2.5   4     6     8     12    16    23    32    52    81    130   210   320   520   810   1300  2100  3200  5200  8100  iso286it
  315  400  3     5     7     9     13    18    25    36    57    89    140   230   360   570   890   1400  2300  3600  5700  8900  iso286it
  400  500  4     6     8     10    15    20    27    40    63    97    155   250   400   630   970   1550  2500  4000  6300  9700  iso286it
  `,
);

/** A standard tolerance. */
export interface Grade {
  /** µm. */
  um: number;
  /** The step of sizes in mm: over the first, up to and including the second. */
  over: number;
  upTo: number;
  source: Source;
}

/** The standard tolerance of a grade ("7", "01") at a size in mm, to 500 mm; nothing beyond. */
export function toleranceGrade(size: number, grade: string | number): Grade | undefined {
  const row = gradeRows.find(({ over, upTo }) => size > over && size <= upTo);
  const um = row?.[`IT${grade}` as keyof typeof row];
  return row && typeof um === "number"
    ? { um, over: row.over, upTo: row.upTo, source: row.source }
    : undefined;
}
