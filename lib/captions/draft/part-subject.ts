import { notParts, plainAdjectives } from "../lexicon/parts.ts";
import { stopWords } from "../lexicon/stop-words.ts";
import { type Context, nounAfter, sentenceAt } from "./context.ts";
import type { PartNoun } from "./nouns.ts";
import type { Token } from "./stream.ts";

/** How many words back a part may have been named. */
export const backReach = 40;

/** "I swapped out | the original fuse": the part stands behind particles, articles and adjectives. */
export function objectOf(context: Context, to: number, limit: number): PartNoun | null {
  const { tokens } = context;
  let place = to;
  while (place < Math.min(limit, to + 4) && tokens[place - 1]?.stop === "" && leadsToPart(tokens[place]))
    place++;
  const noun = place > to ? nounAfter(context, to, Math.min(limit, place + 4)) : null;
  return noun && noun.from <= place ? noun : null;
}

const leadsToPart = (token: Token | undefined) =>
  token !== undefined &&
  (leading.has(token.word) || particles.has(token.word) || plainAdjectives.has(token.word));

const particles = new Set("out off up over down my its both all these those this that".split(" "));

/** Behind these the part is still to be named: "turned up a …". */
export const leading = new Set("a an the new some two three four".split(" "));

/** A part whose name began before the last word of an event, or goes on behind it. */
export function nounOverlapping(context: Context, from: number, to: number): PartNoun | null {
  const noun = context.nouns[context.lastNoun[to - 1] ?? -1];
  return noun && noun.to > from ? noun : null;
}

/** What "it" is: a part named in the sentence, else the first of those before it, else the last one named. */
export function subjectOf(context: Context, place: number): PartNoun | null {
  const here = sentenceAt(context, place);
  const topic = context.parts.punctuated ? null : topicOf(context, here.from, place);
  if (topic) return topic;
  const named =
    nounAfter(context, here.from, Math.min(place, here.to)) ?? looseNoun(context, here.from, place);
  if (named && place - named.from <= backReach) return named;
  for (const find of [nounAfter, looseNoun]) {
    let sentence = here;
    for (let back = 0; back < 4 && sentence.from > 0; back++) {
      sentence = sentenceAt(context, sentence.from - 1);
      const noun = find(context, sentence.from, sentence.to);
      if (noun && place - noun.from <= backReach) return noun;
    }
  }
  const last = context.nouns[context.lastNoun[place] ?? -1];
  return last && place - last.to <= backReach ? last : null;
}

/** In captions without full stops, the part last said to be or do something: "the stem was bent, straightened that". */
function topicOf(context: Context, from: number, place: number): PartNoun | null {
  const { tokens, nouns, lastNoun } = context;
  for (let at = lastNoun[place] ?? -1; at >= 0; at--) {
    const noun = nouns[at] as PartNoun;
    if (noun.from < from || place - noun.to > topicReach) return null;
    if (noun.to <= place && predicates.has(tokens[noun.to]?.word ?? "")) return noun;
  }
  return null;
}

const topicReach = 22;
const predicates = new Set("is are was were has have had wants needs".split(" "));

const pointing = new Set("the this that these those my both its".split(" "));

/** A part that no list has: what stands behind "the" at the head of a sentence. */
function looseNoun({ tokens }: Context, from: number, to: number): PartNoun | null {
  for (let place = from; place < Math.min(to, from + 8); place++) {
    if (!pointing.has(tokens[place]?.word ?? "") || tokens[place]?.stop !== "") continue;
    let first = place + 1;
    while (plainAdjectives.has(tokens[first]?.word ?? "") && tokens[first]?.stop === "") first++;
    let end = first;
    while (end < to && end < first + 3 && isName(tokens[end]) && tokens[end - 1]?.stop === "") end++;
    if (end === first) continue;
    const name = tokens
      .slice(first, end)
      .map((token) => token.word)
      .join(" ");
    return { from: first, to: end, name, plural: name.endsWith("s") };
  }
  return null;
}

function isName(token: Token | undefined): boolean {
  return (
    token !== undefined &&
    /^[a-z]{3,}$/.test(token.word) &&
    !stopWords.has(token.word) &&
    !plainAdjectives.has(token.word) &&
    !notParts.has(token.word)
  );
}
