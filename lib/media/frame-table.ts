import type { EncodedPacket, EncodedPacketSink } from "mediabunny";

/** The presentation times of a recording's frames, in seconds of its clock. */
export interface FrameTable {
  starts: Float64Array;
  end: number;
  count: number;
  /** Whether the data of the frame stored last is really in the file, and not blank. */
  lastIsThere: boolean;
  /** Set when reading was given up at {@link mostFrames}. */
  tooMany: boolean;
}

/** Eleven hours at 240 frames a second. An index that lists more is damaged, or meant to fill the memory. */
export const mostFrames = 10_000_000;

/**
 * Reads when each frame is shown, from the packets' heads alone. Frames before nought are never shown and are
 * left out; of two that begin together only one can be seen, and counts.
 *
 * @returns null when there is no frame at all.
 */
export async function readFrameTable(sink: EncodedPacketSink, alive: () => void): Promise<FrameTable | null> {
  let times = new Float64Array(4096);
  let count = 0;
  let latest: EncodedPacket | null = null;
  let stored: EncodedPacket | null = null;
  for await (const packet of sink.packets(undefined, undefined, { metadataOnly: true })) {
    stored = packet;
    if ((count & 1023) === 0) alive();
    if (!(packet.timestamp >= 0)) continue;
    if (count === mostFrames) return { starts: times, end: 0, count, lastIsThere: true, tooMany: true };
    if (count === times.length) times = grown(times);
    times[count++] = packet.timestamp;
    if (latest === null || packet.timestamp > latest.timestamp) latest = packet;
  }
  if (latest === null || stored === null) return null;
  const starts = withoutDoubles(times.slice(0, count).sort());
  const end = latest.timestamp + lastsFor(latest, starts);
  return { starts, end, count: starts.length, lastIsThere: await isThere(sink, stored), tooMany: false };
}

function grown(times: Float64Array): Float64Array<ArrayBuffer> {
  const longer = new Float64Array(times.length * 2);
  longer.set(times);
  return longer;
}

function withoutDoubles(sorted: Float64Array): Float64Array {
  let kept = 0;
  for (const time of sorted) {
    if (kept === 0 || time > (sorted[kept - 1] as number)) sorted[kept++] = time;
  }
  return sorted.slice(0, kept);
}

/** The last frame lasts as long as its packet says; where it says nothing, as long as the frame before it. */
function lastsFor(latest: EncodedPacket, starts: Float64Array): number {
  if (latest.duration > 0) return latest.duration;
  const [before, last] = [starts.at(-2), starts.at(-1)];
  return before === undefined || last === undefined ? 0 : last - before;
}

/** A copy that was broken off may have its full length and nothing but noughts at its end. */
async function isThere(sink: EncodedPacketSink, stored: EncodedPacket): Promise<boolean> {
  const packet = await sink.getPacket(stored.timestamp);
  if (packet === null) return false;
  return packet.data.some((byte) => byte !== 0);
}
