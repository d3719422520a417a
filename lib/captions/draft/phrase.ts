import type { Token } from "./stream.ts";

/**
 * Phrases are how the lexicons say what they look for. Words stand apart by blanks; contractions are taken apart
 * ("do not"). Beside plain words there are
 *
 * - `finger/hand`       one of several words;
 * - `just?`             a word that may be missing;
 * - `*3`                up to three words of any kind, within the sentence;
 * - `{part}`            a word of a named set (`sets` below): a part, a number, a verb of work …;
 * - `{part}?`           the same, may be missing.
 */
export interface Phrase {
  text: string;
  steps: Step[];
}

type Step =
  | { kind: "words"; words: ReadonlySet<string>; optional: boolean }
  | { kind: "set"; set: WordSet; optional: boolean }
  | { kind: "gap"; most: number };

/** Whether the word at a place belongs to a set. */
export type WordSet = (tokens: readonly Token[], place: number) => boolean;

/** Named sets that phrases may use. */
export type WordSets = Readonly<Record<string, WordSet>>;

/** Takes a phrase apart. Throws on a set that nobody has named: that is a slip in a lexicon. */
export function phrase(text: string, sets: WordSets = {}): Phrase {
  const steps = text
    .trim()
    .split(/\s+/)
    .map((part): Step => {
      const optional = part.endsWith("?");
      const body = optional ? part.slice(0, -1) : part;
      if (/^\*\d+$/.test(body)) return { kind: "gap", most: Number(body.slice(1)) };
      const name = /^\{(\w+)\}$/.exec(body)?.[1];
      if (name === undefined) return { kind: "words", words: new Set(body.split("/")), optional };
      const set = sets[name];
      if (!set) throw new Error(`the phrase “${text}” uses a set that is not named: ${name}`);
      return { kind: "set", set, optional };
    });
  return { text, steps };
}

/** Where a phrase that begins at a place ends (behind its last word), or -1. It stays before `limit`. */
export function matchAt(tokens: readonly Token[], place: number, limit: number, { steps }: Phrase): number {
  return follow(tokens, place, limit, steps, 0);
}

function follow(
  tokens: readonly Token[],
  place: number,
  limit: number,
  steps: readonly Step[],
  index: number,
): number {
  let at = place;
  for (let k = index; k < steps.length; k++) {
    const step = steps[k] as Step;
    if (step.kind === "gap") {
      for (let skip = 0; skip <= step.most && at + skip <= limit; skip++) {
        const end = follow(tokens, at + skip, limit, steps, k + 1);
        if (end >= 0) return end;
      }
      return -1;
    }
    const fits = at < limit && fitsStep(tokens, at, step);
    if (fits && step.optional) {
      const end = follow(tokens, at + 1, limit, steps, k + 1);
      if (end >= 0) return end;
    } else if (fits) at++;
    else if (!step.optional) return -1;
  }
  return at;
}

function fitsStep(tokens: readonly Token[], place: number, step: Exclude<Step, { kind: "gap" }>): boolean {
  return step.kind === "set" ? step.set(tokens, place) : step.words.has(tokens[place]?.word ?? "");
}

/** A phrase found, and what it was listed with. */
export interface Found<T> {
  from: number;
  to: number;
  entry: T;
}

interface Listed<T> {
  phrase: Phrase;
  entry: T;
}

/** Many phrases, sorted by the word or the set they begin with, so that a text is gone through once. */
export class PhraseBook<T> {
  private readonly byWord = new Map<string, Listed<T>[]>();
  private readonly bySet = new Map<WordSet, Listed<T>[]>();
  private readonly others: Listed<T>[] = [];

  constructor(entries: readonly (readonly [string, T])[], sets: WordSets = {}) {
    for (const [text, entry] of entries) {
      const made = { phrase: phrase(text, sets), entry };
      const [first] = made.phrase.steps;
      if (first?.kind === "words" && !first.optional) {
        for (const word of first.words) under(this.byWord, word).push(made);
      } else if (first?.kind === "set" && !first.optional) under(this.bySet, first.set).push(made);
      else this.others.push(made);
    }
  }

  /** The longest phrase at a place, or null. */
  at(tokens: readonly Token[], place: number, limit: number): Found<T> | null {
    const known = this.byWord.get(tokens[place]?.word ?? "");
    let best = known ? longest(known, tokens, place, limit, null) : null;
    for (const [set, list] of this.bySet) {
      if (place < limit && set(tokens, place)) best = longest(list, tokens, place, limit, best);
    }
    return this.others.length === 0 ? best : longest(this.others, tokens, place, limit, best);
  }

  /** Every phrase in a run of words, one behind another, the longest at each place. */
  all(tokens: readonly Token[], from: number, to: number): Found<T>[] {
    const found: Found<T>[] = [];
    for (let place = from; place < to; place++) {
      const one = this.at(tokens, place, to);
      if (!one) continue;
      found.push(one);
      place = one.to - 1;
    }
    return found;
  }

  /** The longest phrase at each place of a run, though they overlap. */
  each(tokens: readonly Token[], from: number, to: number): Found<T>[] {
    const found: Found<T>[] = [];
    for (let place = from; place < to; place++) {
      const one = this.at(tokens, place, to);
      if (one) found.push(one);
    }
    return found;
  }

  /** Whether any phrase stands in a run of words; the first of them. */
  first(tokens: readonly Token[], from: number, to: number): Found<T> | null {
    for (let place = from; place < to; place++) {
      const one = this.at(tokens, place, to);
      if (one) return one;
    }
    return null;
  }
}

function under<K, T>(lists: Map<K, Listed<T>[]>, key: K): Listed<T>[] {
  const list = lists.get(key) ?? [];
  lists.set(key, list);
  return list;
}

function longest<T>(
  list: readonly Listed<T>[],
  tokens: readonly Token[],
  place: number,
  limit: number,
  before: Found<T> | null,
): Found<T> | null {
  let best = before;
  for (const one of list) {
    const to = matchAt(tokens, place, limit, one.phrase);
    if (to > place && to > (best?.to ?? -1)) best = { from: place, to, entry: one.entry };
  }
  return best;
}
