/** The part of a file to send: first and last byte, both included, as RFC 9110 counts them. */
export interface ByteRange {
  first: number;
  last: number;
}

/**
 * Reads a Range header for a file of `size` bytes (RFC 9110, 14.1.2 and 14.2).
 *
 * @returns the range; "whole" when the header is to be ignored (other units, bad syntax, more than one range,
 *   which a server may answer with everything); "unsatisfiable" when it asks for nothing that is there
 */
export function readRange(header: string | undefined, size: number): ByteRange | "whole" | "unsatisfiable" {
  const match = /^bytes=[ \t]*(\d*)-(\d*)[ \t]*$/i.exec(header ?? "");
  const [, from = "", to = ""] = match ?? [];
  if (match === null || (from === "" && to === "")) return "whole";
  if (from === "") return suffix(Number(to), size);
  const first = Number(from);
  const last = to === "" ? Number.POSITIVE_INFINITY : Number(to);
  if (last < first) return "whole";
  return first < size ? { first, last: Math.min(last, size - 1) } : "unsatisfiable";
}

/** The last `length` bytes. An empty file has no byte to name in an answer, so all of nothing is sent. */
function suffix(length: number, size: number): ByteRange | "whole" | "unsatisfiable" {
  if (length === 0) return "unsatisfiable";
  return size === 0 ? "whole" : { first: Math.max(size - length, 0), last: size - 1 };
}
