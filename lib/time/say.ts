/**
 * A moment as `m:ss.t`, or `h:mm:ss.t` from an hour on, cut (not rounded) to tenths: the tenth printed has
 * begun when the moment comes. `tenths: false` leaves them out, for print.
 */
export function timecode(seconds: number, { tenths = true }: { tenths?: boolean } = {}): string {
  const sign = seconds < 0 ? "−" : "";
  // A hair is added first, so that 0.3 held as 0.29999999999999998 does not say 0.2.
  const whole = Math.floor(Math.abs(seconds) * 10 + 1e-6);
  const hours = Math.floor(whole / 36_000);
  const minutes = Math.floor(whole / 600) % 60;
  const secs = Math.floor(whole / 10) % 60;
  const head = hours > 0 ? `${hours}:${String(minutes).padStart(2, "0")}` : String(minutes);
  const body = `${sign}${head}:${String(secs).padStart(2, "0")}`;
  return tenths ? `${body}.${whole % 10}` : body;
}

/** A moment for running words: "14:08" of the recording, without tenths. */
export function sayMoment(seconds: number): string {
  return timecode(seconds, { tenths: false });
}

/** A wall-clock time in UTC (ISO 8601) as a date a reader anywhere reads the same way: "3 May 2026". */
export function sayWallDate(iso: string): string {
  const date = new Date(iso);
  if (Number.isNaN(date.getTime())) return iso;
  const months =
    "January February March April May June July August September October November December".split(" ");
  return `${date.getUTCDate()} ${months[date.getUTCMonth()]} ${date.getUTCFullYear()}`;
}
