import type { CheckedProcedure } from "#lib/procedure/tree.ts";
import type { BriefNote } from "./brief.ts";

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
  /** What bit before, printed in front of the steps; not part of the content hash. */
  brief?: readonly BriefNote[];
  /** Size of paper, for outputs that have pages; A4 until said otherwise. */
  paper?: Paper;
}

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
