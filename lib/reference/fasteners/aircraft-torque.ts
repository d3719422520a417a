import { sheet, source, words } from "../sheet.ts";
import type { Source } from "../source.ts";

/** Torque in lbf in of lightly stressed aircraft nuts, oil-free cadmium-plated threads. */
const rows = sheet(
  { thread: words, tension: words, shear: words, maxTension: words, maxShear: words, source },
  `
  thread   tension    shear     maxTension maxShear source
  #8-36    12-15      7-9       20         12       faa
  #10-32   20-25      12-15     40         25       faa
  1/4-28   50-70      30-40     100        60       faa
  5/16-24  100-140    60-85     225        140      faa
  3/8-24   160-190    95-110    390        240      faa
  7/16-20  450-500    270-300   840        500      faa
  1/2-20   480-690    290-410   1100       660      faa
  9/16-18  800-1000   480-600   1600       960      faa
  5/8-18   1100-1300  600-780   2400       1400     faa
  3/4-16   2300-2500  1300-1500 5000       3000     faa
  7/8-14   2500-3000  1500-1800 7000       4200     faa
  1-14     3700-5500  2200-3300 10000      6000     faa
  1-1/8-12 5000-7000  3000-4200 15000      9000     faa
  1-1/4-12 9000-11000 5400-6600 25000      15000    faa
  #8-32    12-15      7-9       20         12       faa
  #10-24   20-25      12-15     35         21       faa
  1/4-20   40-50      25-30     75         45       faa
  5/16-18  80-90      48-55     160        100      faa
  3/8-16   160-185    95-100    275        170      faa
  7/16-14  235-255    140-155   475        280      faa
  1/2-13   400-480    240-290   880        520      faa
  9/16-12  500-700    300-420   1100       650      faa
  5/8-11   700-900    420-540   1500       900      faa
  3/4-10   1150-1600  700-950   2500       1500     faa
  7/8-9    2200-3000  1300-1800 4600       2700     faa
  `,
);

/** One row of FAA AC 43.13-1B, table 7-1, in lbf in: well below T = K d F, being for 40 ksi in tension. */
export interface AircraftTorque {
  thread: string;
  tensionNut: [number, number];
  shearNut: [number, number];
  maxTension: number;
  maxShear: number;
  source: Source;
}

const range = (text: string): [number, number] => {
  const [low = Number.NaN, high = Number.NaN] = text.split("-").map(Number);
  return [low, high];
};

export const aircraftTorques: readonly AircraftTorque[] = rows.map((row) => ({
  thread: row.thread,
  tensionNut: range(row.tension),
  shearNut: range(row.shear),
  maxTension: Number(row.maxTension),
  maxShear: Number(row.maxShear),
  source: row.source,
}));

/** The row for a size and threads an inch: "1/4-28", "#8-36". */
export const aircraftTorque = (thread: string): AircraftTorque | undefined =>
  aircraftTorques.find((row) => row.thread === thread);
