/** One word of a cue, as it stands in the captions. */
export interface Word {
  text: string;
  /** When it begins, in seconds, where the captions say so. */
  at?: number;
  /** Who says it, where the captions say so. */
  voice?: string;
}

/**
 * One piece of caption text and when it is shown: from `start` up to, but not including, `end`, in seconds of the
 * clock that the caption track keeps. That clock is a recording's or a cut's; the track says which, not the cue.
 */
export interface Cue {
  start: number;
  end: number;
  /** The words, in one line; what earlier cues have already said is left out. */
  text: string;
  words: Word[];
  /** The line of the file on which the cue's time stands, counted from 1. */
  line: number;
  /** The cue's name in the file, where it has one. */
  id?: string;
  /** Who speaks first. */
  voice?: string;
}

/** Something in the file that could not be read, or was read with a guess. The other cues are not touched by it. */
export interface CaptionProblem {
  /** Counted from 1. */
  line: number;
  found: string;
  expected: string;
  todo: string;
}

/** The shapes of file that are read. */
export type CaptionFormat = "WebVTT" | "SRT" | "timed text";
/** How the letters of a file are written. */
export type CaptionEncoding = "UTF-8" | "UTF-16" | "Latin-1";

/** What was read of a caption file. */
export interface Captions {
  /** Null where no times were found. */
  format: CaptionFormat | null;
  encoding: CaptionEncoding;
  /** Whether each cue repeated the line before it, as rolling captions do. */
  rolling: boolean;
  /** In order of their start. */
  cues: Cue[];
  problems: CaptionProblem[];
}

/** A cue as its format gives it, before repeated lines are taken out. */
export interface RawCue {
  start: number;
  end: number;
  lines: Word[][];
  line: number;
  id?: string;
}

/** What the reader of one format gives. */
export interface RawCaptions {
  cues: RawCue[];
  problems: CaptionProblem[];
}
