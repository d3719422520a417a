import { readCmx3600, readCmx3600Line } from "#lib/cut/index.ts";
import { compare, multiply, subtract, toNumber } from "#lib/rational/index.ts";
import { type FrameRate, rateOf, type Segment } from "#lib/time/index.ts";
import type { Adapter, Answer, Row } from "../row.ts";

const rate24 = rateOf(24) as FrameRate;
const framesOf = (segment: Segment, rate: FrameRate) =>
  toNumber(multiply(subtract(segment.end, segment.start), rate));

/** An event line that names no reel is given one. */
function cutEvent({ event, line, fps }: Row["input"]): Answer {
  const rate = rateOf(fps as number) as FrameRate;
  const { segments } = readCmx3600(`${event} REEL ${line}`, rate);
  const [segment] = segments;
  return segment && segments.length === 1
    ? { duration_frames: framesOf(segment, rate), out_points: "exclusive" }
    : { note: "not one segment" };
}

/** The two lines of a dissolve, with the event before it that they carry on from. */
function dissolve(lines: string[]): Answer {
  const before = "001 TST V C 01:00:04:05 01:00:04:14 01:00:00:00 01:00:00:09";
  const { segments } = readCmx3600([before, ...lines].join("\n"), rate24);
  const [first, second] = lines.map(readCmx3600Line);
  const incoming = segments.find((one) => segments.some((other) => overlaps(one, other)));
  return {
    transition: second?.kind === "event" ? second.transition : "none",
    duration_frames: incoming ? framesOf(incoming, rate24) : 0,
    first_line:
      first?.kind === "event" && first.recordIn === first.recordOut
        ? "zero-length cut naming the outgoing source"
        : "other",
    same_event_number: first?.kind === "event" && second?.kind === "event" && first.number === second.number,
  };
}

const overlaps = (one: Segment, other: Segment) =>
  one !== other && compare(one.start, other.end) < 0 && compare(other.start, one.end) < 0;

function frozen(line: string): Answer {
  const reel = /^M2\s+(\S+)/.exec(line)?.[1];
  const event = `002 ${reel} V C 01:00:10:21 01:00:10:22 00:00:00:00 00:00:02:00`;
  const [segment] = readCmx3600(`${event}\n${line}`, rate24).segments;
  const speed = segment ? toNumber(multiply(segment.speed, rate24)) : Number.NaN;
  return {
    meaning: `${speed === 0 ? "freeze frame" : "moving"}, speed ${speed} fps`,
    applies_to: "preceding event",
  };
}

function locator(line: string): Answer {
  const read = readCmx3600Line(line);
  if (read.kind !== "locator") return { kind: read.kind };
  const { kind, at, colour, comment } = read;
  return { kind, timecode: at, colour, comment };
}

function meaningOf(code: string): string {
  const read = readCmx3600Line(
    `001 R V ${code.replace("nnn", "001")} 010 01:00:00:00 01:00:01:00 01:00:00:00 01:00:01:00`,
  );
  if (read.kind !== "event") return read.kind;
  return read.transition === "wipe" ? "wipe nnn" : read.transition;
}

export const adapter: Adapter = ({ input }) => {
  if (Array.isArray(input.codes)) return { meaning: input.codes.map((code) => meaningOf(`${code}`)) };
  if (Array.isArray(input.lines)) return dissolve(input.lines as string[]);
  const line = `${input.line}`;
  if (line.startsWith("M2")) return frozen(line);
  return line.startsWith("*") ? locator(line) : cutEvent(input);
};
