import { type PartAction, partEvents } from "../lexicon/part-events.ts";
import { conditions, materials, notEvents, notYet, undone, wholeSentences } from "../lexicon/part-words.ts";
import { type Context, clauseAt, hasWord, nounAfter, sentenceAt } from "./context.ts";
import { deniedWords } from "./denied.ts";
import type { PartNoun } from "./nouns.ts";
import { numberAt } from "./number.ts";
import { backReach, leading, nounOverlapping, objectOf, subjectOf } from "./part-subject.ts";
import { partExamples } from "./parts.examples.ts";
import { type Found, PhraseBook } from "./phrase.ts";
import type { DraftRule } from "./rule.ts";
import type { Run } from "./sentences.ts";
import { quoteOf, spanOf } from "./stream.ts";
import type { Draft, PartFields } from "./types.ts";
import { wordSets } from "./word-sets.ts";

const order = Object.keys(partEvents) as PartAction[];

const events = new PhraseBook<PartAction | "nothing">(
  [
    ...order.flatMap((action) =>
      (partEvents[action] as readonly string[]).map((text) => [text, action] as const),
    ),
    ...notEvents.map((text) => [text, "nothing"] as const),
  ],
  wordSets,
);

const materialBook = new PhraseBook(materials.map((text) => [text, text] as const));

/** The rule for parts. */
export const parts: DraftRule = {
  explains:
    "Parts with which something is done: made, replaced, repaired, used again, cleaned, fitted, removed. Several things done with one part are one mark.",
  examples: partExamples,
  find: partsIn,
};

interface Event {
  action: PartAction;
  from: number;
  to: number;
  noun: PartNoun | null;
  /** Whether the part is named in the words of the event itself. */
  named: boolean;
}

/** Every part with which something is done, in order. */
function partsIn(context: Context): Draft[] {
  const denied = deniedWords(context);
  const found = context.parts.sentences
    .flatMap((sentence) => shortSentence(context, sentence) ?? deedsIn(context, sentence))
    .flatMap(({ entry, from, to }) =>
      entry !== "nothing" && denied[from] === 0 && isDone(context, entry, from, to)
        ? [eventOf(context, entry, from, to)]
        : [],
    )
    .filter((one) => one.noun !== null && !isTool(one));
  return together(context, found).map((group) => partOf(context, group));
}

function deedsIn(context: Context, sentence: Run): Found<PartAction | "nothing">[] {
  const found = events.all(context.tokens, sentence.from, sentence.to);
  return found[0]?.from === sentence.from ? found : [...headlessDeed(context, sentence), ...found];
}

/** "Replaced.", "All replaced." */
function shortSentence({ tokens }: Context, { from, to }: Run): Found<PartAction>[] | null {
  const word = tokens[to - 1]?.word ?? "";
  const entry = to - from <= 2 && Object.hasOwn(wholeSentences, word) ? wholeSentences[word] : undefined;
  if (entry !== undefined) return [{ from, to, entry }];
  // "Fuel line, quarter inch, new."
  const listed = word === "new" && tokens[to - 2]?.stop === "," && to - from <= 8;
  return listed ? [{ from, to, entry: "replace" }] : null;
}

/** "Scraped those out with a bit of hardwood": the speaker leaves himself out. */
function headlessDeed({ tokens }: Context, { from, to }: Run): Found<PartAction>[] {
  const deed = from + 1 < to && wordSets.worked?.(tokens, from) && objects.has(tokens[from + 1]?.word ?? "");
  return deed ? [{ from, to: from + 2, entry: "repair" }] : [];
}

const objects = new Set("it them that those both all the".split(" "));

/** "Don't reuse those", "if you replace it", "the new ones are too stiff": nothing was done. */
function isDone(context: Context, action: PartAction, from: number, to: number): boolean {
  const { tokens } = context;
  const clause = clauseAt(context, from);
  const start = Math.max(clause.from, from - 4);
  if (hasWord(tokens, start, from, undone)) return false;
  if ((action === "remove" || action === "reuse") && hasWord(tokens, start, from, notYet)) return false;
  if (["until", "till", "once", "when"].includes(tokens[from - 1]?.word ?? "")) return false;
  const sentence = sentenceAt(context, from);
  const told = hasWord(tokens, Math.max(sentence.from, from - 3), to, teller);
  const advised =
    tokens[sentence.from]?.word === "if" || hasWord(tokens, Math.max(sentence.from, from - 4), from, viewer);
  const byOthers = hasWord(tokens, start, from, strangers);
  if ((advised || byOthers) && !told) return false;
  const before = tokens[from - 1]?.word ?? "";
  if (before === "they" && action === "make") return false;
  if (tokens[from]?.word === "new" && ["the", "your", "if", "brand"].includes(before))
    return before === "brand";
  if (action === "reuse" && tokens[to - 1]?.word === "back" && tokens[to]?.word === "to") return false;
  if (tokens[from]?.word === "keep" && placed.has(tokens[to]?.word ?? "")) return false;
  if (before === "you" && tokens[from - 1]?.stop === "") return false;
  return to > from;
}

/** Who tells what he did, and who is told to. */
const teller = new Set("i we".split(" "));

const strangers = new Set("somebody someone whoever".split(" "));
const viewer = new Set(["you"]);

