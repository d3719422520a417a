import {
  countedTo,
  droppedAtMinute,
  type FrameRate,
  type FrameTimecode,
  readFrameTimecode,
} from "#lib/time/index.ts";
import { type EventLine, type ListLine, readLine } from "./cmx3600-line.ts";
import type { Problems } from "./edit-list.ts";

/** An event with its times read, in frames from 00:00:00:00. */
export interface Event extends EventLine {
  line: number;
  source: { in: bigint; out: bigint };
  record: { in: bigint; out: bigint };
  /** Frames a second by an M2 line, as written; null where there is none. */
  fps: string | null;
  /** What the remarks below call it. */
  names: string[];
}

/** More events than anybody cuts; the rest is not read. */
const mostEvents = 20_000;

/** What a list says beside its events. */
export interface Reading {
  title: string;
  events: Event[];
  located: { line: number; at: string; drop: boolean; colour: string; comment: string }[];
}

/** Reads the lines of a list, one after the other. */
export function readLines(text: string, rate: FrameRate, problems: Problems): Reading {
  const reading: Reading = { title: "", events: [], located: [] };
  let drop = false;
  for (const [index, written] of text.split(/\r\n?|\n/).entries()) {
    const line = readLine(index === 0 ? written.replace(/^\uFEFF/, "") : written);
    if (line.kind === "fcm") drop = dropOf(line.drop, index + 1, rate, problems);
    else if (line.kind === "event" && reading.events.length >= mostEvents)
      return sayTooMany(reading, problems);
    else take(line, index + 1, drop, reading, rate, problems);
  }
  return reading;
}

function sayTooMany(reading: Reading, problems: Problems): Reading {
  problems.say(
    "wrong",
    "the file",
    `It has more than ${mostEvents} events; the rest was not read.`,
    "An edit list of one film.",
    "Export the film in parts.",
  );
  return reading;
}

function dropOf(drop: boolean, line: number, rate: FrameRate, problems: Problems): boolean {
  if (!drop || droppedAtMinute(rate) > 0n) return drop;
  problems.say(
    "wrong",
    `line ${line}`,
    "The list counts drop-frame, and there is no drop-frame count at the rate given.",
    "A rate of 29.97 or 59.94.",
    "Give the rate of the film as the editing program has it.",
  );
  return false;
}

function take(
  line: ListLine,
  number: number,
  drop: boolean,
  reading: Reading,
  rate: FrameRate,
  problems: Problems,
): void {
  if (line.kind === "title") reading.title ||= line.name;
  else if (line.kind === "event") {
    const event = readEventTimes(line, number, drop, rate, problems);
    if (event) reading.events.push(event);
  } else if (line.kind === "speed") applySpeed(line, reading.events);
  else if (line.kind === "name") applyName(line, reading.events);
  else if (line.kind === "locator") reading.located.push({ line: number, drop, ...line });
  else if (line.kind === "unknown")
    problems.say(
      "advice",
      `line ${number}`,
      "This line is no part of a CMX3600 list that is known here; it was passed over.",
      "An event, a remark that begins with *, or TITLE, FCM, M2.",
      "Nothing, if the film comes out right.",
    );
}

/** The event with its times; null where one cannot be read. */
function readEventTimes(
  line: EventLine,
  number: number,
  fcm: boolean,
  rate: FrameRate,
  problems: Problems,
): Event | null {
  const frames = [line.sourceIn, line.sourceOut, line.recordIn, line.recordOut].map((text) => {
    const read = readFrameTimecode(text, rate, /[;,]/.test(text) ? undefined : fcm);
    return read.ok ? read.timecode : read.why;
  });
  const why = frames.find((one) => typeof one === "string");
  if (why !== undefined) {
    const todo = "Look whether the rate given is that of the film.";
    const expected = "Timecodes that can be, at that rate.";
    problems.say("wrong", `line ${number}`, `Event ${line.number}: ${why}.`, expected, todo);
    return null;
  }
  const [sourceIn, sourceOut, recordIn, recordOut] = frames as [
    FrameTimecode,
    FrameTimecode,
    FrameTimecode,
    FrameTimecode,
  ];
  const record = { in: recordIn.frame, out: pastMidnight(recordIn, recordOut, rate) };
  if (record.out < record.in) {
    const found = `Event ${line.number} ends in the film before it begins.`;
    problems.say("wrong", `line ${number}`, found, "Record out after record in.", "Export the list again.");
    return null;
  }
  const source = { in: sourceIn.frame, out: pastMidnight(sourceIn, sourceOut, rate) };
  return { ...line, line: number, source, record, fps: null, names: [] };
}

/** An out point far below its in point lies on the next day. */
function pastMidnight(from: FrameTimecode, until: FrameTimecode, rate: FrameRate): bigint {
  const minutes = 1440n;
  const leftOut = until.drop ? droppedAtMinute(rate) * (minutes - minutes / 10n) : 0n;
  const day = minutes * 60n * countedTo(rate) - leftOut;
  return from.frame - until.frame > day / 2n ? until.frame + day : until.frame;
}

/** M2 is about the nearest event line above that has its reel, else about the last one. */
function applySpeed(line: { reel: string; fps: string }, events: Event[]): void {
  const number = events.at(-1)?.number;
  const group = events.slice(-4).filter((event) => event.number === number);
  const event = group.findLast((one) => one.reel === line.reel) ?? events.at(-1);
  if (event) event.fps = line.fps;
}

/** FROM names the first line of the last event, TO the last one. */
function applyName(line: { of: "from" | "to"; name: string }, events: Event[]): void {
  const last = events.at(-1);
  const first = events.findLastIndex((event) => event.number !== last?.number) + 1;
  const event = line.of === "from" ? events[first] : last;
  const name = line.name.trim().slice(0, 300);
  if (event && name !== "" && !event.names.includes(name)) event.names.push(name);
}

/** Programs that know no reels write AX for every one: then the clip's name says which file it is. */
export function keyOf({ reel, names }: Event): string {
  const [name] = names;
  if (name === undefined) return reel;
  return /^AX$/i.test(reel) || name === reel ? name : `${reel}: ${name}`;
}
