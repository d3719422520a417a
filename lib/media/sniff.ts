/** What the first bytes of a file say it is. */
export interface Sniffed {
  sort: "film" | "other film" | "picture" | "sound" | "text" | "unknown";
  /** With its article, for the middle of a sentence: "a PNG picture". */
  what: string;
}

const ascii = (head: Buffer, at: number, text: string) =>
  head.subarray(at, at + text.length).equals(Buffer.from(text, "latin1"));
const hex = (head: Buffer, bytes: string) =>
  head.subarray(0, bytes.length / 2).equals(Buffer.from(bytes, "hex"));

type Signature = [test: (head: Buffer) => boolean, sort: Sniffed["sort"], what: string];

/** In order; the first that fits counts. Container signatures from the formats' own specifications. */
const signatures: Signature[] = [
  [(head) => isHeif(head), "picture", "a HEIC or AVIF picture"],
  [
    (head) => /^(ftyp|moov|mdat|wide|free|skip|pnot|styp)$/.test(head.toString("latin1", 4, 8)),
    "film",
    "an MP4 or MOV file",
  ],
  [(head) => hex(head, "1a45dfa3"), "film", "a Matroska or WebM file"],
  [(head) => isTransport(head), "film", "an MPEG transport stream"],
  [(head) => ascii(head, 0, "RIFF") && ascii(head, 8, "AVI "), "other film", "an AVI file"],
  [(head) => hex(head, "000001ba") || hex(head, "000001b3"), "other film", "an MPEG-1 or MPEG-2 file"],
  [(head) => ascii(head, 0, "FLV"), "other film", "an FLV file"],
  [(head) => hex(head, "3026b2758e66cf11"), "other film", "a Windows Media file"],
  [(head) => ascii(head, 0, "OggS"), "other film", "an Ogg file"],
  [(head) => hex(head, "ffd8ff"), "picture", "a JPEG picture"],
  [(head) => hex(head, "89504e470d0a1a0a"), "picture", "a PNG picture"],
  [(head) => ascii(head, 0, "RIFF") && ascii(head, 8, "WEBP"), "picture", "a WebP picture"],
  [(head) => ascii(head, 0, "GIF8"), "picture", "a GIF picture"],
  [(head) => hex(head, "49492a00") || hex(head, "4d4d002a"), "picture", "a TIFF or raw camera picture"],
  [(head) => ascii(head, 0, "RIFF") && ascii(head, 8, "WAVE"), "sound", "a WAV sound file"],
  [(head) => ascii(head, 0, "fLaC"), "sound", "a FLAC sound file"],
  [(head) => ascii(head, 0, "ID3") || hex(head, "fffb"), "sound", "an MP3 sound file"],
  [(head) => ascii(head, 0, "%PDF"), "unknown", "a PDF document"],
  [(head) => hex(head, "504b0304"), "unknown", "a ZIP archive or office document"],
  [(head) => isText(head), "text", "a text file"],
];

/** Names the sort of file from its first bytes (4 KiB are plenty); a name's ending is not asked. */
export function sniff(head: Buffer): Sniffed {
  for (const [test, sort, what] of signatures) {
    if (head.length > 0 && test(head)) return { sort, what };
  }
  return { sort: "unknown", what: "a file of an unknown kind" };
}

/** ISO/IEC 23008-12: still pictures in the MP4 family of containers carry one of these brands. */
function isHeif(head: Buffer): boolean {
  const brand = head.toString("latin1", 8, 12);
  return ascii(head, 4, "ftyp") && /^(heic|heix|heim|heis|hevc|hevx|mif1|msf1|avif|avis)$/.test(brand);
}

/** ISO/IEC 13818-1: packets of 188 bytes that begin with 0x47; camcorders put four bytes before each. */
function isTransport(head: Buffer): boolean {
  const every = (first: number, step: number) =>
    head.length > first + step * 2 && [0, 1, 2].every((n) => head[first + n * step] === 0x47);
  return every(0, 188) || every(4, 192);
}

function isText(head: Buffer): boolean {
  if (head.includes(0)) return false;
  let odd = 0;
  for (const byte of head) if (byte < 9 || (byte > 13 && byte < 32) || byte === 127) odd++;
  if (odd > 0) return false;
  // A character cut in two at the end of the head is no reason to doubt the rest.
  return !head
    .subarray(0, Math.max(head.length - 4, 1))
    .toString("utf8")
    .slice(0, -1)
    .includes("\uFFFD");
}
