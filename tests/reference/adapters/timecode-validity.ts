import { type FrameRate, readFrameTimecode, readRate } from "#lib/time/index.ts";
import type { Adapter } from "../row.ts";

export const adapter: Adapter = ({ input }) => ({
  valid: readFrameTimecode(`${input.timecode}`, readRate(`${input.fps}`) as FrameRate).ok,
});
