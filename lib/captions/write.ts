import type { Cue } from "./read/types.ts";

/** What of a cue is written. */
type Written = Pick<Cue, "start" | "end" | "text" | "voice">;

/**
 * Writes cues as WebVTT, for the player's own text track: whatever the captions came as, this is what a browser shows.
 * Reading it again gives the same words at the same times (to the millisecond).
 */
export function toWebVtt(cues: readonly Written[]): string {
  const blocks = cues.map((cue) => `${vttTime(cue.start)} --> ${vttTime(cue.end)}\n${payload(cue)}`);
  return `WEBVTT\n\n${blocks.join("\n\n")}\n`;
}

function payload({ text, voice }: Written): string {
  return voice ? `<v ${vttText(voice)}>${vttText(text)}` : vttText(text);
}

/** Text as it stands inside a cue: what could be taken for a tag or an entity is written as one. */
export function vttText(text: string): string {
  return text.replaceAll("&", "&amp;").replaceAll("<", "&lt;").replaceAll(">", "&gt;");
}

/** Hours, minutes, seconds and thousandths as W3C WebVTT, section 4.1, has them; none lie before nought. */
export function vttTime(seconds: number): string {
  const thousandths = Math.max(0, Math.round(seconds * 1000));
  const two = (value: number) => `${Math.floor(value)}`.padStart(2, "0");
  const rest = `${thousandths % 1000}`.padStart(3, "0");
  return `${two(thousandths / 3_600_000)}:${two((thousandths / 60_000) % 60)}:${two((thousandths / 1000) % 60)}.${rest}`;
}
