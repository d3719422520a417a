import { badTiming, quoted } from "./problem.ts";
import type { CaptionProblem, RawCaptions, RawCue, Word } from "./types.ts";
import { resolveReferences } from "./webvtt/character-reference.ts";
import { wordsOf } from "./words.ts";

/**
 * A time line: hours may be missing, and the thousandths stand behind a comma or a full stop; positions may follow.
 * SRT has no standard; this is what is met with (common practice, no source).
 */
const timing =
  /^\s{0,9}(?:(\d{1,6}):)?(\d{1,3}):(\d{1,2})(?:[,.](\d{1,3}))?\s{0,9}-->\s{0,9}(?:(\d{1,6}):)?(\d{1,3}):(\d{1,2})(?:[,.](\d{1,3}))?(?:\s|$)/;

/** Whether a line is a time line of SRT. */
export function isSrtTiming(line: string): boolean {
  return timing.test(line);
}

/**
 * Reads SRT: a number, a time line, and words up to the next number and time line. Numbers may be missing, wrong or
 * repeated; empty lines may stand among the words. Never throws.
 */
export function readSrt(text: string): RawCaptions {
  const lines = text.split("\n");
  const heads = lines.flatMap((line, i) => (line.includes("-->") ? [i] : []));
  const problems: CaptionProblem[] = strayHead(lines, heads[0] ?? lines.length);
  const cues: RawCue[] = [];
  for (const [k, head] of heads.entries()) {
    const next = heads[k + 1];
    const times = timing.exec(lines[head] ?? "");
    if (!times) {
      problems.push(badTiming(head + 1, lines[head] ?? "", "00:01:02,500 --> 00:01:05,000"));
      continue;
    }
    const body = lines.slice(head + 1, next ?? lines.length);
    if (next !== undefined) dropNumber(body);
    const number = (lines[head - 1] ?? "").trim();
    cues.push({
      start: seconds(times.slice(1, 5)),
      end: seconds(times.slice(5, 9)),
      lines: body.map(wordsOfLine).filter((line) => line.length > 0),
      line: head + 1,
      ...(/^\d{1,9}$/.test(number) ? { id: number } : {}),
    });
  }
  return { cues, problems };
}

/** The number above the next time line is not said. */
function dropNumber(body: string[]): void {
  const last = body.at(-1)?.trim() ?? "";
  if (/^\d{1,9}$/.test(last) && (body.length === 1 || (body.at(-2) ?? "").trim() === "" || body.length > 2))
    body.pop();
}

function strayHead(lines: string[], first: number): CaptionProblem[] {
  const at = lines.slice(0, first).findIndex((line) => line.trim() !== "" && !/^\s*\d{1,9}\s*$/.test(line));
  if (at < 0) return [];
  return [
    {
      line: at + 1,
      found: `${quoted(lines[at] ?? "")} stands above the first time line; it was left out.`,
      expected: "A number and a time line above the first words.",
      todo: "Put a time line above these words if they were said.",
    },
  ];
}

/** Tags of style and position in SRT: "<i>", "<font color=…>", "{\an8}". */
const styling = /<\/?[a-zA-Z][^<>]{0,200}>|\{\\[^{}]{0,200}\}/g;

function wordsOfLine(line: string): Word[] {
  return wordsOf(resolveReferences(line.replace(styling, ""))).map((text) => ({ text }));
}

function seconds([hours = "0", minutes = "0", whole = "0", part = "0"]: string[]): number {
  return Number(hours) * 3600 + Number(minutes) * 60 + Number(whole) + Number(part.padEnd(3, "0")) / 1000;
}
