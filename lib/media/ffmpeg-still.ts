import { type Frames, frameAt } from "#lib/time/index.ts";
import type { Ffmpeg } from "./find-ffmpeg.ts";
import { inputArguments, runFfmpeg } from "./run-ffmpeg.ts";
import { MediaError } from "./trouble.ts";

/** A frame as a picture, upright. */
export interface FfmpegStill {
  png: Buffer;
  /** Index of the frame in the recording's table. */
  index: number;
}

export interface FfmpegStillOptions {
  ffmpeg: Ffmpeg;
  path: string;
  frames: Frames;
  /** Seconds of the recording's clock; the frame whose interval holds it is taken. */
  moment: number;
  signal?: AbortSignal;
}

/** A frame is the one that was asked for when its own time is this near, in seconds. */
const tolerance = 0.002;

/**
 * Takes a still without a browser. ffmpeg gives the first frame at or after a time, so it is asked for half-way
 * between the frame wanted and the one before; and it says which frame it gave, which is checked. Where jumping
 * near the moment led to another frame, the recording is read from its beginning.
 *
 * @throws MediaError `no-frame` or `ffmpeg-failed`; RangeError when the table is empty
 */
export async function stillWithFfmpeg(options: FfmpegStillOptions): Promise<FfmpegStill> {
  const { frames, moment } = options;
  const index = frameAt(frames, moment);
  const start = frames.starts[index] as number;
  const gate = index === 0 ? start - tolerance / 2 : ((frames.starts[index - 1] as number) + start) / 2;
  for (const jump of gate > 3 ? [gate - 2, null] : [null]) {
    const { png, time } = await take(options, gate, jump);
    if (time !== null && Math.abs(time - start) <= tolerance) return { png, index };
  }
  throw new MediaError({
    kind: "no-frame",
    found: `ffmpeg did not give the frame at ${start.toFixed(3)} s.`,
    expected: "The frame whose interval holds the moment.",
    todo: "Take this still in the browser, or choose a neighbouring frame.",
  });
}

async function take({ ffmpeg, path, signal }: FfmpegStillOptions, gate: number, jump: number | null) {
  const near = jump === null ? [] : ["-noaccurate_seek", "-seek_timestamp", "1", "-ss", jump.toFixed(6)];
  const one = ["-map", "0:v:0", "-vf", `select=gte(t\\,${gate.toFixed(6)}),showinfo`, "-frames:v", "1"];
  const out = ["-fps_mode", "passthrough", "-f", "image2pipe", "-c:v", "png", "pipe:1"];
  const pieces: Buffer[] = [];
  const args = ["-v", "info", "-nostats", "-copyts", ...near, ...inputArguments(path), ...one, ...out];
  const said = await runFfmpeg(ffmpeg, args, { signal, onOutput: (bytes) => pieces.push(bytes) });
  return { png: Buffer.concat(pieces), time: pieces.length === 0 ? null : shownTime(said) };
}

/** Reads which frame came out. Its time in seconds is printed with six digits only, so units are counted instead. */
function shownTime(said: string): number | null {
  const base = /Parsed_showinfo\S* @ [^\n]*time_base: (\d+)\/(\d+)/.exec(said);
  const pts = /Parsed_showinfo\S* @ [^\n]* pts:\s*(-?\d+)/.exec(said);
  return base === null || pts === null ? null : (Number(pts[1]) * Number(base[1])) / Number(base[2]);
}
