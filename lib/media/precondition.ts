import type { IncomingHttpHeaders } from "node:http";

/** What makes one state of a file known again: a strong entity tag, and its time of change. */
export interface Validators {
  /** With its quotes. */
  etag: string;
  mtimeMs: number;
}

/** A strong tag from size and time of change: recordings are written once and by no one while they are served. */
export function etagOf({ size, mtimeMs }: { size: number; mtimeMs: number }): string {
  return `"${size.toString(16)}-${Math.trunc(mtimeMs).toString(16)}"`;
}

/** The order of RFC 9110, 13.2.2. @returns the status that ends the request, or null when it goes on */
export function judgePreconditions(headers: IncomingHttpHeaders, file: Validators): 304 | 412 | null {
  const changed = wholeSeconds(file.mtimeMs);
  const ifMatch = headers["if-match"];
  if (ifMatch !== undefined) {
    if (!lists(ifMatch, file.etag, "strong")) return 412;
  } else if (later(changed, headers["if-unmodified-since"])) return 412;
  const ifNoneMatch = headers["if-none-match"];
  if (ifNoneMatch !== undefined) return lists(ifNoneMatch, file.etag, "weak") ? 304 : null;
  return later(changed, headers["if-modified-since"]) === false ? 304 : null;
}

/** RFC 9110, 13.1.5: whether a Range header still speaks of this state of the file; dates must match exactly. */
export function rangeHolds(ifRange: string | string[] | undefined, file: Validators): boolean {
  if (ifRange === undefined) return true;
  const value = String(ifRange).trim();
  if (value.startsWith('"')) return value === file.etag;
  if (value.startsWith("W/")) return false;
  return Date.parse(value) === wholeSeconds(file.mtimeMs);
}

function lists(header: string, etag: string, comparison: "strong" | "weak"): boolean {
  if (header.trim() === "*") return true;
  const tags = header.match(/(W\/)?"[^"]*"/g) ?? [];
  return tags.some((tag) => (comparison === "weak" ? tag.replace(/^W\//, "") : tag) === etag);
}

/** Whether the file changed after the date; null when there is no date, or none that can be read. */
function later(changed: number, date: string | undefined): boolean | null {
  const then = Date.parse(date ?? "");
  return Number.isNaN(then) ? null : changed > then;
}

/** HTTP dates have no fractions of a second. */
function wholeSeconds(ms: number): number {
  return Math.floor(ms / 1000) * 1000;
}
