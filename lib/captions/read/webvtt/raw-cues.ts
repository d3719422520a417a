import type { RawCaptions, RawCue, Word } from "../types.ts";
import { wordsOf } from "../words.ts";
import { leaves, parseCueText } from "./cue-text.ts";
import { parseVtt, type VttCue } from "./parse.ts";

/** Reads a WebVTT text to cues whose words carry their times and voices; null where it is not signed as WebVTT. */
export function readVtt(text: string): RawCaptions | null {
  const file = parseVtt(text);
  return file.signed ? { cues: file.cues.map(rawCue), problems: file.problems } : null;
}

function rawCue(cue: VttCue): RawCue {
  return {
    start: cue.start,
    end: cue.end,
    lines: linesOf(cue),
    line: cue.line,
    ...(cue.id === "" ? {} : { id: cue.id }),
  };
}

/** The lines of a cue. A time within the cue is that of the word behind it, if it lies within the cue's own. */
function linesOf(cue: VttCue): Word[][] {
  const lines: Word[][] = [[]];
  let latest = cue.start;
  for (const leaf of leaves(parseCueText(cue.text))) {
    let time = leaf.time !== undefined && leaf.time >= latest && leaf.time <= cue.end ? leaf.time : undefined;
    if (time !== undefined) latest = time;
    for (const [i, part] of leaf.text.split("\n").entries()) {
      if (i > 0) lines.push([]);
      for (const text of wordsOf(part)) {
        const at = time;
        time = undefined;
        lines.at(-1)?.push(word(text, at, leaf.voice));
      }
    }
  }
  return lines.filter((line) => line.length > 0);
}

function word(text: string, at: number | undefined, voice: string | undefined): Word {
  return { text, ...(at === undefined ? {} : { at }), ...(voice ? { voice } : {}) };
}
