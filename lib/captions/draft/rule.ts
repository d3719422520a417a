import type { Context } from "./context.ts";
import type { Draft, DraftKind } from "./types.ts";

/** One thing that is looked for: what it is, how it is found, and sentences that prove it. */
export interface DraftRule {
  /** In plain words, for the page about drafting. */
  explains: string;
  /** Sentences, and what is proposed from each: kind, and the value or the words of it. They are its tests. */
  examples: readonly Example[];
  find: (context: Context) => Draft[];
}

/** A sentence that proves a rule. */
export interface Example {
  said: string;
  /** Drafts expected of this rule: the typed value, the name, or words of the summary. Empty: nothing may be proposed. */
  gives: readonly string[];
  /** Whose English, where the words alone do not show it. */
  english?: "GB" | "US";
}

/** A stretch of words that a rule found, with its reason. */
export interface Span {
  from: number;
  to: number;
  reason: string;
}

/** What an example's `gives` is compared with. */
export function gistOf(draft: Draft): string {
  if (draft.kind === "measurement") return draft.fields.typed;
  if (draft.kind === "part") return [draft.fields.action, draft.fields.name].filter(Boolean).join(" ");
  return "summary" in draft.fields ? draft.fields.summary : draft.fields.name;
}

/** The kinds in the order in which people say them: they warn first. */
export const kindOrder: readonly DraftKind[] = [
  "caution",
  "action",
  "part",
  "measurement",
  "tool",
  "consumable",
  "gotcha",
  "deferred",
];
