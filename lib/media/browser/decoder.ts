import { BlobSource, CanvasSink, Input, MATROSKA, MP4, QTFF, UrlSource, WEBM } from "mediabunny";

/** Where a recording is read from: its address, or the file the user has just chosen. */
export type FilmSource = string | Blob;

type AnyCanvas = HTMLCanvasElement | OffscreenCanvas;

interface OpenFilm {
  input: Input;
  /** Null when there is no picture, or the browser cannot decode it. */
  sink: Promise<CanvasSink | null>;
}

/** Films stay open, since reading an index again costs more than a still; the one used longest ago goes first. */
const open = new Map<FilmSource, OpenFilm>();
const mostOpen = 3;

/**
 * Decodes the frame that is shown at `moment` and paints it upright onto a canvas of its own.
 *
 * @returns the canvas and the frame's own time in seconds; null when the decoder has no frame to give
 */
export async function decodeFrame(
  src: FilmSource,
  moment: number,
): Promise<{ canvas: AnyCanvas; time: number } | null> {
  const sink = await opened(src).sink;
  const frame = await sink?.getCanvas(moment);
  return frame ? { canvas: frame.canvas, time: frame.timestamp } : null;
}

/**
 * Decodes the frames that begin from `from` until before `until`, in order, each upright on a canvas of its own
 * that is no wider than `width`, and with its own time in seconds. Nothing comes where the browser cannot decode the film.
 */
export async function* decodeStretch(
  src: FilmSource,
  from: number,
  until: number,
  width: number,
): AsyncGenerator<{ canvas: AnyCanvas; time: number }> {
  const track = await opened(src).input.getPrimaryVideoTrack();
  if (track === null || !(await track.canDecode())) return;
  const sink = new CanvasSink(track, { width: Math.min(width, track.displayWidth) });
  for await (const { canvas, timestamp } of sink.canvases(from, until)) {
    if (timestamp >= from) yield { canvas, time: timestamp };
  }
}

/** Closes a film and frees what it held; all of them when none is named. */
export function closeDecoder(src?: FilmSource): void {
  for (const [key, film] of open) {
    if (src !== undefined && src !== key) continue;
    film.input.dispose();
    open.delete(key);
  }
}

function opened(src: FilmSource): OpenFilm {
  const film = open.get(src) ?? openFilm(src);
  open.delete(src);
  open.set(src, film);
  for (const key of open.keys()) {
    if (open.size <= mostOpen) break;
    closeDecoder(key);
  }
  return film;
}

function openFilm(src: FilmSource): OpenFilm {
  const input = new Input({ source: sourceOf(src), formats: [MP4, QTFF, MATROSKA, WEBM] });
  const film = { input, sink: sinkOf(input) };
  // A film that could not be opened is not kept: the next still tries again.
  film.sink.catch(() => open.delete(src));
  return film;
}

function sourceOf(src: FilmSource): BlobSource | UrlSource {
  if (typeof src !== "string") return new BlobSource(src);
  const getRetryDelay = (attempts: number) => (attempts < 3 ? 0.25 * 2 ** attempts : null);
  return new UrlSource(src, { getRetryDelay, handleUnhandledError: () => undefined });
}

async function sinkOf(input: Input): Promise<CanvasSink | null> {
  const track = await input.getPrimaryVideoTrack();
  return track !== null && (await track.canDecode()) ? new CanvasSink(track) : null;
}
