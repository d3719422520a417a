import {
  beforeNever,
  careVerbs,
  consequences,
  injuryWords,
  notOrders,
  otherwise,
  storedWords,
  subjects,
  warnings,
} from "../lexicon/cautions.ts";
import { cautionExamples } from "./cautions.examples.ts";
import { type Context, clauseAt, hasWord, sentenceAt } from "./context.ts";
import { deniedWords, isJoke } from "./denied.ts";
import { lessonOf, nextSentence } from "./lessons.ts";
import { isPartWord } from "./nouns.ts";
import { PhraseBook } from "./phrase.ts";
import type { DraftRule } from "./rule.ts";
import type { Token } from "./stream.ts";
import type { Draft } from "./types.ts";
import { whatIf } from "./what-if.ts";
import { wordSets } from "./word-sets.ts";

const warningBook = new PhraseBook(
  warnings.map((text) => [text, text] as const),
  wordSets,
);
const consequenceBook = new PhraseBook(
  consequences.map((text) => [text, text] as const),
  wordSets,
);

const otherwiseBook = new PhraseBook(
  otherwise.map((text) => [text, text] as const),
  wordSets,
);

/** Something that warns, before it is known how far its words go. */
interface Trigger {
  from: number;
  to: number;
  reason: string;
  /** Counts only with a consequence behind it. */
  weak: boolean;
  /** Strengthens what was said before instead of beginning anew: "I mean it". */
  echo?: true;
  /** Says what is dangerous; the order that goes with it is part of it: "there's a fully wound spring". */
  hazard?: true;
  /** False where only the form of the sentence speaks for it. */
  sure?: false;
}

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

/** Whether a clause begins at a place: behind a stop or a silence. */
function opens({ tokens, parts }: Context, place: number): boolean {
  return tokens[place - 1]?.stop !== "" || parts.sentenceOf[place - 1] !== parts.sentenceOf[place];
}

/** "Do not reuse those", "don't go over 15", "you do not want to be leaning on that". */
function orderNotTo(context: Context, place: number, limit: number): Trigger | null {
  const { tokens } = context;
  if (tokens[place]?.word !== "do" || tokens[place + 1]?.word !== "not" || place + 2 >= limit) return null;
  const subject = opens(context, place) ? "" : (tokens[place - 1]?.word ?? "");
  let verb = place + 2;
  while (
    ["you", "ever", "even", "go", "just", "be", "try", "to"].includes(tokens[verb]?.word ?? "") &&
    verb + 1 < limit
  )
    verb++;
  const word = tokens[verb]?.word ?? "";
  if (subject === "you") {
    const wants = tokens[place + 2]?.word === "want" && tokens[place + 3]?.word === "to";
    const verbWanted = tokens[place + 4]?.word ?? "";
    const mild = ["know", "see", "hear", "worry", "think"].includes(verbWanted);
    if (wants) return mild ? null : trigger(place - 1, place + 5, "an order not to do something");
    return ruledOut.has(word) ? trigger(place - 1, verb + 1, "an order not to do something") : null;
  }
  if (subjects.has(subject) || notOrders.has(word) || stopsThere(tokens[place + 1]?.stop)) return null;
  if (isPluralNoun(subject) && stative.has(word)) return null;
  if (word === "forget" || word === "get")
    return word === "get" ? notGet(tokens[verb + 1]?.word, place, verb) : null;
  return trigger(place, verb + 1, "an order not to do something");
}

/** "You do not wear gloves around a band saw." */
const ruledOut = new Set(
  "wear put use touch run go reuse weld heat hit force lean stand reach leave let open start mix drop".split(
    " ",
  ),
);
const stative = new Set(
  "do go move turn hold get grow care come rust leak wear mean stop start stay sit".split(" "),
);
const stopsThere = (stop: string | undefined) => stop !== undefined && stop !== "" && stop !== ",";
const isPluralNoun = (word: string) => word.endsWith("s") && isPartWord(word);

