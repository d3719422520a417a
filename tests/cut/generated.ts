import fc from "fast-check";
import { type FrameRate, readRate, sayFrameTimecode } from "#lib/time/index.ts";

/**
 * Generated cuts. Each is written as an edit list, and can be asked directly, moment by moment and in plain
 * numbers, what it shows: that is the oracle, and it knows nothing of windows, fractions or segments.
 */
export interface Seen {
  source: string;
  /** In frames of the source, counted from its beginning. */
  at: number;
}

/** What a film shows at a moment, in frames; and the film's length in frames. */
export interface Oracle {
  look: (film: number) => Seen[];
  frames: number;
}

/** Where playing takes a stretch: forwards from its start, backwards from its end, or nowhere. */
const played = (start: number, length: number, speed: number, after: number): number =>
  speed < 0 ? start + length * -speed + speed * after : start + speed * after;

// CMX3600

export interface ListEvent {
  reel: string;
  in: number;
  length: number;
  speed: number;
  dissolve: number;
}

export interface GeneratedList {
  rate: string;
  drop: boolean;
  hour: number;
  events: ListEvent[];
}

const rates = fc.constantFrom(
  { rate: "24", drop: false },
  { rate: "25", drop: false },
  { rate: "23.976", drop: false },
  { rate: "29.97", drop: true },
  { rate: "29.97", drop: false },
  { rate: "59.94", drop: true },
);

const listEvent = fc.record({
  reel: fc.constantFrom("CAM_A", "CAM_B", "BENCH", "001"),
  in: fc.integer({ min: 200, max: 20_000 }),
  length: fc.integer({ min: 4, max: 60 }).map((half) => 2 * half),
  speed: fc.constantFrom(1, 1, 1, 2, 0.5, -1, -2, 0),
  dissolve: fc.constantFrom(0, 0, 0, 4, 8),
});

/** Edit lists long enough that drop-frame counting passes a minute. */
export const generatedList: fc.Arbitrary<GeneratedList> = fc
  .tuple(rates, fc.constantFrom(0, 1, 10), fc.array(listEvent, { minLength: 1, maxLength: 40 }))
  .map(([rate, hour, events]) => {
    // One stretch stands in every film twice.
    const [first] = events;
    return { ...rate, hour, events: first ? [...events, { ...first, dissolve: 0 }] : events };
  });

export function oracleOfList({ events }: GeneratedList): Oracle {
  const starts = events.map((_, index) => events.slice(0, index).reduce((sum, one) => sum + one.length, 0));
  const frames = events.reduce((sum, one) => sum + one.length, 0);
  const shown = (index: number, film: number): Seen => {
    const event = events[index] as ListEvent;
    const at = played(event.in, event.length, event.speed, film - (starts[index] as number));
    return { source: event.reel, at: event.speed === 0 ? event.in + 0.5 : at };
  };
  const look = (film: number) => {
    const index = starts.findLastIndex((start) => start <= film);
    const event = events[index] as ListEvent;
    const dissolving = index > 0 && film < (starts[index] as number) + event.dissolve;
    return [shown(index, film), ...(dissolving ? [shown(index - 1, film)] : [])];
  };
  return { look, frames };
}

export function textOfList({ rate: written, drop, hour, events }: GeneratedList): string {
  const rate = readRate(written) as FrameRate;
  const label = (frame: number) => sayFrameTimecode(BigInt(frame), rate, drop).replace(";", drop ? ";" : ":");
  const nominal = Math.ceil(Number(written));
  const lines = ["TITLE: GENERATED", `FCM: ${drop ? "DROP FRAME" : "NON-DROP FRAME"}`, ""];
  // The film begins at a whole hour by its own count.
  let film = framesOfHour(hour, nominal, drop);
  const m2 = ({ reel, speed }: ListEvent, at: number) => {
    const fps = Math.abs(speed * nominal)
      .toFixed(1)
      .padStart(5, "0");
    if (speed !== 1) lines.push(`M2   ${reel}       ${speed < 0 ? "-" : ""}${fps}    ${label(at)}`);
  };
  events.forEach((event, index) => {
    const number = String(index + 1).padStart(3, "0");
    const before = events[index - 1];
    const dissolve = before ? event.dissolve : 0;
    if (before && dissolve > 0) {
      const at = played(before.in, before.length, before.speed, before.length);
      lines.push(
        `${number}  ${before.reel} V C        ${label(at)} ${label(at)} ${label(film)} ${label(film)}`,
      );
      m2(before, at);
    }
    const code = dissolve > 0 ? `D    ${String(dissolve).padStart(3, "0")}` : "C       ";
    const out = event.in + event.length * (Math.abs(event.speed) || 1);
    const times = [event.in, out, film, film + event.length].map(label).join(" ");
    lines.push(`${number}  ${event.reel} V ${code} ${times}`);
    m2(event, event.in);
    film += event.length;
  });
  return `${lines.join("\r\n")}\r\n`;
}

function framesOfHour(hour: number, nominal: number, drop: boolean): number {
  const left = drop ? (nominal / 30) * 2 : 0;
  return hour * (3600 * nominal - left * 54);
}

// OpenTimelineIO

/** An item of a timeline; times in frames. */
export type Item =
  | { is: "clip"; media: string; begins: number; start: number; length: number; speed: number }
  | { is: "gap"; length: number }
  | { is: "stack"; children: Item[]; start: number; length: number; speed: number }
  | { is: "track"; children: Item[]; fades: number[] };

