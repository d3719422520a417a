import type { Gotcha } from "#lib/build/index.ts";
import { meanings, names } from "./words.ts";

/** Two entries that may say the same. */
export interface Alike {
  ids: [string, string];
  /** From 0 to 1. */
  likeness: number;
}

/** What a gotcha says, ready to be compared. */
interface Said {
  gotcha: Gotcha;
  words: Map<string, number>;
  length: number;
}

/** From this on two are offered as perhaps the same; chosen on pairs reworded by hand (tests/gotcha/alike.test.ts). */
export const alikeFrom = 0.35;

/** Words that join others and tell nothing apart. */
const joining = new Set(
  "a an and are as at be because been behind by for from goes has have if in into is it its no not of off on once one or out put so than that the their there they through to too under up was when where while with without".split(
    " ",
  ),
);

/**
 * Pairs that may say the same, most alike first: words by their meaning, in whatever order and with their endings off,
 * rare words counting more than common ones. What the restorer has said is not the same is not offered again.
 *
 * @param only pairs with this one alone, as when it is being written
 */
export function alikes(gotchas: readonly Gotcha[], only?: Gotcha): Alike[] {
  const present = gotchas.filter(
    (one) => one.gone === null && one.joinedInto === null && one.id !== only?.id,
  );
  const all = only ? [only, ...present] : present;
  const weight = rarity(all);
  const [first, ...others] = all.map((gotcha) => saidBy(gotcha, weight));
  if (!first) return [];
  const pairs: Alike[] = [];
  const meet = meeting();
  const compare = (one: Said, other: Said) => {
    const likeness = likenessOf(one, other);
    if (likeness < alikeFrom || !couldBeSame(one.gotcha, other.gotcha, meet)) return;
    pairs.push({ ids: [one.gotcha.id, other.gotcha.id], likeness });
  };
  if (only) for (const other of others) compare(first, other);
  else eachSharing([first, ...others], compare);
  return pairs.sort((a, b) => b.likeness - a.likeness);
}

/**
 * The pairs that can be alike enough, and not all others: each is known by its rarest words, so many that what is left
 * of it could not reach the threshold. Of two that do, the rarest word they share is then among those of both
 * (prefix filtering: Bayardo, Ma, Srikant 2007, "Scaling up all pairs similarity search"; from memory).
 */
function eachSharing(all: readonly Said[], compare: (one: Said, other: Said) => void): void {
  const known = new Map<string, Said[]>();
  for (const one of all) {
    const met = new Set<Said>();
    for (const word of rarestOf(one)) {
      const there = known.get(word) ?? [];
      for (const other of there) met.add(other);
      there.push(one);
      known.set(word, there);
    }
    for (const other of met) compare(other, one);
  }
}

/** The rarest words of what is said, until the others together weigh less than the threshold asks. */
function rarestOf({ words, length }: Said): string[] {
  const rarestFirst = [...words].sort(([a, one], [b, other]) => other - one || (a < b ? -1 : 1));
  let left = length ** 2;
  const enough = rarestFirst.findIndex(([, weight]) => {
    const before = left;
    left -= weight ** 2;
    return before < (alikeFrom * length) ** 2;
  });
  return rarestFirst.slice(0, enough < 0 ? undefined : enough).map(([word]) => word);
}

type Meet = (a: string, b: string) => boolean;

/** Whether one of two names means the other; the same names come again and again in a book. */
function meeting(): Meet {
  const known = new Map<string, boolean>();
  return (a, b) => {
    const key = `${a}\n${b}`;
    const told = known.get(key) ?? (names(a, b) || names(b, a));
    known.set(key, told);
    return told;
  };
}

/** Not where the restorer has said no, or where they name different assemblies or makers. */
function couldBeSame(one: Gotcha, other: Gotcha, meet: Meet): boolean {
  if (one.notSame.includes(other.id) || other.notSame.includes(one.id)) return false;
  if (one.supersedes.includes(other.id) || other.supersedes.includes(one.id)) return false;
  return (["assembly", "maker"] as const).every((what) => {
    const of = (gotcha: Gotcha) =>
      gotcha.appliesTo.map((scope) => scope[what]).filter((name) => name.trim() !== "");
    const [a, b] = [of(one), of(other)];
    return a.length === 0 || b.length === 0 || a.some((name) => b.some((with_) => meet(name, with_)));
  });
}

/** How rare each word is among the entries: the logarithm of their number over those that have it. */
function rarity(gotchas: readonly Gotcha[]): (word: string) => number {
  const count = new Map<string, number>();
  for (const gotcha of gotchas) {
    for (const word of new Set(wordsOf(gotcha))) count.set(word, (count.get(word) ?? 0) + 1);
  }
  return (word) => Math.log(1 + gotchas.length / (count.get(word) ?? 1));
}

function saidBy(gotcha: Gotcha, weight: (word: string) => number): Said {
  const words = new Map([...new Set(wordsOf(gotcha))].map((word) => [word, weight(word)]));
  const length = Math.hypot(...words.values());
  return { gotcha, words, length };
}

function wordsOf({ symptom }: Gotcha): string[] {
  return meanings(symptom)
    .filter((word) => !joining.has(word))
    .map(stem);
}

/** A word without its ending, near enough: "tightened" and "tightening" are one. */
function stem(word: string): string {
  if (word.length < 5) return word;
  return word.replace(/(ing|ed|er|e|n|y|s)$/, "");
}

/** The cosine of the angle between what two say. */
function likenessOf(one: Said, other: Said): number {
  let sum = 0;
  for (const [word, weight] of one.words) sum += weight * (other.words.get(word) ?? 0);
  return one.length * other.length === 0 ? 0 : sum / (one.length * other.length);
}
