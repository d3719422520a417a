import { z } from "zod";
import { markRow } from "#lib/mark/index.ts";
import type { BuildDocument } from "./document.ts";
import { gotchaRow, sightingRow } from "./gotcha-rows.ts";
import {
  answerRow,
  assemblyRow,
  buildRow,
  captionTrackRow,
  cutRow,
  draftDecisionRow,
  editRow,
  erratumRow,
  itemRow,
  kitRow,
  machineRow,
  recordingRow,
  releaseRow,
  sittingRow,
  stillRow,
} from "./rows.ts";

/** The version of the form of a build folder. */
export const folderVersion = 1;

/** A path inside the folder: relative, with `/`, and not leading out of it. */
const inside = z
  .string()
  .min(1)
  .max(1000)
  .refine((path) => !/^([/\\]|[A-Za-z]:)/.test(path) && !path.split(/[/\\]/).includes(".."), {
    error: "a path inside the build folder was expected: relative, without '..'",
  });

/**
 * `build.json` of a build folder. Text of captions and edit lists and bytes of stills lie in files beside it, named in
 * `files` by the id of their row; recordings are named there too where they lie in the folder.
 */
export const buildFolder = z.object({
  form: z.literal("witness-mark-build"),
  version: z.literal(folderVersion),
  machine: machineRow,
  assemblies: z.array(assemblyRow).max(10_000),
  items: z.array(itemRow).max(100_000),
  build: buildRow,
  sittings: z.array(sittingRow).max(10_000),
  recordings: z.array(recordingRow).max(10_000),
  captions: z.array(captionTrackRow.omit({ text: true })).max(10_000),
  /** Absent in folders written before there were cuts. */
  cuts: z
    .array(cutRow.omit({ text: true }))
    .max(1000)
    .default([]),
  marks: z.array(markRow).max(200_000),
  stills: z.array(stillRow).max(100_000),
  edits: z.array(editRow).max(100_000),
  answers: z.array(answerRow).max(100_000),
  releases: z.array(releaseRow).max(1000).default([]),
  errata: z.array(erratumRow).max(10_000).default([]),
  /** Left out by folders that were written before drafts were decided about. */
  decisions: z.array(draftDecisionRow).max(200_000).default([]),
  // A folder from before the gotcha book has none.
  gotchas: z.array(gotchaRow).max(10_000).default([]),
  sightings: z.array(sightingRow).max(100_000).default([]),
  /** Folders written before there were kits have none. */
  kits: z.array(kitRow).max(10_000).default([]),
  foreign: z
    .array(
      z.object({
        id: z.string().max(100),
        buildId: z.string().max(100),
        kind: z.string().max(40),
        words: z.string().max(20_000),
        closes: z.array(z.string().max(100)).max(1000),
      }),
    )
    .max(100_000),
  files: z.record(z.string().max(100), inside),
});
export type BuildFolder = z.infer<typeof buildFolder>;

/** What a document's `build.json` says, given the names of the files beside it. */
export function toFolder(document: BuildDocument, files: Record<string, string>): BuildFolder {
  const { captions, cuts, ...rest } = document;
  return {
    form: "witness-mark-build",
    version: folderVersion,
    ...rest,
    captions: captions.map(({ text: _, ...track }) => track),
    cuts: cuts.map(({ text: _, ...cut }) => cut),
    files,
  };
}
