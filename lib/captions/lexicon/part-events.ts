import { kept } from "./parts-kept.ts";
import { mended } from "./parts-mended.ts";
import { renewed } from "./parts-renewed.ts";

/**
 * What is done with a part, by the words that say so. `{part}` is a part's name, `{thing}` it, them, that, those, one
 * or ones. Where several are said of one part, the one listed first here names what was done.
 */
export const partEvents = {
  make: renewed.make,
  replace: renewed.replace,
  repair: mended.repair,
  reuse: kept.reuse,
  clean: mended.clean,
  fit: kept.fit,
  adjust: kept.adjust,
  remove: kept.remove,
} as const satisfies Record<string, readonly string[]>;
/** What can be done with a part, in the words of the lexicon. */
export type PartAction = keyof typeof partEvents;
