import { useMemo } from "react";
import { type CaptionTrack, type DraftDecisionRow, newItem, present } from "#lib/build/index.ts";
import {
  type Captions,
  type Cue,
  type DraftDecision,
  type DraftMark,
  draftsToDecide,
  type OpenDraft,
  readCaptionText,
  toDraftMarks,
} from "#lib/captions/index.ts";
import { kindOf, type Mark, newMark } from "#lib/mark/index.ts";
import { timecode } from "#lib/time/index.ts";
import type { BuildSession, Change } from "../session/build-session.ts";
import { useSessionView } from "../session/provider.tsx";
import { itemNamed } from "./deeds.ts";

/** A draft on the log sheet. `mark` is what it would become; it is on no disk before it has been accepted. */
export interface LogDraft extends OpenDraft {
  mark: Mark;
  decisionId: string;
  /** What is said around its words, and the words themselves. */
  around: { before: string; words: string; after: string };
}

/** The captions of a recording that are shown beside it: of its own clock where there are any. */
export function trackOf(tracks: readonly CaptionTrack[], recordingId: string): CaptionTrack | undefined {
  const its = present(tracks).filter((track) => track.recordingId === recordingId);
  return its.find((track) => track.clock === "recording") ?? its[0];
}

/** What was read of a track, kept while its text stands. */
const reading = new WeakMap<CaptionTrack, Captions>();
export function captionsOf(track: CaptionTrack): Captions {
  const known = reading.get(track) ?? readCaptionText(track.text);
  reading.set(track, known);
  return known;
}

const drafted = new WeakMap<CaptionTrack, DraftMark[]>();
function draftedFrom(track: CaptionTrack): DraftMark[] {
  const known =
    drafted.get(track) ?? toDraftMarks(captionsOf(track).cues, { recordingId: track.recordingId });
  drafted.set(track, known);
  return known;
}

/** The drafts of a sitting that wait for a decision. Only captions on a recording's own clock say where in it they lie. */
export function useDrafts(sittingId: string): LogDraft[] {
  const { document } = useSessionView();
  const { captions, decisions, marks, recordings, build } = document;
  return useMemo(() => {
    const here = present(recordings).filter((recording) => recording.sittingId === sittingId);
    return here.flatMap(({ id }) => {
      const track = trackOf(captions, id);
      if (track?.clock !== "recording") return [];
      const open = draftsToDecide(draftedFrom(track), decisionsOf(decisions, id), marks);
      const { cues } = captionsOf(track);
      return named(open).map((draft) => logDraft(draft, { buildId: build.id, sittingId }, cues));
    });
  }, [captions, decisions, marks, recordings, build.id, sittingId]);
}

function decisionsOf(rows: readonly DraftDecisionRow[], recordingId: string): DraftDecision[] {
  return present(rows)
    .filter((row) => row.recordingId === recordingId)
    .map(({ kind, at, until, value, verdict, markId }) => ({
      identity: { recordingId, kind, start: at, end: until, value },
      verdict,
      ...(markId === null ? {} : { markId }),
    }));
}

/**
 * Gives each draft the id of the decision about it. It follows from what the draft is known by, so that two tabs that
 * decide about one draft write one row, and the later is told so.
 */
function named(open: readonly OpenDraft[]): (OpenDraft & { decisionId: string })[] {
  const seen = new Map<string, number>();
  return open.map((one) => {
    const { recordingId, kind, start, value } = one.draft.identity;
    const known = `${recordingId.slice(0, 40)} ${kind} ${start.toFixed(2)}`;
    const count = (seen.get(`${known} ${value}`) ?? 0) + 1;
    seen.set(`${known} ${value}`, count);
    return { ...one, decisionId: `${known} ${count} ${value}`.slice(0, 100) };
  });
}

/** The ids that drafts would have as marks: the same one as long as the page is open. */
const markIds = new Map<string, string>();

