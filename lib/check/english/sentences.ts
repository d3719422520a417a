import { remember } from "./remember.ts";

const splitter = new Intl.Segmenter("en", { granularity: "sentence" });
/** Stands for a full stop that ends no sentence, so that places in the text stay where they are. */
const heldStop = "․";
const shortened =
  /\b(?:No|Nos|approx|max|min|dia|fig|figs|ref|incl|excl|ca|cf|vs|e\.g|i\.e|etc|in|ft|lb|oz|cu|sq|thou|deg)\.(?=\s*[\d(a-z])/gi;

/** A sentence and where it begins in its text. */
export interface Sentence {
  text: string;
  from: number;
}

/** The sentences of a text, never parted at a decimal or after "No.", "approx." and their like; lines part them. */
export const sentencesOf = remember((text: string): readonly Sentence[] => {
  const held = text.replace(shortened, (match) => match.replaceAll(".", heldStop));
  return [...splitter.segment(held)].flatMap(({ segment, index }) => {
    const lead = segment.length - segment.trimStart().length;
    const length = segment.trim().length;
    return length === 0
      ? []
      : [{ text: text.slice(index + lead, index + lead + length), from: index + lead }];
  });
});
