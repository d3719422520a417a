import { isoDuration, readIsoDuration } from "#lib/time/index.ts";
import type { Adapter } from "../row.ts";

/** Read, and written again: the letters must be the same. */
export const adapter: Adapter = ({ input }) => {
  const seconds = readIsoDuration(input.text);
  return seconds !== null && isoDuration(seconds) === input.text ? { seconds } : { note: "not read" };
};
