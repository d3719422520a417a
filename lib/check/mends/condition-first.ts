import { conditionsFirst } from "../wording/late-condition.ts";
import type { MakeMend } from "./index.ts";
import { markOf, printed, rewritten } from "./rewrite.ts";

/** Moves the conditions of a text to the beginning of their sentences. */
export const conditionFirst: MakeMend = (document, { place }) => {
  const mark = markOf(document, place.mark);
  if (!mark) return [];
  const field = place.field ?? "words";
  const before = printed(document, mark, field);
  const after = conditionsFirst(before);
  return after === before ? [] : rewritten(document, mark, field, after);
};
