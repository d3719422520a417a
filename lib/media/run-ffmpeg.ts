import { spawn } from "node:child_process";
import type { Ffmpeg } from "./find-ffmpeg.ts";
import { MediaError } from "./trouble.ts";

export interface RunOptions {
  /** Ends the run; the promise then fails with the signal's reason. */
  signal?: AbortSignal;
  /** Called with each piece of standard output. */
  onOutput: (bytes: Buffer) => void;
}

/**
 * Containers ffmpeg may open. Without the list it looks into any file for playlists, which name other files and
 * addresses to be read.
 */
const containers = "mov,matroska,avi,mpegts,mpeg,mpegvideo,flv,asf,ogg,dv,mxf";

/** What stands before every input: only files, only films, no options hidden in a name. */
export function inputArguments(path: string): string[] {
  return ["-protocol_whitelist", "file", "-format_whitelist", containers, "-i", `file:${path}`];
}

/**
 * Runs ffmpeg without a shell and waits for its end.
 *
 * @returns what it wrote to standard error, at most the last 64 KiB
 * @throws MediaError `ffmpeg-failed`
 */
export function runFfmpeg(ffmpeg: Ffmpeg, args: string[], { signal, onOutput }: RunOptions): Promise<string> {
  return new Promise((resolve, reject) => {
    signal?.throwIfAborted();
    const child = spawn(ffmpeg.path, ["-nostdin", "-hide_banner", ...args], {
      stdio: ["ignore", "pipe", "pipe"],
      windowsHide: true,
    });
    let said = "";
    const stop = () => child.kill("SIGKILL");
    signal?.addEventListener("abort", stop, { once: true });
    child.stdout.on("data", onOutput);
    child.stderr.setEncoding("utf8").on("data", (text: string) => {
      said = (said + text).slice(-65_536);
    });
    child.on("error", (error) => reject(failed(error.message)));
    child.on("close", (code) => {
      signal?.removeEventListener("abort", stop);
      if (signal?.aborted) reject(signal.reason);
      else if (code === 0) resolve(said);
      else reject(failed(said));
    });
  });
}

function failed(said: string): MediaError<"ffmpeg-failed"> {
  const plain = said.replace(/[^\x20-\x7e\n]/g, "?").trim();
  const reason = plain.split("\n").slice(-3).join(" ").slice(-300);
  const noEncoder = /Unknown encoder/.test(said);
  return new MediaError({
    kind: "ffmpeg-failed",
    found: `ffmpeg could not do it: ${reason || "it said nothing"}`,
    expected: "A whole recording, room on the drive, and an ffmpeg with the encoders libx264 and aac.",
    todo: noEncoder
      ? "Install an ffmpeg that has the encoder named above, or set FFMPEG_PATH to one."
      : "See whether the recording opens elsewhere and whether the drive has room. The recording itself is untouched.",
  });
}
