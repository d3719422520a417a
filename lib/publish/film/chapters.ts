import type { Procedure } from "#lib/procedure/tree.ts";
import { allSteps, instructionOf, titleOf } from "../words.ts";

/** Where a part of the film begins, in seconds, and what it shows. */
export interface Chapter {
  at: number;
  title: string;
}

/** What hosts ask of the chapter list in a film's description (common practice, no source). */
export const leastChapters = 3;
export const shortestChapter = 10;

/** Every place at which a step is seen, in the film's order; steps seen at one instant are one chapter. */
export function placesOfSteps(procedure: Procedure): Chapter[] {
  const places = allSteps(procedure).flatMap((step) =>
    (step.moment?.film ?? []).map(({ at }) => ({ at, title: oneLine(instructionOf(step)) })),
  );
  return joinedAt(places.sort((a, b) => a.at - b.at));
}

function joinedAt(places: readonly Chapter[]): Chapter[] {
  const chapters: Chapter[] = [];
  for (const place of places) {
    const last = chapters.at(-1);
    if (last && place.at - last.at < 0.001) last.title = both(last.title, place.title);
    else chapters.push({ ...place });
  }
  return chapters;
}

/**
 * The chapters for a film's description, at whole seconds: the first at 0:00, ascending, none shorter than ten
 * seconds. What is shorter is joined with what follows it, at the end with what comes before. Fewer than three are
 * none.
 */
export function chaptersForDescription(procedure: Procedure): Chapter[] {
  const duration = Math.floor(procedure.film?.duration ?? 0);
  const places = placesOfSteps(procedure).map(({ at, title }) => ({ at: Math.floor(at), title }));
  const chapters = longEnough(fromNought(places, titleOf(procedure)), duration);
  return chapters.length < leastChapters ? [] : chapters;
}

/** The first chapter begins the film: what comes soon enough is drawn there, else the film's title goes before. */
function fromNought(places: readonly Chapter[], title: string): Chapter[] {
  const [first, ...others] = places;
  if (!first) return [];
  if (first.at < shortestChapter) return [{ ...first, at: 0 }, ...others];
  return [{ at: 0, title: oneLine(title) }, ...places];
}

function longEnough(places: readonly Chapter[], duration: number): Chapter[] {
  const chapters: Chapter[] = [];
  for (const place of places) {
    const last = chapters.at(-1);
    const joins = last && (place.at - last.at < shortestChapter || duration - place.at < shortestChapter);
    if (joins) last.title = both(last.title, place.title);
    else chapters.push({ ...place });
  }
  return chapters;
}

function both(one: string, other: string): string {
  return one === other || one.endsWith(`; ${other}`) ? one : `${one}; ${other}`;
}

function oneLine(text: string): string {
  return text.trim().replace(/\s+/g, " ");
}
