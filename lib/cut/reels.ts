import type { Cut as CutRow, Recording } from "#lib/build/index.ts";
import { type Rational, toNumber, zero } from "#lib/rational/index.ts";
import { readFrameTimecode, timeOfFrame } from "#lib/time/index.ts";
import type { EditList, Reel } from "./edit-list.ts";

/** Which recording a reel of an edit list is, and how that is known. */
export interface ReelMatch {
  reel: Reel;
  recordingId: string | null;
  how: "by hand" | "by name" | "unknown";
  /** Recordings that it may be, the likeliest first; for the person to choose from. */
  candidates: { recordingId: string; why: string }[];
  /** The time that the recording's first frame bears, in seconds; null where it has to be asked for. */
  startsAt: Rational | null;
  /** A whole hour it may begin at, in seconds, where it does not begin at nought. */
  mayStartAt: number | null;
}

/** Shorter beginnings of names say too little: CMX3600 cuts reels to eight letters (common practice, no source). */
const shortest = 4;

/** Finds the recording of each reel: as the restorer said; else by the names, where they agree and only one does. */
export function matchReels(list: EditList, row: CutRow, recordings: readonly Recording[]): ReelMatch[] {
  const mended = new Map(row.reels.map((one) => [one.reel, one]));
  return list.reels.map((reel) => {
    const hand = mended.get(reel.key);
    const candidates = candidatesFor(reel, recordings);
    const sure = candidates.filter((one) => one.sure);
    const recordingId = hand ? hand.recordingId : sure.length === 1 ? (sure[0]?.recordingId ?? null) : null;
    const recording = recordings.find((one) => one.id === recordingId);
    return {
      reel,
      recordingId: recording?.id ?? null,
      how: hand ? "by hand" : recording ? "by name" : "unknown",
      candidates: candidates.map(({ recordingId: id, why }) => ({ recordingId: id, why })),
      ...startOf(reel, list, hand?.startsAt ?? "", recording),
    };
  });
}

interface Candidate {
  recordingId: string;
  why: string;
  sure: boolean;
}

function candidatesFor(reel: Reel, recordings: readonly Recording[]): Candidate[] {
  const found = recordings.flatMap((recording) => {
    const best = reel.names.map((name) => likeness(name, recording.name)).filter((one) => one !== null);
    const one = best.find(({ sure }) => sure) ?? best[0];
    return one ? [{ recordingId: recording.id, ...one }] : [];
  });
  return found.sort((a, b) => Number(b.sure) - Number(a.sure));
}

/** How a name in a list is like a recording's; null where it is not. */
function likeness(name: string, recording: string): { why: string; sure: boolean } | null {
  const [file, own] = [lastPart(name), lastPart(recording)];
  if (file === own) return { why: "the same file name", sure: true };
  const [stem, ownStem] = [letters(withoutEnding(file)), letters(withoutEnding(own))];
  if (stem === "" || ownStem === "") return null;
  if (stem === ownStem) return { why: "the same name without its ending", sure: true };
  if (stem.length >= shortest && ownStem.startsWith(stem))
    return { why: `its name begins with “${name}”`, sure: false };
  if (ownStem.length >= shortest && stem.includes(ownStem))
    return { why: `“${name}” has its name in it`, sure: false };
  return null;
}

function lastPart(name: string): string {
  return (name.split(/[/\\]/).at(-1) ?? name).trim().toLowerCase();
}

function withoutEnding(name: string): string {
  return name.replace(/\.[a-z0-9]{1,5}$/, "");
}

function letters(name: string): string {
  return name.normalize("NFKD").replace(/[^\p{L}\p{N}]/gu, "");
}

/** The time a recording's first frame bears: as said by hand, by the list, or nought where that fits its length. */
function startOf(
  reel: Reel,
  { rate }: EditList,
  written: string,
  recording: Recording | undefined,
): Pick<ReelMatch, "startsAt" | "mayStartAt"> {
  const read = written.trim() === "" ? null : readFrameTimecode(written, rate);
  if (read?.ok) return { startsAt: timeOfFrame(read.timecode.frame, rate), mayStartAt: null };
  if (reel.startsAt) return { startsAt: reel.startsAt, mayStartAt: null };
  const length = recording?.probe?.duration;
  const frame = toNumber(rate) > 0 ? 1 / toNumber(rate) : 0;
  if (length === undefined || reel.used.end <= length + frame) return { startsAt: zero, mayStartAt: null };
  const hour = Math.floor(reel.used.start / 3600) * 3600;
  return { startsAt: null, mayStartAt: hour > 0 && reel.used.end - hour <= length + frame ? hour : null };
}
