import type { BuildDocument, Kit } from "#lib/build/index.ts";
import type { Finding } from "#lib/finding/index.ts";
import type { Mark } from "#lib/mark/index.ts";
import type { Ledger, Procedure } from "#lib/procedure/index.ts";

/** What a rule looks at: the marks and records of a build, and the procedure they come to. */
export interface View {
  document: BuildDocument;
  procedure: Procedure;
  /** Marks that have not been struck out, by id. */
  marks: ReadonlyMap<string, Mark>;
  /** What has become of every part. */
  ledger: Ledger;
}

/** One rule: what it is for, how it finds, and examples that are its tests. */
export interface Rule {
  id: string;
  /** What it asks, as a heading. */
  title: string;
  /** Why it asks: two or three sentences for a restorer. */
  explanation: string;
  /** A standard, a table, or "common practice, no source". */
  source: string;
  check: (view: View) => Finding[];
  examples: readonly Example[];
}

/** A small build, as a sketch, and how many findings of this rule it has. */
export interface Example {
  says: string;
  sketch: Sketch;
  finds: number;
}

/** A build with only what matters: marks by second and kind, stills by the second of their mark, edits. */
export interface Sketch {
  /** Second of the recording, kind, fields. Ids are `kind@second`. */
  marks?: readonly (readonly [at: number, kind: Mark["kind"], fields: Record<string, unknown>])[];
  /** The edit list of the film, CMX3600 at 25 frames a second; its one recording is "film.mp4". */
  film?: string;
  /** Ids of marks that have a still. */
  stills?: readonly string[];
  /** Stills of marks with balloons of these items and dimensions of these measurements. */
  drawings?: readonly { mark: string; items?: readonly string[]; measurements?: readonly string[] }[];
  edits?: readonly {
    mark: string;
    edit: "title" | "stage" | "after" | "merged" | "split" | "belongs";
    value: string;
    basis: string;
  }[];
  /** What is written on the bags of kits, and what the restorer says of their lines. */
  kits?: readonly Partial<Pick<Kit, "name" | "text" | "lines">>[];
}
