/**
 * The disk edge: files of recordings and pictures, as they are, never changed. What a film is and when each of
 * its frames is shown; how it is served, brought in, copied so that it plays; stills of it. `browser/` is what
 * runs beside the player, and is imported by its own path. Nothing here knows the database.
 */

export { diskName } from "./disk-name.ts";
export { type FfmpegStill, type FfmpegStillOptions, stillWithFfmpeg } from "./ffmpeg-still.ts";
export { type Ffmpeg, findFfmpeg } from "./find-ffmpeg.ts";
export { beginAlike, fingerprint } from "./fingerprint.ts";
export { makeFolder, syncFolder, syncTree } from "./folders.ts";
export { decodeFrames, encodeFrames } from "./frames-bytes.ts";
export { readFramesFile, writeFramesFile } from "./frames-file.ts";
export { type FileHash, type HashOptions, hashFile } from "./hash-file.ts";
export {
  type ArrivedFile,
  findSettled,
  forgetIncoming,
  type Incoming,
  idsOfIncoming,
  incomingFolder,
  incomingId,
  listIncoming,
  makeIncomingFolder,
  readIncoming,
  readTold,
  settleIncoming,
  sweepIncoming,
} from "./incoming.ts";
export { type FolderListing, type ListedFile, listFolder, recordingEndings } from "./list-folder.ts";
export { mediaType } from "./media-type.ts";
export { checkRelativePath, type OpenedFile, openInside, type PlaceTroubleKind } from "./place.ts";
export { type CopyOptions, playableCopy } from "./playable-copy.ts";
export { type ProbeOptions, probe } from "./probe.ts";
export {
  type Film,
  type NoFilm,
  type ProbeResult,
  type ProbeTroubleKind,
  unplayableTrouble,
} from "./probe-result.ts";
export {
  type ReceivedFile,
  type ReceiveOptions,
  type ReceiveTroubleKind,
  receiveFile,
  sweepUnfinished,
} from "./receive.ts";
export { type Disk, type KnownFile, type Recognised, recognise } from "./recognise.ts";
export { type ServedFile, serveFile } from "./serve.ts";
export { soundOf } from "./sound.ts";
export { type BakedPicture, bakePicture, mostPixels } from "./stills.ts";
export { errorCode, MediaError, sayBytes, sayTrouble, type Trouble } from "./trouble.ts";
export { type Away, type AwayKind, type SeenFile, whyAway } from "./whereabouts.ts";
