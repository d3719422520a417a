/**
 * Temporal fragments of media addresses (W3C Media Fragments URI 1.0, 4.2.1, normal play time): `t=10,20`. The end is
 * not part of it. Where there is no end, it is the end of the medium.
 */
export interface MediaFragment {
  start: number;
  /** Null: to the end of the medium. */
  end: number | null;
}

const time = String.raw`(?:\d{1,9}:[0-5]\d:[0-5]\d(?:\.\d{0,9})?|[0-5]\d:[0-5]\d(?:\.\d{0,9})?|\d{1,9}(?:\.\d{0,9})?)`;
const fragment = new RegExp(`^t=(?:npt:)?(?:(${time})(?:,(${time}))?|,(${time}))$`);

/**
 * Reads `t=…`; null for what is to be ignored: a start that is not before the end, or a comma without an end.
 *
 * @param mediaEnd an end at or beyond it is the end of the medium, in seconds
 */
export function readMediaFragment(text: string, mediaEnd = Number.POSITIVE_INFINITY): MediaFragment | null {
  const parts = fragment.exec(text);
  if (!parts) return null;
  const start = parts[1] === undefined ? 0 : seconds(parts[1]);
  const written = parts[2] ?? parts[3];
  const end = written === undefined ? null : seconds(written);
  if (start >= (end ?? mediaEnd)) return null;
  return { start, end: end !== null && end < mediaEnd ? end : null };
}

function seconds(text: string): number {
  return text.split(":").reduce((sum, part) => sum * 60 + Number(part), 0);
}

/** Writes a fragment, to the millisecond: `t=30,60`. One without a length means from there on. */
export function mediaFragment(start: number, end: number | null = null): string {
  const [from, until] = [milliseconds(start), end === null ? "" : milliseconds(end)];
  return until === "" || Number(until) <= Number(from) ? `t=${from}` : `t=${from},${until}`;
}

function milliseconds(value: number): string {
  return String(Math.round(Math.max(0, value) * 1000) / 1000);
}
