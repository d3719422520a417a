import {
  absolute,
  add,
  compare,
  divide,
  maximum,
  minimum,
  multiply,
  ofNumber,
  one,
  type Rational,
  subtract,
  zero,
} from "#lib/rational/index.ts";
import type { Segment } from "#lib/time/index.ts";
import { cover, furthest, type Problems, type Stretch, uncovered } from "./edit-list.ts";
import { isObject, type Json, listOf, type Range, rangeOf, schemaOf, textOf, timeOf } from "./otio-values.ts";

/** A stretch of a file that is seen in the film, and what the file is called. */
export interface Shot {
  segment: Segment;
  names: string[];
  /** Whether it is known what time the file's first frame bears, so that `from` counts from there. */
  fromBeginning: boolean;
  /** Whether it hides what lies beneath. */
  opaque: boolean;
}

/**
 * A window of the film through which an item is looked at: from `start` to `end` of the film, and the item's parent
 * at `at` when it opens, running at `speed` of the parent's time.
 */
interface View extends Stretch {
  at: Rational;
  speed: Rational;
  /** Half a frame of the film: the middle of a frozen frame is what is looked at. */
  half: Rational;
}

/** Deeper nesting is nobody's film. */
const deepest = 60;
const mostShots = 20_000;

/** What is seen of an item and all it holds. */
export function layItem(item: unknown, view: View, path: string, depth: number, problems: Problems): Shot[] {
  if (!isObject(item) || item.enabled === false || compare(view.start, view.end) >= 0) return [];
  if (depth > deepest) {
    sayTooDeep(path, problems);
    return [];
  }
  const schema = schemaOf(item);
  if (schema === "Clip") return layClip(item, view, path, problems);
  const inside = warped(item, view, path, problems);
  if (schema === "Stack") return layStack(item, inside, path, depth, problems);
  if (schema === "Track") return layTrack(item, inside, path, depth, problems);
  if (schema !== "Gap") sayUnknown(schema, path, problems);
  return [];
}

function sayTooDeep(path: string, problems: Problems): void {
  const found = `Things are nested more than ${deepest} deep; what lies deeper was passed over.`;
  problems.say("wrong", shortened(path), found, "A film.", "Flatten the timeline before exporting it.");
}

function sayUnknown(schema: string, path: string, problems: Problems): void {
  const found = `“${schema || "something without OTIO_SCHEMA"}” is not known here; it was taken for a gap.`;
  const expected = "Stack, Track, Clip, Gap or Transition.";
  problems.say("doubtful", shortened(path), found, expected, "Look whether the film comes out right.");
}

function shortened(path: string): string {
  return path.length > 200 ? `…${path.slice(-200)}` : path;
}

/** The window seen in an item's own time: its source range shifts it, its time effects stretch it. */
function warped(item: Json, view: View, path: string, problems: Problems): View {
  const range = rangeOf(item.source_range, `${path}/source_range`, problems);
  const start = range?.start ?? zero;
  const factor = speedOf(item, path, problems);
  const long = range?.duration ?? durationOf(item, path, problems);
  const from = add(start, leadOf(factor, long, view.half));
  return {
    ...view,
    at: add(from, multiply(factor, view.at)),
    speed: multiply(factor, view.speed),
  };
}

/** How far into its stretch an item begins: what runs backwards at its end, a frozen frame in its middle. */
function leadOf(speed: Rational, long: Rational, half: Rational): Rational {
  if (speed.n === 0n) return half;
  return speed.n < 0n ? multiply(absolute(speed), long) : zero;
}

/** The product of an item's linear time warps; a frozen frame is nought. Other effects leave time as it is. */
function speedOf(item: Json, path: string, problems: Problems): Rational {
  return effectsOf(item).reduce<Rational>((speed, effect) => {
    const schema = schemaOf(effect);
    if (schema === "FreezeFrame") return zero;
    if (schema !== "LinearTimeWarp") return speed;
    const scalar = isObject(effect) ? effect.time_scalar : null;
    if (typeof scalar === "number" && Number.isFinite(scalar) && Math.abs(scalar) <= 10_000)
      return multiply(speed, nearestSpeed(scalar));
    const found = `A time warp has no scalar that can be used: ${JSON.stringify(scalar ?? null)}.`;
    problems.say("doubtful", shortened(path), found, "A number.", "It is taken to run at its own speed.");
    return speed;
  }, one);
}

/** A speed that was written as a rounded decimal (0.333333) means the short fraction it is a rounding of. */
function nearestSpeed(scalar: number): Rational {
  for (let below = 1; below <= 100; below++) {
    const above = Math.round(scalar * below);
    if (Math.abs(above / below - scalar) < 1e-9) return divide(ofNumber(above), ofNumber(below));
  }
  return ofNumber(scalar);
}

function effectsOf(item: Json): unknown[] {
  return listOf(item.effects).slice(0, 100);
}

/** Whether an item may let through what lies beneath: an effect that is none of time says so. */
function isOpaque(item: Json): boolean {
  return effectsOf(item).every((effect) =>
    ["LinearTimeWarp", "FreezeFrame", "TimeEffect"].includes(schemaOf(effect)),
  );
}

/** Children lie over each other; the last is uppermost. */
function layStack(item: Json, view: View, path: string, depth: number, problems: Problems): Shot[] {
  const covered: Stretch[] = [];
  const shots: Shot[] = [];
  const children = listOf(item.children);
  for (let index = children.length - 1; index >= 0; index--) {
    const child = children[index];
    if (isObject(child) && schemaOf(child) === "Track" && isSound(child)) continue;
    const here = `${path}/children/${index}`;
    const through = windowOf(view, zero, zero, durationOf(child, here, problems));
    const laid = through ? layItem(child, through, here, depth + 1, problems) : [];
    for (const shot of laid)
      for (const segment of uncovered([shot.segment], covered)) shots.push({ ...shot, segment });
    for (const { segment, opaque } of laid) if (opaque && isOpaque(item)) cover(covered, segment);
  }
  return limited(shots, path, problems);
}

