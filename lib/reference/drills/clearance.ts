import { number, sheet, source, words } from "../sheet.ts";
import { type Source, sourceNamed } from "../source.ts";
import type { Thread } from "../threads/thread.ts";
import { type Drill, drillNamed, drillsNear } from "./drill.ts";

/** Clearance holes for metric screws, ISO 273, in mm. */
export const metricClearanceRows = sheet(
  { size: number, fine: number, medium: number, coarse: number, source },
  `
  size fine medium coarse source
  1    1.1  1.2    1.3    iso273
  1.2  1.3  1.4    1.5    iso273
  1.4  1.5  1.6    1.8    iso273
  1.6  1.7  1.8    2      iso273
  1.8  2    2.1    2.2    iso273
  2    2.2  2.4    2.6    iso273
  2.5  2.7  2.9    3.1    iso273
  3    3.2  3.4    3.6    iso273
  3.5  3.7  3.9    4.2    iso273
  4    4.3  4.5    4.8    iso273
  4.5  4.8  5      5.3    iso273
  5    5.3  5.5    5.8    iso273
  6    6.4  6.6    7      iso273
  7    7.4  7.6    8      iso273
  8    8.4  9      10     iso273
  10   10.5 11     12     iso273
  12   13   13.5   14.5   iso273
  14   15   15.5   16.5   iso273
  16   17   17.5   18.5   iso273
  18   19   20     21     iso273
  20   21   22     24     iso273
  22   23   24     26     iso273
  24   25   26     28     iso273
  27   28   30     32     iso273
  30   31   33     35     iso273
  33   34   36     38     iso273
  36   37   39     42     iso273
  39   40   42     45     iso273
  42   43   45     48     iso273
  45   46   48     52     iso273
  48   50   52     56     iso273
  52   54   56     62     iso273
  56   58   62     66     iso273
  60   62   66     70     iso273
  64   66   70     74     iso273
  68   70   74     78     iso273
  72   74   78     82     iso273
  76   78   82     86     iso273
  80   82   86     91     iso273
  85   87   91     96     iso273
  90   93   96     101    iso273
  95   98   101    107    iso273
  100  104  107    112    iso273
  `,
);

/** Clearance drills for inch screws: close and free fit. */
export const inchClearanceRows = sheet(
  { size: words, close: words, free: words, source },
  `
  size close     free     source
  #0   No._52    No._50   inchClearance
  #1   No._48    No._46   inchClearance
  #2   No._43    No._41   inchClearance
  #3   No._37    No._35   inchClearance
  #4   No._32    No._30   inchClearance
  #5   No._30    No._29   inchClearance
  #6   No._27    No._25   inchClearance
  #8   No._18    No._16   inchClearance
  #10  No._9     No._7    inchClearance
  #12  No._2     No._1    inchClearance
  1/4  letter_F  letter_H inchClearance
  5/16 letter_P  letter_Q inchClearance
  3/8  letter_W  letter_X inchClearance
  7/16 29/64_in  15/32_in inchClearance
  1/2  33/64_in  17/32_in inchClearance
  9/16 37/64_in  19/32_in inchClearance
  `,
);

/** Holes through which a screw passes. `fine`, `medium`, `coarse` are ISO 273's words; an inch screw has close and free. */
export interface Clearance {
  thread: Thread;
  fits: { fit: string; drill: Drill }[];
  source: Source;
}

/** The clearance holes of a thread: from a table where one has it, else the drill next above 1.05 of the diameter. */
export function clearanceFor(thread: Thread): Clearance | undefined {
  if (thread.system === "NPT" || thread.system === "BSP") return undefined;
  const row = metricClearanceRows.find(({ size }) => thread.system === "ISO metric" && size === thread.major);
  if (row) {
    const fits = (["fine", "medium", "coarse"] as const).map((fit) => ({ fit, drill: `${row[fit]} mm` }));
    return { thread, fits: fits.flatMap(named), source: row.source };
  }
  const inches = inchClearanceRows.find(({ size }) => thread.native === "in" && size === thread.size);
  if (inches) {
    const fits = (["close", "free"] as const).map((fit) => ({ fit, drill: inches[fit].replace("_", " ") }));
    return { thread, fits: fits.flatMap(named), source: inches.source };
  }
  const [near] = drillsNear(thread.major * 1.05, 3, ["metric"]).filter(({ mm }) => mm > thread.major);
  return near && { thread, fits: [{ fit: "usual", drill: near }], source: sourceNamed("clearanceRule") };
}

function named({ fit, drill }: { fit: string; drill: string }): { fit: string; drill: Drill }[] {
  const found = drillNamed(drill);
  return found ? [{ fit, drill: found }] : [];
}
