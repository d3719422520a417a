import { quoted } from "./problem.ts";
import type { CaptionProblem, RawCaptions, RawCue, Word } from "./types.ts";
import { wordsOf } from "./words.ts";

/**
 * Plain timed text: each line begins with its time, "[3:07] …", "(3:07) …", "1:02:03 …", "3:07 - …", or a time stands
 * alone above the words. A second time behind the first is the end: "0:03.5,0:06.2", "[0:03.0 --> 0:06.2] …".
 * No standard has it; this is what is met with (common practice, no source).
 */
const time = String.raw`(?:(\d{1,4}):)?(\d{1,3}):(\d\d)(?:[.,](\d{1,3}))?`;
const stamped = new RegExp(
  String.raw`^\s{0,9}[[(]?\s?${time}(?:\s{0,3}(?:-->|[-–—,]|to)\s{0,3}${time})?\s?[\])]?(?:\s{0,3}[-–—:|](?=\s|$))?(?:\s{1,9}|$)(.*)$`,
);
const perWord = 0.4;
const longestLast = 10;

/** Whether a line begins with a time. */
export function isStamped(line: string): boolean {
  return stamped.test(line);
}

/** Reads plain timed text. A line without a time goes on with the cue above it. Never throws. */
export function readTimedText(text: string): RawCaptions {
  const problems: CaptionProblem[] = [];
  const cues: (RawCue & { ends?: number })[] = [];
  for (const [i, line] of text.split("\n").entries()) {
    const found = stamped.exec(line);
    if (found) {
      cues.push(cueOf(found, i + 1));
      continue;
    }
    const words = wordsOfLine(line);
    const last = cues.at(-1);
    if (words.length === 0) continue;
    if (last) last.lines.push(words);
    else if (problems.length === 0) problems.push(strayHead(i + 1, line));
  }
  const spoken = cues.filter((cue) => cue.lines.length > 0);
  return { cues: withEnds(spoken), problems };
}

function cueOf(found: RegExpExecArray, line: number): RawCue & { ends?: number } {
  const start = seconds(found.slice(1, 5));
  const ends = found[6] === undefined ? undefined : seconds(found.slice(5, 9));
  const words = wordsOfLine(found[9] ?? "");
  return {
    start,
    end: start,
    lines: words.length > 0 ? [words] : [],
    line,
    ...(ends === undefined ? {} : { ends }),
  };
}

/** A cue lasts until the next one; the last as long as its words take. */
function withEnds(cues: (RawCue & { ends?: number })[]): RawCue[] {
  return cues.map(({ ends, ...cue }, i) => {
    const next = cues[i + 1];
    const count = cue.lines.reduce((sum, line) => sum + line.length, 0);
    const reading = cue.start + Math.min(longestLast, Math.max(1, count * perWord));
    const until = next && next.start > cue.start ? next.start : reading;
    return { ...cue, end: ends ?? until };
  });
}

function strayHead(line: number, text: string): CaptionProblem {
  return {
    line,
    found: `${quoted(text)} stands above the first time; it was left out.`,
    expected: "A time at the beginning of the line: [3:07] or 1:02:03.",
    todo: "Put a time before these words if they were said.",
  };
}

function wordsOfLine(line: string): Word[] {
  return wordsOf(line).map((text) => ({ text }));
}

function seconds([hours = "0", minutes = "0", whole = "0", part = "0"]: (string | undefined)[]): number {
  return Number(hours) * 3600 + Number(minutes) * 60 + Number(whole) + Number(part.padEnd(3, "0")) / 1000;
}
