import type { CaptionEncoding } from "./types.ts";

/** The text of a file, and how its bytes were read. `doubtful` when some bytes fit no encoding. */
export interface Decoded {
  text: string;
  encoding: CaptionEncoding;
  doubtful: boolean;
}

/**
 * Finds the encoding of a caption file: by its byte order mark; without one UTF-8 where the bytes allow it, UTF-16
 * where every other byte is nought, and Latin-1 (in its Windows form, as the Encoding Standard has it) for the rest.
 */
export function decode(bytes: Uint8Array): Decoded {
  const [a, b, c] = bytes;
  if (a === 0xef && b === 0xbb && c === 0xbf) return utf8(bytes.subarray(3));
  if (a === 0xff && b === 0xfe) return utf16(bytes.subarray(2), "utf-16le");
  if (a === 0xfe && b === 0xff) return utf16(bytes.subarray(2), "utf-16be");
  const wide = wideWithoutMark(bytes);
  return wide ? utf16(bytes, wide) : utf8(bytes);
}

function utf16(bytes: Uint8Array, label: "utf-16le" | "utf-16be"): Decoded {
  const text = new TextDecoder(label).decode(bytes);
  return { text, encoding: "UTF-16", doubtful: text.includes("\ufffd") };
}

/** Text in UTF-16 has a nought beside each Latin letter. */
function wideWithoutMark(bytes: Uint8Array): "utf-16le" | "utf-16be" | null {
  const head = Math.min(bytes.length, 2000) & ~1;
  let [even, odd] = [0, 0];
  for (let i = 0; i < head; i += 2) {
    if (bytes[i] === 0) even++;
    if (bytes[i + 1] === 0) odd++;
  }
  if (head >= 8 && odd > head / 4 && even < head / 40) return "utf-16le";
  return head >= 8 && even > head / 4 && odd < head / 40 ? "utf-16be" : null;
}

function utf8(bytes: Uint8Array): Decoded {
  const text = new TextDecoder("utf-8").decode(bytes);
  const broken = count(text, (code) => code === 0xfffd);
  if (broken === 0) return { text, encoding: "UTF-8", doubtful: false };
  const whole = count(text, (code) => code > 0x7f && code !== 0xfffd);
  if (whole > broken) return { text, encoding: "UTF-8", doubtful: true };
  return { text: new TextDecoder("windows-1252").decode(bytes), encoding: "Latin-1", doubtful: false };
}

function count(text: string, has: (code: number) => boolean): number {
  let found = 0;
  for (let i = 0; i < text.length; i++) if (has(text.charCodeAt(i))) found++;
  return found;
}
