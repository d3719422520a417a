import { consequences, otherwise } from "../lexicon/consequences.ts";
import { storedWords } from "../lexicon/orders.ts";
import { type Context, clauseAt, hasWord, sentenceAt } from "./context.ts";
import { nextSentence } from "./lessons.ts";
import { orderReason, type Trigger } from "./orders.ts";
import { PhraseBook } from "./phrase.ts";
import { wordSets } from "./word-sets.ts";

/** What happens if an order is not followed. */
export const consequenceBook = new PhraseBook(
  consequences.map((text) => [text, text] as const),
  wordSets,
);

const otherwiseBook = new PhraseBook(
  otherwise.map((text) => [text, text] as const),
  wordSets,
);

/** A trigger with all the words that belong to it. */
export interface Grown extends Trigger {
  because?: { from: number; to: number };
}

const reach = 30;

/** Where the next order begins: what follows it is no consequence of this one. */
export function orderBehind(triggers: readonly Trigger[], i: number): number {
  const { to } = triggers[i] as Trigger;
  for (let k = i + 1; k < triggers.length; k++) {
    const next = triggers[k] as Trigger;
    if (next.from - to > 2 * reach) break;
    if (next.from >= to && !next.weak && next.reason.startsWith("an order")) return next.from;
  }
  return Number.POSITIVE_INFINITY;
}

/** Gives a trigger the words that belong to it: its clause, and the consequence where one is said. */
export function grow(context: Context, one: Trigger, before: number): Grown[] {
  const { tokens } = context;
  const found = consequenceOf(context, one, before);
  if (one.weak && !found) return [];
  const clause = clauseAt(context, one.to - 1);
  const end = Math.max(
    one.to,
    Math.min(clause.to, one.to + 25),
    found ? clauseAt(context, found.to - 1).to : 0,
  );
  const to = Math.min(end, one.from + 60, tokens.length);
  return [{ ...one, to, ...(found ? { because: { from: found.from, to: Math.max(found.to, to) } } : {}) }];
}

/** What is said to happen otherwise, in the sentence or the next; null where nothing is. */
function consequenceOf(context: Context, one: Trigger, before: number): { from: number; to: number } | null {
  const { tokens } = context;
  const sentence = sentenceAt(context, one.from);
  const second = nextSentence(context, one.from);
  const next = second.to - second.from < 6 ? nextSentence(context, second.from) : second;
  const end = Math.min(next.to, one.from + reach + 12, before);
  const limit = Math.min(tokens.length, Math.max(one.to, end));
  const found = consequenceBook.first(tokens, one.to, limit);
  const near = found && found.from - one.to <= reach ? found : null;
  if (!one.weak) return near;
  const reasoned = ["that", "it", "because"].includes(tokens[second.from]?.word ?? "");
  const or = otherwiseBook.first(tokens, one.to, reasoned ? second.to : sentence.to);
  const otherwiseNear = or && or.from - one.to <= reach ? or : null;
  if (one.reason.startsWith(orderReason)) {
    const done = isFirst(context, one, near?.to ?? sentence.to);
    return (
      otherwiseNear ?? (done ? (near ?? { from: one.to, to: Math.min(sentence.to, one.to + 12) }) : null)
    );
  }
  if (one.reason.startsWith("advice against")) return near ?? otherwiseNear;
  return near && near.to <= sentence.to ? near : otherwiseNear;
}

/** "Let it down before you undo it … if you don't, it whips round": done first, because something is loaded. */
function isFirst({ tokens }: Context, one: Trigger, to: number): boolean {
  for (let i = one.to; i < Math.min(to, one.to + 16); i++) {
    const firstDone =
      tokens[i]?.word === "before" && ["you", "it", "they"].includes(tokens[i + 1]?.word ?? "");
    if (firstDone) return hasWord(tokens, one.from - 12, Math.min(to + 4, one.to + 30), storedWords);
  }
  return false;
}
