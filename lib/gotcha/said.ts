import type { Gotcha } from "#lib/build/index.ts";
import kindred from "./kindred.json" with { type: "json" };
import { foldWords, phraseAt } from "./words.ts";

/** What a gotcha says, ready to be compared: words by their meaning, without endings, and what they are akin to. */
export interface Said {
  gotcha: Gotcha;
  /** The symptom, in its order. */
  symptom: string[];
  /** Why it happens; empty where nobody has said. */
  why: string[];
  /** All that it says, with the part that it concerns. */
  all: Set<string>;
  /** What it names of where it applies, each once; an empty list leaves it open. */
  where: Record<"assembly" | "item" | "maker" | "make", string[]>;
}

export function saidBy(gotcha: Gotcha): Said {
  const [symptom, why] = [termsOf(gotcha.symptom), termsOf(gotcha.mechanism)];
  const named = (what: "assembly" | "item" | "maker" | "make") => [
    ...new Set(gotcha.appliesTo.map((scope) => scope[what].trim()).filter((name) => name !== "")),
  ];
  const where = {
    assembly: named("assembly"),
    item: named("item"),
    maker: named("maker"),
    make: named("make"),
  };
  const rest = termsOf([gotcha.consequence, ...where.item].join(". "));
  return { gotcha, symptom, why, all: new Set([...symptom, ...why, ...rest]), where };
}

/** Words that join others and tell nothing apart. */
const joining = new Set(
  "a about again all also an and another any are as at be because been before behind between both but by can cannot could did do does down for from get goes got had has have her his if in into is it its just let made make may must my no not of off on once one only or our out over put should so some somebody someone something still than that the their them then there they this those through to too under until up very was we were what when where which while who will with without would yet you".split(
    " ",
  ),
);

/** The terms of a text in its order: each word that tells something, and the kinds that it begins a phrase of. */
export function termsOf(text: string): string[] {
  const words = foldWords(text);
  const stems = words.map(stem);
  const terms: string[] = [];
  for (let at = 0; at < words.length; ) {
    const phrase = phraseAt(words, at);
    const next = at + (phrase?.length ?? 1);
    if (phrase) terms.push(`=${phrase.line}`);
    else if (!joining.has(words[at] as string)) terms.push(stems[at] as string);
    for (; at < next; at++) terms.push(...kindsAt(stems, at));
  }
  return terms;
}

function kindsAt(stems: readonly string[], at: number): string[] {
  const begun = kin.get(stems[at] as string) ?? [];
  const found = begun.filter(({ phrase }) => phrase.every((word, index) => stems[at + index] === word));
  return found.map(({ kind }) => kind);
}

/** A word without its ending, near enough: "tightened" and "tightening" are one. */
function stem(word: string): string {
  if (word.length < 4 || /\d/.test(word)) return word;
  const cut = word.replace(/(ing|ed|er|en|ly|e|y|s|n)$/, "");
  return (cut.length < 3 ? word : cut).replace(/([bdfgklmnprt])\1$/, "$1").replace(/i$/, "");
}

/** A phrase, without endings, and the sign of the kind that it is of. */
interface Kin {
  phrase: string[];
  kind: string;
}

/** Phrases of a kind, by their first word; a kind is known by its line, and mishaps by their "!". */
const kin = new Map<string, Kin[]>();
for (const [sign, lines] of [
  ["!", kindred.mishaps],
  ["~", kindred.akin],
] as const) {
  for (const [line, names] of lines.entries()) {
    for (const name of names.split(", ")) {
      const phrase = foldWords(name).map(stem);
      push(kin, phrase[0] as string, { phrase, kind: `${sign}${line}` });
    }
  }
}

/** What is contrary to a term: "left" to "right", and to whatever is akin to it. */
const contraries = new Map<string, string[]>();
for (const [one = [], other = []] of kindred.contrary.map((pair) => pair.split(", ").map(termsOf))) {
  for (const term of one) push(contraries, term, ...other);
  for (const term of other) push(contraries, term, ...one);
}

function push<T>(lists: Map<string, T[]>, key: string, ...more: T[]): void {
  lists.set(key, [...(lists.get(key) ?? []), ...more]);
}

/** Whether one text has the contrary of what is in another; where either has both, as "left and right", it has not. */
export function areContrary(one: ReadonlySet<string>, other: ReadonlySet<string>): boolean {
  return [...one].some(
    (term) =>
      !other.has(term) && contraries.get(term)?.some((contrary) => other.has(contrary) && !one.has(contrary)),
  );
}

/** The kinds of mishap that are in a text. */
export function mishapsIn(terms: ReadonlySet<string>): string[] {
  return [...terms].filter((term) => term.startsWith("!"));
}
