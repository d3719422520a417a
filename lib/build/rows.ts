import { z } from "zod";
import { drawing, plainDrawing } from "#lib/figure/index.ts";
import type { Answer } from "#lib/finding/index.ts";
import { kindNames, stages } from "#lib/mark/index.ts";
import { base, id, line, number, seconds, text, whole } from "./columns.ts";

/** The records of a build, beside its marks. All are flat rows. */

/** ISO 8601 in UTC. */
const wallTime = z.string().max(40);

/** What is restored. `years` and `serial` are words: "about 1911", "between 4000 and 4200". */
export const machineRow = z.object({
  ...base,
  name: line,
  maker: line,
  model: line,
  years: line,
  serial: line,
  variant: line,
  notes: text,
});
export type Machine = z.infer<typeof machineRow>;

/** A part of a machine that is opened as a whole; assemblies form a tree. */
export const assemblyRow = z.object({
  ...base,
  machineId: id,
  parentId: id.nullable(),
  name: line,
  rank: number,
});
export type Assembly = z.infer<typeof assemblyRow>;

/** A part with an identity of its own. */
export const itemRow = z.object({
  ...base,
  machineId: id,
  assemblyId: id.nullable(),
  name: line,
  partNumber: line,
  material: line,
  notes: text,
});
export type Item = z.infer<typeof itemRow>;

/** One restoration of a machine or of one of its assemblies. */
export const buildRow = z.object({
  ...base,
  machineId: id,
  assemblyId: id.nullable(),
  title: line,
  /** What the procedure is for, in a sentence or two; printed under the title. */
  summary: text,
  /** BCP 47, for PDF and HTML: "en-GB". */
  language: z.string().max(35),
  decimal: z.enum([".", ","]),
  /** How long before an action a caution, tool or consumable may lie and still belong to it, in seconds. */
  warnAhead: z.number().min(0).max(600),
});
export type Build = z.infer<typeof buildRow>;

/** One stretch of work on a build. */
export const sittingRow = z.object({
  ...base,
  buildId: id,
  title: line,
  stage: z.enum(stages),
  /** When it began, and how far that time can be trusted, in words: "from the file", "typed". */
  began: wallTime.nullable(),
  beganTrust: line,
  rank: number,
});
export type Sitting = z.infer<typeof sittingRow>;

/** What probing a recording found; null until it has been probed. */
export const probed = z.object({
  /** Seconds, to the end of the last frame. */
  duration: seconds,
  frameCount: whole,
  width: whole,
  height: whole,
  rotation: z.number().int().min(-360).max(360),
  videoCodec: z.string().max(100).nullable(),
  audioCodec: z.string().max(100).nullable(),
  playable: z.boolean(),
});

/** A problem with a recording's file, in the three parts of every message. */
export const fileTrouble = z.object({ found: text, expected: text, todo: text });

/** A video file of the restorer's own. */
export const recordingRow = z.object({
  ...base,
  buildId: id,
  sittingId: id,
  name: line,
  /** Where its clock lies on the sitting's: offset in seconds, rate in sitting seconds a recording second. */
  offset: number,
  rate: z.number().min(1e-6).max(1e6),
  /** When it was made, by the file; and how far that can be trusted. */
  madeAt: wallTime.nullable(),
  madeAtTrust: line,
  probe: probed.nullable(),
  trouble: fileTrouble.nullable(),
  /** Address of the uncut film, with `{seconds}` where the moment goes, or plain; empty when it is not published. */
  publishedAt: z.string().max(2000),
  /** SHA-256 of the bytes in hex; null until it has been computed. */
  sha256: z.string().length(64).nullable(),
});
export type Recording = z.infer<typeof recordingRow>;

/** A caption file as it came. */
export const captionTrackRow = z.object({
  ...base,
  buildId: id,
  recordingId: id,
  name: line,
  /** Whose clock it keeps. */
  clock: z.enum(["recording", "cut"]),
  text: z.string().max(20_000_000),
});
export type CaptionTrack = z.infer<typeof captionTrackRow>;

/**
 * An edited film: the edit list as it came, or a few stretches marked by hand; and what the restorer had to say of it.
 * Of several cuts the one of the highest rank is the film that links lead to.
 */
export const cutRow = z.object({
  ...base,
  buildId: id,
  name: line,
  form: z.enum(["cmx3600", "otio", "hand"]),
  /** The edit list to the letter; empty for one marked by hand. */
  text: z.string().max(20_000_000),
  /** Frames a second of a CMX3600 list, as written: "25", "29.97", "30000/1001". Empty where the list says it. */
  rate: z.string().max(20),
  /** Timecode of the film's first frame; empty: that of the first event. */
  startsAt: z.string().max(20),
  /** Address of the film, with `{seconds}` where the moment goes, or plain; empty when it is not published. */
  publishedAt: z.string().max(2000),
  /** What was said by hand of reels: which recording one is (null: none of this build), what its first frame bears. */
  reels: z
    .array(z.object({ reel: z.string().max(1000), recordingId: id.nullable(), startsAt: z.string().max(20) }))
    .max(2000),
  /** Stretches by hand: the film from `at` until `until` shows a recording from `from` on. All in seconds. */
  segments: z
    .array(
      z.object({
        at: seconds,
        until: seconds.nullable(),
        recordingId: id,
        from: seconds,
        /** Recording seconds for each second of film: 2 twice as fast, -1 backwards, 0 frozen. */
        speed: z.number().min(-1000).max(1000),
      }),
    )
    .max(2000),
  rank: number,
});
export type Cut = z.infer<typeof cutRow>;

