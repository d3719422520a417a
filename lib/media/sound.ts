import { rm } from "node:fs/promises";
import type { CopyOptions } from "./playable-copy.ts";
import { progressReader } from "./playable-copy.ts";
import { inputArguments, runFfmpeg } from "./run-ffmpeg.ts";

/**
 * The sound of a film as a WAV file, 16 kHz in one channel, which programs that recognise speech take. Stopped or failed,
 * nothing stays.
 *
 * @throws MediaError `ffmpeg-failed`, or the signal's reason
 */
export async function soundOf(options: CopyOptions): Promise<void> {
  const { ffmpeg, from, to, signal } = options;
  const progress = ["-v", "error", "-progress", "pipe:1", "-nostats"];
  const sound = ["-map", "0:a:0", "-ac", "1", "-ar", "16000", "-c:a", "pcm_s16le", "-f", "wav"];
  // Sound that begins later than the picture keeps its seconds.
  const inStep = ["-af", "aresample=async=1:first_pts=0"];
  const args = [...progress, ...inputArguments(from), ...sound, ...inStep, "-n", `file:${to}`];
  try {
    await runFfmpeg(ffmpeg, args, { signal, onOutput: progressReader(options) });
  } catch (error) {
    await rm(to, { force: true }).catch(() => undefined);
    throw error;
  }
}
