import { injuryWords } from "../lexicon/bodies.ts";
import { careVerbs } from "../lexicon/orders.ts";
import { type Grown, grow, orderBehind } from "./caution-reach.ts";
import { cautionExamples } from "./cautions.examples.ts";
import { type Context, hasWord, sentenceAt } from "./context.ts";
import { deniedWords, isJoke } from "./denied.ts";
import { condition, nothingOf, supposed, warning } from "./hazards.ts";
import { lessonOf } from "./lessons.ts";
import {
  avoid,
  beforehand,
  careful,
  mustNot,
  never,
  orderNotTo,
  orderReason,
  type Trigger,
  wouldNot,
} from "./orders.ts";
import type { DraftRule } from "./rule.ts";
import type { Draft } from "./types.ts";

/** The rule for cautions. */
export const cautions: DraftRule = {
  explains:
    "Orders not to do something, orders to keep clear or to make dead first, and advice with what happens otherwise. Questions that are answered with no, advice of others that is rejected, and jokes are left out.",
  examples: cautionExamples,
  find: cautionsIn,
};

/** Every caution, in order. */
function cautionsIn(context: Context): Draft[] {
  const denied = deniedWords(context);
  const triggers = context.parts.sentences
    .flatMap((sentence) => triggersIn(context, sentence.from, sentence.to))
    .filter((one) => denied[one.from] === 0 && !isJoke(context, one.from, one.to));
  const grown = triggers.flatMap((one, i) => grow(context, one, orderBehind(triggers, i)));
  return joined(context, grown)
    .filter((one) => !one.echo || hasOrder(context, one))
    .map((one) => cautionOf(context, one));
}

function triggersIn(context: Context, from: number, to: number): Trigger[] {
  const found: Trigger[] = [];
  for (let place = from; place < to; place++) {
    const one =
      orderNotTo(context, place, to) ??
      never(context, place, to) ??
      warning(context, place, to) ??
      wouldNot(context, place, to) ??
      mustNot(context, place, to) ??
      avoid(context, place, to) ??
      beforehand(context, place, to) ??
      nothingOf(context, place, to) ??
      condition(context, place, to) ??
      supposed(context, place, to) ??
      careful(context, place, to);
    if (!one) continue;
    found.push(one);
    place = Math.max(place, one.to - 1);
  }
  return found;
}

/** One caution for words that say one thing: a second order in the same breath, an echo, an overlapping consequence. */
function joined(context: Context, grown: Grown[]): Grown[] {
  const result: Grown[] = [];
  for (const one of grown) {
    const last = result.at(-1);
    const own = one.weak && one.reason.startsWith(orderReason);
    const close = one.echo ? 14 : own ? 2 : one.hazard || last?.hazard ? 16 : one.weak ? 10 : 2;
    const near = last !== undefined && one.from - last.to < close && sameTopic(context, last.from, one.from);
    const sameBreath =
      last !== undefined &&
      context.parts.sentenceOf[one.from] === context.parts.sentenceOf[last.from] &&
      (context.parts.punctuated ? one.from - last.from < 40 : one.from - last.to < 3);
    const complete = last?.because !== undefined && one.weak && one.reason.startsWith(orderReason);
    if (complete && one.from >= last.to) {
      result.push(one);
      continue;
    }
    if (
      last &&
      ((near && (one.echo || one.hazard || last.hazard || one.weak)) || sameBreath || one.from < last.to)
    ) {
      last.to = Math.max(last.to, one.to);
      if (!one.hazard) delete last.hazard;
      last.because ??= one.because;
    } else result.push({ ...one, ...(one.echo ? { from: sentenceBefore(context, one.from) } : {}) });
  }
  return result;
}

const sameTopic = ({ parts }: Context, a: number, b: number) => parts.topicOf[a] === parts.topicOf[b];

/** An echo alone counts where an order stands before it. */
function hasOrder({ tokens, parts }: Context, one: Grown): boolean {
  for (let i = one.from; i < one.to; i++) {
    const opens = i === one.from || parts.clauseOf[i] !== parts.clauseOf[i - 1];
    if (opens && careVerbs.has(tokens[i]?.word ?? "")) return true;
  }
  return false;
}

/** "Pull the prop. I mean it." The echo takes in the sentence before. */
function sentenceBefore(context: Context, place: number): number {
  const here = sentenceAt(context, place);
  return here.from < place - 3 || here.from === 0 ? here.from : sentenceAt(context, here.from - 1).from;
}

function cautionOf(context: Context, one: Grown): Draft {
  const person = hasWord(context.tokens, one.from, one.to, injuryWords);
  return lessonOf(context, "caution", one, {
    reason: `${one.reason.charAt(0).toUpperCase()}${one.reason.slice(1)}.`,
    sureness: one.weak || one.echo || one.sure === false ? "unsure" : "likely",
    ...(one.because ? { because: one.because } : {}),
    harms: person ? "person" : "thing",
    order: /^an order|^advice/.test(one.reason),
  });
}
