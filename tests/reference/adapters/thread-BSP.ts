import { first, threads } from "../read/figures.ts";
import type { Adapter } from "../row.ts";

export const adapter: Adapter = ({ input }) => {
  const thread = first(threads(input.text), "the thread");
  return {
    tpi: thread.tpi,
    angle_deg: thread.angle,
    pitch_mm: thread.pitch,
    major_mm: thread.major,
    minor_mm: thread.minor,
    effective_mm: thread.effective,
  };
};
