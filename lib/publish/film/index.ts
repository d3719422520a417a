export { type Chapter, chaptersForDescription } from "./chapters.ts";
export { recordingCues } from "./recording-cues.ts";
export { cuesInFilm, type RecordingCue, toCaptions } from "./to-captions.ts";
export { fellOut, toChapters } from "./to-chapters.ts";
export { type VttCue, webVtt } from "./webvtt.ts";
