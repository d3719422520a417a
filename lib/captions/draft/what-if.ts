import { damageWords } from "../lexicon/consequences.ts";
import { conditions, ifVerbs, mildOutcomes, outcomes } from "../lexicon/what-if.ts";
import type { Context } from "./context.ts";
import { PhraseBook } from "./phrase.ts";
import { wordSets } from "./word-sets.ts";

const entries = (list: readonly string[]) => list.map((text) => [text, true] as const);
const conditionBook = new PhraseBook(entries(conditions), wordSets);
const outcomeBook = new PhraseBook(entries(outcomes), wordSets);
const outcomeReach = 26;
/** "To see if it works." */
const asking = new Set("see know check wonder wondering tell sure ask asked".split(" "));

/**
 * A condition with what comes of it, if that is no good thing: "If it's blocked … it knocks like a steam hammer", "open
 * it out and it'll lose more than it pumps". Null where none begins at the place.
 */
export function whatIf(context: Context, place: number, limit: number): { from: number; to: number } | null {
  const { tokens } = context;
  const condition = conditionBook.at(tokens, place, limit);
  if (condition && !asking.has(tokens[place - 1]?.word ?? "")) {
    const outcome = outcomeBook.first(tokens, condition.to, Math.min(limit, condition.to + outcomeReach));
    if (outcome && !isMild(context, outcome.to)) return { from: place, to: outcome.to };
  }
  return orderThen(context, place, limit);
}

/** "Wind it in by hand and you'll cone it": an order that nobody should follow. */
function orderThen(context: Context, place: number, limit: number): { from: number; to: number } | null {
  const { tokens, parts } = context;
  const before = tokens[place - 1];
  const opens = before?.stop !== "" || parts.sentenceOf[place - 1] !== parts.sentenceOf[place];
  if (!opens || !ifVerbs.has(tokens[place]?.word ?? "")) return null;
  for (let i = place + 2; i < Math.min(limit - 2, place + 14); i++) {
    const [a, b, c] = [0, 1, 2].map((k) => tokens[i + k]?.word ?? "");
    if (
      a === "and" &&
      ["it", "you", "they"].includes(b ?? "") &&
      (c === "will" ? !isMild(context, i + 3) : damageWords.has(c ?? ""))
    )
      return { from: place, to: Math.min(limit, i + 4) };
  }
  return null;
}

function isMild({ tokens }: Context, to: number): boolean {
  const last = tokens[to - 1]?.word ?? "";
  const verb = last === "will" ? (tokens[to]?.word ?? "") : last;
  return mildOutcomes.has(verb);
}
