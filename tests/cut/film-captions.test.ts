import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { newCut, newRecording } from "#lib/build/index.ts";
import { readCaptionText } from "#lib/captions/index.ts";
import { bringFilmCaptions, readFilm } from "#lib/cut/index.ts";
import { sampleDocument } from "../sample.ts";

const recordings = ["one", "two"].map((id) =>
  newRecording({ id, buildId: "build-1", sittingId: "sitting-1", name: `${id}.mp4` }),
);
const stretch = (at: number, until: number, recordingId: string, from: number, speed = 1) => ({
  at,
  until,
  recordingId,
  from,
  speed,
});
const filmOf = (...segments: ReturnType<typeof stretch>[]) =>
  readFilm(newCut({ id: "cut", buildId: "build-1", form: "hand", segments }), recordings);

/** A caption file as an editing program writes one: WebVTT, times in the film. */
const captions = (...cues: [from: number, to: number, text: string][]) =>
  `WEBVTT\n\n${cues.map(([from, to, text]) => `${stamp(from)} --> ${stamp(to)}\n${text}\n`).join("\n")}`;
const stamp = (seconds: number) => new Date(Math.round(seconds * 1000)).toISOString().slice(11, 23);

function bring(film: ReturnType<typeof filmOf>, text: string, given = sampleDocument({ recordings })) {
  let count = 0;
  const brought = bringFilmCaptions(given, film, { name: "film.vtt", text }, () => `track-${++count}`);
  const cues = Object.fromEntries(
    brought.tracks.map(({ recording, row }) => [
      recording.id,
      readCaptionText(row.text).cues.map(({ start, end, text }) => [start, end, text]),
    ]),
  );
  return { ...brought, cues, lost: brought.without.map(({ text }) => text) };
}

describe("captions of the film go to the recordings they were spoken in", () => {
  test("at the speed they were shown, to both sides of a cut, and nowhere from a title", () => {
    const film = filmOf(
      stretch(0, 10, "one", 100),
      stretch(12, 20, "two", 50, 2),
      stretch(20, 30, "one", 300),
    );
    const { cues, lost, tracks } = bring(
      film,
      captions(
        [1, 3, "ease it off"],
        [10.5, 11.5, "a title"],
        [13, 14, "twice as fast"],
        [19, 22, "over the cut"],
      ),
    );
    expect(cues).toEqual({
      one: [
        [101, 103, "ease it off"],
        [300, 302, "over the cut"],
      ],
      two: [
        [52, 54, "twice as fast"],
        [64, 66, "over the cut"],
      ],
    });
    expect(lost).toEqual(["a title"]);
    expect(tracks.map(({ row }) => [row.clock, row.name])).toEqual([
      ["recording", "film.vtt, from the film"],
      ["recording", "film.vtt, from the film"],
    ]);
  });

  test("of a stretch that the film shows twice, once; where it runs backwards or stands still, nowhere", () => {
    const film = filmOf(
      stretch(0, 10, "one", 100),
      stretch(10, 20, "one", 100),
      stretch(20, 25, "one", 200, -1),
      stretch(25, 30, "one", 200, 0),
    );
    const { cues, lost } = bring(
      film,
      captions([1, 3, "heard twice"], [11, 13, "heard twice"], [21, 24, "backwards"], [26, 28, "still"]),
    );
    expect(cues).toEqual({ one: [[101, 103, "heard twice"]] });
    expect(lost).toEqual(["backwards", "still"]);
  });

  test("a piece that hangs a few frames over a cut stays behind, unless it is all there is", () => {
    const film = filmOf(stretch(0, 10, "one", 100), stretch(10, 20, "two", 50));
    const { cues } = bring(film, captions([8, 10.12, "hangs over"], [19.8, 20, "short"]));
    expect(cues).toEqual({ one: [[108, 110, "hangs over"]], two: [[59.8, 60, "short"]] });
  });

  test("captions of a recording's own stay; those of a film before are replaced", () => {
    const film = filmOf(stretch(0, 10, "one", 100), stretch(10, 20, "two", 50));
    const track = { buildId: "build-1", clock: "recording" as const, gone: null, rev: 3, text: "WEBVTT\n" };
    const document = sampleDocument({
      recordings,
      captions: [
        { ...track, id: "own", recordingId: "one", name: "one.vtt" },
        { ...track, id: "before", recordingId: "two", name: "draft.vtt, from the film" },
      ],
    });
    const { own, tracks } = bring(film, captions([1, 3, "one"], [11, 13, "two"]), document);
    expect(own.map(({ id }) => id)).toEqual(["one"]);
    expect(tracks.map(({ row }) => [row.id, row.rev, row.recordingId])).toEqual([["before", 3, "two"]]);
  });

  test("of a file that holds no captions, nothing, and it says so", () => {
    const { tracks, problems } = bring(filmOf(stretch(0, 10, "one", 0)), "nothing of the kind");
    expect(tracks).toEqual([]);
    expect(problems[0]?.expected).toContain("WebVTT");
  });

  // The law: what is heard at a moment of the film is said, afterwards, at the moment of the recording seen there.
  test("every caption comes back to where it is seen, whatever the cut", () => {
    const length = fc.integer({ min: 1, max: 30 });
    const stretches = fc.array(fc.record({ length, from: fc.integer({ min: 0, max: 9 }), id: fc.nat(1) }), {
      minLength: 1,
      maxLength: 8,
    });
    fc.assert(
      fc.property(stretches, fc.array(fc.integer({ min: 0, max: 200 }), { maxLength: 12 }), (given, at) => {
        let film = 0;
        // Each stretch has a hundred seconds of a recording to itself, so that every moment is in the film once.
        const segments = given.map((one, index) => {
          const start = film;
          film += one.length;
          return stretch(start, film, recordings[one.id]?.id ?? "", index * 100 + one.from);
        });
        const cues = [...new Set(at)].map((second): [number, number, string] => [
          second,
          second + 1,
          `said ${second}`,
        ]);
        const brought = bring(filmOf(...segments), captions(...cues));
        for (const [second, , text] of cues) {
          const under = segments.find(({ at: start, until }) => start <= second && second + 1 <= until);
          if (!under) {
            expect(brought.lost).toContain(text);
            continue;
          }
          const there = under.from + second - under.at;
          expect(brought.cues[under.recordingId]).toContainEqual([there, there + 1, text]);
        }
      }),
    );
  });
});
