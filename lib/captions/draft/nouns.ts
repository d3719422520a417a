import { partHeads, partsInTwoWords, plainAdjectives, shyHeads } from "../lexicon/parts.ts";
import { stopWords } from "../lexicon/stop-words.ts";
import type { Token } from "./stream.ts";

/** A part that is named: half-open in tokens, without the article. */
export interface PartNoun {
  from: number;
  to: number;
  /** As it would stand in a parts list: "worm wheel". */
  name: string;
  plural: boolean;
}

const mostModifiers = 3;
const verbMarks = new Set("to i you we will not please can could should would they just".split(" "));
const objects = new Set("it them the that this those these him her your my".split(" "));
const unnamed = new Set("right left okay hello morning everybody".split(" "));

/** The word in the singular, as the lexicon lists it. */
export function singular(word: string): string {
  if (partHeads.has(word)) return word;
  if (word.endsWith("ies")) return `${word.slice(0, -3)}y`;
  if (/(?:ss|sh|ch|x|us)es$/.test(word)) return word.slice(0, -2);
  return word.endsWith("s") && !word.endsWith("ss") ? word.slice(0, -1) : word;
}

const judged = new Map<string, boolean>();
const mostJudged = 20_000;

/** Whether a word names a kind of part. */
export function isPartWord(word: string): boolean {
  let is = judged.get(word);
  if (is === undefined) {
    is = namesPart(word);
    if (judged.size >= mostJudged) judged.clear();
    judged.set(word, is);
  }
  return is;
}

function namesPart(word: string): boolean {
  return (
    partHeads.has(word) || shyHeads.has(word) || partHeads.has(singular(word)) || shyHeads.has(singular(word))
  );
}

/** All parts that are named, in order. */
export function partNouns(tokens: readonly Token[]): PartNoun[] {
  const nouns: PartNoun[] = [];
  for (let i = 0; i < tokens.length; i++) {
    if (!isPartWord((tokens[i] as Token).word)) continue;
    let to = i + 1;
    while (to < tokens.length && goesOn(tokens, to) && isPartWord((tokens[to] as Token).word)) to++;
    const noun = nounEnding(tokens, i, to);
    if (noun) nouns.push(noun);
    i = to - 1;
  }
  return nouns;
}

function nounEnding(tokens: readonly Token[], first: number, to: number): PartNoun | null {
  const only = to === first + 1 ? (tokens[first] as Token).word : null;
  if (only !== null && isVerb(tokens, first)) return null;
  let from = first;
  while (from > 0 && first - from < mostModifiers && goesOn(tokens, from) && isModifier(tokens, from - 1))
    from--;
  const words = tokens
    .slice(from, to)
    .map((token) => token.word)
    .filter((word) => !plainAdjectives.has(word));
  if (words.length === 0 || (words.length === 1 && shyHeads.has(singular(words[0] as string)))) {
    if (only === null || !definite(tokens, from)) return null;
  }
  const last = (tokens[to - 1] as Token).word;
  return { from, to, name: words.join(" "), plural: last !== singular(last) };
}

/** Whether a word is said in one breath with the one before it. */
function goesOn(tokens: readonly Token[], place: number): boolean {
  const token = tokens[place] as Token;
  return tokens[place - 1]?.stop === "" && token.pause < 0.5 && !token.turn;
}

function isModifier(tokens: readonly Token[], place: number): boolean {
  const token = tokens[place] as Token;
  if (partsInTwoWords.has(`${token.word} ${tokens[place + 1]?.word}`)) return true;
  return !stopWords.has(token.word) && !unnamed.has(token.word) && /^[a-z-]+$/.test(token.word);
}

/** "screw it in", "to plug the": something done, not a part. */
function isVerb(tokens: readonly Token[], place: number): boolean {
  const [before, after] = [tokens[place - 1]?.word ?? "", tokens[place + 1]?.word ?? ""];
  if (verbMarks.has(before) && tokens[place - 1]?.stop === "") return true;
  return (
    (before === "" || tokens[place - 1]?.stop !== "" || before === "and") &&
    objects.has(after) &&
    after !== "that"
  );
}

/** "the head", "this case". */
function definite(tokens: readonly Token[], place: number): boolean {
  return ["the", "this", "that", "my", "your", "new", "a"].includes(tokens[place - 1]?.word ?? "");
}
