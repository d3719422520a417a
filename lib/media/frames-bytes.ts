import type { Frames } from "#lib/time/index.ts";
import { MediaError } from "./trouble.ts";

/**
 * A frame table as bytes, little-endian: the letters "WMFT", version (uint32, now 1), number of frames (uint32),
 * four bytes of nought, end of the last frame (float64), then each frame's start (float64); all in seconds of
 * the recording's clock. No Node here: the browser reads the same bytes.
 */
const magic = 0x54464d57;
const version = 1;
const headBytes = 24;

/** Writes a frame table. @throws RangeError when the caller's table is none (not ascending, not finite) */
export function encodeFrames(frames: Frames): Uint8Array<ArrayBuffer> {
  const fault = faultOf(frames);
  if (fault !== null) throw new RangeError(`encodeFrames: ${fault}`);
  const bytes = new Uint8Array(headBytes + frames.starts.length * 8);
  const view = new DataView(bytes.buffer);
  view.setUint32(0, magic, true);
  view.setUint32(4, version, true);
  view.setUint32(8, frames.starts.length, true);
  view.setFloat64(16, frames.end, true);
  for (let index = 0; index < frames.starts.length; index++) {
    view.setFloat64(headBytes + index * 8, frames.starts[index] as number, true);
  }
  return bytes;
}

/** Reads a frame table. @throws MediaError `bad-frame-table` for bytes that are none, or not whole */
export function decodeFrames(bytes: Uint8Array): { starts: Float64Array<ArrayBuffer>; end: number } {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  if (bytes.length < headBytes || view.getUint32(0, true) !== magic)
    throw bad("It does not begin as a frame table.");
  const found = view.getUint32(4, true);
  if (found !== version) throw bad(`It is of version ${found}, and this program reads version ${version}.`);
  const count = view.getUint32(8, true);
  const length = headBytes + count * 8;
  if (bytes.length !== length) throw bad(`It has ${bytes.length} bytes; ${count} frames need ${length}.`);
  const starts = Float64Array.from({ length: count }, (_, index) =>
    view.getFloat64(headBytes + index * 8, true),
  );
  const frames = { starts, end: view.getFloat64(16, true) };
  const fault = faultOf(frames);
  if (fault !== null) throw bad(`In it, ${fault}.`);
  return frames;
}

function faultOf({ starts, end }: Frames): string | null {
  let before = -1;
  for (let index = 0; index < starts.length; index++) {
    const start = starts[index] as number;
    if (!(start >= 0 && start < Number.POSITIVE_INFINITY)) return `frame ${index} begins at ${start}`;
    if (start <= before) return `frame ${index} does not begin after the one before it`;
    before = start;
  }
  if (!(end >= Math.max(before, 0) && end < Number.POSITIVE_INFINITY)) return `the last frame ends at ${end}`;
  return null;
}

function bad(found: string): MediaError<"bad-frame-table"> {
  return new MediaError({
    kind: "bad-frame-table",
    found: `The list of a recording's frames cannot be used. ${found}`,
    expected: "A table of frame times that this program wrote.",
    todo: "Nothing is lost: read the recording anew, and the table is written again.",
  });
}