function logDraft(
  open: OpenDraft & { decisionId: string },
  place: { buildId: string; sittingId: string },
  cues: readonly Cue[],
): LogDraft {
  const { draft, decisionId } = open;
  const id = markIds.get(decisionId) ?? crypto.randomUUID();
  markIds.set(decisionId, id);
  const { at, until, kind, fields, quote, identity } = draft;
  const { recordingId } = identity;
  return {
    ...open,
    around: wordsAround(draft, cues),
    mark: newMark({ id, ...place, recordingId, at, until, kind, fields: { ...fields, said: quote } }),
  };
}

/** The cues that a draft comes from, with its words apart from what stands before and after them in those. */
function wordsAround({ quote, at, until }: DraftMark, cues: readonly Cue[]): LogDraft["around"] {
  const its = cues.slice(Math.max(0, cueAt(cues, at)), cueAt(cues, until - 0.01) + 1);
  const whole = its.map((cue) => cue.text).join(" ");
  const start = whole.indexOf(quote);
  if (start < 0) return { before: "", words: quote, after: "" };
  const end = start + quote.length;
  return { before: whole.slice(0, start), words: quote, after: whole.slice(end) };
}

/** The last cue that has begun at a moment; -1 before the first. */
export function cueAt(cues: readonly Cue[], moment: number): number {
  let [low, high] = [0, cues.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((cues[middle] as Cue).start <= moment + 0.001) low = middle + 1;
    else high = middle;
  }
  return low - 1;
}

/**
 * Accepts drafts, as one command: each becomes a mark, its part gets an identity where it has none yet, and the decision
 * is kept.
 *
 * @param frameOf the middle of the frame that holds a moment of that recording
 */
export function acceptDrafts(
  session: BuildSession,
  drafts: readonly LogDraft[],
  frameOf: (mark: Mark) => number,
): void {
  const [first] = drafts;
  if (!first) return;
  const items = new Map<string, string>();
  const changes = drafts.flatMap((draft): Change[] => {
    const at = frameOf(draft.mark);
    const part = partOf(session, draft.mark, items);
    const fields = { ...draft.mark.fields, ...(part.id ? { itemId: part.id } : {}) };
    const mark = { ...draft.mark, at, until: Math.max(at, draft.mark.until ?? at), fields };
    return [...part.changes, { table: "mark", row: mark }, decisionAbout(draft, "accepted")];
  });
  const { word } = kindOf(first.mark.kind);
  const label =
    drafts.length === 1
      ? `Draft accepted: ${word} at ${timecode(first.mark.at ?? 0)}`
      : `${drafts.length} drafts accepted: ${word}`;
  session.change(label, changes);
}

/** The identity of the part that a draft names: a known one's, or a new one's with the change that makes it. */
function partOf(
  session: BuildSession,
  mark: Mark,
  made: Map<string, string>,
): { id: string | undefined; changes: Change[] } {
  const name = typeof mark.fields.item === "string" ? mark.fields.item.trim() : "";
  if (name === "") return { id: undefined, changes: [] };
  const known = itemNamed(session, name)?.id ?? made.get(name.toLowerCase());
  if (known) return { id: known, changes: [] };
  const row = newItem({ id: crypto.randomUUID(), machineId: session.document.machine.id, name });
  made.set(name.toLowerCase(), row.id);
  return { id: row.id, changes: [{ table: "item", row }] };
}

/** Drops a draft. It is not proposed again, whatever file its words come from. */
export function dropDraft(session: BuildSession, draft: LogDraft): void {
  const { mark } = draft;
  const label = `Draft dropped: ${kindOf(mark.kind).word} at ${timecode(mark.at ?? 0)}`;
  session.change(label, [decisionAbout(draft, "dropped")]);
}

function decisionAbout(draft: LogDraft, verdict: DraftDecisionRow["verdict"]): Change {
  const { identity } = draft.draft;
  const row: DraftDecisionRow = {
    id: draft.decisionId,
    buildId: draft.mark.buildId,
    recordingId: identity.recordingId,
    kind: identity.kind,
    at: identity.start,
    until: identity.end,
    value: identity.value.slice(0, 2000),
    verdict,
    markId: verdict === "accepted" ? draft.mark.id : null,
    gone: null,
    rev: 0,
  };
  return { table: "draftDecision", row };
}
