import { number, sheet, source, words } from "../sheet.ts";
import { sourceNamed } from "../source.ts";
import { cycleForm } from "./form.ts";
import { inch, sizeOf, type Thread } from "./thread.ts";

/** Cycle threads (CEI, later BS 811): size in inches, threads an inch. The 20 tpi sizes carry a doubt of their own. */
const rows = sheet(
  { size: words, tpi: number, source },
  `
  size  tpi source
  1/8   40  bs811
  5/32  32  bs811
  3/16  32  bs811
  1/4   26  bs811
  5/16  26  bs811
  3/8   26  bs811
  7/16  26  bs811
  7/16  20  cycleCoarse
  1/2   26  bs811
  1/2   20  cycleCoarse
  9/16  26  bs811
  9/16  20  cycleCoarse
  5/8   20  cycleCoarse
  3/4   20  cycleCoarse
  1     26  bs811
  1.370 24  bs811
  `,
);

/** Cycle threads with their basic sizes. */
export const cycleThreads: Thread[] = rows.map(({ size, tpi, source }) => {
  const major = sizeOf(size) * inch;
  return {
    name: `${size}-${tpi} BSC`,
    system: "BSC",
    series: "BSC",
    size,
    form: "60° rounded (cycle)",
    angle: 60,
    major,
    ...cycleForm(major, inch / tpi),
    pitch: inch / tpi,
    tpi,
    native: "in",
    source,
    formSource: sourceNamed("bs811"),
  };
});
