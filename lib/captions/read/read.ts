import { decode } from "./decode.ts";
import { endsEarly, outOfOrder } from "./problem.ts";
import { withoutRepeats } from "./rolling.ts";
import { isSrtTiming, readSrt } from "./srt.ts";
import { isStamped, readTimedText } from "./timed-text.ts";
import type { CaptionFormat, CaptionProblem, Captions, Cue, RawCaptions, RawCue } from "./types.ts";
import { readVtt } from "./webvtt/raw-cues.ts";

/** The most problems that are listed one by one; a file with more of them is not what it seems. */
const mostProblems = 500;
/** Times beyond this, in seconds, are no recording's. */
const latest = 1e7;

/**
 * Reads a caption file: finds its encoding and its format, reads its cues in the order of their start, and says what
 * could not be read and on which line. Never throws; a file that holds no captions has no cues and one problem.
 */
export function readCaptions(bytes: Uint8Array): Captions {
  const { text, encoding, doubtful } = decode(bytes);
  const read = readCaptionText(text);
  return { ...read, encoding, problems: doubtful ? [brokenBytes(), ...read.problems] : read.problems };
}

/** Reads captions that are text already. */
export function readCaptionText(given: string): Captions {
  const text = given.replace(/^\ufeff/, "");
  const { format, raw } = readInItsFormat(text);
  const { cues: once, rolling } = withoutRepeats(raw.cues);
  const problems = [...raw.problems];
  const cues = inOrder(
    once.filter((cue) => cue.start <= latest && cue.end <= latest),
    problems,
  );
  if (cues.length === 0) problems.push(nothingFound(text));
  return { format, encoding: "UTF-8", rolling, cues, problems: shortened(problems) };
}

function readInItsFormat(text: string): { format: CaptionFormat | null; raw: RawCaptions } {
  const vtt = readVtt(text);
  const plain = text.replace(/\0/g, "\ufffd").replace(/\r\n?/g, "\n");
  const lines = plain.split("\n");
  if (vtt)
    return { format: "WebVTT", raw: vtt.cues.length > 0 ? vtt : (commasForStops(plain, lines) ?? vtt) };
  const timings = lines.filter(isSrtTiming).length;
  const stamps = lines.filter(isStamped).length - timings;
  if (timings > 0 && timings >= stamps) return { format: "SRT", raw: readSrt(plain) };
  if (stamps > 0) return { format: "timed text", raw: readTimedText(plain) };
  return { format: null, raw: { cues: [], problems: [] } };
}

/** A file signed as WebVTT whose times are those of SRT: no cue of it would be read by the standard. */
function commasForStops(text: string, lines: string[]): RawCaptions | null {
  const at = lines.findIndex(isSrtTiming);
  if (at < 0) return null;
  const problem = {
    line: at + 1,
    found: "The times have a comma before the thousandths, as in SRT. They were read as meant.",
    expected: "A full stop: 00:01:02.500, in a file that begins with WEBVTT.",
    todo: "Nothing, for drafting. A player will not show this file until the commas are full stops.",
  };
  return { cues: readSrt(text).cues, problems: [problem] };
}

function inOrder(raw: RawCue[], problems: CaptionProblem[]): Cue[] {
  let before = 0;
  const cues = raw.flatMap((cue): Cue[] => {
    if (cue.start < before) problems.push(outOfOrder(cue.line, cue.start, before));
    before = cue.start;
    if (cue.end <= cue.start && cue.lines.length > 0) problems.push(endsEarly(cue.line, cue.start, cue.end));
    return cue.lines.length > 0 ? [cueOf(cue)] : [];
  });
  return cues.sort((a, b) => a.start - b.start);
}

function cueOf({ start, end, lines, line, id }: RawCue): Cue {
  const words = lines.flat();
  const voice = words.find((word) => word.voice !== undefined)?.voice;
  return {
    start,
    end: Math.max(start, end),
    text: words.map((word) => word.text).join(" "),
    words,
    line,
    ...(id === undefined ? {} : { id }),
    ...(voice === undefined ? {} : { voice }),
  };
}

function nothingFound(text: string): CaptionProblem {
  return {
    line: 1,
    found: text.trim() === "" ? "The file is empty." : "No words with a time were found in the file.",
    expected: "WebVTT, SRT, or lines that begin with a time: [3:07] …",
    todo: "Choose the caption file that belongs to this recording.",
  };
}

function brokenBytes(): CaptionProblem {
  return {
    line: 1,
    found: "Some letters of the file could not be read; � stands in their place.",
    expected: "A file in UTF-8.",
    todo: "Save the captions as UTF-8 and bring them again, if the letters matter.",
  };
}

function shortened(problems: CaptionProblem[]): CaptionProblem[] {
  if (problems.length <= mostProblems) return problems;
  const last = problems[mostProblems] as CaptionProblem;
  const rest = {
    line: last.line,
    found: `${problems.length - mostProblems} more lines like these.`,
    expected: "A caption file.",
    todo: "Look whether this is the right file.",
  };
  return [...problems.slice(0, mostProblems), rest];
}
