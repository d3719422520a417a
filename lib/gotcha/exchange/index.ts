import type { Gotcha, Sighting } from "#lib/build/index.ts";
import type { BookFile } from "./form.ts";

export { BookError, type BookFile, fromCsv, fromJson, toCsv, toJson } from "./form.ts";

/** What comes into the workshop's book of somebody else's, and what it has already. */
export interface Newcomers {
  gotchas: Gotcha[];
  sightings: Sighting[];
  known: number;
}

/**
 * What of another book is new here. Every newcomer bears its origin, so that it counts as heard until it is met here;
 * an entry that the workshop has, struck out or not, is left as it is, and so are sightings that it has.
 */
export function newcomers(
  here: { gotchas: ReadonlySet<string>; sightings: ReadonlySet<string> },
  given: BookFile,
  origin: string,
): Newcomers {
  const gotchas = given.gotchas.filter((one) => !here.gotchas.has(one.id) && one.gone === null);
  const known = new Set([...here.gotchas, ...gotchas.map((one) => one.id)]);
  const from = (old: string) => (old === "" ? origin : `${old}, by ${origin}`).slice(0, 500);
  return {
    gotchas: gotchas.map((one) => ({
      ...one,
      rev: 0,
      origin: from(one.origin),
      // What the stranger says of one's own entries is not taken on.
      joinedInto:
        one.joinedInto !== null && known.has(one.joinedInto) && !here.gotchas.has(one.joinedInto)
          ? one.joinedInto
          : null,
      supersedes: one.supersedes.filter((id) => !here.gotchas.has(id)),
    })),
    sightings: given.sightings
      .filter((one) => one.gone === null && !here.sightings.has(one.id) && known.has(one.gotchaId))
      .map((one) => ({
        ...one,
        rev: 0,
        buildId: null,
        machineId: null,
        markId: null,
        origin: from(one.origin),
      })),
    known: given.gotchas.length - gotchas.length,
  };
}
