/** The records of a build beside its marks, a build whole, and the form of a build folder. */
export {
  type BuildDocument,
  clocksOf,
  type ForeignMark,
  newDocument,
  present,
  type RowList,
  rowLists,
  sittingsInOrder,
} from "./document.ts";
export { type BuildFolder, buildFolder, folderVersion, toFolder } from "./folder-form.ts";
export { type Gaps, gapsOf, hasClock, shortestGap, wallOf } from "./gaps.ts";
export * from "./gotcha-rows.ts";
export {
  newBuild,
  newCut,
  newEdit,
  newItem,
  newKit,
  newMachine,
  newRecording,
  newSitting,
  newStill,
} from "./new.ts";
export { followsOn, type ProposedClock, proposeClocks } from "./propose-clocks.ts";
export * from "./rows.ts";
