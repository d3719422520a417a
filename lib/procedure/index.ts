/** The procedure: `compile` turns a build's marks and hand edits into stages and steps, with their lists. */

export { type Concern, compareProcedures, type Difference, sayingsAt } from "./compare.ts";
export { compile, stepsOf } from "./compile.ts";
export { dimensionText, drawnFigure } from "./drawn.ts";
export {
  mergeWithPrevious,
  moveMark,
  moveStep,
  reorder,
  restage,
  setEdit,
  splitAt,
  withEdits,
} from "./edits.ts";
export * from "./ledger/index.ts";
export { cutOfFilm, filmOfProcedure, publishedLink } from "./moment.ts";
export { sayEdit } from "./overlay.ts";
export { proposeAlt } from "./propose-alt.ts";
export * from "./tree.ts";