/** "Don't get me wrong" is no order; "don't get oil on it" is. */
function notGet(next: string | undefined, place: number, verb: number): Trigger | null {
  return next === "me" ? null : trigger(place, verb + 1, "an order not to do something");
}

/** "Never reach in there", "never a metal screwdriver". */
function never({ tokens, parts }: Context, place: number, limit: number): Trigger | null {
  if (tokens[place]?.word !== "never" || place + 1 >= limit) return null;
  const before = tokens[place - 1];
  const open = before?.stop !== "" || parts.sentenceOf[place - 1] !== parts.sentenceOf[place];
  const next = tokens[place + 1]?.word ?? "";
  // "You never touch the glass" is an order, "you never know" is none.
  const toViewer = !open && before.word === "you" && (acts.has(next) || ruledOut.has(next));
  const object = !open && (before.word === "it" || before.word === "them");
  if (!open && beforeNever.has(before.word) && !object && !toViewer) return null;
  if (
    [
      "been",
      "had",
      "seen",
      "did",
      "mind",
      "known",
      "heard",
      "got",
      "again",
      "done",
      "found",
      "knew",
      "fear",
      "once",
      "really",
      "thought",
      "came",
      "could",
      "happened",
    ].includes(next)
  )
    return null;
  if (next.endsWith("ed")) return null;
  return trigger(place, place + 2, "an order never to do something");
}

const echoes = new Set(["i mean it", "i am not kidding", "i am not joking", "no joke", "you will regret it"]);

const denying = new Set("not never nobody".split(" "));
const harming = /kill|bite|shock|lethal|toxic|poison|live|take your|have your/;
/** Phrases that tell what happens: what is warned of stands before them. */
const consequential =
  /^(?:how you|it\/|take your|have your|take the|will|could|can|lose|is a bomb|through your|go through)/;
const hazards =
  /live|charge|asbestos|lead|mercury|radium|tension|wound|hot side|mains|flammable|lethal|pressure$/;

/** The phrases of the lexicon. */
function warning(context: Context, place: number, limit: number): Trigger | null {
  const found = warningBook.at(context.tokens, place, limit);
  if (!found) return null;
  const { word } = context.tokens[place] as { word: string };
  const before = context.tokens[place - 1]?.word ?? "";
  if (
    (word === "mind" || word === "watch") &&
    ["you", "i", "we", "to", "not", "never", "just"].includes(before)
  )
    return null;
  if (context.tokens[found.from - 1]?.word === "not" && !found.entry.startsWith("be")) return null;
  if (hasWord(context.tokens, place - 4, place, denying) && harming.test(found.entry)) return null;
  const start = consequential.test(found.entry)
    ? Math.max(sentenceAt(context, place).from, place - 25)
    : place;
  const one = trigger(start, found.to, `“${found.entry.replace(/[{}*\d?]+/g, "…")}” warns`);
  if (hazards.test(found.entry)) return { ...one, hazard: true };
  return echoes.has(found.entry) ? { ...one, echo: true } : one;
}

/** "I wouldn't go past seven foot pound"; "I don't put the barrel in anything, ever". */
function wouldNot({ tokens }: Context, place: number, limit: number): Trigger | null {
  const [a, b, c, d] = [0, 1, 2, 3].map((i) => tokens[place + i]?.word ?? "");
  if (
    a === "i" &&
    b === "do" &&
    c === "not" &&
    acts.has(d ?? "") &&
    hasWord(tokens, place, Math.min(limit, place + 12), forGood)
  )
    return trigger(place, place + 4, "advice not to do something");
  const never = c === "not" || (c === "never" && a === "i");
  if ((a !== "i" && a !== "you") || b !== "would" || !never || place + 3 >= limit) return null;
  return acts.has(d ?? "") ? trigger(place, place + 4, "advice not to do something") : null;
}

