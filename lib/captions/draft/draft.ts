import type { Cue } from "../read/types.ts";
import { type Context, contextOf, type DraftOptions } from "./context.ts";
import { kindOrder } from "./rule.ts";
import { draftRules } from "./rules.ts";
import type { Draft } from "./types.ts";

/**
 * Proposes marks from what was said, in the order of their start. Deterministic: the same cues give the same drafts.
 * Never throws. The work grows with the number of words and no faster.
 */
export function draft(cues: readonly Cue[], options: DraftOptions = {}): Draft[] {
  return draftFrom(contextOf(cues, options));
}

/** As `draft`, of words that are prepared already. */
export function draftFrom(context: Context): Draft[] {
  const drafts = kindOrder.flatMap((kind) => draftRules[kind]?.find(context) ?? []);
  const place = (one: Draft) => kindOrder.indexOf(one.kind);
  return drafts.sort((a, b) => a.start - b.start || a.from - b.from || place(a) - place(b));
}
