/** A build folder: a build as plain files, read and written. `docs/build-folder.md` documents its form. */
export { FolderError, isFree, pathIn, type ReadFolder, readFolder, readInside } from "./read.ts";
export {
  frozen,
  lacksOfRelease,
  type ReadRelease,
  type ReleaseManifest,
  readManifest,
  readRelease,
  rebuildRelease,
  writeRelease,
} from "./release.ts";
export { type Sources, writeFolder } from "./write.ts";
