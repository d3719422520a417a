/** Finding: entries are written with the rows they come from, and found by words, parts of them, and slips. */
export type { Ask } from "./ask.ts";
export { entriesOfRow, type SearchEntry, type Source } from "./entries.ts";
export { type Finding, type Found, find } from "./find.ts";
export { rebuildSearch } from "./rebuild.ts";
export { indexRows } from "./write.ts";
