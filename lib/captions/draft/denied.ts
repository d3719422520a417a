import { dangerQuestions, denials, hearsay, jokeWords, refusals } from "../lexicon/hearsay.ts";
import { type Context, hasWord, sentenceAt } from "./context.ts";
import { nextSentence } from "./lessons.ts";
import { PhraseBook } from "./phrase.ts";
import { wordSets } from "./word-sets.ts";

const entries = (list: readonly string[]) => list.map((text) => [text, true] as const);
const questions = new PhraseBook(entries(dangerQuestions), wordSets);
const says = new PhraseBook(entries(hearsay), wordSets);
const denies = new PhraseBook(entries(denials), wordSets);
const afterQuestion = 14;
const afterHearsay = 40;

/** For each word whether it belongs to a danger that is asked about and denied, or to advice that is told and rejected. */
export function deniedWords(context: Context): Uint8Array {
  const known = found.get(context);
  if (known) return known;
  const denied = findDenied(context);
  found.set(context, denied);
  return denied;
}

/** Three rules ask for it. */
const found = new WeakMap<Context, Uint8Array>();

function findDenied(context: Context): Uint8Array {
  const { tokens, parts } = context;
  const denied = new Uint8Array(tokens.length);
  for (const sentence of parts.sentences) {
    for (let place = sentence.from; place < sentence.to; place++) {
      const question = questions.at(tokens, place, sentence.to);
      if (question && opensHere(context, place)) markQuestion(context, denied, place, sentence.to);
      const told = says.at(tokens, place, sentence.to);
      if (told) markHearsay(context, denied, told.from, told.to);
    }
  }
  return denied;
}

function opensHere({ tokens, parts }: Context, place: number): boolean {
  const before = tokens[place - 1];
  if (before?.stop !== "" || parts.sentenceOf[place - 1] !== parts.sentenceOf[place]) return true;
  return ["and", "so", "asked", "but", "or", "now", "know", "say", "ask"].includes(before.word);
}

/** "Is any of this dangerous? Nah." The question, and what answers it. */
function markQuestion(context: Context, denied: Uint8Array, from: number, end: number): void {
  const { tokens } = context;
  const behind = Math.min(tokens.length, end + afterQuestion);
  for (let i = from + 2; i < behind; i++) {
    if (!refusals.has(tokens[i]?.word ?? "")) continue;
    denied.fill(1, from, Math.min(tokens.length, Math.max(end, i + 8)));
    return;
  }
}

/** "People say you mustn't … Rubbish, it's fine." */
function markHearsay(context: Context, denied: Uint8Array, from: number, to: number): void {
  const { tokens } = context;
  let next = nextSentence(context, to);
  for (let more = 0; more < 3; more++) next = nextSentence(context, next.from);
  const limit = Math.min(tokens.length, to + afterHearsay, Math.max(next.from, to + 1));
  const denial = denies.first(tokens, to, limit) ?? shortDenial(context, to, limit);
  if (denial) denied.fill(1, from, denial.to);
}

/** "Everyone says you can't. You can." */
function shortDenial(context: Context, from: number, limit: number): { to: number } | null {
  const { tokens, parts } = context;
  for (let i = from + 1; i < limit - 1; i++) {
    const { to } = sentenceAt(context, i);
    const opens = parts.sentenceOf[i] !== parts.sentenceOf[i - 1];
    const [who, does] = [tokens[i]?.word ?? "", tokens[i + 1]?.word ?? ""];
    if (opens && to - i <= 3 && answerers.has(who) && answers.has(does)) return { to };
  }
  return null;
}

const answerers = new Set("you it they i we".split(" "));
const answers = new Set("can do does is are will did".split(" "));

/** Whether somebody is named who is only ever told things in jest: "don't tell the wife". */
export function isJoke({ tokens }: Context, from: number, to: number): boolean {
  const tells = hasWord(tokens, from, Math.min(to, from + 5), telling);
  return tells && hasWord(tokens, from, Math.min(tokens.length, from + 9), jokeWords);
}

const telling = new Set("tell ask show let forget subscribe".split(" "));
