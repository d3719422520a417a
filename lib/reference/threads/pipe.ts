import { number, sheet, source, words } from "../sheet.ts";
import { inch, type Thread } from "./thread.ts";

/** British standard pipe, parallel (ISO 228-1): size of the pipe, then figures in mm. The size is not a diameter. */
const bsp = sheet(
  { size: words, tpi: number, pitch: number, major: number, minor: number, source },
  `
  size  tpi pitch major   minor   source
  1/16  28  0.907 7.723   6.561   iso228
  1/8   28  0.907 9.728   8.566   iso228
  1/4   19  1.337 13.157  11.445  iso228
  3/8   19  1.337 16.662  14.950  iso228
  1/2   14  1.814 20.955  18.632  iso228
  5/8   14  1.814 22.911  20.588  iso228
  3/4   14  1.814 26.441  24.118  iso228
  7/8   14  1.814 30.201  27.878  iso228
  1     11  2.309 33.249  30.292  iso228
  1-1/8 11  2.309 37.897  34.940  iso228
  1-1/4 11  2.309 41.910  38.953  iso228
  1-3/8 11  2.309 44.320  41.363  iso228
  1-1/2 11  2.309 47.803  44.846  iso228
  1-3/4 11  2.309 53.746  50.789  iso228
  2     11  2.309 59.614  56.657  iso228
  2-1/4 11  2.309 65.710  62.753  iso228
  2-1/2 11  2.309 75.184  72.227  iso228
  2-3/4 11  2.309 81.534  78.577  iso228
  3     11  2.309 87.884  84.927  iso228
  3-1/2 11  2.309 100.330 97.373  iso228
  4     11  2.309 113.030 110.073 iso228
  4-1/2 11  2.309 125.730 122.773 iso228
  5     11  2.309 138.430 135.473 iso228
  5-1/2 11  2.309 151.130 148.173 iso228
  6     11  2.309 163.830 160.873 iso228
  `,
);

/** American taper pipe (ASME B1.20.1): threads an inch and the outside diameter of the pipe in mm. */
const npt = sheet(
  { size: words, tpi: number, major: number, source },
  `
  size  tpi  major   source
  1/16  27   7.938   asmeB1201
  1/8   27   10.287  asmeB1201
  1/4   18   13.716  asmeB1201
  3/8   18   17.145  asmeB1201
  1/2   14   21.336  asmeB1201
  3/4   14   26.670  asmeB1201
  1     11.5 33.401  asmeB1201
  1-1/4 11.5 42.164  asmeB1201
  1-1/2 11.5 48.260  asmeB1201
  2     11.5 60.325  asmeB1201
  2-1/2 8    73.025  asmeB1201
  3     8    88.900  asmeB1201
  3-1/2 8    101.600 asmeB1201
  4     8    114.300 asmeB1201
  5     8    141.300 asmeB1201
  6     8    168.275 asmeB1201
  `,
);

/** Pipe threads, parallel and taper. */
export const pipeThreads: Thread[] = [
  ...bsp.map(
    ({ size, source, ...figures }): Thread => ({
      name: `G ${size}`,
      system: "BSP",
      series: "BSP",
      size,
      form: "55° rounded (Whitworth)",
      angle: 55,
      ...figures,
      effective: (figures.major + figures.minor) / 2,
      native: "in",
      source,
      formSource: source,
    }),
  ),
  ...npt.map(
    ({ size, tpi, major, source }): Thread => ({
      name: `${size} NPT`,
      system: "NPT",
      series: "NPT",
      size,
      form: "60° flat, taper 1:16",
      angle: 60,
      major,
      pitch: inch / tpi,
      tpi,
      native: "in",
      source,
      formSource: source,
    }),
  ),
];
