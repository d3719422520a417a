import { type FrameRate, readFrameTimecode, readRate, sayFrameTimecode } from "#lib/time/index.ts";
import type { Adapter } from "../row.ts";

/** A frame's label; reading the label must give the frame again. */
export const adapter: Adapter = ({ input }) => {
  const rate = readRate(`${input.fps}`) as FrameRate;
  const frame = BigInt(input.frames as number);
  const timecode = sayFrameTimecode(frame, rate, input.drop === true);
  const back = readFrameTimecode(timecode, rate);
  return back.ok && back.timecode.frame === frame ? { timecode } : { note: "it does not read back" };
};
