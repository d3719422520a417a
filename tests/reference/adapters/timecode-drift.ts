import { toNumber } from "#lib/rational/index.ts";
import { type FrameRate, readFrameTimecode, readRate, timeOfFrame } from "#lib/time/index.ts";
import type { Adapter } from "../row.ts";

export const adapter: Adapter = ({ input }) => {
  const rate = readRate(`${input.fps}`) as FrameRate;
  const read = readFrameTimecode(`${input.timecode}`, rate, input.drop === true);
  if (!read.ok) return { note: read.why };
  const { frame } = read.timecode;
  return { frames: Number(frame), real_seconds: toNumber(timeOfFrame(frame, rate)) };
};
