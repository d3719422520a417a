import { americanWords, britishWords, surelyAmerican, surelyBritish } from "../lexicon/english.ts";
import type { Token } from "./stream.ts";

/** Whose English is spoken: it settles pints, mils and degrees. */
export type English = "GB" | "US";

/** Judges by the words of the whole recording; British where they show nothing. */
export function englishOf(tokens: readonly Token[]): English {
  let balance = 0;
  for (const { word } of tokens) {
    balance += (britishWords.has(word) ? 1 : 0) - (americanWords.has(word) ? 1 : 0);
    balance += (surelyBritish.has(word) ? 4 : 0) - (surelyAmerican.has(word) ? 4 : 0);
  }
  return balance < 0 ? "US" : "GB";
}
