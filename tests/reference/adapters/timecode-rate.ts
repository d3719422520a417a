import { exact } from "#lib/rational/index.ts";
import { droppedAtMinute, type FrameRate, readRate } from "#lib/time/index.ts";
import type { Adapter } from "../row.ts";

export const adapter: Adapter = ({ input }) => {
  const rate = readRate(`${input.written_rate ?? input.rate}`) as FrameRate;
  return { nearest_smpte_rate: exact(rate), valid: input.drop !== true || droppedAtMinute(rate) > 0n };
};
