import type { Reading } from "./types.ts";

/** Something read at a place: the whole text is parts with words between them. */
export interface Part {
  reading: Reading;
  start: number;
  end: number;
}
