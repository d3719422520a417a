import { remember } from "./remember.ts";
import { alongside, alsoNouns, verbs } from "./verbs.ts";
import { type Word, wordsIn } from "./words.ts";

const set = (text: string) => new Set(text.split(/\s+/));

/** Words that may stand before the command, with a comma after what they lead: "If it sticks, …". */
const leads = set(
  `if when where with before after while once as unless until without for to on in at from using working
   by during whenever wherever starting holding keeping beginning only here first finally lastly otherwise`,
);
/** Words that may stand between the beginning and the verb: "Carefully lift", "Now draw". */
const beforeVerb = set(
  "now then next again also first finally lastly please always never just and or so only",
);
/** Words that show that the word before them was a verb: "and seal the joint". */
const afterVerb = set(
  `the a an all both each every this that these those it them its any no one two three four five six off out up
   down in into on onto back over away through until till to with from against between under by along round
   around new old half another enough carefully gently`,
);
export const determiners = set(
  "the a an this that these those each every both all its it they he she you we i there",
);

/** What a sentence orders: its leading part ("If the cover sticks,"), and the verb with which the order begins. */
export interface Command {
  /** Place of the first letter of the order, after the leading part. */
  from: number;
  verb: string;
  /** Whether a leading part stands before it. */
  led: boolean;
}

/** A sentence with what was read from it; the same text is read once. */
export interface Read {
  words: readonly Word[];
  /** Null for a sentence that orders nothing. */
  command: Command | null;
}

/** Reads a sentence. */
export const readSentence = remember((sentence: string): Read => {
  const words = wordsIn(sentence);
  return { words, command: commandOf(sentence, words) };
});

function commandOf(sentence: string, words: Word[]): Command | null {
  const first = words[0];
  if (!first) return null;
  const plain = orderAt(words, 0);
  if (plain) return { ...plain, led: false };
  if (!leads.has(first.low) && !first.low.endsWith("ly")) return null;
  for (let index = 1; index < words.length; index++) {
    const gap = sentence.slice((words[index - 1] as Word).to, (words[index] as Word).from);
    const order = /[,:–—]/.test(gap) ? orderAt(words, index) : null;
    if (order) return { ...order, led: true };
  }
  return null;
}

/** The order that begins at that word, past "now", "carefully", "do not". */
function orderAt(words: readonly Word[], index: number): Omit<Command, "led"> | null {
  let at = index;
  while (at < words.length - 1 && isBeforeVerb((words[at] as Word).low)) at++;
  const word = words[at];
  if (!word) return null;
  const from = (words[index] as Word).from;
  if (word.low === "don't" || word.low === "never") return { from, verb: words[at + 1]?.low ?? word.low };
  if (word.low === "do" && words[at + 1]?.low === "not") return { from, verb: words[at + 2]?.low ?? "do" };
  return isVerb(word.low) ? { from, verb: word.low } : null;
}

/** Whether a word may stand before the verb. "Only" and "dry" words that are verbs themselves are verbs first. */
function isBeforeVerb(low: string): boolean {
  return beforeVerb.has(low) || (low.endsWith("ly") && !verbs.has(low));
}

/** Whether a word can begin an order. "re-fit" is as good as "fit". */
export function isVerb(low: string): boolean {
  return verbs.has(low) || verbs.has(low.replace(/^re-?/, "")) || verbs.has(low.split("-")[0] as string);
}

/** A further command in a sentence, after the first: where its joining word begins, and where it does. */
export interface Further {
  joint: number;
  from: number;
  verb: string;
}

/**
 * Commands after the first that are acts of their own: "undo the nuts and lift the cover". Not among them are a
 * pair that shares its object ("clean and dry the bore"), what is done at the same time ("turn it and watch the
 * needle"), and what only ends the act ("lift it off and put it aside").
 */
export function furtherCommands(sentence: string): Further[] {
  const { words, command } = readSentence(sentence);
  if (!command || saysTogether(sentence)) return [];
  const together = simultaneous(command.verb);
  const found: Further[] = [];
  words.forEach((word, index) => {
    const previous = words[index - 1];
    if (!previous || previous.from <= command.from) return;
    const joint = jointBefore(sentence, words, index);
    if (joint === null || !isOrder(words, index, joint.certain)) return;
    // "Then" and a semicolon part whatever stands before them; "and" may still belong to an "until" or a "hold".
    const within = words.slice(0, index).some((one) => joint.at > one.from && subordinates.has(one.low));
    if (!joint.certain && (together || within)) return;
    found.push({ joint: joint.at, from: word.from, verb: word.low });
  });
  return found;
}

const subordinates = set(
  "so until till if unless while because that which who whether how where when before after",
);

/** Whether a joining "and", "then" or semicolon stands before a word: where it begins. */
function jointBefore(sentence: string, words: readonly Word[], index: number) {
  let at = index;
  let certain = false;
  while (at > 0 && ["and", "then"].includes((words[at - 1] as Word).low)) {
    at--;
    certain ||= (words[at] as Word).low === "then";
  }
  const end = words[at - 1];
  if (!end) return null;
  const gap = sentence.slice(end.to, (words[index] as Word).from);
  const listed = gap.includes(",") && isListedOrder(words, index);
  if (at === index && !gap.includes(";") && !listed) return null;
  return { at: end.to, certain: certain || gap.includes(";") };
}

function isOrder(words: readonly Word[], index: number, certain: boolean): boolean {
  const word = words[index] as Word;
  const next = words[index + 1];
  if (!verbs.has(word.low)) return false;
  if (certain) return !alsoNouns.has(word.low) || (next !== undefined && afterVerb.has(next.low));
  if (alongside.has(word.low) || sharesObject(words, index)) return false;
  if (next === undefined || next.low === "it" || next.low === "them") return false;
  return alsoNouns.has(word.low) ? determiners.has(next.low) : true;
}

/** "Drain the sump, refit the plug and pour in oil": a verb that is no thing, after a comma, and then an object. */
function isListedOrder(words: readonly Word[], index: number): boolean {
  const [word, next] = [words[index], words[index + 1]];
  return word !== undefined && !alsoNouns.has(word.low) && next !== undefined && determiners.has(next.low);
}

/** "Clean and dry the bore", "undo and remove the nuts": the word before the joint is the first verb itself. */
function sharesObject(words: readonly Word[], index: number): boolean {
  const before = words.slice(0, index).filter((word) => word.low !== "and");
  const verb = before.findLastIndex((word) => isVerb(word.low) && !alsoNouns.has(word.low));
  const last = before.length - 1;
  return last <= 0 || (verb === last && !before[last]?.low.endsWith("s"));
}

function simultaneous(verb: string): boolean {
  return alongside.has(verb) && !["mark", "measure", "bag", "label", "place", "put"].includes(verb);
}

function saysTogether(sentence: string): boolean {
  return /\b(?:while|at the same time|together|in one movement|as you|as it|as they|simultaneously|alternately)\b/i.test(
    sentence,
  );
}
