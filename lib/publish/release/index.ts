/** Releases: their letters, what a printed sheet says of its past, and the files of one. */
export {
  type CorrectionLine,
  type History,
  historyOf,
  type RevisionLine,
  releasesInOrder,
  reportsOn,
} from "./history.ts";
export { releaseOutputs } from "./outputs.ts";
export { noticesOf } from "./reading.ts";
export { compareRevisions, nextRevision } from "./revision.ts";
