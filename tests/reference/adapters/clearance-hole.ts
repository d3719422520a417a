import { clearanceFor, hexagonsOf } from "#lib/reference/index.ts";
import { first, threads } from "../read/figures.ts";
import type { Adapter } from "../row.ts";

export const adapter: Adapter = ({ input }) => {
  const thread = first(threads(input.text), "the thread");
  const fits = new Map(clearanceFor(thread)?.fits.map(({ fit, drill }) => [fit, drill.mm]));
  const [hexagon] = hexagonsOf(thread);
  return {
    fine_mm: fits.get("fine"),
    medium_mm: fits.get("medium"),
    coarse_mm: fits.get("coarse"),
    close_mm: fits.get("close"),
    free_mm: fits.get("free"),
    s_mm: hexagon?.mm,
    s_in: hexagon && hexagon.mm / 25.4,
  };
};
