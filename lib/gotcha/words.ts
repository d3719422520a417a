import lexicon from "./lexicon.json" with { type: "json" };

/**
 * The words of a text, folded for comparing: small letters, no accents, plurals as singulars. Numbers and letters
 * that stand together stay together ("M6", "2BA").
 */
export function foldWords(text: string): string[] {
  const plain = text.normalize("NFKD").replace(/\p{M}/gu, "").toLowerCase();
  return (plain.match(/[\p{L}\p{N}]+/gu) ?? []).map(singular);
}

/** The singular of an English word, near enough to compare by. */
export function singular(word: string): string {
  if (word.length < 4 || !word.endsWith("s")) return word;
  if (word.endsWith("ies") && word.length > 4) return `${word.slice(0, -3)}y`;
  if (/(ss|sh|ch|x|z)es$/.test(word)) return word.slice(0, -2);
  return /(ss|us|is)$/.test(word) ? word : word.slice(0, -1);
}

/** Words of the trade that mean the same, each as folded words; the first of a line stands for all. */
export const sameMeaning: readonly (readonly string[][])[] = lexicon.same.map((names) =>
  names.map(foldWords),
);

interface Phrase {
  words: string[];
  /** The number of its line. */
  line: number;
}

/** Phrases by their first word, longest first. */
const phrases = new Map<string, Phrase[]>();
for (const [line, names] of sameMeaning.entries()) {
  for (const words of names) {
    const first = words[0] as string;
    phrases.set(first, [...(phrases.get(first) ?? []), { words, line }]);
  }
}
for (const list of phrases.values()) list.sort((a, b) => b.words.length - a.words.length);

/** The phrase of the lexicon that begins at a word: how many words it has, and the number of its line; or null. */
export function phraseAt(words: readonly string[], at: number): { length: number; line: number } | null {
  const here = phrases.get(words[at] as string) ?? [];
  const found = here.find((phrase) => phrase.words.every((word, index) => words[at + index] === word));
  return found ? { length: found.words.length, line: found.line } : null;
}

/** Folded words with each phrase of the lexicon put as one word that stands for its meaning. */
export function meanings(text: string): string[] {
  const words = foldWords(text);
  const result: string[] = [];
  for (let at = 0; at < words.length; ) {
    const phrase = phraseAt(words, at);
    result.push(phrase ? `=${phrase.line}` : (words[at] as string));
    at += phrase?.length ?? 1;
  }
  return result;
}

/** Whether a name means what another one names: all its meanings are in the other. "Pump" names a "Water pump". */
export function names(wanted: string, name: string): boolean {
  const of = new Set([...meanings(name), ...foldWords(name)]);
  const all = meanings(wanted);
  return all.length > 0 && (all.every((one) => of.has(one)) || foldWords(wanted).every((one) => of.has(one)));
}

/** Whether two short texts are the same but for case, accents and spaces. */
export function sameText(a: string, b: string): boolean {
  return foldWords(a).join(" ") === foldWords(b).join(" ");
}