function isSound(track: Json): boolean {
  return /^audio$/i.test(textOf(track.kind));
}

function limited(shots: Shot[], path: string, problems: Problems): Shot[] {
  if (shots.length <= mostShots) return shots;
  const found = `There are more than ${mostShots} clips; the rest was passed over.`;
  problems.say("wrong", shortened(path), found, "A film.", "Export the film in parts.");
  return shots.slice(0, mostShots);
}

/** Children follow each other; a transition makes its neighbours overlap. */
function layTrack(item: Json, view: View, path: string, depth: number, problems: Problems): Shot[] {
  const shots: Shot[] = [];
  let start = zero;
  const children = listOf(item.children);
  for (const [index, child] of children.entries()) {
    if (schemaOf(child) === "Transition") continue;
    const here = `${path}/children/${index}`;
    const end = add(start, durationOf(child, here, problems));
    const before = overlapOf(children[index - 1], "in_offset", `${path}/children/${index - 1}`, problems);
    const after = overlapOf(children[index + 1], "out_offset", `${path}/children/${index + 1}`, problems);
    const through = windowOf(view, start, subtract(start, before), add(end, after));
    if (through) shots.push(...layItem(child, through, here, depth + 1, problems));
    start = end;
  }
  return limited(shots, path, problems);
}

function overlapOf(neighbour: unknown, side: string, path: string, problems: Problems): Rational {
  if (!isObject(neighbour) || schemaOf(neighbour) !== "Transition") return zero;
  return maximum(zero, timeOf(neighbour[side], `${path}/${side}`, problems) ?? zero);
}

/**
 * The part of a window in which a child that begins at `origin` of its parent is seen, from `from` until `until` of
 * the parent's time; null where it is not seen.
 */
function windowOf(view: View, origin: Rational, from: Rational, until: Rational): View | null {
  const { at, speed } = view;
  if (speed.n === 0n)
    return compare(from, at) <= 0 && compare(at, until) < 0 ? { ...view, at: subtract(at, origin) } : null;
  const film = (moment: Rational) => add(view.start, divide(subtract(moment, at), speed));
  const ends = [film(from), film(until)] as const;
  const start = maximum(view.start, minimum(...ends));
  const end = minimum(view.end, maximum(...ends));
  if (compare(start, end) >= 0) return null;
  const local = add(at, multiply(speed, subtract(start, view.start)));
  return { ...view, start, end, at: subtract(local, origin) };
}

/** What is seen of a clip: a stretch of its file. Generated pictures and missing ones show no recording. */
function layClip(item: Json, view: View, path: string, problems: Problems): Shot[] {
  const media = mediaOf(item);
  if (schemaOf(media) === "GeneratorReference") return [];
  const available = rangeOf(media?.available_range, `${path}/available_range`, problems);
  const known = rangeOf(item.source_range, `${path}/source_range`, problems) ?? available;
  if (!known) {
    const expected = "A source_range, or a media reference with an available_range.";
    problems.say(
      "wrong",
      shortened(path),
      "The clip does not say which stretch it shows.",
      expected,
      "Export again.",
    );
    return [];
  }
  const { at, speed, start, end } = warped(
    { ...item, source_range: rangeJson(item, media) },
    view,
    path,
    problems,
  );
  const names = namesOf(item, media);
  const source = names[0] ?? `a clip without a name, ${shortened(path)}`;
  const begins = speed.n === 0n ? subtract(at, view.half) : at;
  const from = subtract(begins, available?.start ?? zero);
  return [
    {
      segment: { source, start, end, from, speed },
      names,
      fromBeginning: available !== null,
      opaque: isOpaque(item),
    },
  ];
}

function rangeJson(item: Json, media: Json | null): unknown {
  return isObject(item.source_range) ? item.source_range : media?.available_range;
}

/** A clip's media reference: Clip.2 has several, and names the one in use. */
function mediaOf(item: Json): Json | null {
  if (isObject(item.media_reference)) return item.media_reference;
  const several = isObject(item.media_references) ? item.media_references : {};
  const key = textOf(item.active_media_reference_key) || "DEFAULT_MEDIA";
  const active = Object.hasOwn(several, key) ? several[key] : null;
  return isObject(active) ? active : null;
}

/** The names of a clip's file, the surest first: its address, then the file's and the clip's own names. */
function namesOf(item: Json, media: Json | null): string[] {
  const address = decoded(textOf(media?.target_url));
  return [...new Set([address, textOf(media?.name), textOf(item.name)].filter((name) => name !== ""))];
}

function decoded(address: string): string {
  try {
    return decodeURIComponent(address);
  } catch {
    return address;
  }
}

/** How long an item is in its parent, in seconds. Time effects do not change it. */
export function durationOf(item: unknown, path: string, problems: Problems, depth = 0): Rational {
  if (!isObject(item) || depth > deepest || schemaOf(item) === "Transition") return zero;
  const range: Range | null = rangeOf(item.source_range, `${path}/source_range`, problems);
  if (range) return range.duration;
  if (schemaOf(item) === "Clip")
    return rangeOf(mediaOf(item)?.available_range, `${path}/available_range`, problems)?.duration ?? zero;
  const lengths = listOf(item.children).map((child, index) =>
    durationOf(child, `${path}/children/${index}`, problems, depth + 1),
  );
  const long = schemaOf(item) === "Stack" ? lengths.reduce(maximum, zero) : lengths.reduce(add, zero);
  return minimum(long, { n: BigInt(furthest), d: 1n });
}
