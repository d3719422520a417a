/** The store: the only place that knows the database. Commands change it, `loadBuild` gives a build whole. */
export { apply } from "./apply.ts";
export {
  type BroughtBook,
  bookOf,
  importBook,
  loadBook,
  type SightingPlace,
  sightingPlaces,
} from "./book.ts";
export {
  type Applied,
  type Command,
  command,
  type HistoryStep,
  historyStep,
  type Put,
  Refused,
  type Stale,
  type Written,
} from "./command.ts";
export { type HistoryLine, history, stacks, stacksOf, step } from "./history.ts";
export { type ImportChoice, type Imported, importBuild, withNewIds } from "./import-build.ts";
export { type LastBackup, readLastBackup } from "./last-backup.ts";
export { foldRecording, type Listed, listRecordings } from "./listing.ts";
export { listMachines, loadBuild, type MachineLine } from "./load.ts";
export { type OpenWorkshop, openWorkshop, projectionsIn, theWorkshop } from "./open.ts";
export { type OpenItem, openItems } from "./open-items.ts";
export { type OpenSoak, openSoaks } from "./open-soaks.ts";
export {
  addPlace,
  type KnownPlace,
  type NewPlace,
  type OriginalPlace,
  originals,
  placesOf,
  placesOfBuild,
  type Renewal,
  renewPlace,
  renewPlaces,
  rootFor,
} from "./places.ts";
export {
  type IndexCounts,
  indexCounts,
  noteRecording,
  type RecordingsNow,
  readRecording,
  recordingsSince,
  sameBytes,
  type Waiting,
  waiting,
} from "./recordings.ts";
export { readRelease } from "./releases.ts";
export { type Ask, type Finding, type Found, find, rebuildSearch, type Source } from "./search/index.ts";
export { readSettings, type Settings, settings, usualSettings, writeSettings } from "./settings.ts";
export { MigrationError } from "./sqlite/migrate.ts";
export { type Row, type TableName, tableNames } from "./tables.ts";
export { isOfTheDisk, wordsOf } from "./told.ts";
export { type Workshop, workshopAt, workshopFolder } from "./workshop.ts";
