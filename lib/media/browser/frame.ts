import { type Frames, frameAt, intervalOf } from "#lib/time/index.ts";
import { MediaError } from "../trouble.ts";
import { closeDecoder, decodeFrame, type FilmSource } from "./decoder.ts";
import { closePlayer, playFrame } from "./player.ts";

export type { FilmSource } from "./decoder.ts";

export interface GrabOptions {
  src: FilmSource;
  frames: Frames;
  /** Seconds of the recording's clock; the frame whose interval holds it is taken. */
  moment: number;
  /** A player to fall back on; a hidden one of our own unless given. It may be moved. */
  video?: HTMLVideoElement;
  /** How long each attempt may take, in milliseconds. */
  timeLimitMs?: number;
  /** Leave out one of the two ways, for a test of the other. */
  only?: "decoder" | "player";
}

/** A frame of a recording, exactly the one that was meant. */
export interface GrabbedFrame {
  /** As shown: upright, with square pixels. */
  canvas: HTMLCanvasElement | OffscreenCanvas;
  /** Index in the recording's table, and when the frame begins, in seconds. */
  index: number;
  start: number;
  by: "decoder" | "player";
}

/** A frame is the one that was asked for when its own time is this near, in seconds. */
const tolerance = 0.002;

/** Where in the frame's interval a player is sent, one after another: the middle is right nearly always. */
const aims = [0.5, 0.8, 0.2, 0.95, 0.05, 1.5, -0.5];

/**
 * Takes the frame that is shown at `moment`, and no other: it asks for the middle of the frame's interval, and takes
 * what comes only if its own time is the frame's. First by decoding, else by sending a player there.
 *
 * @throws MediaError `no-frame` when neither gave the frame; RangeError when the table is empty
 */
export async function grabFrame(options: GrabOptions): Promise<GrabbedFrame> {
  const index = frameAt(options.frames, options.moment);
  const interval = intervalOf(options.frames, index);
  const limitMs = options.timeLimitMs ?? 10_000;
  const decoded = options.only === "player" ? null : await byDecoder(options.src, interval, limitMs);
  if (decoded !== null) return { canvas: decoded, index, start: interval.start, by: "decoder" };
  const played = options.only === "decoder" ? null : await byPlayer(options, interval, limitMs);
  if (played !== null) return { canvas: played, index, start: interval.start, by: "player" };
  throw noFrame(interval.start);
}

/** The picture as PNG: nothing is lost, and nothing but the picture is in it. */
export async function toPng(canvas: HTMLCanvasElement | OffscreenCanvas): Promise<Blob> {
  if ("convertToBlob" in canvas) return canvas.convertToBlob({ type: "image/png" });
  const blob = await new Promise<Blob | null>((resolve) => canvas.toBlob(resolve, "image/png"));
  if (blob === null) throw new Error("toPng: the canvas gave no picture");
  return blob;
}

/** Closes a film that stills were taken from; all of them when none is named. */
export function disposeFilms(src?: FilmSource): void {
  closeDecoder(src);
  closePlayer(src);
}

interface Interval {
  start: number;
  end: number;
}

async function byDecoder(src: FilmSource, interval: Interval, limitMs: number) {
  const frame = await orNull(decodeFrame(src, (interval.start + interval.end) / 2), limitMs);
  return frame !== null && isFrame(frame.time, interval) ? frame.canvas : null;
}

async function byPlayer({ src, video }: GrabOptions, interval: Interval, limitMs: number) {
  if (typeof document === "undefined") return null;
  for (const aim of aims) {
    const moment = Math.max(interval.start + aim * (interval.end - interval.start), 0);
    const frame = await playFrame(src, moment, limitMs / 4, video);
    if (frame !== null && isFrame(frame.time, interval)) return frame.canvas;
  }
  return null;
}

function isFrame(time: number, interval: Interval): boolean {
  return Math.abs(time - interval.start) <= tolerance;
}

/** What failed or took too long counts as nothing found: there is another way to try. */
function orNull<T>(work: Promise<T>, limitMs: number): Promise<T | null> {
  return new Promise((resolve) => {
    const limit = setTimeout(() => resolve(null), limitMs);
    work.then(resolve, () => resolve(null)).finally(() => clearTimeout(limit));
  });
}

function noFrame(start: number): MediaError<"no-frame"> {
  return new MediaError({
    kind: "no-frame",
    found: `The browser did not give the frame at ${start.toFixed(3)} s.`,
    expected: "The frame whose interval holds the moment, and no neighbour.",
    todo: "Try again, or choose a neighbouring frame. If the drive is slow or away, plug it in first.",
  });
}
