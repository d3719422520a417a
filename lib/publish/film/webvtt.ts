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
    .filter((cue) => timestamp(cue.start) !== timestamp(cue.end))
    .map((cue) => `${timestamp(cue.start)} --> ${timestamp(cue.end)}\n${payload(cue.text)}\n`);
  return ["WEBVTT\n", ...blocks].join("\n");
}

function payload(text: string): string {
  const lines = text
    .split(/\r\n?|\n/)
    .map((line) => line.trim())
    .filter((line) => line !== "");
  return lines.join("\n").replaceAll("&", "&amp;").replaceAll("<", "&lt;").replaceAll(">", "&gt;");
}

function timestamp(seconds: number): string {
  const thousandths = Math.max(0, Math.round(seconds * 1000));
  const part = (of: number, digits: number) => String(Math.floor(of)).padStart(digits, "0");
  const hours = part(thousandths / 3_600_000, 2);
  return `${hours}:${part((thousandths / 60_000) % 60, 2)}:${part((thousandths / 1000) % 60, 2)}.${part(thousandths % 1000, 3)}`;
}
