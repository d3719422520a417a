/**
 * Whether a word is another one with at most that many slips: a letter left out, put in, put for another, or two
 * neighbours changed over (Damerau 1964, in its restricted form). Returns the number of slips, or null.
 */
export function slips(word: string, other: string, most: number): number | null {
  if (Math.abs(word.length - other.length) > most || lettersApart(word, other) > 2 * most) return null;
  let before: number[] = [];
  let row = Array.from({ length: other.length + 1 }, (_, index) => index);
  for (let i = 1; i <= word.length; i++) {
    const next = [i];
    for (let j = 1; j <= other.length; j++) {
      const same = word[i - 1] === other[j - 1] ? 0 : 1;
      let least = Math.min((row[j] ?? 0) + 1, (next[j - 1] ?? 0) + 1, (row[j - 1] ?? 0) + same);
      if (i > 1 && j > 1 && word[i - 1] === other[j - 2] && word[i - 2] === other[j - 1]) {
        least = Math.min(least, (before[j - 2] ?? 0) + 1);
      }
      next.push(least);
    }
    if (Math.min(...next) > most) return null;
    before = row;
    row = next;
  }
  const found = row[other.length] ?? Number.POSITIVE_INFINITY;
  return found <= most ? found : null;
}

/** How many letters occur in one of two words alone, at least: a slip makes two of them at most. */
function lettersApart(word: string, other: string): number {
  let apart = lettersOf(word) ^ lettersOf(other);
  let count = 0;
  for (; apart !== 0; apart &= apart - 1) count++;
  return count;
}

function lettersOf(word: string): number {
  let letters = 0;
  for (let at = 0; at < word.length; at++) letters |= 1 << (word.charCodeAt(at) & 31);
  return letters;
}
