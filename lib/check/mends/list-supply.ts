import { newMark } from "#lib/mark/index.ts";
import type { MakeMend } from "./index.ts";
import { markOf } from "./rewrite.ts";

/** Lists a tool or consumable in the step that names it: a mark at the moment of the action, before it in rank. */
export const listSupply =
  (kind: "tool" | "consumable"): MakeMend =>
  (document, { place }, { with: name }, given) => {
    const action = markOf(document, place.mark);
    if (!action || name === undefined) return [];
    const { buildId, sittingId, recordingId, at, rank, fields } = action;
    const words = name.charAt(0).toUpperCase() + name.slice(1);
    // With film it lies before its action, or it would count to the next one if that follows soon; without film
    // marks have no distance, and it lies behind.
    const row = newMark({
      id: given.newId(),
      buildId,
      sittingId,
      recordingId,
      at,
      rank: at === null ? rank + 0.001 : rank - 0.001,
      kind,
      fields: { v: fields.v, words },
    });
    return [{ table: "mark", row }];
  };
