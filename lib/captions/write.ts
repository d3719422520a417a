import type { Cue } from "./read/types.ts";

/**
 * Writes cues as WebVTT, for the player's own text track: whatever the captions came as, this is what a browser shows.
 * Reading it again gives the same words at the same times (to the millisecond).
 */
export function toWebVtt(cues: readonly Cue[]): string {
  const blocks = cues.map((cue) => `${timestamp(cue.start)} --> ${timestamp(cue.end)}\n${escaped(cue)}`);
  return `WEBVTT\n\n${blocks.join("\n\n")}\n`;
}

function escaped(cue: Cue): string {
  const text = cue.text.replaceAll("&", "&amp;").replaceAll("<", "&lt;").replaceAll(">", "&gt;");
  const voice = cue.voice?.replaceAll("&", "&amp;").replaceAll(">", "&gt;").replaceAll("<", "&lt;");
  return voice ? `<v ${voice}>${text}` : text;
}

/** Hours, minutes, seconds and thousandths as W3C WebVTT, section 4.1, has them. */
function timestamp(seconds: number): string {
  const thousandths = Math.round(seconds * 1000);
  const two = (value: number) => `${Math.floor(value)}`.padStart(2, "0");
  const rest = `${thousandths % 1000}`.padStart(3, "0");
  return `${two(thousandths / 3_600_000)}:${two((thousandths / 60_000) % 60)}:${two((thousandths / 1000) % 60)}.${rest}`;
}
