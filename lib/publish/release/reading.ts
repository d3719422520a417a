import type { BuildDocument, Release } from "#lib/build/index.ts";
import { sayWallDate } from "#lib/time/index.ts";
import { againText } from "../words.ts";
import { releasesInOrder } from "./history.ts";

/**
 * What a reader of a release has to know today: that there are later ones, and what somebody who followed this one
 * has to do again.
 *
 * @param document the build as it is now, not as it was frozen
 */
export function noticesOf(document: BuildDocument, release: Pick<Release, "id">): string[] {
  const releases = releasesInOrder(document);
  const later = releases.slice(releases.findIndex((one) => one.id === release.id) + 1);
  const latest = later.at(-1);
  if (!latest) return [];
  const again = later.filter((one) => one.again.trim() !== "");
  return [
    `There is a later revision: ${latest.revision}, ${sayWallDate(latest.date)}. Work to that one.`,
    ...again.map((one) => `Revision ${one.revision}. ${againText({ ...one })}`),
  ];
}
