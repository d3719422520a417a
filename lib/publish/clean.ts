/** What was replaced in a text, and how often, by code point. */
export type Replaced = Map<number, number>;

/** Turns one user text into one that an output can carry, and notes what it replaced. */
export type Cleaner = (text: string) => string;

/** Applies a cleaner to every text of a value, whatever its shape. */
export function cleanTree<T>(value: T, clean: Cleaner): T {
  if (typeof value === "string") return clean(value) as T;
  if (Array.isArray(value)) return value.map((one) => cleanTree(one, clean)) as T;
  if (typeof value !== "object" || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([key, one]) => [key, cleanTree(one, clean)])) as T;
}

/**
 * Control characters, halves of surrogate pairs, and the controls that override the direction of writing: they
 * can reorder digits under the reader's eyes. Text that simply is written from right to left has none of them.
 */
const unprintable = /(?![\n\t])\p{Cc}|[\u202a-\u202e\u2066-\u2069\ufffe\uffff]|\p{Cs}/gu;

/** A cleaner for outputs made of text: what cannot be written is replaced by U+FFFD, and noted. */
export function textCleaner(replaced: Replaced): Cleaner {
  return (text) =>
    text.replace(/\r\n?/g, "\n").replace(unprintable, (character) => {
      note(replaced, character);
      return "\ufffd";
    });
}

/** Counts one more of a character. */
export function note(replaced: Replaced, character: string): void {
  const code = character.codePointAt(0) as number;
  replaced.set(code, (replaced.get(code) ?? 0) + 1);
}

/** What was replaced, as a sentence for the losses; null where nothing was. */
export function replacedSentence(replaced: Replaced, sign: string, why: string): string | null {
  const total = [...replaced.values()].reduce((sum, count) => sum + count, 0);
  if (total === 0) return null;
  const codes = [...replaced]
    .sort(([a], [b]) => a - b)
    .map(([code, count]) => `${codeName(code)} (${count})`);
  const shown = codes.length > 20 ? [...codes.slice(0, 20), `and ${codes.length - 20} more`] : codes;
  return `${total} ${total === 1 ? "character is" : "characters are"} shown as ${sign}, because ${why}: ${shown.join(", ")}.`;
}

function codeName(code: number): string {
  return `U+${code.toString(16).toUpperCase().padStart(4, "0")}`;
}

/** The paragraphs of a text: its lines that say something. */
export function paragraphs(text: string): string[] {
  return text
    .split(/\n+/)
    .map((line) => line.trim())
    .filter(Boolean);
}
