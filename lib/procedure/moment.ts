import type { Recording } from "#lib/build/index.ts";
import type { Film } from "#lib/cut/index.ts";
import type { Mark } from "#lib/mark/index.ts";
import { exact, ofNumber, rational, toNumber } from "#lib/rational/index.ts";
import {
  type Cut,
  filmPlaces,
  filmSpans,
  makeCut,
  mediaFragment,
  readRate,
  sayMoment,
} from "#lib/time/index.ts";
import type { FilmOfProcedure, Moment, PlaceInFilm } from "./tree.ts";

interface Lookup {
  recordings: ReadonlyMap<string, Recording>;
  film: Film | null;
}

/** The moment of a mark, with its places in the film; null for one without film. */
export function momentOf(mark: Mark, { recordings, film }: Lookup): Moment | null {
  const recording = mark.recordingId === null ? undefined : recordings.get(mark.recordingId);
  if (!recording || mark.at === null) return null;
  const { at, until } = mark;
  const places = film ? placesOf(film, recording.id, at, until) : undefined;
  const place = places?.find(({ link }) => link !== null);
  return {
    recordingId: recording.id,
    recordingName: recording.name,
    at,
    ...(until !== null && { until }),
    written: place?.written ?? sayMoment(at),
    link: place?.link ?? publishedLink(recording.publishedAt, at),
    ...(place && film && { of: film.name }),
    ...(places && { film: places }),
  };
}

function placesOf({ row, cut }: Film, recording: string, at: number, until: number | null): PlaceInFilm[] {
  const places =
    until === null || until <= at
      ? filmPlaces(cut, recording, at)
      : filmSpans(cut, recording, { start: at, end: until }).map(({ start, end }) => ({
          at: start,
          until: end,
        }));
  return places.map((place) => ({
    ...place,
    written: sayMoment(place.at),
    link: publishedLink(row.publishedAt, place.at, place.until),
  }));
}

/**
 * The address of a second of a published film. Hosts have ways of their own to say a second: `{seconds}` stands where
 * it goes. An address without it gets a media fragment (W3C Media Fragments URI 1.0), with an end where there is one.
 * Null unless it is an http address.
 */
export function publishedLink(template: string, at: number, until: number | null = null): string | null {
  const seconds = Math.floor(at);
  const address = template.trim().replaceAll("{seconds}", String(seconds));
  if (!URL.canParse(address)) return null;
  const url = new URL(address);
  if (!template.includes("{seconds}"))
    url.hash = mediaFragment(seconds, until === null ? null : Math.ceil(until));
  return url.protocol === "https:" || url.protocol === "http:" ? url.href : null;
}

/** The film as the procedure keeps it. */
export function filmOfProcedure({ row, name, rate, cut }: Film): FilmOfProcedure {
  return {
    cut: row.id,
    name,
    rate,
    duration: toNumber(cut.duration),
    publishedAt: row.publishedAt,
    segments: cut.segments.map(({ source, start, end, from, speed }) => ({
      recordingId: source,
      start: exact(start),
      end: exact(end),
      from: exact(from),
      speed: exact(speed),
    })),
  };
}

/** The cut that a procedure's film is, to look moments up in. */
export function cutOfFilm({ rate, duration, segments }: FilmOfProcedure): Cut {
  const frames = readRate(rate) ?? { n: 25n, d: 1n };
  const placed = segments.map(({ recordingId, start, end, from, speed }) => ({
    source: recordingId,
    start: rational(start),
    end: rational(end),
    from: rational(from),
    speed: rational(speed),
  }));
  return makeCut(placed, { n: frames.d, d: frames.n }, ofNumber(duration));
}
