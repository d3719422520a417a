import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { readCmx3600, readOtio } from "#lib/cut/index.ts";
import { toNumber } from "#lib/rational/index.ts";
import {
  type Cut,
  type FrameRate,
  filmPlaces,
  filmSpans,
  filmToRecording,
  makeCut,
  readRate,
  sourcesAt,
} from "#lib/time/index.ts";
import {
  generatedList,
  generatedTrack,
  lengthOf,
  lookInto,
  type Oracle,
  oracleOfList,
  type Seen,
  textOfList,
  timelineOf,
} from "./generated.ts";

/** 100 lists and 100 timelines, 50 moments each: 10,000 moments through 200 cuts. */
const cuts = 100;
const moments = fc.array(fc.double({ min: 0.01, max: 0.99, noNaN: true }), { minLength: 50, maxLength: 50 });
const runs = { numRuns: cuts, seed: 1911 };

/** A moment inside a frame of the film, never on a seam. */
const inFrame = (frames: number, share: number): number => {
  const frame = Math.floor(share * frames);
  return frame + 0.1 + 0.8 * (share * frames - frame);
};

/** Asks a cut and the oracle the same: what is seen, whether it comes back, how often. */
function holds(cut: Cut, oracle: Oracle, rate: number, shares: readonly number[]): void {
  for (const share of shares) {
    const film = inFrame(oracle.frames, share);
    const expected = oracle.look(film);
    const got = sourcesAt(cut, film / rate).map(({ source, at }) => ({ source, at: at * rate }));
    expect(sorted(got), `what is seen at frame ${film}`).toEqual(
      sorted(expected).map(({ source, at }) => ({ source, at: expect.closeTo(at, 5) })),
    );
    for (const { source, at } of expected) {
      const places = filmPlaces(cut, source, at / rate);
      const back = places.some((place) => covers(place, film / rate, 0.5 / rate));
      expect(back, `frame ${at} of ${source} is back at film frame ${film}`).toBe(true);
      for (const place of places) {
        const there = oracle.look(place.at * rate + 1e-7);
        const near = there.some((one) => one.source === source && Math.abs(one.at - at) <= 0.5 + 1e-5);
        expect(near, `frame ${at} of ${source} is seen where it is said to be`).toBe(true);
      }
    }
  }
}

const sorted = (seen: readonly Seen[]) =>
  [...seen].sort((a, b) => (a.source < b.source ? -1 : a.source > b.source ? 1 : a.at - b.at));

const covers = ({ at, until }: { at: number; until: number | null }, film: number, half: number) =>
  until === null ? Math.abs(at - film) <= half : at - half <= film && film < until + half;

describe("moments go through a cut and come back to within half a frame", () => {
  test("CMX3600 lists: dissolves, speeds, backwards, frozen, drop-frame", () => {
    fc.assert(
      fc.property(generatedList, moments, (list, shares) => {
        const rate = readRate(list.rate) as FrameRate;
        const read = readCmx3600(textOfList(list), rate);
        expect(read.problems).toEqual([]);
        const cut = makeCut(read.segments, { n: rate.d, d: rate.n }, read.duration);
        const oracle = oracleOfList(list);
        expect(toNumber(cut.duration) * toNumber(rate)).toBeCloseTo(oracle.frames, 6);
        holds(cut, oracle, toNumber(rate), shares);
        // The stretch that stands in the film twice comes back twice.
        const last = list.events.length - 1;
        const start = oracle.frames - (list.events[last]?.length ?? 0);
        const [seen] = oracle.look(start + 0.4);
        const places = filmPlaces(cut, `${seen?.source}`, (seen?.at ?? 0) / toNumber(rate));
        const near = (film: number) =>
          places.some((place) => covers(place, film / toNumber(rate), 0.5 / toNumber(rate)));
        expect(near(0.4) && near(start + 0.4), "it is in the film twice").toBe(true);
      }),
      runs,
    );
  });

  test("OpenTimelineIO: nested stacks and tracks, gaps, transitions, time warps", () => {
    const rates = fc.constantFrom(24, 25, 30000 / 1001, 60);
    fc.assert(
      fc.property(generatedTrack, rates, moments, (track, rate, shares) => {
        const oracle = { look: (film: number) => lookInto(track, film), frames: lengthOf(track) };
        const read = readOtio(timelineOf(track, rate));
        fc.pre(read.segments.length > 0);
        expect(read.problems).toEqual([]);
        const named = (key: string) => decodeURIComponent(key.split("/").at(-1) as string);
        const segments = read.segments.map((segment) => ({
          ...segment,
          source: named(segment.source),
        }));
        const cut = makeCut(segments, { n: read.rate.d, d: read.rate.n }, read.duration);
        holds(cut, oracle, toNumber(read.rate), shares);
      }),
      runs,
    );
  });
});

describe("stretches", () => {
  const second = { n: 1n, d: 1n };
  const at = (value: number) => ({ n: BigInt(value), d: 1n });
  const plain = (start: number, end: number, from: number, speed = 1) => ({
    source: "one",
    start: at(start),
    end: at(end),
    from: at(from),
    speed: at(speed),
  });

  test("a stretch that was cut up lies in several places of the film", () => {
    const cut = makeCut([plain(0, 10, 100), plain(10, 20, 200), plain(20, 30, 105)], second);
    expect(filmSpans(cut, "one", { start: 104, end: 112 })).toEqual([
      { start: 4, end: 10 },
      { start: 20, end: 27 },
    ]);
    expect(filmSpans(cut, "one", { start: 300, end: 310 })).toEqual([]);
  });

  test("a stretch of film comes back as stretches of its recordings, in the film's order", () => {
    const cut = makeCut([plain(0, 10, 100), plain(10, 20, 50, -2), plain(20, 25, 7, 0)], second);
    expect(filmToRecording(cut, { start: 8, end: 22 })).toEqual([
      { source: "one", start: 108, end: 110 },
      { source: "one", start: 30, end: 50 },
      { source: "one", start: 7, end: 8 },
    ]);
  });

  test("segments that carry on without a seam are one, and an instant on a seam has one place", () => {
    const cut = makeCut([plain(10, 20, 110), plain(0, 10, 100)], second);
    expect(cut.segments).toHaveLength(1);
    const parted = makeCut([plain(0, 10, 100), plain(10, 20, 300)], second);
    expect(sourcesAt(parted, 10)).toEqual([{ source: "one", at: 300 }]);
    expect(filmPlaces(parted, "one", 110)).toEqual([]);
  });
});
