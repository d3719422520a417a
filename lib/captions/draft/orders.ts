import { beforeNever, careVerbs, notOrders, storedWords, subjects } from "../lexicon/orders.ts";
import { workVerbs } from "../lexicon/work-verbs.ts";
import { type Context, hasWord } from "./context.ts";
import { isPartWord } from "./nouns.ts";

/** Something that warns, before it is known how far its words go. */
export interface Trigger {
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

/** Whether a clause begins at a place: behind a stop or a silence. */
export function opens({ tokens, parts }: Context, place: number): boolean {
  return tokens[place - 1]?.stop !== "" || parts.sentenceOf[place - 1] !== parts.sentenceOf[place];
}

/** "Do not reuse those", "don't go over 15", "you do not want to be leaning on that". */
export function orderNotTo(context: Context, place: number, limit: number): Trigger | null {
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
    return ruledOut.has(word) || Object.hasOwn(workVerbs, word)
      ? trigger(place - 1, verb + 1, "an order not to do something")
      : null;
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

/** Behind "never", these tell what was so. */
const toldOfNever = new Set(
  "been had seen did mind known heard got again done found knew fear once really thought came could happened gave went took made ran saw felt broke".split(
    " ",
  ),
);
const stopsThere = (stop: string | undefined) => stop !== undefined && stop !== "" && stop !== ",";

const isPluralNoun = (word: string) => word.endsWith("s") && isPartWord(word);

/** "Don't get me wrong" is no order; "don't get oil on it" is. */
function notGet(next: string | undefined, place: number, verb: number): Trigger | null {
  return next === "me" ? null : trigger(place, verb + 1, "an order not to do something");
}

/** "Never reach in there", "never a metal screwdriver". */
export function never({ tokens, parts }: Context, place: number, limit: number): Trigger | null {
  if (tokens[place]?.word !== "never" || place + 1 >= limit) return null;
  const before = tokens[place - 1];
  const open = before?.stop !== "" || parts.sentenceOf[place - 1] !== parts.sentenceOf[place];
  const next = tokens[place + 1]?.word ?? "";
  // "You never touch the glass" is an order, "you never know" is none.
  const toViewer = !open && before.word === "you" && (acts.has(next) || ruledOut.has(next));
  const object = !open && (before.word === "it" || before.word === "them");
  if (!open && beforeNever.has(before.word) && !object && !toViewer) return null;
  if (toldOfNever.has(next) || next.endsWith("ed")) return null;
  return trigger(place, place + 2, "an order never to do something");
}

/** "I wouldn't go past seven foot pound"; "I don't put the barrel in anything, ever". */
export function wouldNot({ tokens }: Context, place: number, limit: number): Trigger | null {
  if (tokens[place]?.word !== "i" && tokens[place]?.word !== "you") return null;
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
  const amount = d === "want" && tokens[place + 4]?.word === "more";
  return acts.has(d ?? "") && !amount ? trigger(place, place + 4, "advice not to do something") : null;
}

const forGood = new Set("ever any anything anywhere".split(" "));

const acts = new Set(
  "go use put try run do touch risk trust reuse force hit leave let open pull push tighten plug start heat weld drill work want".split(
    " ",
  ),
);

/** "You mustn't use steel", "you should never run it dry"; "you can't" needs a consequence. */
export function mustNot({ tokens }: Context, place: number, limit: number): Trigger | null {
  if (!modals.has(tokens[place + 1]?.word ?? "")) return null;
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

const modals = new Set("must should can".split(" "));

/** "Avoid getting oil on the belt." */
export function avoid(context: Context, place: number, limit: number): Trigger | null {
  const { tokens } = context;
  if (tokens[place]?.word !== "avoid" || place + 1 >= limit) return null;
  const ordered = opens(context, place) || ["to", "and", "so"].includes(tokens[place - 1]?.word ?? "");
  return ordered ? trigger(place, place + 2, "an order not to do something") : null;
}

/** "Before you undo anything, let the spring right down": first an order, because something is loaded. */
export function beforehand(context: Context, place: number, limit: number): Trigger | null {
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

/** "Hold the leadscrew up, because it'll drop": an order with its reason. */
export function careful({ tokens, parts }: Context, place: number, limit: number): Trigger | null {
  const before = tokens[place - 1];
  const open =
    before?.stop !== "" ||
    parts.sentenceOf[place - 1] !== parts.sentenceOf[place] ||
    ["so", "and", "then", "first", "just", "always", "please", "but"].includes(before.word);
  const here = tokens[place]?.word === "always" ? place + 1 : place;
  if (!open || here + 2 >= limit || !careVerbs.has(tokens[here]?.word ?? "")) return null;
  return weak(place, here + 2, "an order, with what happens otherwise");
}

/** Words that warn by themselves. */
export function trigger(from: number, to: number, reason: string): Trigger {
  return { from: Math.max(0, from), to, reason, weak: false };
}

/** Words that warn only with what happens otherwise. */
export function weak(from: number, to: number, reason: string): Trigger {
  return { ...trigger(from, to, reason), weak: true };
}

/** How the reason of an order begins that counts only with what happens otherwise. */
export const orderReason = "an order, with";
