import { multiply, ofNumber, over, type Rational, zero } from "#lib/rational/index.ts";
import { rateOf } from "#lib/time/index.ts";
import { isReachable, type Problems } from "./edit-list.ts";

/** Values of an OpenTimelineIO file, which may hold anything. What cannot be used is a problem at its path. */

export type Json = Record<string, unknown>;

export function isObject(value: unknown): value is Json {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}

/** The name in `OTIO_SCHEMA`, without its version: "Clip" of "Clip.2". Empty where there is none. */
export function schemaOf(value: unknown): string {
  const written = isObject(value) ? value.OTIO_SCHEMA : "";
  return typeof written === "string" ? (written.split(".")[0] as string).slice(0, 60) : "";
}

/** A list, or the empty one. */
export function listOf(value: unknown): unknown[] {
  return Array.isArray(value) ? value : [];
}

export function textOf(value: unknown): string {
  return typeof value === "string" ? value.slice(0, 500) : "";
}

/** A half-open range of an item's own time, in seconds. */
export interface Range {
  start: Rational;
  duration: Rational;
}

/** A RationalTime in seconds, exactly: value / rate. Null where there is none, or none that can be. */
export function timeOf(value: unknown, path: string, problems: Problems): Rational | null {
  if (value === null || value === undefined) return null;
  const time = isObject(value) ? value : {};
  const rate = typeof time.rate === "number" ? rateOf(time.rate) : null;
  const count = typeof time.value === "number" && Number.isFinite(time.value) ? time.value : null;
  const seconds = rate && count !== null ? multiply(ofNumber(count), over(rate.d, rate.n)) : null;
  if (seconds && isReachable(seconds)) return seconds;
  const found = `The time there cannot be used: ${JSON.stringify(value).slice(0, 80)}.`;
  const expected = "A RationalTime: a value and a rate, both finite, that come to less than 2,700 hours.";
  problems.say("wrong", path, found, expected, "Export the file again.");
  return null;
}

/** A TimeRange in seconds; null where there is none. A duration below nought counts as none. */
export function rangeOf(value: unknown, path: string, problems: Problems): Range | null {
  if (!isObject(value)) return null;
  const start = timeOf(value.start_time, `${path}/start_time`, problems) ?? zero;
  const duration = timeOf(value.duration, `${path}/duration`, problems);
  return duration && duration.n >= 0n ? { start, duration } : null;
}
