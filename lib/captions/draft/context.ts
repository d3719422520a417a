import type { Cue } from "../read/types.ts";
import { type English, englishOf } from "./english.ts";
import { type PartNoun, partNouns } from "./nouns.ts";
import { type Sentences, sentencesOf } from "./sentences.ts";
import { type Stream, streamOf, type Token } from "./stream.ts";

/** What every rule may look at. */
export interface Context {
  stream: Stream;
  tokens: readonly Token[];
  parts: Sentences;
  english: English;
  nouns: readonly PartNoun[];
  /** For each token the number of the last part named at or before it; -1 where none was. */
  lastNoun: Int32Array;
}

/** What the caller knows that the words may not show. */
export interface DraftOptions {
  /** Whose pints, mils and degrees are meant; judged by the words where it is not said. */
  english?: English;
}

/** Prepares cues for the rules. */
export function contextOf(cues: readonly Cue[], options: DraftOptions = {}): Context {
  const stream = streamOf(cues);
  const { tokens } = stream;
  const nouns = partNouns(tokens);
  const lastNoun = new Int32Array(tokens.length).fill(-1);
  let next = 0;
  for (let i = 0; i < tokens.length; i++) {
    while (next < nouns.length && (nouns[next] as PartNoun).from <= i) next++;
    lastNoun[i] = next - 1;
  }
  return {
    stream,
    tokens,
    parts: sentencesOf(stream),
    english: options.english ?? englishOf(tokens),
    nouns,
    lastNoun,
  };
}

/** The part named last at or before a place, no further back than `reach` words. */
export function nounBefore(context: Context, place: number, reach: number): PartNoun | null {
  const noun = context.nouns[context.lastNoun[Math.min(place, context.tokens.length - 1)] ?? -1];
  return noun && place - noun.to <= reach ? noun : null;
}

/** The first part named from a place on, before `limit`. */
export function nounAfter(context: Context, place: number, limit: number): PartNoun | null {
  const at = place > 0 ? (context.lastNoun[place - 1] ?? -1) + 1 : 0;
  const noun = context.nouns[at];
  return noun && noun.from >= place && noun.to <= limit ? noun : null;
}

/** The sentence in which a word stands. */
export function sentenceAt(context: Context, place: number): { from: number; to: number } {
  const at = Math.max(0, Math.min(place, context.tokens.length - 1));
  return context.parts.sentences[context.parts.sentenceOf[at] ?? 0] ?? { from: 0, to: 0 };
}

/** The clause in which a word stands. */
export function clauseAt(context: Context, place: number): { from: number; to: number } {
  const at = Math.max(0, Math.min(place, context.tokens.length - 1));
  return context.parts.clauses[context.parts.clauseOf[at] ?? 0] ?? { from: 0, to: 0 };
}

/** Whether any of the words stands in a run. */
export function hasWord(
  tokens: readonly Token[],
  from: number,
  to: number,
  words: ReadonlySet<string>,
): boolean {
  for (let i = Math.max(0, from); i < Math.min(to, tokens.length); i++) {
    if (words.has((tokens[i] as Token).word)) return true;
  }
  return false;
}
