import { readSync } from "node:fs";

/** How the outermost boxes of an MP4 or MOV file lie in it (ISO/IEC 14496-12, 4.2). */
export interface Mp4Layout {
  /** Whether an index (`moov`) begins anywhere in the file. */
  hasIndex: boolean;
  /** The length that index and media data need; more than the file has when its end is missing. Bytes. */
  needs: number;
  /** Creation time of the movie header, ISO 8601 in UTC as the standard has it; null when it says nothing. */
  createdAt: string | null;
}

interface Box {
  type: string;
  /** Where its content begins and where the box ends, in bytes from the file's start. */
  content: number;
  end: number;
}

/** Boxes whose loss matters; anything else at the end may be padding or a camera's own notes. */
const needed = new Set(["moov", "moof", "mdat"]);

/** Walks the outermost boxes by their headers alone. */
export function readMp4Layout(fd: number, size: number): Mp4Layout {
  const layout: Mp4Layout = { hasIndex: false, needs: 0, createdAt: null };
  for (const box of boxes(fd, 0, size)) {
    if (needed.has(box.type)) layout.needs = Math.max(layout.needs, box.end);
    if (box.type !== "moov") continue;
    layout.hasIndex = true;
    layout.createdAt ??= creationTime(fd, box, size);
  }
  return layout;
}

function* boxes(fd: number, from: number, to: number): Generator<Box> {
  const header = Buffer.alloc(16);
  let at = from;
  while (at + 8 <= to) {
    const got = readSync(fd, header, 0, 16, at);
    if (got < 8) return;
    const box = boxAt(header, got, at, to);
    if (box === null) return;
    yield box;
    at = box.end;
  }
}

function boxAt(header: Buffer, got: number, at: number, to: number): Box | null {
  const type = header.toString("latin1", 4, 8);
  const short = header.readUInt32BE(0);
  if (short === 0) return type === "\0\0\0\0" ? null : { type, content: at + 8, end: to };
  if (short !== 1) return short < 8 ? null : { type, content: at + 8, end: at + short };
  if (got < 16) return null;
  const long = Number(header.readBigUInt64BE(8));
  return long < 16 ? null : { type, content: at + 16, end: at + long };
}

function creationTime(fd: number, moov: Box, size: number): string | null {
  for (const box of boxes(fd, moov.content, Math.min(moov.end, size))) {
    if (box.type !== "mvhd") continue;
    const content = Buffer.alloc(12);
    if (readSync(fd, content, 0, 12, box.content) < 12) return null;
    return fromSecondsSince1904(
      content[0] === 1 ? Number(content.readBigUInt64BE(4)) : content.readUInt32BE(4),
    );
  }
  return null;
}

/** ISO/IEC 14496-12, 8.2.2: seconds since midnight, 1 January 1904, UTC; nought where nobody set it. */
function fromSecondsSince1904(seconds: number): string | null {
  const between1904And1970 = 2_082_844_800;
  const date = new Date((seconds - between1904And1970) * 1000);
  // Before 1990 no camera wrote such files: the clock was never set.
  if (Number.isNaN(date.getTime()) || date.getUTCFullYear() < 1990 || date.getUTCFullYear() > 9999)
    return null;
  return date.toISOString();
}
