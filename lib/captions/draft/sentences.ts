import { joiners, openers, topicWords } from "../lexicon/openers.ts";
import type { Stream, Token } from "./stream.ts";

/** A run of words: half-open, counted in tokens. */
export interface Run {
  from: number;
  to: number;
}

/** How the words are parted: each token's sentence and clause, and where each begins and ends. */
export interface Sentences {
  sentences: Run[];
  clauses: Run[];
  /** The sentence of each token. */
  sentenceOf: Int32Array;
  clauseOf: Int32Array;
  /** Counts the topics: it grows where a long silence or a turning word begins a new one. */
  topicOf: Int32Array;
  /** Whether the captions have full stops. */
  punctuated: boolean;
}

/** A silence that ends a sentence, and one that ends a topic, in seconds. */
const sentencePause = 0.5;
const topicPause = 1.6;
const longestSentence = 60;

/** Parts the stream into topics, sentences and clauses. */
export function sentencesOf({ tokens, cues }: Stream): Sentences {
  const punctuated = tokens.filter((token) => /[.?!]/.test(token.stop)).length * 40 > tokens.length;
  // Cues as long as sentences are sentences.
  const longCues = !punctuated && tokens.length > 14 * cues.length;
  const sentenceOf = new Int32Array(tokens.length);
  const clauseOf = new Int32Array(tokens.length);
  const topicOf = new Int32Array(tokens.length);
  const sentences: Run[] = [];
  const clauses: Run[] = [];
  let topic = 0;
  for (const [i, token] of tokens.entries()) {
    const current = sentences.at(-1);
    const newCue = longCues && token.cue !== tokens[i - 1]?.cue;
    const opens = current === undefined || newCue || beginsSentence(tokens, i, punctuated, i - current.from);
    if (opens) sentences.push({ from: i, to: i });
    if (opens || beginsClause(tokens, i)) clauses.push({ from: i, to: i });
    if (i > 0 && (token.pause >= topicPause || (opens && turnsTopic(tokens, i)))) topic++;
    (sentences.at(-1) as Run).to = i + 1;
    (clauses.at(-1) as Run).to = i + 1;
    sentenceOf[i] = sentences.length - 1;
    clauseOf[i] = clauses.length - 1;
    topicOf[i] = topic;
  }
  return { sentences, clauses, sentenceOf, clauseOf, topicOf, punctuated };
}

function beginsSentence(tokens: Token[], i: number, punctuated: boolean, length: number): boolean {
  const token = tokens[i] as Token;
  const before = tokens[i - 1] as Token;
  if (/[.?!…]/.test(before.stop) || token.pause >= sentencePause || token.turn) return true;
  if (punctuated) return false;
  if (length >= longestSentence && joiners.has(token.word)) return true;
  const opener = openers.get(token.word);
  if (!opener) return false;
  return !has(opener.notBefore, tokens[i + 1]?.word) && !has(opener.notAfter, before.word);
}

function beginsClause(tokens: Token[], i: number): boolean {
  const before = tokens[i - 1] as Token;
  return before.stop !== "" || joiners.has((tokens[i] as Token).word);
}

/** "Right, the worm box": a turning word at the head of a sentence, spoken for itself. */
function turnsTopic(tokens: Token[], i: number): boolean {
  const token = tokens[i] as Token;
  if (!topicWords.has(token.word)) return false;
  return token.pause >= sentencePause || token.stop !== "" || ["okay", "ok", "alright"].includes(token.word);
}

function has(list: string | undefined, word: string | undefined): boolean {
  return list !== undefined && word !== undefined && list.split(" ").includes(word);
}
