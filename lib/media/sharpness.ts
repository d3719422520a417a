import { type Frames, frameAt, middleOf } from "#lib/time/index.ts";

/** Rows of red, green, blue and opacity, a byte each, as a canvas gives them. */
export interface Pixels {
  data: ArrayLike<number>;
  width: number;
  height: number;
}

/**
 * How sharp a picture is, against others of the same subject: the variance of its Laplacian, in grey levels squared.
 * An edge in focus bends the brightness hard, a blurred one softly; an even change of light does nothing.
 *
 * Source: Pech-Pacheco and others, Diatom autofocusing in brightfield microscopy: a comparative study, 2000 (from
 * memory).
 */
export function sharpnessOf({ data, width, height }: Pixels): number {
  if (width < 3 || height < 3) return 0;
  const grey = greyOf(data, width * height);
  let sum = 0;
  let squares = 0;
  for (let y = 1; y < height - 1; y++) {
    for (let x = y * width + 1; x < (y + 1) * width - 1; x++) {
      const bend = at(grey, x - 1) + at(grey, x + 1) + at(grey, x - width) + at(grey, x + width);
      const laplacian = bend - 4 * at(grey, x);
      sum += laplacian;
      squares += laplacian * laplacian;
    }
  }
  const count = (width - 2) * (height - 2);
  return squares / count - (sum / count) ** 2;
}

const at = (values: Float32Array, index: number) => values[index] as number;

/** Luma by the weights of ITU-R BT.709 (from memory). */
function greyOf(data: ArrayLike<number>, count: number): Float32Array {
  const grey = new Float32Array(count);
  for (let pixel = 0; pixel < count; pixel++) {
    const [red, green, blue] = [data[4 * pixel], data[4 * pixel + 1], data[4 * pixel + 2]] as number[];
    grey[pixel] = 0.2126 * (red ?? 0) + 0.7152 * (green ?? 0) + 0.0722 * (blue ?? 0);
  }
  return grey;
}

/** A frame near a moment, with how sharp it is. */
export interface MeasuredFrame {
  /** Index of the frame in the recording's table. */
  index: number;
  sharpness: number;
}

/**
 * The frames whose middle lies within `within` seconds of that of the frame shown at `moment`: first and last index,
 * both included.
 *
 * @throws RangeError when the table is empty
 */
export function framesNear(
  frames: Frames,
  moment: number,
  within: number,
): { first: number; exact: number; last: number } {
  const exact = frameAt(frames, moment);
  const middle = middleOf(frames, exact);
  let [first, last] = [exact, exact];
  while (first > 0 && middle - middleOf(frames, first - 1) <= within) first--;
  while (last < frames.starts.length - 1 && middleOf(frames, last + 1) - middle <= within) last++;
  return { first, exact, last };
}

/**
 * The few that are worth offering, sharpest first. Of frames that follow each other closely only the sharpest is one of
 * them: its neighbours show the same.
 */
export function sharpestFew<Frame extends MeasuredFrame>(measured: readonly Frame[], few: number): Frame[] {
  const apart = Math.max(1, Math.floor(measured.length / (2 * few)));
  const offered: Frame[] = [];
  for (const frame of [...measured].sort((a, b) => b.sharpness - a.sharpness || a.index - b.index)) {
    if (offered.length === few) break;
    if (offered.every((one) => Math.abs(one.index - frame.index) >= apart)) offered.push(frame);
  }
  return offered;
}
