import type { Trouble } from "./trouble.ts";

/** What a recording is, read from the file itself. */
export interface Film {
  ok: true;
  /** End of the last frame, in seconds of the recording's clock. */
  duration: number;
  /** When each frame begins and when the last one ends, in seconds of the recording's clock. */
  frames: { starts: Float64Array; end: number };
  /** Size as shown, in pixels: after rotation, with square pixels. */
  width: number;
  height: number;
  /** Clockwise turn the file asks a player for, already counted in `width` and `height`. */
  rotation: 0 | 90 | 180 | 270;
  /** Names as used below in {@link playableCodecs}; a codec nobody here knows keeps its container's name. */
  videoCodec: string;
  /** Null when there is no sound. */
  audioCodec: string | null;
  /** "MP4", "MOV", "MKV", "WebM" or "TS". */
  container: string;
  /** Whether Chromium shows its picture. It may play the sound of the others and say nothing. */
  playable: boolean;
  /** When the camera says the recording was begun, ISO 8601 in UTC; null when the file does not say. */
  createdAt: string | null;
  /** How far `createdAt` may be believed, in words for the screen. */
  createdAtTrust: string;
}

export type ProbeTroubleKind =
  | "missing"
  | "empty"
  | "not-video"
  | "cut-short"
  | "no-picture"
  | "unplayable"
  | "unreadable"
  | "hung";

/** A file whose frames cannot be listed, and why. */
export interface NoFilm extends Trouble<ProbeTroubleKind> {
  ok: false;
}

export type ProbeResult = Film | NoFilm;

/** Codecs and containers whose picture Chromium 156 shows, measured (also H.264 of 10 bit and of 4:2:2). */
export const playableCodecs: ReadonlySet<string> = new Set(["avc", "vp8", "vp9", "av1"]);
export const playableContainers: ReadonlySet<string> = new Set(["MP4", "MOV", "MKV", "WebM"]);

const spokenCodecs: Record<string, string> = {
  avc: "H.264",
  hevc: "HEVC (H.265)",
  vp8: "VP8",
  vp9: "VP9",
  av1: "AV1",
  prores: "ProRes",
};

/** What to say of a recording whose frames are known, yet whose picture the browser does not show; else null. */
export function unplayableTrouble(film: Film): Trouble<"unplayable"> | null {
  if (film.playable) return null;
  const codec = spokenCodecs[film.videoCodec] ?? film.videoCodec;
  return sayUnplayable(
    `This is a ${codec} picture in ${film.container === "MOV" ? "a MOV" : `an ${film.container}`} file.`,
  );
}

/** The same words for a container that nothing here can open. */
export function sayUnplayable(found: string): Trouble<"unplayable"> {
  return {
    kind: "unplayable",
    found,
    expected: "The browser shows H.264, VP8, VP9 or AV1 in an MP4, MOV, MKV or WebM file.",
    todo:
      "Make a copy that plays: the program does so, keeping the moments, where ffmpeg is installed. " +
      "For the next recording, many cameras have a setting for H.264, often called “most compatible”.",
  };
}
