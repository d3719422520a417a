import type { CheckedProcedure, Procedure } from "#lib/procedure/tree.ts";
import { sayMoment } from "#lib/time/index.ts";
import { cleanTree, type Replaced, replacedSentence, textCleaner } from "../clean.ts";
import { type Output, type OutputFile, textFile } from "../output.ts";
import { allSteps, stepNumbers } from "../words.ts";
import { type Chapter, chaptersForDescription, leastChapters, placesOfSteps } from "./chapters.ts";
import { webVtt } from "./webvtt.ts";

const noFilm =
  "There is no edited film, so there are no chapters: bring in its edit list, or mark the cut by hand.";

/**
 * The steps as chapters of the edited film: `chapters.txt` for the film's description and `chapters.vtt` for a
 * player (WebVTT).
 */
export async function toChapters({ procedure: given }: Pick<CheckedProcedure, "procedure">): Promise<Output> {
  const replaced: Replaced = new Map();
  const procedure = cleanTree(given, textCleaner(replaced));
  if (!procedure.film) return { files: [], losses: [noFilm] };
  const chapters = chaptersForDescription(procedure);
  const places = placesOfSteps(procedure);
  const files: OutputFile[] = [];
  if (chapters.length > 0) files.push(textFile("chapters.txt", lines(chapters)));
  if (places.length > 0) files.push(textFile("chapters.vtt", chapterTrack(places, procedure.film.duration)));
  const cleaned = replacedSentence(replaced, "\ufffd", "chapters cannot carry them");
  return {
    files,
    losses: [...lossesOf(procedure, chapters, places), ...(cleaned ? [`Chapters: ${cleaned}`] : [])],
  };
}

function lines(chapters: readonly Chapter[]): string {
  return chapters.map(({ at, title }) => `${sayMoment(at)} ${title}\n`).join("");
}

/** Each chapter lasts until the next begins. */
function chapterTrack(places: readonly Chapter[], duration: number): string {
  return webVtt(
    places.map(({ at, title }, index) => ({
      start: at,
      end: places[index + 1]?.at ?? duration,
      text: title,
    })),
  );
}

function lossesOf(procedure: Procedure, chapters: Chapter[], places: Chapter[]): string[] {
  const losses = [...fellOut(procedure)];
  if (chapters.length === 0)
    losses.push(
      `No chapters.txt: the film has fewer than ${leastChapters} chapters of ten seconds or more, and hosts ask for ${leastChapters} (common practice, no source).`,
    );
  else if (chapters.length < places.length)
    losses.push(
      `chapters.txt: ${places.length} places came to ${chapters.length} chapters; those shorter than ten seconds were joined with a neighbour.`,
    );
  losses.push("Chapters carry each step's instruction and nothing else of it.");
  return losses;
}

/** Steps that were filmed and that the edited film does not show. */
export function fellOut(procedure: Procedure): string[] {
  if (!procedure.film) return [];
  const gone = allSteps(procedure).filter(({ moment }) => moment?.film?.length === 0);
  if (gone.length === 0) return [];
  const numbers = stepNumbers(gone.map(({ number }) => number));
  return [`${numbers} ${gone.length === 1 ? "is" : "are"} not in the film.`];
}