const forGood = new Set("ever any anything anywhere".split(" "));
const acts = new Set(
  "go use put try run do touch risk trust reuse force hit leave let open pull push tighten plug start heat weld drill work want".split(
    " ",
  ),
);

/** "You mustn't use steel", "you should never run it dry"; "you can't" needs a consequence. */
function mustNot({ tokens }: Context, place: number, limit: number): Trigger | null {
  const [who, may, not] = [0, 1, 2].map((i) => tokens[place + i]?.word ?? "");
  if (place + 3 >= limit || (not !== "not" && not !== "never")) return null;
  let at = place + 3;
  while (["really", "ever", "even", "just"].includes(tokens[at]?.word ?? "") && at + 1 < limit) at++;
  const verb = tokens[at]?.word ?? "";
  if (notOrders.has(verb) || verb === "be" || verb === "have" || verb === "forget") return null;
  if (may === "must" || (may === "should" && who === "you"))
    return trigger(place, at + 1, "an order not to do something");
  return may === "can" && who === "you" && acts.has(verb)
    ? weak(place, at + 1, "advice against something, with what happens otherwise")
    : null;
}

/** "Avoid getting oil on the belt." */
function avoid(context: Context, place: number, limit: number): Trigger | null {
  const { tokens } = context;
  if (tokens[place]?.word !== "avoid" || place + 1 >= limit) return null;
  const ordered = opens(context, place) || ["to", "and", "so"].includes(tokens[place - 1]?.word ?? "");
  return ordered ? trigger(place, place + 2, "an order not to do something") : null;
}

/** "Before you undo anything, let the spring right down": first an order, because something is loaded. */
function beforehand(context: Context, place: number, limit: number): Trigger | null {
  const { tokens } = context;
  if (tokens[place]?.word !== "before" || tokens[place + 1]?.word !== "you") return null;
  const heads = opens(context, place);
  for (let i = place + 3; i < Math.min(limit, place + 12); i++) {
    const ordered =
      careVerbs.has(tokens[i]?.word ?? "") &&
      ((heads && tokens[i - 1]?.stop === ",") || ["must", "to"].includes(tokens[i - 1]?.word ?? ""));
    if (ordered && hasWord(tokens, i, limit, storedWords))
      return trigger(place, i + 2, "an order to do something first");
  }
  return null;
}

/** "No oil at all on the wheel teeth. … It makes grinding paste"; "not the torch". Counts with a consequence. */
function nothingOf({ tokens, parts }: Context, place: number, limit: number): Trigger | null {
  const word = tokens[place]?.word;
  if ((word !== "no" && word !== "not") || tokens[place]?.stop !== "" || place + 2 >= limit) return null;
  const before = tokens[place - 1];
  const open = before?.stop !== "" || parts.sentenceOf[place - 1] !== parts.sentenceOf[place];
  if (word === "no" && !open && !["and", "but", "so", "with", "please", "no"].includes(before.word))
    return null;
  const next = tokens[place + 1]?.word ?? "";
  const why = "advice against something, with what happens otherwise";
  if (word === "not") {
    const ends =
      !open && next === "the" && consequenceBook.first(tokens, place + 3, Math.min(limit, place + 11));
    if (ends) return weak(place, place + 3, why);
    if (!open && !["and", "but", "so", "with", "please", "no"].includes(before.word)) return null;
    const named = ["the", "wd", "any", "a", "in", "on", "near", "with"].includes(next);
    if (named) return weak(place, place + 3, why);
    if (open && spoilsIt(tokens, place + 1, limit)) return weak(place, place + 2, why);
    // "Not steel, because you'll catch the edge."
    const because = tokens[place + 1]?.stop === "," && tokens[place + 2]?.word === "because" && open;
    return because ? trigger(place, place + 3, "advice against something, with its reason") : null;
  }
  for (let i = place + 2; i < Math.min(limit, place + 7); i++) {
    if (["on", "in", "near", "anywhere", "around"].includes(tokens[i]?.word ?? ""))
      return weak(place, i + 1, why);
  }
  return null;
}

