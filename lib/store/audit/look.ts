import { type Finding, finding } from "#lib/finding/index.ts";
import type { Reading } from "../sqlite/read.ts";
import type { Workshop } from "../workshop.ts";

/** How far a long piece of work is: in bytes, where it knows how many there are. */
export interface Progress {
  words: string;
  done: number;
  of: number;
}
export type OnProgress = (progress: Progress) => void;

/** What every check of an audit is given. */
export interface Look {
  workshop: Workshop;
  /** The workshop's database, at one moment. */
  database: Reading;
  /** The folder of the migrations this version knows. */
  migrations: string;
  /** Whether films that are listed where they lie are read to their end too. */
  films: boolean;
  /** What has been looked at; the checks count. */
  looked: Looked;
  onProgress: OnProgress;
}

export interface Looked {
  rows: number;
  stills: number;
  /** Files of recordings in the workshop's own folders. */
  recordings: number;
  /** Films that are listed where they lie. */
  elsewhere: number;
  /** Bytes that were read and hashed. */
  bytes: number;
}

/** What an audit says; `where` is a file, a table or a row, and part of the finding's key. */
export function said(
  words: Pick<Finding, "rule" | "severity" | "found" | "expected" | "todo"> & {
    where: string;
    evidence?: string;
    source?: string;
    place?: Finding["place"];
  },
): Finding {
  const { where, evidence = words.found, source = "docs/backup.md", place = {}, ...rest } = words;
  return finding({ ...rest, evidence, source, place: { ...place, field: where } });
}

/** Two copies of a file may differ by this in their time of change: FAT counts in steps of two seconds (Microsoft
 * Learn, "File Times"). In milliseconds. */
export const sameTime = 2000;

/** Names for a sentence: the first few, and how many more there are. */
export function few(names: readonly string[], most = 5): string {
  const shown = names.slice(0, most).join(", ");
  return names.length > most ? `${shown} and ${names.length - most} more` : shown;
}
