/** How a value lies to a range: inside, outside, or it cannot be told. */
export type Lies = "same" | "contrary" | "unknown";

export interface SerialRange {
  from: string;
  to: string;
  by: "number" | "text";
}

/**
 * Whether a serial number lies in a range, both ends included. By number: the first run of digits counts, and the
 * letters before it must be the same, since makers count each letter anew. "Between 4000 and 4200" on the machine
 * lies inside only if both do.
 */
export function liesInSerials(serial: string, range: SerialRange): Lies {
  const written = serial.trim();
  if (written === "") return "unknown";
  if (range.by === "text") return between(written.toUpperCase(), range, (end) => end.trim().toUpperCase());
  const several = /^(?:between\s+)?(.+?)\s*(?:\band\b|\bto\b|–)\s*(.+)$/i.exec(written);
  if (several) return both(serialIn(several[1] ?? "", range), serialIn(several[2] ?? "", range));
  return serialIn(written, range);
}

function serialIn(serial: string, range: SerialRange): Lies {
  const one = splitSerial(serial);
  const ends = [range.from, range.to].filter((end) => end.trim() !== "").map(splitSerial);
  if (!one || ends.some((end) => end === null)) return "unknown";
  if (ends.some((end) => end?.letters !== one.letters)) return "contrary";
  return between(one.number, range, (end) => splitSerial(end)?.number ?? 0);
}

/**
 * Letters before the first digits, and the digits as a number; what follows them does not count. A prefix may begin
 * with a digit or two itself, as in "3W 0190".
 */
function splitSerial(serial: string): { letters: string; number: number } | null {
  const found = /^(\d{1,2}\p{L}{1,3}[\s.-]*|\D*)(\d+)/u.exec(serial.trim());
  if (!found) return null;
  const letters = (found[1] ?? "").replace(/\b(no|serial|number)\b|[^\p{L}\d]/giu, "");
  return { letters: letters.toUpperCase(), number: Number(found[2]) };
}

/**
 * Whether the years of a machine lie in a range. "About 1911" may be two years off (judgement); a span of years lies
 * inside only if both ends do.
 */
export function liesInYears(years: string, range: { from: string; to: string }): Lies {
  const found = [...years.matchAll(/\b(1[6-9]\d\d|20\d\d)\b/g)].map(([year]) => Number(year));
  if (found.length === 0) return "unknown";
  const loose = /\b(about|around|circa|c\.?|ca\.?)(?=\s|\d)|\?/i.test(years) ? 2 : 0;
  const year = (end: string) => Number(/\d{4}/.exec(end)?.[0] ?? Number.NaN);
  const least = between(Math.min(...found) - loose, range, year);
  return both(least, between(Math.max(...found) + loose, range, year));
}

function between<T extends number | string>(
  value: T,
  { from, to }: { from: string; to: string },
  read: (end: string) => T,
): Lies {
  if (from.trim() !== "" && value < read(from)) return "contrary";
  return to.trim() !== "" && value > read(to) ? "contrary" : "same";
}

function both(a: Lies, b: Lies): Lies {
  return a === b ? a : "unknown";
}
