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

/**
 * Reads a moment as it is written here, in seconds: "1:02:03.4", "14:08", "72.5" (seconds), with a point or a comma.
 * Null when it is none; minutes and seconds after another part are below 60.
 */
export function readTimecode(text: string): number | null {
  const parts = /^(−|-)?(?:(?:(\d{1,4}):)?(\d{1,4}):)?(\d{1,6}(?:[.,]\d{1,6})?)$/.exec(text.trim());
  if (!parts) return null;
  const [, sign, hours, minutes, seconds = ""] = parts;
  const secs = Number(seconds.replace(",", "."));
  if (minutes !== undefined && secs >= 60) return null;
  if (hours !== undefined && Number(minutes) >= 60) return null;
  const whole = Number(hours ?? 0) * 3600 + Number(minutes ?? 0) * 60 + secs;
  return sign && whole !== 0 ? -whole : whole;
}

/**
 * A wall-clock time as hours and minutes: "14:02".
 *
 * @param at milliseconds since 1970
 * @param timeZone of the IANA's names; UTC unless told
 */
export function sayWallTime(at: number, timeZone = "UTC"): string {
  const form = { hour: "2-digit", minute: "2-digit", hourCycle: "h23", timeZone } as const;
  return new Intl.DateTimeFormat("en-GB", form).format(at);
}

/** A stretch of the wall clock: "14:02 to 14:31", with the days where it goes past midnight. */
export function sayWallSpan(from: number, to: number, timeZone = "UTC"): string {
  const day = new Intl.DateTimeFormat("en-GB", { day: "numeric", month: "long", timeZone });
  const [first, last] = [day.format(from), day.format(to)];
  const [begin, end] = [sayWallTime(from, timeZone), sayWallTime(to, timeZone)];
  return first === last ? `${begin} to ${end}` : `${first} ${begin} to ${last} ${end}`;
}
