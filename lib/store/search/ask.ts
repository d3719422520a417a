import { foldWords, phraseAt, sameMeaning } from "#lib/gotcha/index.ts";
import { facetsOf, solidNumbers } from "./entries.ts";

/** What is looked for: words, and what narrows them down. */
export interface Ask {
  text: string;
  /** Kinds of marks, or "gotcha", "item", "cue"; none for all. */
  kinds?: readonly string[];
  builds?: readonly string[];
  machines?: readonly string[];
}

/** Words of a question that say nothing of what is looked for. */
const stopWords = new Set(
  "a an and are at be been by can did do does for from go goes gone had has have how i in is it me my of on or our that the their there these this to was we were what when where which who why will with you".split(
    " ",
  ),
);

/** One place of a question: the ways in which it may be written, any of which will do. */
export interface Place {
  /** The folded words as they were typed. */
  words: string[];
  /** The folded words of every way; a word may be no more than the beginning of one. */
  forms: string[][];
  /** FTS5 expressions of them. */
  ways: string[];
}

/** The places of a question, in order. Words that say nothing are left out, unless there are no others. */
export function placesOf(text: string): Place[] {
  const all = foldWords(text);
  const telling = all.filter((word) => !stopWords.has(word));
  const words = telling.length > 0 ? telling : all;
  const solid = new Map(solidNumbers(text).map((one) => [one, chunkOf(text, one)]));
  const places: Place[] = [];
  for (let at = 0; at < words.length; ) {
    const number = [...solid].find(([, of]) => of.every((word, index) => words[at + index] === word));
    const phrase = phraseAt(words, at);
    const pair = [words[at] ?? "", words[at + 1] ?? ""] as const;
    if (number) places.push(numberPlace(number[1], number[0]));
    else if (phrase) places.push(phrasePlace(words.slice(at, at + phrase.length), phrase.line));
    else if (belongTogether(...pair)) places.push(numberPlace([...pair], pair.join("")));
    else places.push(wordPlace(words[at] as string));
    at += places.at(-1)?.words.length ?? 1;
  }
  // A last word that has only just been begun says little beside the others, and begins a great many.
  const begun = places.length > 1 && /^[a-z]{1,2}$/.test(places.at(-1)?.words.join(" ") ?? "");
  return begun ? places.slice(0, -1) : places;
}

function chunkOf(text: string, solid: string): string[] {
  const chunk = text.split(/\s+/).find((one) => foldWords(one).join("") === solid) ?? "";
  return foldWords(chunk);
}

/** "2 BA" is written "2BA" too. */
function belongTogether(one: string, next: string): boolean {
  return /^\d{1,3}$/.test(one) && /^[a-z]{1,3}$/.test(next);
}

function numberPlace(words: string[], solid: string): Place {
  return { words, forms: [words, [solid]], ways: [`${quote(words.join(" "))} *`, `${quote(solid)} *`] };
}

function phrasePlace(words: string[], line: number): Place {
  const forms = [words, ...(sameMeaning[line] ?? [])];
  return {
    words,
    forms,
    ways: forms.map((form, index) => `${quote(form.join(" "))}${index === 0 ? " *" : ""}`),
  };
}

function wordPlace(word: string): Place {
  const [, first, second] = /^(\d+)([a-z]+)$/.exec(word) ?? /^([a-z]+)(\d+)$/.exec(word) ?? [];
  const apart = first !== undefined && second !== undefined ? [[first, second]] : [];
  // One letter, and short numbers, begin too many words.
  const begins = word.length > 2 || !/^\d+$/.test(word);
  const ways = [begins ? `${quote(word)} *` : quote(word), ...apart.map((form) => quote(form.join(" ")))];
  return { words: [word], forms: [[word], ...apart], ways };
}

export function quote(words: string): string {
  return `"${words.replaceAll('"', '""')}"`;
}

/** A place that any of these lists of places fills. */
export function eitherOf(lists: readonly (readonly Place[])[]): Place {
  const ways = lists.map(
    (places) => `(${places.map((place) => `(${place.ways.join(" OR ")})`).join(" AND ")})`,
  );
  return { words: [], forms: [], ways };
}

/** The FTS5 expression for places, all of which must be there, narrowed down. */
export function expressionOf(places: readonly Place[], ask: Ask): string {
  const words = places.map((place) => `(${place.ways.join(" OR ")})`).join(" AND ");
  const facets = [
    anyOf((ask.kinds ?? []).map((kind) => facetsOf({ kind }))),
    anyOf([
      ...(ask.builds ?? []).map((build) => facetsOf({ build })),
      ...(ask.machines ?? []).map((machine) => facetsOf({ machine })),
    ]),
  ].filter((one) => one !== "");
  return [`{head body} : (${words})`, ...facets].join(" AND ");
}

function anyOf(facets: string[]): string {
  return facets.length === 0 ? "" : `facets : (${facets.map(quote).join(" OR ")})`;
}
