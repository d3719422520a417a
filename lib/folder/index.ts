/** A build folder: a build as plain files, read and written. `docs/build-folder.md` documents its form. */
export { FolderError, pathIn, type ReadFolder, readFolder, readInside } from "./read.ts";
export { type Sources, writeFolder } from "./write.ts";
