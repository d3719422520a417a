/**
 * Recordings that lie in folders: listing them in place, knowing them again, the work in the background that looks at
 * them and reads them whole, and where they are now.
 */
export { type BroughtIn, brokenOff, finishArrived, mustExist, takeArrived } from "./bring-in.ts";
export { type Doing, Indexing, type IndexState, indexingOf } from "./indexing.ts";
export { type ListedFolder, listInPlace } from "./list.ts";
export { forgetLook, framesPath, lookAt, readWhole } from "./look.ts";
export { nameFile } from "./name-file.ts";
export { settleTwins } from "./twins.ts";
export {
  type AwayRecording,
  awayOf,
  fileOf,
  openPlace,
  originalsNow,
  type Whereabouts,
  whereaboutsOf,
} from "./whereabouts.ts";
