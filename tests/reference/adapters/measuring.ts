import {
  combinedUncertainty,
  expandedUncertainty,
  resolutionSuits,
  uncertaintyOfLimits,
  uncertaintyOfResolution,
  uncertaintyRatio,
} from "#lib/reference/index.ts";
import { ends, figures, first, inUnit, of } from "../read/figures.ts";
import type { Adapter } from "../row.ts";

/** How wide a tolerance is in mm: both sides of a ±, from end to end of a range, or as said. */
function widthIn(text: string): number {
  const limit = first(figures(text), "the tolerance");
  if (limit.qualifier === "either way") return 2 * inUnit(limit, "mm");
  const [low, high] = ends(limit, "mm");
  return limit.high ? Math.abs(high - low) : low;
}

export const adapter: Adapter = ({ input }) => {
  const { text } = input;
  const lengths = of(text, "length", "mm");
  const [size = Number.NaN] = lengths;
  const last = lengths.at(-1) ?? Number.NaN;
  if (/U95/.test(text)) {
    const { ratio, enough } = uncertaintyRatio(widthIn(text), last);
    return { TUR: ratio, meets_4_to_1: enough };
  }
  if (/rectangular/.test(text)) return { mm: uncertaintyOfLimits(size) };
  if (/uncertainty from a resolution/.test(text)) return { mm: uncertaintyOfResolution(size) };
  if (/combine|, u /.test(text)) {
    const combined = combinedUncertainty(...lengths);
    return { uc_mm: combined, U_k2_mm: expandedUncertainty(combined) };
  }
  const { suits, needed, ratio } = resolutionSuits(widthIn(text), last);
  return { suitable: suits, needed_mm: needed, resolution_over_tolerance: ratio };
};