/** A frame picked from a recording, or a photograph, that shows a mark. */
export const stillRow = z.object({
  ...base,
  buildId: id,
  markId: id,
  source: z.enum(["frame", "photograph"]),
  recordingId: id.nullable(),
  /** Seconds of the recording's clock, the middle of the frame's interval; null for a photograph. */
  at: seconds.nullable(),
  /** SHA-256 of the picture's bytes in hex: its name in the folder of stills. Empty while there is none. */
  sha256: z.string().regex(/^([0-9a-f]{64})?$/),
  width: whole,
  height: whole,
  /** What it shows, for who cannot see it. Empty until the restorer has written or accepted one. */
  alt: text,
  /** Balloons and dimension lines, and how the picture is shown. Folders written before there were figures have none. */
  drawing: drawing.default(plainDrawing),
  rank: number,
});
export type Still = z.infer<typeof stillRow>;

/**
 * A hand edit laid over the compiled procedure, keyed by a mark:
 *
 * - `title`: the step of this action is called `value`;
 * - `stage`: it belongs to the stage `value`;
 * - `after`: it comes after the step of the mark `value` (empty: first of its stage);
 * - `merged`: it is part of the step of the mark `value`;
 * - `split`: at this mark a new step begins, called `value`;
 * - `belongs`: this mark belongs to the step of the mark `value`.
 *
 * `basis` holds the words of the mark when the edit was made; an edit whose words have since changed, or
 * whose mark is gone, is kept and becomes a finding.
 */
export const editRow = z.object({
  ...base,
  buildId: id,
  markId: id,
  edit: z.enum(["title", "stage", "after", "merged", "split", "belongs"]),
  value: z.string().max(2000),
  basis: text,
});
export type Edit = z.infer<typeof editRow>;
export type EditName = Edit["edit"];

/** A procedure frozen as published. Its bytes lie in the workshop's folder of releases, under its id. */
export const releaseRow = z.object({
  ...base,
  buildId: id,
  /** Revision letter: "A". */
  revision: z.string().min(1).max(5),
  /** The day of release, ISO 8601: "2026-11-28". */
  date: z.string().regex(/^\d{4}-\d\d-\d\d$/),
  /** What changed since the one before, in the restorer's words. */
  changed: text,
  /** What somebody who followed the one before has to do again; empty for nothing. */
  again: text,
  /** SHA-256 of the procedure as canonical JSON, in hex. */
  contentHash: z.string().length(64),
});
export type Release = z.infer<typeof releaseRow>;

/** What can come of a report; the first while nobody has said. */
export const dispositions = ["", "mistake", "stands", "known already"] as const;

/** A mistake reported against a release. From whom it came does not matter, and is not kept. */
export const erratumRow = z.object({
  ...base,
  buildId: id,
  releaseId: id,
  reportedAt: wallTime,
  /** The report, in its own words. */
  words: text,
  /** The mark it speaks of; null where it names none. */
  markId: id.nullable(),
  /** The value or wording in question. */
  value: line,
  disposition: z.enum(dispositions),
  /** What is right, or why it stands. */
  correction: text,
  /** The release that has it right; null until there is one. */
  mendedIn: id.nullable(),
});
export type Erratum = z.infer<typeof erratumRow>;

/** The row of an answer to a finding. */
export const answerRow = z.object({
  ...base,
  buildId: id,
  key: z.string().max(1000),
  evidence: z.string().max(20_000),
  reason: text,
});
export type AnswerRow = z.infer<typeof answerRow> & Answer;

/**
 * What the restorer decided about a draft. Drafts are computed from captions and stored nowhere; a decision names one by
 * recording, kind, span and value, so that it holds for whichever file the words come from.
 */
export const draftDecisionRow = z.object({
  ...base,
  buildId: id,
  recordingId: id,
  kind: z.enum(kindNames),
  /** The span of its words, half-open, in seconds of the recording's clock. */
  at: seconds,
  until: seconds,
  /** Its value in one fixed form, as lib/captions gives it; empty where words are all there is. */
  value: z.string().max(2000),
  verdict: z.enum(["accepted", "dropped"]),
  /** The mark that an accepted draft became. It may have been struck out since. */
  markId: id.nullable(),
});
export type DraftDecisionRow = z.infer<typeof draftDecisionRow>;
/** What the restorer says of one line of a kit. */
export const kitNote = z.object({
  /** The part it belongs to, where the line calls it otherwise. */
  item: line.optional(),
  /** How many really came. */
  received: z.number().int().min(0).max(1_000_000).optional(),
  /** Why it must not be used; it is kept out of the account. */
  notToUse: text.optional(),
  /** Why some are left over. */
  leftWhy: text.optional(),
});
export type KitNote = z.infer<typeof kitNote>;

/** A bag or box of parts bought together: what is written on it, as it was pasted. */
export const kitRow = z.object({
  ...base,
  buildId: id,
  name: line,
  supplier: line,
  text: z.string().max(200_000),
  /** Notes by the words of their line. */
  lines: z.record(z.string().max(2000), kitNote),
});
export type Kit = z.infer<typeof kitRow>;