/** "Not wheel bearing grease, that'll melt": a thing named, and behind a comma what it does. */
function spoilsIt(tokens: readonly Token[], from: number, limit: number): boolean {
  for (let i = from; i < Math.min(limit - 1, from + 5); i++) {
    if (tokens[i]?.stop === ",") return ["that", "it", "they", "you"].includes(tokens[i + 1]?.word ?? "");
  }
  return false;
}

/** "You put stainless in there, you hit a stump, and the gear breaks"; "if you put grease on the pawls, they stick". */
function supposed({ tokens, parts }: Context, place: number, limit: number): Trigger | null {
  const start = tokens[place]?.word === "if" ? place + 1 : place;
  if (tokens[start]?.word !== "you" || tokens[start + 2]?.word === "not" || start + 2 >= limit) return null;
  const before = tokens[place - 1];
  const open =
    start > place || !before || before.stop !== "" || parts.sentenceOf[place - 1] !== parts.sentenceOf[place];
  if (!open || !risky.has(tokens[start + 1]?.word ?? "")) return null;
  return weak(place, start + 2, supposition);
}

/** "If you oil the racks they pick up lint." */
function condition(context: Context, place: number, limit: number): Trigger | null {
  const found = whatIf(context, place, limit);
  const toViewer =
    found && (context.tokens[place]?.word !== "if" || context.tokens[place + 1]?.word === "you");
  return found && toViewer ? { ...trigger(found.from, found.to, supposition), sure: false } : null;
}

const supposition = "what happens if it is done wrong";

const risky = new Set(
  "put set do use go fill tighten over overtighten force run get leave turn lean hit start let forget crank heat oil grease pull drop wind pour push open rush hurry".split(
    " ",
  ),
);

/** "Hold the leadscrew up, because it'll drop": an order with its reason. */
function careful({ tokens, parts }: Context, place: number, limit: number): Trigger | null {
  const before = tokens[place - 1];
  const open =
    before?.stop !== "" ||
    parts.sentenceOf[place - 1] !== parts.sentenceOf[place] ||
    ["so", "and", "then", "first", "just", "always", "please", "but"].includes(before.word);
  const here = tokens[place]?.word === "always" ? place + 1 : place;
  if (!open || here + 2 >= limit || !careVerbs.has(tokens[here]?.word ?? "")) return null;
  return weak(place, here + 2, "an order, with what happens otherwise");
}

function trigger(from: number, to: number, reason: string): Trigger {
  return { from: Math.max(0, from), to, reason, weak: false };
}

function weak(from: number, to: number, reason: string): Trigger {
  return { ...trigger(from, to, reason), weak: true };
}

interface Grown extends Trigger {
  because?: { from: number; to: number };
}

const reach = 30;

/** Where the next order begins: what follows it is no consequence of this one. */
function orderBehind(triggers: readonly Trigger[], i: number): number {
  const { to } = triggers[i] as Trigger;
  const next = triggers
    .slice(i + 1)
    .find((one) => one.from >= to && !one.weak && one.reason.startsWith("an order"));
  return next?.from ?? Number.POSITIVE_INFINITY;
}

/** Gives a trigger the words that belong to it: its clause, and the consequence where one is said. */
function grow(context: Context, one: Trigger, before: number): Grown[] {
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

const orderReason = "an order, with";

/** "Let it down before you undo it … if you don't, it whips round": done first, because something is loaded. */
function isFirst({ tokens }: Context, one: Trigger, to: number): boolean {
  for (let i = one.to; i < Math.min(to, one.to + 16); i++) {
    const firstDone =
      tokens[i]?.word === "before" && ["you", "it", "they"].includes(tokens[i + 1]?.word ?? "");
    if (firstDone) return hasWord(tokens, one.from - 12, Math.min(to + 4, one.to + 30), storedWords);
  }
  return false;
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
