/** Edit lists, and the film they make of a build's recordings. */
export { captionsOfRecordings } from "./captions.ts";
export { readCmx3600 } from "./cmx3600.ts";
export { readLine as readCmx3600Line } from "./cmx3600-line.ts";
export type { EditList, ListProblem, Locator, Reel } from "./edit-list.ts";
export { type Film, filmOf, readFilm, readList } from "./film.ts";
export { bringFilmCaptions, type FilmCaptions } from "./film-captions.ts";
export { readOtio } from "./otio.ts";
export { matchReels, type ReelMatch } from "./reels.ts";
