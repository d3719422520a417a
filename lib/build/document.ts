import type { Clocks, Mark } from "#lib/mark/index.ts";
import type { Gotcha, Sighting } from "./gotcha-rows.ts";
import type {
  AnswerRow,
  Assembly,
  Build,
  CaptionTrack,
  Cut,
  DraftDecisionRow,
  Edit,
  Erratum,
  Item,
  Kit,
  Machine,
  Recording,
  Release,
  Sitting,
  Still,
} from "./rows.ts";

/**
 * A mark of another build of the machine that one of these marks closes, or that closes one of these, with as
 * much as a reader needs to know it by.
 */
export interface ForeignMark {
  id: string;
  buildId: string;
  kind: string;
  words: string;
  closes: string[];
}

/**
 * A build whole: all that a procedure is compiled from, as plain values. The database gives one, a build
 * folder holds one, and both are the same. Rows struck out are among them, marked `gone`.
 */
export interface BuildDocument {
  machine: Machine;
  assemblies: Assembly[];
  items: Item[];
  build: Build;
  sittings: Sitting[];
  recordings: Recording[];
  captions: CaptionTrack[];
  cuts: Cut[];
  marks: Mark[];
  stills: Still[];
  edits: Edit[];
  answers: AnswerRow[];
  releases: Release[];
  errata: Erratum[];
  decisions: DraftDecisionRow[];
  /** Gotchas that the sightings of this build name. They belong to the workshop's book. */
  gotchas: Gotcha[];
  /** What was met, or looked for and absent, in this build. */
  sightings: Sighting[];
  kits: Kit[];
  foreign: ForeignMark[];
}

/** The names of a document's lists of rows, in the order in which rows may be written: what is named first. */
export const rowLists = [
  "assemblies",
  "items",
  "sittings",
  "recordings",
  "captions",
  "cuts",
  "marks",
  "stills",
  "edits",
  "answers",
  "releases",
  "errata",
  "decisions",
  "gotchas",
  "sightings",
  "kits",
] as const;
export type RowList = (typeof rowLists)[number];

/** A build of a machine with these rows and no others. */
export function newDocument(
  given: Pick<BuildDocument, "machine" | "build"> & Partial<BuildDocument>,
): BuildDocument {
  return {
    assemblies: [],
    items: [],
    sittings: [],
    recordings: [],
    captions: [],
    cuts: [],
    marks: [],
    stills: [],
    edits: [],
    answers: [],
    releases: [],
    errata: [],
    decisions: [],
    gotchas: [],
    sightings: [],
    kits: [],
    foreign: [],
    ...given,
  };
}

/** Rows that have not been struck out. */
export function present<T extends { gone: string | null }>(rows: readonly T[]): T[] {
  return rows.filter((row) => row.gone === null);
}

/** Sittings in their order: by rank, then when they began, then id. */
export function sittingsInOrder(document: BuildDocument): Sitting[] {
  return present(document.sittings).sort(
    (a, b) => a.rank - b.rank || compareText(a.began ?? "", b.began ?? "") || compareText(a.id, b.id),
  );
}

/** What the order of a document's marks depends on. */
export function clocksOf(document: BuildDocument): Clocks {
  return {
    sittings: sittingsInOrder(document).map((sitting) => sitting.id),
    recordings: new Map(document.recordings.map((recording) => [recording.id, recording])),
  };
}

function compareText(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
