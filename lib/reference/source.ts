import { sources } from "./sources.ts";

/** Where a figure comes from, so that it can be looked up again and doubted. */
export interface Source {
  /** The standard or handbook that fixes the figure, or the words "common practice, no source". */
  standard: string;
  /** Where the figure was seen: mostly a second-hand table, since the standards are not public. */
  seen: string;
  /** Seen in a table, worked out by a formula, or recalled and seen nowhere: then it is to be verified. */
  how: "read" | "computed" | "memory";
  /** What is doubtful about it. */
  doubt?: string;
}

export type SourceName = keyof typeof sources;

/** A source by its short name in the tables. */
export const sourceNamed = (name: SourceName): Source => sources[name];

/** A source in one line, as it stands beside a figure. */
export function saySource(source: Source): string {
  const from = source.how === "memory" ? "from memory, to be verified" : source.seen;
  return [source.standard, from, source.doubt && `Doubt: ${source.doubt}`].filter(Boolean).join(". ");
}
