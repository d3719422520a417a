/**
 * Published tables as data, each row with its source, the formulas beside them, and the look-ups over both.
 * The README beside this file says what is where.
 */
export {
  type Entry,
  type Figure,
  inInches,
  inMillimetres,
  type Reply,
  replyTo,
  type SideBySide,
} from "./ask/index.ts";
export { type Bearing, bearing, bearings, bearingsSized } from "./bearings/index.ts";
export { type BookChapter, type BookTable, book } from "./book/index.ts";
export * from "./drills/index.ts";
export * from "./electrical/index.ts";
export * from "./engine/index.ts";
export * from "./fasteners/index.ts";
export * from "./fits/index.ts";
export * from "./gauges/index.ts";
export * from "./measuring/index.ts";
export * from "./mixes/index.ts";
export { type Slip, slipsOf } from "./slips.ts";
export { type Source, type SourceName, saySource, sourceNamed } from "./source.ts";
export * from "./spanners/index.ts";
export * from "./thermal/index.ts";
export * from "./threads/index.ts";
