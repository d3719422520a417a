/** Caption files read to cues: WebVTT, SRT, plain timed text, rolling captions; encoding found out. */
export { filmStemsOf, mostCaptionBytes, sameStem, stemOf } from "./belongs.ts";
export { readCaptions, readCaptionText } from "./read.ts";
export type { CaptionEncoding, CaptionFormat, CaptionProblem, Captions, Cue, Word } from "./types.ts";
export { type CueNode, leaves, parseCueText, plainText, type Span } from "./webvtt/cue-text.ts";
export { parseVtt, type VttCue, type VttFile } from "./webvtt/parse.ts";
export type { Region } from "./webvtt/region.ts";
export { type CueSettings, parseSettings } from "./webvtt/settings.ts";
export { collectTimestamp, isConformingTimestamp } from "./webvtt/timestamp.ts";
