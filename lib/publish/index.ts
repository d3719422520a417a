/** Outputs: one folder each. A checked procedure in; files, and what the format cannot carry, out. */
export { type BriefNote, briefNotes } from "./brief.ts";
export { canonicalJson } from "./canonical-json.ts";
export { contentHash } from "./content-hash.ts";
export { type BodyOptions, procedureBody, toHtml } from "./html/index.ts";
export { limits } from "./limits.ts";
export { toMarkdown } from "./markdown/index.ts";
export type { Output, OutputFile, Paper, Publish, PublishOptions } from "./output.ts";
export { toPartsCsv } from "./parts/index.ts";
export { type PdfOutput, toPdf } from "./pdf/index.ts";
export { projectPath, projectRoot } from "./root.ts";
export { type SheetState, sheetState } from "./state.ts";
