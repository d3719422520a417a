import { asides } from "../../lexicon/asides.ts";
import { fillers, followingWords, leadingWords } from "../../lexicon/frames.ts";
import type { Amount } from "../amount.ts";
import { type Context, hasWord, sentenceAt } from "../context.ts";
import { numberAt } from "../number.ts";
import { isLimitBehind } from "../qualifier.ts";
import type { Token } from "../stream.ts";
import { sizeBehind } from "./size-behind.ts";

/** "One" is a pronoun more often than a figure; not so in "within two thou, and it runs true to one". */
export function isOne(context: Context, amount: Amount): boolean {
  const { tokens } = context;
  const { from, to, form } = amount;
  if (form !== "whole" || to !== from + 1 || tokens[from]?.word !== "one") return false;
  const toOne = tokens[from - 1]?.word === "to" && tokens[from]?.stop !== "";
  return !toOne || !recentIn(context, amount, sentenceAt(context, from).from);
}

/** Whether words that lead up to a value stand before the number. */
export function framed(context: Context, amount: Amount): boolean {
  const { tokens } = context;
  const sentence = sentenceAt(context, amount.from);
  let at = amount.from - 1;
  for (let skipped = 0; at >= sentence.from && skipped < 4; skipped++) {
    if (fillers.has(tokens[at]?.word ?? "")) at--;
    else at -= asideEnding(tokens, at + 1);
  }
  if (at < sentence.from)
    return amount.form !== "whole" || amount.high !== undefined || onlyFigure(context, amount);
  if (
    amount.form === "whole" &&
    at === amount.from - 1 &&
    makings.has(tokens[at]?.word ?? "") &&
    amount.value <= 12
  )
    return false;
  if (amount.form === "decimal" || leadingWords.has(tokens[at]?.word ?? "")) return true;
  if (tokens[at]?.word === "in" && puttingIn.has(tokens[at - 1]?.word ?? "")) return true;
  if (tokens[at]?.word === "for" && callingFor.has(tokens[at - 1]?.word ?? "")) return true;
  const listed =
    tokens[at]?.stop === "," && amount.form !== "whole" && recentIn(context, amount, sentence.from);
  if (tokens[amount.to]?.word === "of") return true;
  if (takesBack.has(tokens[at]?.word ?? "") && recentIn(context, amount, Math.max(sentence.from, at - 4)))
    return true;
  if (isOther(context, amount, at, sentence.from) || isEnough(tokens, amount.to)) return true;
  if (isLimitBehind(tokens, amount.to, sentence.to)) return true;
  if (listed || amount.high !== undefined) return true;
  return sizeBehind(tokens, amount.to) && amount.value > 0;
}

const asideWords = asides.map((text) => text.split(" "));

/** How many words of an aside end at a place. */
function asideEnding(tokens: readonly Token[], end: number): number {
  const fits = asideWords.filter((words) =>
    words.every((word, i) => tokens[end - words.length + i]?.word === word),
  );
  return Math.max(0, ...fits.map((words) => words.length));
}

/** "Thirty is about right." */
function isEnough(tokens: readonly Token[], place: number): boolean {
  if (tokens[place]?.word !== "is") return false;
  return hasWord(
    tokens,
    place + 1,
    place + 4,
    new Set(["right", "plenty", "enough", "fine", "good", "ideal"]),
  );
}

/** "eight thou on one and four on the other". */
function isOther(context: Context, amount: Amount, at: number, start: number): boolean {
  const { tokens } = context;
  if (
    (tokens[at]?.word !== "and" && tokens[at]?.stop !== ",") ||
    !recentIn(context, amount, Math.max(start, at - 9))
  )
    return false;
  return (
    hasWord(tokens, amount.to, amount.to + 1, placing) && hasWord(tokens, amount.to, amount.to + 4, others)
  );
}

const takesBack = new Set("no sorry wait".split(" "));

/** "Two had split, so I've made two" are two. */
const makings = new Set("made make cut turned".split(" "));

const puttingIn = new Set("put putting fit fitted stuck soldered".split(" "));

const callingFor = new Set("calls call set good rated asks asking made".split(" "));

/** Words that say where a value was found. */
export const placing = new Set("on at in for".split(" "));

const others = new Set("other that this bottom top back front end one".split(" "));

/** Whether another figure stands in the sentence before the number. */
function recentIn({ tokens }: Context, { from }: Amount, start: number): boolean {
  for (let place = start; place < from - 1; place++) {
    if (tokens[place]?.figure || numberAt(tokens, place, from)) return true;
  }
  return false;
}

/** "What's yours?" "Twelve." in figures. */
function onlyFigure({ tokens }: Context, { from, to }: Amount): boolean {
  return tokens[from]?.figure === true && [".", ","].includes(tokens[to - 1]?.stop ?? "");
}

/** Whether the number stands for itself, and does not count what follows. */
export function endsWell({ tokens, parts }: Context, amount: Amount): boolean {
  const to = amount.paired?.to ?? amount.to;
  const last = tokens[to - 1];
  const next = tokens[to];
  // Nobody counts in decimals: "a one point two bush".
  if (last?.stop !== "" || !next || amount.form === "decimal") return true;
  if (parts.sentenceOf[to] !== parts.sentenceOf[to - 1]) return true;
  return followingWords.has(next.word) || sizeBehind(tokens, to) || next.word === "say";
}
