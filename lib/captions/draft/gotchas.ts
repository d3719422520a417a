import { strongLessons } from "../lexicon/gotchas.ts";
import { documents } from "../lexicon/lesson-words.ts";
import { weakLessons } from "../lexicon/weak-lessons.ts";
import { type Context, clauseAt, sentenceAt } from "./context.ts";
import { deniedWords } from "./denied.ts";
import { gotchaExamples } from "./gotchas.examples.ts";
import { lessonOf, nextSentence } from "./lessons.ts";
import { type Found, PhraseBook } from "./phrase.ts";
import type { DraftRule } from "./rule.ts";
import type { Draft } from "./types.ts";
import { whatIf } from "./what-if.ts";
import { wordSets } from "./word-sets.ts";

interface Sign {
  why: string;
  strong: boolean;
}

const signs = new PhraseBook<Sign>(
  [strongLessons, weakLessons].flatMap((lessons, weak) =>
    Object.entries(lessons).flatMap(([why, phrases]) =>
      (phrases as readonly string[]).map((text) => [text, { why, strong: weak === 0 }] as const),
    ),
  ),
  wordSets,
);

/** The rule for lessons. */
export const gotchas: DraftRule = {
  explains:
    "Lessons: what caught somebody, what looks like something else, what goes in two ways, left-hand threads, books and labels that are wrong, orders of assembly that cannot be changed.",
  examples: gotchaExamples,
  find: gotchasIn,
};

interface Lesson {
  from: number;
  to: number;
  whys: Set<string>;
  strongWhys: Set<string>;
  strong: number;
  weak: number;
}

/** Words between two signs of one lesson, at most. */
const sameLesson = 34;
/** A strong sign of its own, this many words on, is another lesson, unless it only says that somebody was caught. */
const newLessonAfter = 18;
const caught: keyof typeof strongLessons = "somebody was caught by it";
const longest = 90;

/** Every lesson, in order: signs that stand close together are one. */
function gotchasIn(context: Context): Draft[] {
  const denied = deniedWords(context);
  const lessons: Lesson[] = [];
  for (const sentence of context.parts.sentences) {
    for (const found of signsIn(context, sentence.from, sentence.to)) {
      if (denied[found.from] === 1) continue;
      const last = lessons.at(-1);
      const inSentence = last !== undefined && last.to > sentence.from;
      const announced = last !== undefined && last.strongWhys.size === 1 && last.strongWhys.has(caught);
      const reach =
        found.entry.strong && found.entry.why !== caught && !announced ? newLessonAfter : sameLesson;
      const close =
        last !== undefined &&
        (found.from - last.to <= reach || inSentence) &&
        found.to - last.from <= longest;
      const sameTopic =
        last !== undefined && context.parts.topicOf[last.to - 1] === context.parts.topicOf[found.from];
      const lesson = close && sameTopic ? last : newLesson(found.from);
      if (lesson !== last) lessons.push(lesson);
      lesson.to = found.to;
      lesson.whys.add(found.entry.why);
      if (found.entry.strong) lesson.strongWhys.add(found.entry.why);
      if (found.entry.strong) lesson.strong++;
      else lesson.weak++;
    }
  }
  return lessons.filter(counts).map((lesson) => gotchaOf(context, lesson));
}

/** The signs of a sentence. What is said of a book may be denied in the next one: "the diagram shows … It's wrong." */
function signsIn(context: Context, from: number, to: number): Found<Sign>[] {
  const { tokens } = context;
  const found: Found<Sign>[] = [];
  for (let place = from; place < to; place++) {
    const ofBook = documents.has(tokens[place]?.word ?? "");
    const one =
      signs.at(tokens, place, ofBook ? nextSentence(context, place).to : to) ??
      lessonFrom(whatIf(context, place, to)) ??
      belied(context, place, to);
    if (!one) continue;
    found.push(one);
    place = one.to - 1;
  }
  return found;
}

function lessonFrom(found: { from: number; to: number } | null): Found<Sign> | null {
  return found && { ...found, entry: { why: "what happens if it is done wrong", strong: true } };
}

/** "You'd think it pulls off. It doesn't." A belief, and a short sentence that denies it. */
function belied(context: Context, place: number, to: number): Found<Sign> | null {
  const { tokens } = context;
  const next = nextSentence(context, place);
  if (!beliefs.has(tokens[place]?.word ?? "") || next.from !== to || next.to - next.from > 8) return null;
  const [who, does, not] = [0, 1, 2].map((i) => tokens[next.from + i]?.word ?? "");
  if (!deniers.has(who ?? "") || !denials.has(does ?? "") || not !== "not") return null;
  return { from: place, to: next.from + 3, entry: { why: "it seems right and is not", strong: true } };
}

const beliefs = new Set("told said says think thought looks look assume assumed supposed swear".split(" "));
const deniers = new Set("it they that he you".split(" "));
const denials = new Set("is are was do does did can will".split(" "));

function newLesson(from: number): Lesson {
  return { from, to: from, whys: new Set(), strongWhys: new Set(), strong: 0, weak: 0 };
}

/** One strong sign is enough; weak ones need company of another sort. */
function counts({ strong, weak, whys }: Lesson): boolean {
  return strong > 0 || (weak >= 3 && whys.size >= 2);
}

function gotchaOf(context: Context, lesson: Lesson): Draft {
  const sentence = sentenceAt(context, lesson.from);
  const clause = clauseAt(context, lesson.from);
  const from = lesson.from - sentence.from <= 40 ? sentence.from : clause.from;
  const to = Math.min(sentenceAt(context, lesson.to - 1).to, clauseAt(context, lesson.to - 1).to + 12);
  const whys = [...lesson.whys].join("; ");
  return lessonOf(
    context,
    "gotcha",
    { from, to: Math.max(lesson.to, to) },
    {
      reason: `${whys.charAt(0).toUpperCase()}${whys.slice(1)}.`,
      sureness: lesson.strong > 1 ? "certain" : lesson.strong > 0 ? "likely" : "unsure",
    },
  );
}
