import * as assemble from "./shots-assemble.mjs";
import * as bath from "./shots-bath.mjs";
import * as bore from "./shots-bore.mjs";
import * as drain from "./shots-drain.mjs";
import * as measure from "./shots-measure.mjs";
import * as open from "./shots-open.mjs";
import * as strip from "./shots-strip.mjs";

/**
 * The film, shot by shot. A shot lasts until `until`, is seen from `view(now)`, and shows things that stand
 * still in it and things that move.
 */
export const shots = [
  open.floatShot,
  open.witnessShot,
  open.nutsAndCoverShot,
  strip.gasketShot,
  strip.impellerShot,
  strip.keyShot,
  strip.shaftShot,
  bore.sealOutShot,
  bore.cleanShot,
  measure.shaftMeasureShot,
  measure.washerMeasureShot,
  drain.plugOutShot,
  bath.bathShot,
  bath.bathOutShot,
  bath.trialShot,
  drain.plugInShot,
  bore.sealInShot,
  assemble.shaftInShot,
  assemble.impellerOnShot,
  assemble.coverOnShot,
  assemble.proveShot,
];

/** The recording of a week later is one shot. */
export const laterShot = drain.laterShot;

/** The shot that shows at a moment. */
export const shotAt = (now) => shots.find((shot) => now < shot.until) ?? shots[shots.length - 1];
