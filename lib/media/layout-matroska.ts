import { readSync } from "node:fs";

/** How a Matroska or WebM file lies on disk (RFC 9559; element form from RFC 8794). */
export interface MatroskaLayout {
  /** The length its segment says it has, in bytes; null when it was written live and says none. */
  needs: number | null;
  /** DateUTC of the segment, ISO 8601; null when it is not there. */
  createdAt: string | null;
}

interface Element {
  id: number;
  content: number;
  /** Null for an element of unknown size. */
  end: number | null;
}

const ebmlHeader = 0x1a45dfa3;
const segment = 0x18538067;
const info = 0x1549a966;
const dateUtc = 0x4461;

/** Reads the segment's size and date from the first elements; the clusters are left alone. */
export function readMatroskaLayout(fd: number, size: number): MatroskaLayout {
  const layout: MatroskaLayout = { needs: null, createdAt: null };
  const head = elementAt(fd, 0);
  if (head?.id !== ebmlHeader || head.end === null) return layout;
  const body = elementAt(fd, head.end);
  if (body?.id !== segment) return layout;
  layout.needs = body.end;
  layout.createdAt = dateIn(fd, body, size);
  return layout;
}

function dateIn(fd: number, body: Element, size: number): string | null {
  for (const child of children(fd, body, size)) {
    if (child.id !== info) continue;
    for (const field of children(fd, child, size)) {
      if (field.id === dateUtc && field.end === field.content + 8) return readDate(fd, field.content);
    }
    return null;
  }
  return null;
}

/** The first few children; Info stands before the clusters in every file that has a date worth asking for. */
function* children(fd: number, parent: Element, size: number): Generator<Element> {
  let at = parent.content;
  for (let count = 0; count < 32 && at < Math.min(parent.end ?? size, size); count++) {
    const child = elementAt(fd, at);
    if (child === null) return;
    yield child;
    if (child.end === null || child.end <= at) return;
    at = child.end;
  }
}

function elementAt(fd: number, at: number): Element | null {
  const head = Buffer.alloc(12);
  const got = readSync(fd, head, 0, 12, at);
  const idLength = Math.clz32((head[0] as number) << 24) + 1;
  if (got < 2 || idLength > 4 || got <= idLength) return null;
  const sizeLength = Math.clz32((head[idLength] as number) << 24) + 1;
  if (sizeLength > 8 || got < idLength + sizeLength) return null;
  const id = head.readUIntBE(0, idLength);
  const marked = BigInt(`0x${head.toString("hex", idLength, idLength + sizeLength)}`);
  const mask = (1n << BigInt(7 * sizeLength)) - 1n;
  const content = at + idLength + sizeLength;
  const length = marked & mask;
  return { id, content, end: length === mask ? null : content + Number(length) };
}

/** RFC 8794, date element: nanoseconds since the beginning of 2001, UTC. */
function readDate(fd: number, at: number): string | null {
  const bytes = Buffer.alloc(8);
  if (readSync(fd, bytes, 0, 8, at) < 8) return null;
  const date = new Date(Date.UTC(2001, 0, 1) + Number(bytes.readBigInt64BE(0) / 1_000_000n));
  const year = date.getUTCFullYear();
  return year >= 1990 && year <= 9999 ? date.toISOString() : null;
}
