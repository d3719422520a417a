/**
 * Letters of a revision, in order. I, O, Q, S, X and Z are left out since they are easily taken for others, as
 * drawing practice has it (ASME Y14.35; from memory).
 */
const letters = [..."ABCDEFGHJKLMNPRTUVWY"];

/** The revision after those that there are: A first, B after A, AA after Y. Their order does not matter. */
export function nextRevision(revisions: readonly string[]): string {
  const last = Math.max(-1, ...revisions.map(placeOf));
  return revisionAt(last + 1);
}

/** Earlier revisions first. */
export function compareRevisions(a: string, b: string): number {
  return placeOf(a) - placeOf(b) || (a < b ? -1 : a > b ? 1 : 0);
}

/** The place of a revision in their order, from 0; -1 for what is none. */
function placeOf(revision: string): number {
  let place = 0;
  for (const letter of revision) {
    const digit = letters.indexOf(letter);
    if (digit < 0) return -1;
    place = place * letters.length + digit + 1;
  }
  return place - 1;
}

function revisionAt(place: number): string {
  const above = Math.floor(place / letters.length);
  return (above > 0 ? revisionAt(above - 1) : "") + letters[place % letters.length];
}
