import { over, type Rational } from "#lib/rational/index.ts";
import { countedTo, droppedAtMinute, type FrameRate } from "./rate.ts";

/**
 * Timecode as cameras and editing count it: hours, minutes, seconds, frames (SMPTE ST 12-1). It is a label of a
 * frame and no time: at 29.97 the label 01:00:00:00 is 3603.6 s after 00:00:00:00. Drop-frame counting leaves out the
 * first labels of each minute but every tenth, so that the labels keep up with the clock. No picture is left out.
 */
export interface FrameTimecode {
  /** The frame it names, counted from 00:00:00:00. */
  frame: bigint;
  /** Whether it is a drop-frame label. */
  drop: boolean;
}

export type ReadTimecode = { ok: true; timecode: FrameTimecode } | { ok: false; why: string };

const form = /^(\d{1,2}):(\d{1,2}):(\d{1,2})([:;.,])(\d{1,3})$/;

/**
 * Reads a label such as "01:00:04:05" or "00:10:00;00". A semicolon or comma before the frames says drop-frame,
 * unless `drop` says it (an edit list says it once for many).
 */
export function readFrameTimecode(text: string, rate: FrameRate, drop?: boolean): ReadTimecode {
  const parts = form.exec(text.trim());
  if (!parts) return { ok: false, why: `“${text.slice(0, 40)}” is no timecode: hh:mm:ss:ff was expected` };
  const [hours, minutes, seconds, frames] = [parts[1], parts[2], parts[3], parts[5]].map((part) =>
    BigInt(part as string),
  ) as [bigint, bigint, bigint, bigint];
  const dropping = drop ?? /[;,]/.test(parts[4] as string);
  const base = countedTo(rate);
  const left = dropping ? droppedAtMinute(rate) : 0n;
  if (dropping && left === 0n)
    return { ok: false, why: `there is no drop-frame count at this rate (${text})` };
  if (minutes > 59n || seconds > 59n)
    return { ok: false, why: `${text} has more than 59 minutes or seconds` };
  if (frames >= base)
    return { ok: false, why: `${text} counts frame ${frames}, and there are ${base} a second` };
  if (seconds === 0n && minutes % 10n !== 0n && frames < left)
    return { ok: false, why: `${text} is left out by the drop-frame count` };
  const minute = hours * 60n + minutes;
  const labels = (minute * 60n + seconds) * base + frames;
  return { ok: true, timecode: { frame: labels - left * (minute - minute / 10n), drop: dropping } };
}

/** The label of a frame that is counted from 00:00:00:00. Throws where the rate has no drop-frame count. */
export function sayFrameTimecode(frame: bigint, rate: FrameRate, drop = false): string {
  const base = countedTo(rate);
  const left = drop ? droppedAtMinute(rate) : 0n;
  if (drop && left === 0n) throw new RangeError("there is no drop-frame count at this rate");
  const label = frame + leftOutBefore(frame, base, left);
  const two = (value: bigint) => value.toString().padStart(2, "0");
  const seconds = label / base;
  return `${two(seconds / 3600n)}:${two((seconds / 60n) % 60n)}:${two(seconds % 60n)}${drop ? ";" : ":"}${two(label % base)}`;
}

/** How many labels were left out before this frame. */
function leftOutBefore(frame: bigint, base: bigint, left: bigint): bigint {
  if (left === 0n) return 0n;
  const minute = 60n * base - left;
  const tenMinutes = 600n * base - 9n * left;
  const [tens, rest] = [frame / tenMinutes, frame % tenMinutes];
  // The first minute of ten is whole; each of the others is shorter by what it leaves out.
  const minutes = rest < 60n * base ? 0n : 1n + (rest - 60n * base) / minute;
  return left * (9n * tens + minutes);
}

/** When a frame begins, in seconds: frame / rate, exactly. */
export function timeOfFrame(frame: bigint, rate: FrameRate): Rational {
  return over(frame * rate.d, rate.n);
}