const clip = fc.record({
  is: fc.constant("clip" as const),
  media: fc.constantFrom("arrival.mp4", "bench one.mp4", "strip-down.mov"),
  begins: fc.constantFrom(0, 0, 90_000),
  start: fc.integer({ min: 300, max: 5000 }),
  length: fc.integer({ min: 5, max: 60 }).map((half) => 2 * half),
  speed: fc.constantFrom(1, 1, 1, 2, 0.5, -1, 0),
});
const gap = fc.record({ is: fc.constant("gap" as const), length: fc.integer({ min: 1, max: 30 }) });

export const { track: generatedTrack } = fc.letrec<{ track: Item; item: Item; stack: Item }>((tie) => ({
  item: fc.oneof(
    { depthSize: "small", withCrossShrink: true },
    { arbitrary: clip as fc.Arbitrary<Item>, weight: 5 },
    { arbitrary: gap as fc.Arbitrary<Item>, weight: 1 },
    { arbitrary: tie("stack"), weight: 2 },
  ),
  stack: fc.record({
    is: fc.constant("stack" as const),
    children: fc.array(tie("track"), { minLength: 1, maxLength: 3 }),
    start: fc.integer({ min: 8, max: 20 }),
    length: fc.integer({ min: 10, max: 50 }).map((half) => 2 * half),
    speed: fc.constantFrom(1, 1, 1, 2, 0.5, -1, 0),
  }) as fc.Arbitrary<Item>,
  track: fc
    .array(tie("item"), { minLength: 1, maxLength: 8 })
    .chain((children) =>
      fc
        .array(fc.constantFrom(0, 0, 0, 2, 4), { minLength: children.length, maxLength: children.length })
        .map((fades): Item => ({ is: "track", children, fades })),
    ),
}));

export function lengthOf(item: Item): number {
  if (item.is === "track") return item.children.reduce((sum, child) => sum + lengthOf(child), 0);
  return item.length;
}

/** What an item shows at a moment of its parent's time, counted from where the item begins. */
export function lookInto(item: Item, after: number): Seen[] {
  if (item.is === "gap") return [];
  if (item.is === "clip") {
    const at = played(item.start, item.length, item.speed, after);
    return [{ source: item.media, at: item.speed === 0 ? item.start + 0.5 : at }];
  }
  if (item.is === "stack") {
    const frozen = item.start + 0.5;
    const inside = item.speed === 0 ? frozen : played(item.start, item.length, item.speed, after);
    for (const child of item.children.toReversed()) {
      const seen = inside >= 0 && inside < lengthOf(child) ? lookInto(child, inside) : [];
      if (seen.length > 0) return seen;
    }
    return [];
  }
  const seen: Seen[] = [];
  let start = 0;
  item.children.forEach((child, index) => {
    const end = start + lengthOf(child);
    const fadeIn = index > 0 ? (item.fades[index - 1] as number) : 0;
    const fadeOut = index < item.children.length - 1 ? (item.fades[index] as number) : 0;
    if (after >= start - fadeIn && after < end + fadeOut) seen.push(...lookInto(child, after - start));
    start = end;
  });
  return seen;
}

/** The item as OpenTimelineIO has it; `rate` frames a second. */
export function otioOf(item: Item, rate: number): unknown {
  const time = (value: number) => ({ OTIO_SCHEMA: "RationalTime.1", rate, value });
  const range = (start: number, length: number) => ({
    OTIO_SCHEMA: "TimeRange.1",
    start_time: time(start),
    duration: time(length),
  });
  if (item.is === "gap") return { OTIO_SCHEMA: "Gap.1", source_range: range(0, item.length), effects: [] };
  if (item.is === "track") {
    const children = item.children.flatMap((child, index) => {
      const fade = item.fades[index] as number;
      const transition = {
        OTIO_SCHEMA: "Transition.1",
        transition_type: "SMPTE_Dissolve",
        in_offset: time(fade),
        out_offset: time(fade),
      };
      return [otioOf(child, rate), ...(fade > 0 && index < item.children.length - 1 ? [transition] : [])];
    });
    return { OTIO_SCHEMA: "Track.1", kind: "Video", source_range: null, children };
  }
  const effects =
    item.speed === 1
      ? []
      : item.speed === 0
        ? [{ OTIO_SCHEMA: "FreezeFrame.1", time_scalar: 0 }]
        : [{ OTIO_SCHEMA: "LinearTimeWarp.1", time_scalar: item.speed }];
  if (item.is === "stack") {
    const children = item.children.map((child) => otioOf(child, rate));
    return { OTIO_SCHEMA: "Stack.1", source_range: range(item.start, item.length), effects, children };
  }
  return {
    OTIO_SCHEMA: "Clip.2",
    name: item.media,
    source_range: range(item.begins + item.start, item.length),
    effects,
    media_references: {
      DEFAULT_MEDIA: {
        OTIO_SCHEMA: "ExternalReference.1",
        target_url: `file:///films/${encodeURIComponent(item.media)}`,
        available_range: range(item.begins, 100_000),
      },
    },
    active_media_reference_key: "DEFAULT_MEDIA",
  };
}

export function timelineOf(track: Item, rate: number): string {
  return JSON.stringify({
    OTIO_SCHEMA: "Timeline.1",
    name: "generated",
    global_start_time: { OTIO_SCHEMA: "RationalTime.1", rate, value: rate * 3600 },
    tracks: { OTIO_SCHEMA: "Stack.1", source_range: null, children: [otioOf(track, rate)] },
  });
}
