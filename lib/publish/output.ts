import type { CheckedProcedure } from "#lib/procedure/tree.ts";
import type { BriefNote } from "./brief.ts";
import type { RecordingCue } from "./film/to-captions.ts";
import type { History } from "./release/history.ts";

/** A file of an output. `name` is relative, with `/`. */
export interface OutputFile {
  name: string;
  bytes: Uint8Array;
}

/** What an output came to: its files, and in plain sentences what the format could not carry. */
export interface Output {
  files: OutputFile[];
  losses: string[];
}

/** What an output needs beside the procedure. */
export interface PublishOptions {
  /** JPEG bytes of a still by its SHA-256 in hex: sRGB, upright, without metadata; null where there is none. */
  stills: (sha256: string) => Promise<Uint8Array | null>;
  /** The date to print, ISO 8601. The caller gives it, so that the same input gives the same output. */
  printedOn: string;
  /** The revision that is being published; without one the output says "Unreleased". */
  release?: { revision: string; date: string };
  /** Earlier revisions, and mistakes that were found in them; they are printed where there are any. */
  history?: History;
  /** What a reader has to know before anything else, a paragraph each: that there is a later revision. */
  notices?: readonly string[];
  /** Marks of the steps that are not as in the revision before: a bar in the margin says so. */
  changedSteps?: readonly string[];
  /** For the desk, or for the bench: larger, with stop points. Only print has the two. */
  edition?: Edition;
  /** What bit before, printed in front of the steps; not part of the content hash. */
  brief?: readonly BriefNote[];
  /** Captions of the recordings, for those of the film; no part of a procedure. */
  captions?: readonly RecordingCue[];
  /** Pictures of a HowTo as files beside it, or inside it where one file is asked for; beside it until said. */
  pictures?: "beside" | "inside";
  /** Size of paper, for outputs that have pages; A4 until said otherwise. */
  paper?: Paper;
}

export const editions = ["page", "bench"] as const;
export type Edition = (typeof editions)[number];

export type Paper = "a4" | "letter";

/** An output: a checked procedure in; files, and what the format cannot carry, out. */
export type Publish<Out extends Output = Output> = (
  checked: CheckedProcedure,
  options: PublishOptions,
) => Promise<Out>;

const encoder = new TextEncoder();

/** A file of text, in UTF-8. */
export function textFile(name: string, text: string): OutputFile {
  return { name, bytes: encoder.encode(text) };
}
