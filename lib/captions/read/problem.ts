import type { CaptionProblem } from "./types.ts";

const longestQuote = 80;

/** The beginning of a line, for a message. */
export function quoted(line: string): string {
  const trimmed = line.trim();
  return `“${trimmed.length > longestQuote ? `${trimmed.slice(0, longestQuote)}…` : trimmed}”`;
}

/** A line with an arrow that is no time line. */
export function badTiming(line: number, text: string, form: string): CaptionProblem {
  return {
    line,
    found: `${quoted(text)} is no time line; this cue was left out.`,
    expected: `A time line such as ${form}.`,
    todo: `Mend line ${line} and bring the captions again.`,
  };
}

/** A cue that ends before it begins. */
export function endsEarly(line: number, start: number, end: number): CaptionProblem {
  return {
    line,
    found: `A cue that begins at ${start} s and ends at ${end} s. Its words were kept, at its beginning.`,
    expected: "An end later than the beginning.",
    todo: `Look at line ${line}: one of its two times is wrong.`,
  };
}

/** A cue that begins before the one above it. */
export function outOfOrder(line: number, start: number, before: number): CaptionProblem {
  return {
    line,
    found: `A cue that begins at ${start} s, below one that begins at ${before} s. It was put in its place.`,
    expected: "Cues in the order of their beginnings.",
    todo: `Look at line ${line}: its time may be wrong.`,
  };
}
