import { execFile } from "node:child_process";
import { stat } from "node:fs/promises";
import { delimiter, isAbsolute, join } from "node:path";
import { promisify } from "node:util";
import { MediaError } from "./trouble.ts";

/** An ffmpeg that answered. */
export interface Ffmpeg {
  path: string;
  /** The first line it says of itself. */
  version: string;
}

export interface FfmpegSearch {
  env?: Record<string, string | undefined>;
  platform?: NodeJS.Platform;
}

/**
 * Looks for ffmpeg: FFMPEG_PATH first, then the folders of PATH that are given in full. Nothing needs it.
 *
 * @throws MediaError `no-ffmpeg` with what would help
 */
export async function findFfmpeg({
  env = process.env,
  platform = process.platform,
}: FfmpegSearch = {}): Promise<Ffmpeg> {
  const told = env.FFMPEG_PATH;
  if (told) return (await asked(told)) ?? fail(`FFMPEG_PATH names ${told}, which cannot be run.`);
  const name = platform === "win32" ? "ffmpeg.exe" : "ffmpeg";
  // Windows spells the variable "Path".
  const path = env.PATH ?? env.Path ?? "";
  for (const folder of path.split(delimiter)) {
    if (!isAbsolute(folder)) continue;
    const found = await asked(join(folder, name));
    if (found !== null) return found;
  }
  return fail("There is no ffmpeg on this computer.");
}

async function asked(path: string): Promise<Ffmpeg | null> {
  try {
    if (!(await stat(path)).isFile()) return null;
    const { stdout } = await promisify(execFile)(path, ["-version"], { timeout: 10_000, windowsHide: true });
    const [version = ""] = stdout.split("\n");
    return version.startsWith("ffmpeg version") ? { path, version: version.trim() } : null;
  } catch {
    return null;
  }
}

function fail(found: string): never {
  throw new MediaError({
    kind: "no-ffmpeg",
    found,
    expected:
      "Making a copy that plays, and taking stills without a browser, need ffmpeg with its H.264 encoder.",
    todo:
      "Install it (Debian and Ubuntu: apt install ffmpeg; macOS: brew install ffmpeg; Windows: winget install ffmpeg), " +
      "or set FFMPEG_PATH to where it lies. All else works without it.",
  });
}
