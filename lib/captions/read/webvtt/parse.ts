import { badTiming, quoted } from "../problem.ts";
import type { CaptionProblem } from "../types.ts";
import { parseRegion, type Region } from "./region.ts";
import { type CueSettings, parseSettings } from "./settings.ts";
import { collectTimestamp } from "./timestamp.ts";

/** A cue as the standard's parser gives it; `text` still has its tags. */
export interface VttCue {
  id: string;
  start: number;
  end: number;
  settings: CueSettings;
  text: string;
  /** The line of its times, counted from 1. */
  line: number;
}

/** A WebVTT file, read by the standard. */
export interface VttFile {
  /** Whether the file begins as a WebVTT file must; if not, nothing was read. */
  signed: boolean;
  cues: VttCue[];
  regions: Region[];
  /** The text of STYLE blocks, unread. */
  styles: string[];
  problems: CaptionProblem[];
}

interface State {
  lines: string[];
  at: number;
  seenCue: boolean;
  regionIds: Set<string>;
  file: VttFile;
}

/**
 * The parser of the standard (W3C WebVTT, section 6.1), with problems noted on the way: what the standard passes over
 * in silence is passed over here too, but said.
 */
export function parseVtt(input: string): VttFile {
  const text = input.replace(/\0/g, "\ufffd").replace(/\r\n?/g, "\n");
  const file: VttFile = { signed: false, cues: [], regions: [], styles: [], problems: [] };
  if (!/^WEBVTT(?:[ \t\n]|$)/.test(text)) return file;
  file.signed = true;
  const state: State = { lines: text.split("\n"), at: 1, seenCue: false, regionIds: new Set(), file };
  if ((state.lines[1] ?? "") !== "") block(state, true);
  while (state.at < state.lines.length) {
    if (state.lines[state.at] === "") state.at++;
    else block(state, false);
  }
  return file;
}

/** Collects one block: a cue, a style sheet, a region, or words that are none of them. */
function block(state: State, inHeader: boolean): void {
  const first = state.at;
  let cue: VttCue | null = null;
  let arrow = false;
  let kind: "STYLE" | "REGION" | null = null;
  let buffer: string[] = [];
  for (; state.at < state.lines.length; state.at++) {
    const line = state.lines[state.at] as string;
    const count = state.at - first + 1;
    if (line.includes("-->")) {
      // An arrow further down begins the next block.
      if (inHeader || !(count === 1 || (count === 2 && !arrow))) break;
      arrow = true;
      cue = timing(state, line, buffer.join("\n"));
      if (cue) buffer = [];
      continue;
    }
    if (line === "") break;
    if (!inHeader && count === 2 && !state.seenCue && !arrow) {
      kind = blockKind(buffer[0] ?? "");
      if (kind) buffer = [];
    }
    buffer.push(line);
  }
  finish(state, { cue, kind, buffer, first, arrow, inHeader });
}

function blockKind(head: string): "STYLE" | "REGION" | null {
  const word = head.trimEnd();
  return word === "STYLE" || word === "REGION" ? word : null;
}

function timing(state: State, line: string, id: string): VttCue | null {
  const start = collectTimestamp(line, blanks(line, 0));
  const arrow = start ? blanks(line, start.end) : -1;
  const isArrow = start !== null && line.startsWith("-->", arrow);
  const end = isArrow ? collectTimestamp(line, blanks(line, arrow + 3)) : null;
  if (!start || !end) {
    state.file.problems.push(badTiming(state.at + 1, line, "00:01:02.500 --> 00:01:05.000"));
    return null;
  }
  state.seenCue = true;
  const settings = parseSettings(line.slice(end.end), state.regionIds);
  return { id, start: start.seconds, end: end.seconds, settings, text: "", line: state.at + 1 };
}

function blanks(line: string, place: number): number {
  let end = place;
  while (end < line.length && " \t\f".includes(line.charAt(end))) end++;
  return end;
}

interface Block {
  cue: VttCue | null;
  kind: "STYLE" | "REGION" | null;
  buffer: string[];
  first: number;
  arrow: boolean;
  inHeader: boolean;
}

function finish(state: State, { cue, kind, buffer, first, arrow, inHeader }: Block): void {
  const text = buffer.join("\n");
  if (cue) state.file.cues.push({ ...cue, text });
  else if (kind === "STYLE") state.file.styles.push(text);
  else if (kind === "REGION") {
    const region = parseRegion(text);
    state.file.regions.push(region);
    state.regionIds.add(region.id);
  } else if (!arrow && !inHeader && !/^(?:NOTE|ATTRIBUTES)(?:[ \t]|\n|$)/.test(text)) {
    state.file.problems.push(strayWords(first + 1, buffer[0] ?? ""));
  }
}

function strayWords(line: number, text: string): CaptionProblem {
  return {
    line,
    found: `${quoted(text)} belongs to no cue; it was left out.`,
    expected: "A time line above the words, or NOTE before them.",
    todo: `Put a time line above line ${line} if these words were said.`,
  };
}
