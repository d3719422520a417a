import { provisional } from "../lexicon/deferred.ts";
import { leftHeadings, leftStates } from "../lexicon/deferred-words.ts";
import { weakProvisional } from "../lexicon/weak-provisional.ts";
import { type Context, clauseAt, hasWord, nounAfter, sentenceAt } from "./context.ts";
import { deferredExamples } from "./deferred.examples.ts";
import { lessonOf } from "./lessons.ts";
import { PhraseBook } from "./phrase.ts";
import type { DraftRule } from "./rule.ts";
import type { Run } from "./sentences.ts";
import type { Draft } from "./types.ts";
import { wordSets } from "./word-sets.ts";

const signs = new PhraseBook<{ why: string; strong: boolean }>(
  Object.entries(provisional).flatMap(([why, phrases]) =>
    (phrases as readonly string[]).map(
      (text) => [text, { why, strong: !weakProvisional.has(text) }] as const,
    ),
  ),
  wordSets,
);

/** The rule for what is left provisional. */
export const deferred: DraftRule = {
  explains:
    "Things left provisional: finger-tight, for now, till something comes, to be done again. What it waits for is kept with it.",
  examples: deferredExamples,
  find: deferredIn,
};

const headings = new PhraseBook(leftHeadings.map((text) => [text, true] as const));

interface Left {
  from: number;
  to: number;
  whys: Set<string>;
  strong: number;
  weak: number;
}

const sameThing = 16;

/** Everything left provisional, in order. */
function deferredIn(context: Context): Draft[] {
  const lefts: Left[] = [];
  for (const sentence of context.parts.sentences) {
    for (const found of signs.each(context.tokens, sentence.from, sentence.to)) {
      if (isSetting(context, found.to, sentence.to) || isFoundSo(context, found.from)) continue;
      if (isForbidden(context, found.from)) continue;
      const last = lefts.at(-1);
      const close = last !== undefined && found.from - last.to <= sameThing;
      const sameBreath = last !== undefined && !startsAnew(context, last.to, found.from);
      const left =
        close && sameBreath ? last : { from: found.from, to: 0, whys: new Set<string>(), strong: 0, weak: 0 };
      if (left !== last) lefts.push(left);
      const again = found.from < left.to;
      left.to = Math.max(left.to, found.to);
      left.whys.add(found.entry.why);
      if (found.entry.strong) left.strong++;
      else if (!again) left.weak++;
    }
  }
  lefts.push(...listed(context, lefts));
  lefts.sort((a, b) => a.from - b.from);
  return lefts.filter((left) => left.strong > 0 || left.weak > 1).map((left) => deferredOf(context, left));
}

/** How many sentences a list of what is left may have. */
const longestList = 4;

/** "So what's left? The hood's chipped …": the sentences behind such a heading, where each names a part and its state. */
function listed(context: Context, known: readonly Left[]): Left[] {
  const { sentences, topicOf } = context.parts;
  const found: Left[] = [];
  for (const [i, heading] of sentences.entries()) {
    const said = headings.first(context.tokens, heading.from, Math.min(heading.to, heading.from + 8));
    if (!said) continue;
    const rest = { from: said.to, to: heading.to };
    for (const one of [rest, ...sentences.slice(i + 1, i + 1 + longestList)]) {
      if (topicOf[one.from] !== topicOf[heading.from] || !isLeft(context, one)) continue;
      if (known.some((left) => left.from < one.to && left.to > one.from)) continue;
      found.push({ ...one, whys: new Set(["told among what is left"]), strong: 1, weak: 0 });
    }
  }
  return found;
}

function isLeft(context: Context, { from, to }: Run): boolean {
  if (to - from < 4 || nounAfter(context, from, to) === null) return false;
  return hasWord(context.tokens, from, to, leftStates);
}

/** "Finger tight and back half a turn" is how it is set, not how it was left. */
function isSetting({ tokens }: Context, from: number, limit: number): boolean {
  return hasWord(tokens, from, Math.min(limit, from + 7), turns);
}

/** "It was held together with a bootlace": how it was found. */
function isFoundSo({ tokens }: Context, from: number): boolean {
  return tokens[from]?.word === "held" && hasWord(tokens, from - 2, from, past);
}

/** "Don't leave it just hanging there": nothing was left so. */
function isForbidden(context: Context, from: number): boolean {
  const { tokens } = context;
  for (let i = clauseAt(context, from).from; i < from; i++) {
    if (tokens[i]?.word === "do" && tokens[i + 1]?.word === "not" && tokens[i - 1]?.word !== "i") return true;
  }
  return false;
}

const past = new Set("was were been".split(" "));
const turns = new Set("turn turns flat flats".split(" "));

/** Whether something else is spoken of: a full stop and a new beginning, or "and the …", lie between. */
function startsAnew(context: Context, from: number, to: number): boolean {
  const { tokens, parts } = context;
  let beginnings = 0;
  for (let i = from; i < to; i++) {
    const opens = parts.sentenceOf[i] !== parts.sentenceOf[i - 1];
    const [a, b] = [tokens[i]?.word, tokens[i + 1]?.word];
    if (opens && a === "and" && ["the", "my", "that", "this"].includes(b ?? "")) return true;
    if ((opens || a === "and") && ["the", "my"].includes(opens && a !== "and" ? (a ?? "") : (b ?? "")))
      return true;
    if (opens && (tokens[i]?.pause ?? 0) > 0) return true;
    if (opens && nounAfter(context, i, i + 4)?.from === i) return true;
    const { from: start, to: end } = sentenceAt(context, i);
    if (opens && end - start > 3 && ++beginnings > 1) return true;
  }
  return false;
}

function deferredOf(context: Context, left: Left): Draft {
  const sentence = sentenceAt(context, left.from);
  const from = left.from - sentence.from <= 20 ? sentence.from : clauseAt(context, left.from).from;
  const clause = clauseAt(context, left.to - 1);
  const waits = waitClause(context, left.to, sentenceAt(context, left.to - 1).to);
  const to = Math.max(left.to, clause.to, waits?.to ?? 0);
  const whys = [...left.whys].join("; ");
  return lessonOf(
    context,
    "deferred",
    { from, to: Math.min(to, from + 60) },
    {
      reason: `${whys.charAt(0).toUpperCase()}${whys.slice(1)}.`,
      sureness: left.strong > 1 ? "certain" : left.strong > 0 ? "likely" : "unsure",
      ...(waits ? { because: waits } : {}),
    },
  );
}

/** "because …", "until …": what it waits for. */
function waitClause(context: Context, from: number, limit: number): { from: number; to: number } | null {
  for (let i = from; i < Math.min(limit, from + 12); i++) {
    if (["because", "until", "till", "when"].includes(context.tokens[i]?.word ?? ""))
      return clauseAt(context, i);
  }
  return null;
}
