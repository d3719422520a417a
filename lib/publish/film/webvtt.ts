import { vttText, vttTime } from "#lib/captions/write.ts";

/** A stretch of film with words: a caption, or a chapter's title. */
export interface VttCue {
  start: number;
  end: number;
  text: string;
}

/**
 * Cues as a WebVTT file (W3C WebVTT: timings to the millisecond, `&` and `<` escaped, no blank line inside a cue).
 * They stand by when they start; one without a length to the millisecond is left out.
 */
export function webVtt(cues: readonly VttCue[]): string {
  const blocks = [...cues]
    .sort((a, b) => a.start - b.start || a.end - b.end)
    .filter((cue) => vttTime(cue.start) !== vttTime(cue.end))
    .map((cue) => `${vttTime(cue.start)} --> ${vttTime(cue.end)}\n${payload(cue.text)}\n`);
  return ["WEBVTT\n", ...blocks].join("\n");
}

function payload(text: string): string {
  const lines = text
    .split(/\r\n?|\n/)
    .map((line) => line.trim())
    .filter((line) => line !== "");
  return vttText(lines.join("\n"));
}
