/**
 * The frames of one recording: when each begins to show, in seconds of the recording's clock, ascending,
 * and when the last one ends (the last frame lasts as long as its packet says).
 */
export interface Frames {
  starts: ArrayLike<number>;
  end: number;
}

/**
 * The index of the frame that is shown at `moment`: the one whose half-open interval holds it.
 * A moment before the first frame means the first, one after the last means the last, as a player shows it.
 *
 * @throws RangeError when there is no frame at all; the caller should have asked for a picture first.
 */
export function frameAt(frames: Frames, moment: number): number {
  const { starts } = frames;
  if (starts.length === 0) throw new RangeError("frameAt: the recording has no frames");
  let low = 0;
  let high = starts.length;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if ((starts[middle] as number) <= moment) low = middle;
    else high = middle;
  }
  return low;
}

/** The half-open interval in which frame `index` is shown, in seconds of the recording's clock. */
export function intervalOf(frames: Frames, index: number): { start: number; end: number } {
  const start = frames.starts[index];
  if (start === undefined) throw new RangeError(`intervalOf: no frame ${index}`);
  return { start, end: frames.starts[index + 1] ?? Math.max(frames.end, start) };
}

/**
 * The middle of the interval in which frame `index` is shown. It is what a mark keeps: asked to seek there,
 * a player shows this frame and neither neighbour, which an exact frame time does not promise.
 */
export function middleOf(frames: Frames, index: number): number {
  const { start, end } = intervalOf(frames, index);
  return (start + end) / 2;
}
