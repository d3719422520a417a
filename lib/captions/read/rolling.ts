import type { RawCue, Word } from "./types.ts";

/**
 * Rolling captions show each line twice: where it is said, and again above the next one. A file is taken to roll when
 * at least a quarter of its cues begin with what the cue before them ended with, and go on; then each word is kept once, in the
 * cue that brought it. Elsewhere a repeated line was said twice, and stays.
 */
export function withoutRepeats(cues: RawCue[]): { cues: RawCue[]; rolling: boolean } {
  const texts = cues.map((cue) => cue.lines.map(textOf));
  let repeats = 0;
  for (let i = 1; i < cues.length; i++) {
    const again = repeated(texts[i - 1] ?? [], texts[i] ?? []);
    // A line said twice brings nothing new.
    if (again && newLines((cues[i] as RawCue).lines, again).length > 0) repeats++;
  }
  if (repeats < 3 || repeats < cues.length / 4) return { cues, rolling: false };
  const kept: RawCue[] = [];
  for (const [i, cue] of cues.entries()) {
    const again = i === 0 ? null : repeated(texts[i - 1] ?? [], texts[i] ?? []);
    const lines = again ? newLines(cue.lines, again) : cue.lines;
    if (lines.length > 0) kept.push({ ...cue, lines });
  }
  return { cues: kept, rolling: true };
}

/** How much of a cue was shown before: whole lines, and words of the line behind them. */
interface Repeat {
  lines: number;
  words: number;
}

const mostLines = 4;

function repeated(before: string[], now: string[]): Repeat | null {
  const most = Math.min(before.length, now.length, mostLines);
  for (let count = most; count > 0; count--) {
    const tail = before.slice(before.length - count);
    if (tail.every((line, i) => line === now[i])) return { lines: count, words: 0 };
    // The last line shown may since have grown.
    const last = tail.at(-1) ?? "";
    if (tail.slice(0, -1).every((line, i) => line === now[i]) && now[count - 1]?.startsWith(`${last} `))
      return { lines: count - 1, words: last.split(" ").length };
  }
  return null;
}

function newLines(lines: Word[][], { lines: whole, words }: Repeat): Word[][] {
  const rest = lines.slice(whole);
  if (words > 0 && rest[0]) rest[0] = rest[0].slice(words);
  return rest.filter((line) => line.length > 0);
}

function textOf(line: Word[]): string {
  return line.map((word) => word.text).join(" ");
}
