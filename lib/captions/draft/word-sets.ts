import { bodyWords, digitWords, guardWords } from "../lexicon/bodies.ts";
import { damageWords, spoiltWords } from "../lexicon/consequences.ts";
import { heldWords, makeshift, rightedVerbs, seasonWords } from "../lexicon/deferred-words.ts";
import { bodgedWords, documents, misdeeds, wentWrong } from "../lexicon/lesson-words.ts";
import {
  cleanWords,
  doneWords,
  madeWords,
  materialWords,
  mendVerbs,
  notWork,
  repairWords,
} from "../lexicon/part-words.ts";
import { stopWords } from "../lexicon/stop-words.ts";
import { isPartWord } from "./nouns.ts";
import { numberAt } from "./number.ts";
import type { WordSets } from "./phrase.ts";

/** Behind "if you", these are no deed that could go wrong. */
const noActs = new Set(
  "the a an it that they count have had want need like can could would should know see look ask find got do did ever really wish will might must prefer think remember can watch".split(
    " ",
  ),
);
const thing = new Set("it them that those these one ones this mine".split(" "));

/** The named sets that phrases of the lexicon may use. */
export const wordSets: WordSets = {
  number: (tokens, place) => numberAt(tokens, place, place + 3) !== null,
  part: (tokens, place) => isPartWord(tokens[place]?.word ?? ""),
  thing: (tokens, place) => thing.has(tokens[place]?.word ?? ""),
  plain: (tokens, place) => {
    const token = tokens[place];
    return (
      token !== undefined && token.stop === "" && /^[a-z]+$/.test(token.word) && !stopWords.has(token.word)
    );
  },
  digit: (tokens, place) => digitWords.has(tokens[place]?.word ?? ""),
  body: (tokens, place) => bodyWords.has(tokens[place]?.word ?? ""),
  guards: (tokens, place) => guardWords.has(tokens[place]?.word ?? ""),
  spoilt: (tokens, place) => spoiltWords.has(tokens[place]?.word ?? ""),
  damage: (tokens, place) => damageWords.has(tokens[place]?.word ?? ""),
  repaired: (tokens, place) => repairWords.has(tokens[place]?.word ?? ""),
  cleaned: (tokens, place) => cleanWords.has(tokens[place]?.word ?? ""),
  worked: (tokens, place) => {
    const word = tokens[place]?.word ?? "";
    return word.length > 3 && word.endsWith("ed") && !notWork.has(word);
  },
  done: (tokens, place) => {
    const word = tokens[place]?.word ?? "";
    return doneWords.has(word) || (word.length > 4 && word.endsWith("ed") && !notWork.has(word));
  },
  deed: (tokens, place) => {
    const word = tokens[place]?.word ?? "";
    return word.length > 4 && word.endsWith("ed");
  },
  held: (tokens, place) => heldWords.has(tokens[place]?.word ?? ""),
  season: (tokens, place) => seasonWords.has(tokens[place]?.word ?? ""),
  righted: (tokens, place) => rightedVerbs.has(tokens[place]?.word ?? ""),
  doing: (tokens, place) => {
    const word = tokens[place]?.word ?? "";
    return word.length > 4 && word.endsWith("ing");
  },
  misdeed: (tokens, place) => misdeeds.has(tokens[place]?.word ?? ""),
  wentwrong: (tokens, place) => wentWrong.has(tokens[place]?.word ?? ""),
  bodged: (tokens, place) => bodgedWords.has(tokens[place]?.word ?? ""),
  mend: (tokens, place) => mendVerbs.has(tokens[place]?.word ?? ""),
  madeof: (tokens, place) => madeWords.has(tokens[place]?.word ?? ""),
  makeshift: (tokens, place) => makeshift.has(tokens[place]?.word ?? ""),
  act: (tokens, place) => {
    const word = tokens[place]?.word ?? "";
    return /^[a-z]{2,}$/.test(word) && !noActs.has(word);
  },
  material: (tokens, place) => materialWords.has(tokens[place]?.word ?? ""),
  document: (tokens, place) => documents.has(tokens[place]?.word ?? ""),
};
