import { describe, expect, test } from "vitest";
import { type Cut, newCut, newRecording, type Recording } from "#lib/build/index.ts";
import { filmOf, readFilm } from "#lib/cut/index.ts";
import { filmPlaces, sourcesAt } from "#lib/time/index.ts";

const recording = (id: string, name: string, duration = 60): Recording =>
  newRecording({
    id,
    buildId: "b",
    sittingId: "s",
    name,
    probe: {
      duration,
      frameCount: duration * 25,
      width: 640,
      height: 360,
      rotation: 0,
      videoCodec: "h264",
      audioCodec: null,
      playable: true,
    },
  });
const list = (text: string, more: Partial<Cut> = {}): Cut =>
  newCut({ id: "c", buildId: "b", form: "cmx3600", rate: "25", text, ...more });
const event = (reel: string, from = "00:00:10:00", until = "00:00:12:00") =>
  `001 ${reel} V C ${from} ${until} 01:00:00:00 01:00:02:00`;

describe("which recording a reel is", () => {
  test("is told by the file's name, with or without its ending", () => {
    for (const reel of ["bench-1.mp4", "BENCH_1", "bench 1.mov"]) {
      const film = readFilm(list(`${event("AX")}\n* FROM CLIP NAME: ${reel}`), [
        recording("r1", "bench-1.mp4"),
        recording("r2", "bench-2.mp4"),
      ]);
      expect(film.reels, reel).toMatchObject([{ recordingId: "r1", how: "by name" }]);
      expect(filmPlaces(film.cut, "r1", 10.5)).toEqual([{ at: 0.5, until: null }]);
    }
  });

  test("is asked for where the name was cut short, and the candidates are named", () => {
    const film = readFilm(list(event("STRIPDOW")), [
      recording("r1", "strip-down-left.mp4"),
      recording("r2", "strip-down-right.mp4"),
      recording("r3", "paint.mp4"),
    ]);
    expect(film.reels[0]).toMatchObject({ recordingId: null, how: "unknown" });
    expect(film.reels[0]?.candidates.map((one) => one.recordingId)).toEqual(["r1", "r2"]);
    expect(film.cut.segments).toEqual([]);
    expect(film.problems).toMatchObject([{ severity: "doubtful", where: "reel STRIPDOW" }]);
  });

  test("is asked for where two recordings have the name", () => {
    const both = [recording("r1", "CAM.mp4"), recording("r2", "CAM.mov")];
    expect(readFilm(list(event("CAM")), both).reels[0]).toMatchObject({ recordingId: null, how: "unknown" });
  });

  test("stays as it was said by hand, also where it is none of this build", () => {
    const mended = [{ reel: "CAM", recordingId: "r2", startsAt: "" }];
    const both = [recording("r1", "CAM.mp4"), recording("r2", "other.mp4")];
    expect(readFilm(list(event("CAM"), { reels: mended }), both).reels[0]).toMatchObject({
      recordingId: "r2",
    });
    const none = [{ reel: "CAM", recordingId: null, startsAt: "" }];
    const film = readFilm(list(event("CAM"), { reels: none }), both);
    expect(film.cut.segments).toEqual([]);
    expect(film.problems).toEqual([]);
  });
});

describe("what a recording's first frame bears", () => {
  const hour = event("CAM", "01:00:10:00", "01:00:12:00");

  test("is nought while that fits its length; else it is asked for, with the hour that would fit", () => {
    const film = readFilm(list(hour), [recording("r1", "CAM.mp4", 60)]);
    expect(film.reels[0]).toMatchObject({ startsAt: null, mayStartAt: 3600 });
    expect(film.problems).toMatchObject([{ where: "reel CAM" }]);
    expect(film.cut.segments).toEqual([]);
  });

  test("is as written by hand", () => {
    const reels = [{ reel: "CAM", recordingId: "r1", startsAt: "01:00:00:00" }];
    const film = readFilm(list(hour, { reels }), [recording("r1", "CAM.mp4", 60)]);
    expect(sourcesAt(film.cut, 0.5)).toEqual([{ source: "r1", at: 10.5 }]);
    expect(film.problems).toEqual([]);
  });
});

describe("a film", () => {
  test("has no rate that nobody gave", () => {
    const film = readFilm(list(event("CAM"), { rate: "" }), [recording("r1", "CAM.mp4")]);
    expect(film.problems).toMatchObject([{ severity: "wrong", where: "the rate" }]);
    expect(film.cut.segments).toEqual([]);
  });

  test("marked by hand: a stretch without an end goes to the next, the last to its recording's end", () => {
    const segments = [
      { at: 40, until: null, recordingId: "r2", from: 5, speed: 1 },
      { at: 0, until: null, recordingId: "r1", from: 20, speed: 2 },
    ];
    const film = readFilm(newCut({ id: "c", buildId: "b", form: "hand", segments }), [
      recording("r1", "a.mp4", 200),
      recording("r2", "b.mp4", 30),
    ]);
    expect(filmPlaces(film.cut, "r1", 99)).toEqual([{ at: 39.5, until: null }]);
    expect(filmPlaces(film.cut, "r1", 101)).toEqual([]);
    expect(filmPlaces(film.cut, "r2", 29)).toEqual([{ at: 64, until: null }]);
    expect(film.problems).toEqual([]);
  });

  test("marked by hand, with a stretch that ends before it begins, or of no recording: said, and left out", () => {
    const segments = [
      { at: 10, until: 5, recordingId: "r1", from: 0, speed: 1 },
      { at: 20, until: 25, recordingId: "gone", from: 0, speed: 1 },
    ];
    const film = readFilm(newCut({ id: "c", buildId: "b", form: "hand", segments }), [
      recording("r1", "a.mp4"),
    ]);
    expect(film.problems.map(({ where }) => where)).toEqual(["stretch 1", "stretch 2"]);
    expect(film.cut.segments).toEqual([]);
  });

  test("is the cut of the highest rank that has not been struck out", () => {
    const cuts = [
      list("", { id: "old", rank: 1 }),
      list("", { id: "new", rank: 2 }),
      list("", { id: "gone", rank: 3, gone: "2026" }),
    ];
    expect(filmOf({ cuts, recordings: [] })?.row.id).toBe("new");
    expect(filmOf({ cuts: [], recordings: [] })).toBeNull();
  });
});
