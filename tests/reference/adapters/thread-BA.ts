import { first, threads } from "../read/figures.ts";
import type { Adapter } from "../row.ts";

export const adapter: Adapter = ({ input }) => {
  const thread = first(threads(input.text), "the thread");
  return {
    pitch_mm: thread.pitch,
    angle_deg: thread.angle,
    major_mm: thread.major,
    effective_mm: thread.effective,
    minor_mm: thread.minor,
    tpi_equiv: 25.4 / thread.pitch,
  };
};
