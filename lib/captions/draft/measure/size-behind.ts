import { sizeWords } from "../../lexicon/frames.ts";
import { isPartWord } from "../nouns.ts";
import type { Token } from "../stream.ts";

/** Whether a word for how a length lies stands at a place: "thick", "across", "i d". */
export function sizeBehind(tokens: readonly Token[], place: number): boolean {
  const [a, b] = [tokens[place]?.word ?? "", tokens[place + 1]?.word ?? ""];
  if ((a === "flat" && b === "out") || (a === "wide" && b === "open")) return false;
  // "Three flat springs" are three.
  const goesOn = tokens[place]?.stop === "" && (tokens[place + 1]?.pause ?? 0) < 0.5;
  if (goesOn && isPartWord(b)) return false;
  return sizeWords.has(a) || ((a === "i" || a === "o") && b === "d");
}