const placed = new Set(
  "back away off out in on clear tight dry clean apart together from up down".split(" "),
);

const toolHeads = new Set(
  "gauge meter scale wrench spanner hammer puller torch bulb light drift lamp brush".split(" "),
);

/** "Put a dial gauge on it": a tool, not a part. */
function isTool({ action, noun }: Event): boolean {
  return (
    (action === "fit" || action === "replace" || action === "make") &&
    toolHeads.has(noun?.name.split(" ").at(-1) ?? "")
  );
}

function eventOf(context: Context, action: PartAction, from: number, to: number): Event {
  const limit = sentenceAt(context, from).to;
  const end = Math.min(leading.has(context.tokens[to - 1]?.word ?? "") ? to + 4 : to + 1, limit);
  const inside =
    nounAfter(context, from, end) ?? nounOverlapping(context, from, to) ?? objectOf(context, to, limit);
  const named = inside !== null && inside.to >= from;
  return { action, from, to, noun: named ? inside : subjectOf(context, from), named };
}

/** How many words apart two things done with one part may be. */
const sameReach = 30;

/** Puts together what is done with one part. */
function together(context: Context, found: Event[]): Event[][] {
  const groups: Event[][] = [];
  for (const event of found) {
    const group = groups.at(-1);
    const last = group?.at(-1);
    if (group && last && event.from - last.to <= sameReach && isSame(context, last, event)) group.push(event);
    else groups.push([event]);
  }
  return groups;
}

function isSame(context: Context, last: Event, next: Event): boolean {
  if (last.action !== next.action && isAnother(context, last.to, next.from)) return false;
  if (next.named && last.noun !== next.noun) {
    const [a, b] = [last.noun?.name.split(" ").at(-1), next.noun?.name.split(" ").at(-1)];
    return a !== undefined && b !== undefined && a === b;
  }
  if (last.noun === next.noun) return true;
  return nounAfter(context, last.to, next.from) === null;
}

/** "The first spring goes back. The second one's broken, so that's a new spring." */
function isAnother({ tokens }: Context, from: number, to: number): boolean {
  if (hasWord(tokens, from, to, anotherOne)) return true;
  for (let i = from; i < to - 1; i++) {
    if (tokens[i]?.word === "one" && ["was", "is", "had"].includes(tokens[i + 1]?.word ?? "")) return true;
  }
  return false;
}

const anotherOne = new Set("second third other others rest".split(" "));

function partOf(context: Context, group: Event[]): Draft {
  const { stream } = context;
  const first = group[0] as Event;
  const action = order.find((name) => group.some((event) => event.action === name)) ?? first.action;
  const noun = group.find((event) => event.named)?.noun ?? first.noun;
  const last = Math.max(...group.map((event) => event.to));
  const earliest = first.noun && first.from - first.noun.from <= backReach ? first.noun.from : first.from;
  const from = Math.min(earliest, first.from);
  const to = Math.max(last, noun && noun.from < last + 2 ? noun.to : 0);
  const { start, end } = spanOf(stream, from, to);
  return {
    kind: "part",
    start,
    end,
    quote: quoteOf(stream, from, to),
    fields: fieldsOf(context, from, Math.min(context.tokens.length, to + 6), noun, action),
    reason: `“${quoteOf(stream, first.from, first.to)}” says that it was ${wordFor[action]}.`,
    sureness: noun ? "likely" : "unsure",
    from,
    to,
  };
}

const wordFor: Record<PartAction, string> = {
  make: "made",
  replace: "replaced",
  repair: "repaired",
  reuse: "used again",
  clean: "cleaned",
  fit: "fitted",
  adjust: "adjusted",
  remove: "removed",
};

function fieldsOf(
  context: Context,
  from: number,
  to: number,
  noun: PartNoun | null,
  action: PartAction,
): PartFields {
  const { tokens } = context;
  const condition = [...new Set(tokens.slice(from, to).map((token) => token.word))].filter((word) =>
    conditions.has(word),
  );
  const material = materialBook.first(tokens, from, to)?.entry;
  const qty = quantityOf(context, noun);
  const number = partNumber(context, from, to + 6);
  return {
    name: noun?.name ?? "part",
    action,
    ...(qty ? { qty } : {}),
    ...(number ? { number } : {}),
    ...(condition.length > 0 ? { condition: condition.join(", ") } : {}),
    ...(material ? { material } : {}),
  };
}

/** "two new seals". */
function quantityOf({ tokens }: Context, noun: PartNoun | null): number | undefined {
  if (!noun) return undefined;
  for (let place = noun.from - 1; place >= Math.max(0, noun.from - 2); place--) {
    const number = numberAt(tokens, place, noun.to);
    if (number?.form === "whole" && number.value > 1 && number.value < 100) return number.value;
  }
  return undefined;
}

/** "part number A1073". */
function partNumber({ tokens }: Context, from: number, to: number): string | undefined {
  for (let place = from; place < Math.min(to, tokens.length - 2); place++) {
    if (tokens[place]?.word !== "part" || tokens[place + 1]?.word !== "number") continue;
    const at = tokens[place + 2]?.word === "is" ? place + 3 : place + 2;
    const word = tokens[at]?.word ?? "";
    if (/\d/.test(word)) return word.toUpperCase();
  }
  return undefined;
}
