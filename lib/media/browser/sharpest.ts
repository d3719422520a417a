import { type Frames, intervalOf } from "#lib/time/index.ts";
import { framesNear, type MeasuredFrame, sharpestFew, sharpnessOf } from "../sharpness.ts";
import { decodeStretch, type FilmSource } from "./decoder.ts";

/** A frame that is offered in place of the one at the moment, with a small picture of it. */
export interface OfferedFrame extends MeasuredFrame {
  canvas: HTMLCanvasElement | OffscreenCanvas;
}

export interface OfferOptions {
  src: FilmSource;
  frames: Frames;
  /** Seconds of the recording's clock. */
  moment: number;
  /** How far from it a frame may lie, in seconds. */
  within?: number;
  /** At most so many are offered. */
  few?: number;
}

/** Wide enough that a slight blur is still one, small enough to measure thirty of them at once. */
const measuredWidth = 640;
/** A frame is the one of the table when its own time is this near, in seconds. */
const tolerance = 0.002;

/**
 * A few frames near a moment, sharpest first, and the frame of the moment itself. The stretch is decoded once, from its
 * beginning to its end.
 *
 * @returns nothing offered where the browser cannot decode the film by itself; the player shows it all the same
 */
export async function offerSharpest(
  options: OfferOptions,
): Promise<{ offered: OfferedFrame[]; exact: OfferedFrame | null }> {
  const { src, frames, moment, within = 0.5, few = 3 } = options;
  const near = framesNear(frames, moment, within);
  const measured: OfferedFrame[] = [];
  let index = near.first;
  const [from, until] = [intervalOf(frames, near.first).start, intervalOf(frames, near.last).end];
  for await (const { canvas, time } of decodeStretch(src, from - tolerance, until, measuredWidth)) {
    while (index < near.last && intervalOf(frames, index).start < time - tolerance) index++;
    if (Math.abs(intervalOf(frames, index).start - time) > tolerance) continue;
    measured.push({ index, canvas, sharpness: sharpnessOf(pixelsOf(canvas)) });
  }
  return {
    offered: sharpestFew(measured, few),
    exact: measured.find((one) => one.index === near.exact) ?? null,
  };
}

function pixelsOf(canvas: HTMLCanvasElement | OffscreenCanvas): ImageData {
  const context = canvas.getContext("2d") as CanvasRenderingContext2D | OffscreenCanvasRenderingContext2D;
  return context.getImageData(0, 0, canvas.width, canvas.height);
}
