import { type BuildDocument, present, wallOf } from "#lib/build/index.ts";
import { type Mark, typedOf, wordsOf } from "#lib/mark/index.ts";
import { quantitiesOf, read } from "#lib/quantity/index.ts";
import { toSittingTime } from "#lib/time/index.ts";
import type { Procedure } from "../tree.ts";

/** A soak, cure or bath: something left for at least or at most so long. Times are seconds. */
export interface Soak {
  mark: string;
  what: string;
  /** Limits as typed, and as seconds; null where there is none. */
  least: { typed: string; seconds: number } | null;
  longest: { typed: string; seconds: number } | null;
  why: string;
  /** Seconds since 1970; null where nothing says when. */
  began: number | null;
  ended: number | null;
  /** Whether it is over: closed by a mark, or its end written down. */
  closed: boolean;
  /** How long it lasted; null while it lasts, or where nothing says. */
  lasted: number | null;
}

/** What the clocks of a build's marks are known from. */
export type Clocks = Pick<BuildDocument, "build" | "sittings" | "recordings">;

/** Every deferred item of a build that has a limit of time. */
export function soaksOf(procedure: Procedure, document: BuildDocument): Soak[] {
  const marks = new Map(present(document.marks).map((mark) => [mark.id, mark]));
  return procedure.deferred.flatMap((line) => {
    const mark = marks.get(line.mark);
    const closer = line.closedBy === null ? undefined : marks.get(line.closedBy);
    const soak = mark && soakOf(mark, line.closedBy !== null, closer, document);
    return soak ? [soak] : [];
  });
}

/** A deferred item that no mark closes, as a soak; null where it has no limit of time, or its end is written down. */
export function runningSoak(mark: Mark, clocks: Clocks): Soak | null {
  const soak = soakOf(mark, false, undefined, clocks);
  return soak?.closed === false ? soak : null;
}

function soakOf(mark: Mark, isClosed: boolean, closer: Mark | undefined, document: Clocks): Soak | null {
  const least = limit(mark, "least", document.build.decimal);
  const longest = limit(mark, "longest", document.build.decimal);
  if (!least && !longest) return null;
  const began = writtenTime(wordsOf(mark, "began")) ?? wallTimeOf(mark, document);
  const written = writtenTime(wordsOf(mark, "ended"));
  const ended = written ?? (closer ? wallTimeOf(closer, document) : null);
  return {
    mark: mark.id,
    what: wordsOf(mark),
    least,
    longest,
    why: wordsOf(mark, "limitWhy"),
    began,
    ended,
    closed: isClosed || written !== null,
    lasted: began !== null && ended !== null ? ended - began : onOneClock(mark, closer, document),
  };
}

function limit(mark: Mark, field: string, decimal: "." | ","): Soak["least"] {
  const typed = typedOf(mark, field);
  const quantity = quantitiesOf(read(typed, { decimal, expect: "time" })).find(
    (one) => one.dimension === "time",
  );
  return quantity ? { typed, seconds: quantity.si } : null;
}

/** Two marks of one sitting are so far apart, whatever the wall clock said. */
function onOneClock(mark: Mark, closer: Mark | undefined, document: Clocks): number | null {
  if (!closer || closer.sittingId !== mark.sittingId) return null;
  const [from, to] = [onSitting(mark, document), onSitting(closer, document)];
  return from !== null && to !== null ? to - from : null;
}

function onSitting(mark: Mark, document: Clocks): number | null {
  if (mark.at === null) return null;
  const recording = document.recordings.find((one) => one.id === mark.recordingId);
  return recording ? toSittingTime(recording, mark.at) : mark.at;
}

/** When a mark's moment was, by the wall's clock: from its recording, else from when its sitting began. */
export function wallTimeOf(mark: Mark, document: Clocks): number | null {
  if (mark.at === null) return null;
  const recording = document.recordings.find((one) => one.id === mark.recordingId);
  const filmed = recording && wallOf(recording);
  if (filmed !== undefined && filmed !== null) return filmed + mark.at;
  const sitting = present(document.sittings).find((one) => one.id === mark.sittingId);
  const began = Date.parse(sitting?.began ?? "");
  const on = onSitting(mark, document);
  return Number.isNaN(began) || on === null ? null : began / 1000 + on;
}

/** "2026-05-03 14:02" or ISO 8601, in UTC unless it says otherwise; seconds since 1970, null for anything else. */
export function writtenTime(text: string): number | null {
  const match =
    /^(\d{4}-\d{2}-\d{2})[ T](\d{1,2}:\d{2})(?::(\d{2})(?:\.\d+)?)?\s*(Z|[+-]\d{2}:?\d{2})?$/i.exec(
      text.trim(),
    );
  if (!match) return null;
  const [, day, time = "", seconds = "00", zone = "Z"] = match;
  const ms = Date.parse(`${day}T${time.padStart(5, "0")}:${seconds}${zone}`);
  return Number.isNaN(ms) ? null : ms / 1000;
}

/** How a soak stands at a moment. */
export type SoakState = "no start" | "too early" | "ready" | "overdue" | "over";

/** How a soak stands now: nothing runs for it, so a restart changes nothing. `now` is seconds since 1970. */
export function soakState(soak: Soak, now: number): { state: SoakState; dueIn: number | null } {
  if (soak.closed) return { state: "over", dueIn: null };
  if (soak.began === null) return { state: "no start", dueIn: null };
  const gone = now - soak.began;
  if (soak.longest && gone > soak.longest.seconds)
    return { state: "overdue", dueIn: soak.longest.seconds - gone };
  if (soak.least && gone < soak.least.seconds)
    return { state: "too early", dueIn: soak.least.seconds - gone };
  return { state: "ready", dueIn: soak.longest ? soak.longest.seconds - gone : null };
}
