import { maximum, one, over, type Rational, toNumber, zero } from "#lib/rational/index.ts";
import { type FrameRate, rateOf, type Segment } from "#lib/time/index.ts";
import { type EditList, type Locator, Problems, type Reel, usedOf } from "./edit-list.ts";
import { durationOf, layItem, type Shot } from "./otio-layers.ts";
import { isObject, type Json, listOf, rangeOf, schemaOf, textOf } from "./otio-values.ts";

/** Tried where a film says no rate of its own: no more is made of it than the length of a frozen frame. */
const frames = { n: 25n, d: 1n };

/**
 * Reads an OpenTimelineIO file (JSON). A timeline's film time counts from its beginning; what timecode that bears
 * does not matter. Tracks lie over each other, the last one uppermost; only picture is read.
 */
export function readOtio(text: string): EditList {
  const problems = new Problems();
  const timeline = timelineOf(text, problems);
  const stack = timeline?.tracks;
  const rate = rateIn(timeline) ?? frames;
  const duration = stack ? durationOf(stack, "tracks", problems) : zero;
  const film = { start: zero, end: duration, at: zero, speed: one, half: over(rate.d, rate.n * 2n) };
  const shots = stack ? layItem(stack, film, "tracks", 0, problems) : [];
  const segments = shots.map(({ segment }) => segment);
  if (timeline && shots.length === 0) sayNothing(problems);
  return {
    name: textOf(timeline?.name),
    rate,
    duration,
    segments,
    reels: reelsOf(shots, segments, over(rate.d, rate.n)),
    locators: markersOf(stack, problems),
    problems: problems.all,
  };
}

/** The timeline in a file; a file that holds several gives its first. */
function timelineOf(text: string, problems: Problems): Json | null {
  let value: unknown;
  try {
    value = JSON.parse(text.replace(/^\uFEFF/, ""));
  } catch (error) {
    const why = error instanceof Error ? error.message : String(error);
    sayUnreadable(`It is no JSON (${why.slice(0, 120)}).`, problems);
    return null;
  }
  const several = listOf(isObject(value) ? value.children : []);
  const timeline =
    schemaOf(value) === "Timeline" ? value : several.find((one) => schemaOf(one) === "Timeline");
  if (isObject(timeline)) return timeline;
  sayUnreadable(`It holds no timeline, but “${schemaOf(value) || typeof value}”.`, problems);
  return null;
}

function sayUnreadable(found: string, problems: Problems): void {
  const expected = "An OpenTimelineIO file (.otio) with one Timeline.";
  problems.say("wrong", "the file", found, expected, "Export the film's timeline, and choose that file.");
}

function sayNothing(problems: Problems): void {
  problems.say(
    "wrong",
    "tracks",
    "No picture of any file stands in the timeline.",
    "Clips with a media reference in tracks of kind Video.",
    "Look whether the timeline that was exported is the film's.",
  );
}

/** The film's rate: that of its global start time, else of the first duration in it. */
function rateIn(timeline: Json | null): FrameRate | null {
  const start = timeline?.global_start_time;
  const given = isObject(start) ? start : firstTime(timeline?.tracks, 0);
  return typeof given?.rate === "number" ? rateOf(given.rate) : null;
}

function firstTime(item: unknown, depth: number): Json | null {
  if (!isObject(item) || depth > 20) return null;
  const range = item.source_range;
  if (isObject(range) && isObject(range.duration)) return range.duration;
  for (const child of listOf(item.children).slice(0, 20)) {
    const found = firstTime(child, depth + 1);
    if (found) return found;
  }
  return null;
}

function reelsOf(shots: readonly Shot[], segments: readonly Segment[], frame: Rational): Reel[] {
  const used = usedOf(segments, frame);
  const reels = new Map<string, Reel>();
  for (const { segment, names, fromBeginning } of shots) {
    const key = segment.source;
    const span = used.get(key);
    if (!span) continue;
    const known = reels.get(key);
    reels.set(key, {
      key,
      names: [...new Set([...(known?.names ?? []), ...names])],
      used: span,
      startsAt: known?.startsAt ?? (fromBeginning ? zero : null),
    });
  }
  return [...reels.values()];
}

/** Markers of the whole film. Those of clips belong to the clips. */
function markersOf(stack: unknown, problems: Problems): Locator[] {
  if (!isObject(stack)) return [];
  return listOf(stack.markers)
    .slice(0, 10_000)
    .flatMap((marker, index) => {
      const range = isObject(marker)
        ? rangeOf(marker.marked_range, `tracks/markers/${index}`, problems)
        : null;
      if (!range || !isObject(marker)) return [];
      const at = toNumber(maximum(zero, range.start));
      return [{ at, colour: textOf(marker.color), comment: textOf(marker.name) }];
    });
}
