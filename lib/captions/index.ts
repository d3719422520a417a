/** Captions: files read to cues, cues written for a player, and marks drafted from what was said. */
export * from "./draft/index.ts";
export { decode as decodeCaptions } from "./read/decode.ts";
export * from "./read/index.ts";
export { draftsToDecide, type OpenDraft } from "./review.ts";
export { toWebVtt, vttText, vttTime } from "./write.ts";
