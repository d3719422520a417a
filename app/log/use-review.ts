import { useCallback, useMemo } from "react";
import type { Mark } from "#lib/mark/index.ts";
import { frameAt, middleOf } from "#lib/time/index.ts";
import { useSession } from "../session/provider.tsx";
import type { DraftDeeds } from "./draft-note.tsx";
import { acceptDrafts, dropDraft, type LogDraft } from "./drafts.ts";
import type { Picture } from "./picture.ts";

/** The review of drafts on the sheet: deciding about one brings the next one to hand. */
export interface Review {
  deeds: DraftDeeds;
  /** Carries out a deed of the keys; false when it is none of the review's. */
  act: (deed: string) => boolean;
}

/**
 * @param rows marks and drafts in the order of the sheet
 * @param drafts those of the rows that are drafts, by id
 */
export function useReview(given: {
  rows: readonly Mark[];
  drafts: ReadonlyMap<string, LogDraft>;
  handId: string | null;
  onHand: (id: string) => void;
  picture: Picture | null;
  recordingId: string | undefined;
}): Review {
  const { rows, drafts, handId, onHand, picture, recordingId } = given;
  const session = useSession();

  const beside = useCallback(
    (by: 1 | -1, without: ReadonlySet<string> = new Set()): string | null => {
      const at = rows.findIndex((row) => row.id === handId);
      const waits = (row: Mark) => drafts.has(row.id) && !without.has(row.id);
      const after = rows.filter((row, index) => index > at && waits(row));
      const before = rows.filter((row, index) => index < at && waits(row));
      const [next] = by > 0 ? [...after, ...before] : [...before.reverse(), ...after.reverse()];
      return next?.id ?? null;
    },
    [rows, drafts, handId],
  );

  const frameOf = useCallback(
    (mark: Mark) => {
      const moment = mark.at ?? 0;
      const frames = mark.recordingId === recordingId ? picture?.frames : null;
      return frames && frames.starts.length > 0 ? middleOf(frames, frameAt(frames, moment)) : moment;
    },
    [picture, recordingId],
  );

  const deeds = useMemo((): DraftDeeds => {
    const decided = (those: readonly LogDraft[]) => {
      const next = beside(1, new Set(those.map((draft) => draft.mark.id)));
      if (next) onHand(next);
    };
    const certainLike = (draft: LogDraft) =>
      [...drafts.values()].filter(
        (one) => one.mark.kind === draft.mark.kind && one.draft.sureness === "certain" && !one.formerly,
      );
    return {
      accept: (draft) => {
        acceptDrafts(session, [draft], frameOf);
        decided([draft]);
      },
      keep: (draft) => acceptDrafts(session, [draft], frameOf),
      drop: (draft) => {
        dropDraft(session, draft);
        decided([draft]);
      },
      hear: (draft) => picture?.playThrough(draft.mark.at ?? 0, draft.mark.until ?? 0),
      acceptCertain: (draft) => {
        const those = certainLike(draft);
        acceptDrafts(session, those, frameOf);
        if (those.includes(draft)) decided(those);
      },
      certainLike: (draft) => certainLike(draft).length,
      canHear: picture !== null,
    };
  }, [session, drafts, beside, onHand, frameOf, picture]);

  const act = useCallback(
    (deed: string): boolean => {
      const draft = handId ? drafts.get(handId) : undefined;
      const go = (id: string | null) => id && onHand(id);
      if (deed === "next draft") go(beside(1));
      else if (deed === "draft before") go(beside(-1));
      else if (deed === "hear" && !draft) {
        const mark = rows.find((row) => row.id === handId);
        if (mark?.at != null && picture) picture.playThrough(mark.at, Math.max(mark.until ?? 0, mark.at + 3));
      } else if (!["accept", "drop", "hear", "accept certain"].includes(deed)) return false;
      // With no draft in hand the first one comes to hand: nothing is decided unseen.
      else if (!draft) go(beside(1));
      else if (deed === "accept") deeds.accept(draft);
      else if (deed === "drop") deeds.drop(draft);
      else if (deed === "hear") deeds.hear(draft);
      else deeds.acceptCertain(draft);
      return true;
    },
    [handId, drafts, beside, onHand, rows, picture, deeds],
  );
  return { deeds, act };
}
