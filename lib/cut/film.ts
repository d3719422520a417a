import { type BuildDocument, type Cut as CutRow, present, type Recording } from "#lib/build/index.ts";
import { compare, ofNumber, over, type Rational, zero } from "#lib/rational/index.ts";
import { type Cut, type FrameRate, makeCut, readRate, type Segment, sayRate } from "#lib/time/index.ts";
import { readCmx3600 } from "./cmx3600.ts";
import { type EditList, fromBeginning, type ListProblem, Problems, trimmed } from "./edit-list.ts";
import { readOtio } from "./otio.ts";
import { matchReels, type ReelMatch } from "./reels.ts";

/** An edited film of a build: where each stretch of its recordings stands. */
export interface Film {
  row: CutRow;
  name: string;
  /** "25", "29.97"; empty for one marked by hand. */
  rate: string;
  /** Its sources are the ids of recordings. */
  cut: Cut;
  reels: ReelMatch[];
  problems: ListProblem[];
}

/** The frame of a film that was marked by hand: it matters only for how long a frozen picture's moment is. */
const frames: FrameRate = { n: 25n, d: 1n };

/** The film of a build that its links lead to: the cut of the highest rank that has not been struck out. */
export function filmOf(document: Pick<BuildDocument, "cuts" | "recordings">): Film | null {
  const [row] = present(document.cuts).sort((a, b) => b.rank - a.rank || (a.id < b.id ? -1 : 1));
  return row ? readFilm(row, present(document.recordings)) : null;
}

/** A cut as it stands: read, its reels matched, its stretches in the recordings' time. */
export function readFilm(row: CutRow, recordings: readonly Recording[]): Film {
  return row.form === "hand" ? filmByHand(row, recordings) : filmOfList(row, recordings);
}

function filmOfList(row: CutRow, recordings: readonly Recording[]): Film {
  const list = readList(row);
  const reels = matchReels(list, row, recordings);
  const problems = new Problems();
  const places = new Map(reels.map((match) => [match.reel.key, match]));
  const segments = list.segments.flatMap((segment) => {
    const match = places.get(segment.source);
    if (!match?.recordingId || !match.startsAt) return [];
    return fromFilmStart({ ...fromBeginning(segment, match.startsAt), source: match.recordingId });
  });
  for (const match of reels) sayReel(match, problems);
  const frame = over(list.rate.d, list.rate.n);
  return {
    row,
    name: row.name || list.name,
    rate: sayRate(list.rate),
    cut: makeCut(segments, frame, list.duration),
    reels,
    problems: [...list.problems, ...problems.all],
  };
}

/** What lies before the film's first frame is not in it. */
function fromFilmStart(segment: Segment): Segment[] {
  if (compare(segment.end, zero) <= 0) return [];
  return [compare(segment.start, zero) < 0 ? trimmed(segment, zero, segment.end) : segment];
}

function sayReel({ reel, recordingId, how, startsAt }: ReelMatch, problems: Problems): void {
  const where = `reel ${reel.key}`;
  // One that was said to be no recording of this build is not asked about again.
  if (!recordingId && how !== "by hand")
    problems.say(
      "doubtful",
      where,
      `It is not known which recording “${reel.key}” is; what the film shows of it was left out.`,
      "A recording of that name, or the restorer's word.",
      "Say which recording it is, or that it is none of this build.",
    );
  if (recordingId && !startsAt)
    problems.say(
      "doubtful",
      where,
      `The list takes of “${reel.key}” what lies beyond the end of the recording; it was left out.`,
      "The timecode that the recording's first frame bears.",
      "Write that timecode beside the reel.",
    );
}

const lists = new WeakMap<CutRow, EditList>();

/** The edit list of a cut, read once for each row as it stands. */
export function readList(row: CutRow): EditList {
  const known = lists.get(row);
  if (known) return known;
  const list = row.form === "otio" ? readOtio(row.text) : readCmx(row);
  lists.set(row, list);
  return list;
}

function readCmx(row: CutRow): EditList {
  const rate = readRate(row.rate);
  const list = readCmx3600(row.text, rate ?? frames, row.startsAt);
  if (rate) return list;
  const problems = new Problems();
  problems.say(
    "wrong",
    "the rate",
    row.rate === "" ? "No rate was given." : `“${row.rate}” is no rate.`,
    "The rate of the film: a CMX3600 list does not say it.",
    "Give the rate, as the editing program has it: 25, 29.97, 23.976.",
  );
  return { ...list, segments: [], reels: [], problems: problems.all };
}

/** A few stretches by hand. One without an end goes to the next one's beginning, the last to its recording's end. */
function filmByHand(row: CutRow, recordings: readonly Recording[]): Film {
  const problems = new Problems();
  const lines = [...row.segments].sort((a, b) => a.at - b.at);
  const segments = lines.flatMap((line, index): Segment[] => {
    const recording = recordings.find((one) => one.id === line.recordingId);
    const where = `stretch ${index + 1}`;
    if (!recording) {
      const found = "The recording of this stretch is not in the build.";
      problems.say("doubtful", where, found, "A recording of this build.", "Choose the recording.");
      return [];
    }
    const [start, speed] = [ofNumber(line.at), ofNumber(line.speed)];
    const end = line.until ?? lines[index + 1]?.at ?? naturalEnd(line, recording);
    if (end === null || end <= line.at) {
      const found = "It is not known where this stretch ends in the film.";
      problems.say("doubtful", where, found, "An end after its beginning.", "Write where it ends.");
      return [];
    }
    return [{ source: recording.id, start, end: ofNumber(end), from: ofNumber(line.from), speed }];
  });
  const frame: Rational = over(frames.d, frames.n);
  return { row, name: row.name, rate: "", cut: makeCut(segments, frame), reels: [], problems: problems.all };
}

type HandLine = CutRow["segments"][number];

function naturalEnd({ at, from, speed }: HandLine, { probe }: Recording): number | null {
  if (!probe || !(speed > 0)) return null;
  return at + (probe.duration - from) / speed;
}
