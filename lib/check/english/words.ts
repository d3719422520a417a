/** Units as they stand after a number in running text. */
const unit =
  "mm|cm|m|km|µm|um|in|inch|inches|ft|thou|lbf\\s?ft|lbf\\s?in|lb\\s?ft|ft\\s?lb|N\\s?m|Nm|kN|N|kg|g|lb|oz|°\\s?[CF]|ml|l|cc|psi|bar|kPa|min|minutes?|h|hours?|s|seconds?|days?|V|A|W|Ω|ohms?|rpm|tpi|%|deg|degrees?";
const number = "[\\d¼½¾⅛⅜⅝⅞]+(?:[.,/:×x–-]\\d+)*";

const wordPattern = new RegExp(
  `${number}\\s*(?:${unit})(?![\\p{L}\\d])|[\\p{L}\\d¼½¾⅛⅜⅝⅞]+(?:[.,'’/×&+–-][\\p{L}\\d]+)*`,
  "gu",
);

/** A word of a sentence: as written, in lower case, and where it stands. */
export interface Word {
  text: string;
  low: string;
  from: number;
  to: number;
}

/** The words of a sentence. A number with its unit, a hyphenated word and an identifier are one word each. */
export function wordsIn(sentence: string): Word[] {
  return [...sentence.matchAll(wordPattern)].map((match) => ({
    text: match[0],
    low: match[0].toLowerCase().replaceAll("’", "'"),
    from: match.index,
    to: match.index + match[0].length,
  }));
}
