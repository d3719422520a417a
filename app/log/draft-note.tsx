"use client";
import { kindOf } from "#lib/mark/index.ts";
import type { LogDraft } from "./drafts.ts";

/** What can be done with the draft in hand. */
export interface DraftDeeds {
  accept: (draft: LogDraft) => void;
  /** Accepts it and keeps it in hand, since something is being written in it. */
  keep: (draft: LogDraft) => void;
  drop: (draft: LogDraft) => void;
  hear: (draft: LogDraft) => void;
  acceptCertain: (draft: LogDraft) => void;
  /** How many drafts of that kind are certain and wait. */
  certainLike: (draft: LogDraft) => number;
  /** Whether there is a picture in which the sentence can be heard. */
  canHear: boolean;
}

/** A draft in hand: the words it comes from, why it is proposed, and what can be done with it. */
export function DraftNote({ draft, deeds }: { draft: LogDraft; deeds: DraftDeeds }) {
  const { reason, sureness } = draft.draft;
  const { before, words, after } = draft.around;
  const certain = deeds.certainLike(draft);
  return (
    <div className="draft-note">
      <blockquote>
        {before}
        <b>{words}</b>
        {after}
      </blockquote>
      <p className="soft small">
        {sureness === "certain" ? "Certain. " : sureness === "unsure" ? "Worth a look. " : ""}
        {reason}
        {draft.formerly &&
          ` Earlier words here were ${draft.formerly.verdict} by you; these say something else.`}
      </p>
      <div className="row-of-buttons">
        <button type="button" className="plain" onClick={() => deeds.accept(draft)}>
          Accept
        </button>
        <button type="button" className="plain" onClick={() => deeds.drop(draft)}>
          Drop
        </button>
        {deeds.canHear && (
          <button type="button" className="plain" onClick={() => deeds.hear(draft)}>
            Hear it again
          </button>
        )}
        {certain > 1 && (
          <button type="button" className="plain" onClick={() => deeds.acceptCertain(draft)}>
            Accept all {certain} certain: {kindOf(draft.mark.kind).word.toLowerCase()}
          </button>
        )}
      </div>
      <p className="soft small" style={{ margin: "8px 0 0" }}>
        A draft counts nowhere before it is accepted. Writing in a field below accepts it.
      </p>
    </div>
  );
}
