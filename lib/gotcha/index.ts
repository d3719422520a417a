/** Gotchas: where they apply, how they stand, the brief before an assembly is opened, entries that say the same. */

export { type Alike, alikeFrom, alikes } from "./alike.ts";
export {
  applies,
  type Match,
  matchScope,
  type OpenedPart,
  type Opening,
  sayRange,
  type Tie,
} from "./applies.ts";
export { type Book, type Entry, entriesOf, scopesOf } from "./book.ts";
export { applying, type BriefLine, brief, briefLength, hintsFor, sayCost } from "./brief.ts";
export {
  answerOf,
  assemblyOf,
  bookHistory,
  briefOf,
  firstRemoval,
  gotchaOfMark,
  machineWords,
  openingOf,
} from "./deeds.ts";
export {
  BookError,
  type BookFile,
  fromCsv,
  fromJson,
  type Newcomers,
  newcomers,
  toCsv,
  toJson,
} from "./exchange/index.ts";
export { liesInSerials, liesInYears } from "./ranges.ts";
export { slips } from "./spelling.ts";
export { type Standing, sayStanding, standingOf, type Trust } from "./standing.ts";
export { foldWords, meanings, names, phraseAt, sameMeaning, sameText, singular } from "./words.ts";
