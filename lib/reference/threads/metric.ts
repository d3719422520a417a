import { number, sheet, source, words } from "../sheet.ts";
import { sourceNamed } from "../source.ts";
import { isoForm } from "./form.ts";
import type { Thread } from "./thread.ts";

/** ISO metric threads: diameter and pitch in mm, and the list that has the pair. ISO 262 is the selection of ISO 261 for screws. */
export const metricRows = sheet(
  { size: number, pitch: number, series: words, source },
  `
  size pitch series source
  1    0.25 coarse iso262
  1    0.2  fine   iso261
  1.1  0.25 coarse iso261
  1.1  0.2  fine   iso261
  1.2  0.25 coarse iso262
  1.2  0.2  fine   iso261
  1.4  0.3  coarse iso262
  1.4  0.2  fine   iso261
  1.6  0.35 coarse iso262
  1.6  0.2  fine   iso261
  1.8  0.35 coarse iso262
  1.8  0.2  fine   iso261
  2    0.4  coarse iso262
  2    0.25 fine   iso261
  2.2  0.45 coarse iso261
  2.2  0.25 fine   iso261
  2.5  0.45 coarse iso262
  2.5  0.35 fine   iso261
  3    0.5  coarse iso262
  3    0.35 fine   iso261
  3.5  0.6  coarse iso262
  3.5  0.35 fine   iso261
  4    0.7  coarse iso262
  4    0.5  fine   iso261
  4.5  0.75 coarse iso261
  4.5  0.5  fine   iso261
  5    0.8  coarse iso262
  5    0.5  fine   iso261
  5.5  0.5  fine   iso261
  6    1    coarse iso262
  6    0.75 fine   iso261
  7    1    coarse iso262
  7    0.75 fine   iso261
  8    1.25 coarse iso262
  8    1    fine   iso262
  8    0.75 fine   iso261
  9    1.25 coarse iso261
  9    1    fine   iso261
  9    0.75 fine   iso261
  10   1.5  coarse iso262
  10   1.25 fine   iso262
  10   1    fine   iso262
  10   0.75 fine   iso261
  11   1.5  coarse iso261
  11   1    fine   iso261
  11   0.75 fine   iso261
  12   1.75 coarse iso262
  12   1.5  fine   iso262
  12   1.25 fine   iso262
  12   1    fine   iso261
  14   2    coarse iso262
  14   1.5  fine   iso262
  14   1.25 fine   iso261
  14   1    fine   iso261
  15   1.5  fine   iso261
  15   1    fine   iso261
  16   2    coarse iso262
  16   1.5  fine   iso262
  16   1    fine   iso261
  17   1.5  fine   iso261
  17   1    fine   iso261
  18   2.5  coarse iso262
  18   2    fine   iso262
  18   1.5  fine   iso262
  18   1    fine   iso261
  20   2.5  coarse iso262
  20   2    fine   iso262
  20   1.5  fine   iso262
  20   1    fine   iso261
  22   2.5  coarse iso262
  22   2    fine   iso262
  22   1.5  fine   iso262
  22   1    fine   iso261
  24   3    coarse iso262
  24   2    fine   iso262
  24   1.5  fine   iso261
  24   1    fine   iso261
  25   2    fine   iso261
  25   1.5  fine   iso261
  25   1    fine   iso261
  27   3    coarse iso262
  27   2    fine   iso262
  27   1.5  fine   iso261
  27   1    fine   iso261
  28   2    fine   iso261
  28   1.5  fine   iso261
  28   1    fine   iso261
  30   3.5  coarse iso262
  30   3    fine   iso261
  30   2    fine   iso262
  30   1.5  fine   iso261
  30   1    fine   iso261
  32   2    fine   iso261
  32   1.5  fine   iso261
  33   3.5  coarse iso262
  33   3    fine   iso261
  33   2    fine   iso262
  33   1.5  fine   iso261
  35   2    fine   iso261
  35   1.5  fine   iso261
  36   4    coarse iso262
  36   3    fine   iso262
  36   2    fine   iso261
  36   1.5  fine   iso261
  39   4    coarse iso262
  39   3    fine   iso262
  39   2    fine   iso261
  39   1.5  fine   iso261
  40   3    fine   iso261
  40   2    fine   iso261
  40   1.5  fine   iso261
  42   4.5  coarse iso262
  42   4    fine   iso261
  42   3    fine   iso262
  42   2    fine   iso261
  42   1.5  fine   iso261
  45   4.5  coarse iso262
  45   4    fine   iso261
  45   3    fine   iso262
  45   2    fine   iso261
  45   1.5  fine   iso261
  48   5    coarse iso262
  48   4    fine   iso261
  48   3    fine   iso262
  48   2    fine   iso261
  48   1.5  fine   iso261
  50   3    fine   iso261
  50   2    fine   iso261
  50   1.5  fine   iso261
  52   5    coarse iso262
  52   4    fine   iso262
  52   3    fine   iso261
  52   2    fine   iso261
  52   1.5  fine   iso261
  56   5.5  coarse iso262
  56   4    fine   iso262
  56   3    fine   iso261
  56   2    fine   iso261
  56   1.5  fine   iso261
  60   5.5  coarse iso262
  60   4    fine   iso262
  60   3    fine   iso261
  60   2    fine   iso261
  60   1.5  fine   iso261
  64   6    coarse iso262
  64   4    fine   iso262
  64   3    fine   iso261
  64   2    fine   iso261
  64   1.5  fine   iso261
  68   6    coarse iso262
  68   4    fine   iso262
  68   3    fine   iso261
  68   2    fine   iso261
  68   1.5  fine   iso261
  72   6    fine   iso262
  72   4    fine   iso262
  76   6    fine   iso262
  76   4    fine   iso262
  80   6    fine   iso262
  80   4    fine   iso262
  85   6    fine   iso262
  85   4    fine   iso262
  90   6    fine   iso262
  90   4    fine   iso262
  95   6    fine   iso262
  95   4    fine   iso262
  100  6    fine   iso262
  100  4    fine   iso262
  `,
);

/** ISO metric threads with their basic sizes. */
export const metricThreads: Thread[] = metricRows.map(({ size, pitch, series, source }) => ({
  name: `M${size}x${pitch}`,
  system: "ISO metric",
  series: `ISO ${series}`,
  size: `${size}`,
  form: "60° flat (ISO)",
  angle: 60,
  major: size,
  ...isoForm(size, pitch),
  pitch,
  native: "mm",
  source,
  formSource: sourceNamed("iso724"),
}));

/** Whether the selection for screws, ISO 262, has this pair of diameter and pitch (mm). */
export const isInIso262 = (size: number, pitch: number): boolean =>
  metricRows.some((row) => row.size === size && row.pitch === pitch && row.source === sourceNamed("iso262"));
