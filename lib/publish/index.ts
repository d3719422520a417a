/** Outputs: one folder each. A checked procedure in; files, and what the format cannot carry, out. */
export { toAnnotations } from "./annotations/index.ts";
export { type BriefNote, briefNotes, printedBrief } from "./brief.ts";
export { canonicalJson } from "./canonical-json.ts";
export { contentHash } from "./content-hash.ts";
export { everyFormat, together } from "./every.ts";
export { cuesInFilm, type RecordingCue, toCaptions, toChapters, webVtt } from "./film/index.ts";
export { toHowTo } from "./howto/index.ts";
export { type BodyOptions, originalPicture, procedureBody, toHtml } from "./html/index.ts";
export { limits } from "./limits.ts";
export { toMarkdown } from "./markdown/index.ts";
export { toMeasurementsCsv } from "./measurements/index.ts";
export { toOtio } from "./otio/index.ts";
export type { Output, OutputFile, Paper, Publish, PublishOptions } from "./output.ts";
export { type Edition, editions } from "./output.ts";
export { toPartsCsv } from "./parts/index.ts";
export { type PdfOutput, toPdf } from "./pdf/index.ts";
export {
  type CorrectionLine,
  compareRevisions,
  type History,
  historyOf,
  nextRevision,
  noticesOf,
  type RevisionLine,
  releaseOutputs,
  releasesInOrder,
  reportsOn,
} from "./release/index.ts";
export { projectPath, projectRoot } from "./root.ts";
export { type SheetState, sheetState } from "./state.ts";
