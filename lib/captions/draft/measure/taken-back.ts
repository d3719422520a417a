import { changedOver, takingBack } from "../../lexicon/corrections.ts";
import type { Amount } from "../amount.ts";
import { type Context, sentenceAt } from "../context.ts";
import { numberAt } from "../number.ts";
import { PhraseBook, type WordSets } from "../phrase.ts";
import type { Token } from "../stream.ts";

const sets: WordSets = {
  number: (tokens: readonly Token[], place: number) => numberAt(tokens, place, tokens.length) !== null,
};
const taking = new PhraseBook(
  takingBack.map((text) => [text, true] as const),
  sets,
);
const changing = new PhraseBook(
  changedOver.map((text) => [text, true] as const),
  sets,
);
/** How many words may lie between a number and the one that replaces it. */
const mostBetween = 16;
const mostToMarker = 6;

/** Which amounts the speaker takes back: "19 mil no hang on … 22 mil", "twelve, no, fourteen". By their place in the list. */
export function takenBack(context: Context, amounts: readonly Amount[]): Set<number> {
  const back = new Set<number>();
  for (const [i, amount] of amounts.entries()) {
    const next = amounts[i + 1];
    const limit = next ? next.from : Math.min(context.tokens.length, amount.to + mostBetween);
    if (limit - amount.to > mostBetween || (next && !isLike(amount, next))) {
      if (!next || !isLike(amount, next)) continue;
    }
    if (isTakenBack(context, amount, limit, next)) back.add(i);
    if (next && isChangedOver(context, amount, next)) {
      const { from } = sentenceAt(context, amount.from);
      for (let k = i; k >= 0 && (amounts[k] as Amount).from >= from; k--) back.add(k);
    }
  }
  return back;
}

function isLike(one: Amount, other: Amount): boolean {
  if (one.unit === null || other.unit === null) return true;
  return (
    one.dimension === other.dimension && (one.designation === undefined) === (other.designation === undefined)
  );
}

function isTakenBack({ tokens }: Context, amount: Amount, limit: number, next: Amount | undefined): boolean {
  const end = Math.min(limit + 1, tokens.length);
  const soon = Math.min(limit, amount.to + mostToMarker);
  for (let place = amount.to; place < soon; place++) {
    const found = taking.at(tokens, place, end);
    if (found && next && next.from - amount.to <= mostBetween) return true;
  }
  const plainNo = tokens[amount.to]?.word === "no" && next?.from === amount.to + 1;
  if (plainNo && tokens[amount.to - 1]?.stop !== ".") return true;
  return doubted({ tokens }, amount);
}

/** "and, that can't be right, .083": doubted before it is said. */
function doubted({ tokens }: { tokens: readonly Token[] }, { from }: Amount): boolean {
  const words = tokens
    .slice(Math.max(0, from - 5), from)
    .map((token) => token.word)
    .join(" ");
  return /that (?:can not be|is not|is never) right$/.test(words);
}

function isChangedOver({ tokens }: Context, amount: Amount, next: Amount): boolean {
  if (next.from - amount.to > 20) return false;
  return changing.first(tokens, amount.to, next.from) !== null && hasNo(tokens, amount.to, next.from);
}

function hasNo(tokens: readonly Token[], from: number, to: number): boolean {
  return tokens.slice(from, to).some((token) => token.word === "no");
}
