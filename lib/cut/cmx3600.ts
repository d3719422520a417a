import { over, type Rational, toNumber } from "#lib/rational/index.ts";
import { type FrameRate, readFrameTimecode, type Segment, timeOfFrame } from "#lib/time/index.ts";
import { type Event, keyOf, type Reading, readLines } from "./cmx3600-events.ts";
import { groupsOf, layDown } from "./cmx3600-film.ts";
import { type EditList, Problems, type Reel, usedOf } from "./edit-list.ts";

/**
 * Reads a CMX3600 edit list. Its rate is not in it and is asked for; out points are not included. The first event's
 * record in is the film's first frame, unless `startsAt` names another timecode. Only picture is read.
 */
export function readCmx3600(text: string, rate: FrameRate, startsAt = ""): EditList {
  const problems = new Problems();
  const reading = readLines(text, rate, problems);
  const origin = originOf(reading.events, rate, startsAt, problems);
  const frame = over(rate.d, rate.n);
  const segments = layDown(groupsOf(reading.events), origin, rate, problems);
  let last = origin;
  for (const { record } of reading.events) if (record.out > last) last = record.out;
  if (reading.events.length === 0) sayNoEvent(problems);
  return {
    name: reading.title,
    rate,
    duration: timeOfFrame(last - origin, rate),
    segments,
    reels: reelsOf(reading.events, segments, frame),
    locators: locatorsOf(reading, origin, rate),
    problems: problems.all,
  };
}

function sayNoEvent(problems: Problems): void {
  problems.say(
    "wrong",
    "the file",
    "There is no event in it.",
    "Lines such as “001 REEL V C 00:00:10:00 00:00:12:00 01:00:00:00 01:00:02:00”.",
    "Export a CMX3600 edit list of the picture, and choose that file.",
  );
}

/** The frame that is the film's first. */
function originOf(events: Event[], rate: FrameRate, startsAt: string, problems: Problems): bigint {
  const first = events.reduce<bigint | null>(
    (least, event) => (least === null || event.record.in < least ? event.record.in : least),
    null,
  );
  if (startsAt.trim() === "") return first ?? 0n;
  const read = readFrameTimecode(startsAt, rate);
  if (read.ok) return read.timecode.frame;
  const expected = "The timecode of the film's first frame, such as 01:00:00:00.";
  problems.say("wrong", "the beginning of the film", `${read.why}.`, expected, "Put it right.");
  return first ?? 0n;
}

function reelsOf(events: readonly Event[], segments: readonly Segment[], frame: Rational): Reel[] {
  const used = usedOf(segments, frame);
  const reels = new Map<string, Reel>();
  for (const event of events) {
    const key = keyOf(event);
    const span = used.get(key);
    if (!span) continue;
    const names = [...event.names, event.reel].filter((name) => !/^AX$/i.test(name));
    const reel = reels.get(key) ?? { key, names: [], used: span, startsAt: null };
    reels.set(key, { ...reel, names: [...new Set([...reel.names, ...names])] });
  }
  return [...reels.values()];
}

function locatorsOf({ located }: Reading, origin: bigint, rate: FrameRate): EditList["locators"] {
  return located.flatMap(({ at, drop, colour, comment }) => {
    const read = readFrameTimecode(at, rate, /[;,]/.test(at) ? undefined : drop);
    if (!read.ok) return [];
    return [{ at: toNumber(timeOfFrame(read.timecode.frame - origin, rate)), colour, comment }];
  });
}
