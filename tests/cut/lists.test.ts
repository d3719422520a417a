import { describe, expect, test } from "vitest";
import { type EditList, readCmx3600, readOtio } from "#lib/cut/index.ts";
import { multiply, toNumber } from "#lib/rational/index.ts";
import { type FrameRate, readRate } from "#lib/time/index.ts";

const rate = (text: string) => readRate(text) as FrameRate;
const in25 = (lines: string[]) => readCmx3600(lines.join("\n"), rate("25"));

/** Segments in frames of the list, by where they stand in the film. */
function framesOf(list: EditList) {
  const frames = (value: { n: bigint; d: bigint }) => toNumber(multiply(value, list.rate));
  return list.segments
    .map(({ source, start, end, from, speed }) => ({
      source,
      film: [frames(start), frames(end)],
      from: frames(from),
      speed: toNumber(speed),
    }))
    .sort((a, b) => (a.film[0] as number) - (b.film[0] as number) || a.source.localeCompare(b.source));
}

// Out points are exclusive, and the dissolve of two lines with one number is as in the sample files of the CMX3600
// adapter of OpenTimelineIO that time-values.json names.
describe("a CMX3600 list", () => {
  test("begins where its first event is recorded, whatever hour that bears", () => {
    const list = in25([
      "TITLE:   PUMP, PART 1",
      "FCM: NON-DROP FRAME",
      "001  BENCH    V     C        00:00:10:00 00:00:12:00 01:00:00:00 01:00:02:00",
      "002  CAM_A    V     C        00:01:00:00 00:01:01:00 01:00:05:00 01:00:06:00",
    ]);
    expect(list.name).toBe("PUMP, PART 1");
    expect(framesOf(list)).toEqual([
      { source: "BENCH", film: [0, 50], from: 250, speed: 1 },
      { source: "CAM_A", film: [125, 150], from: 1500, speed: 1 },
    ]);
    expect(toNumber(list.duration)).toBe(6);
    expect(list.problems).toEqual([]);
  });

  test("may begin at a timecode that is given, and what lies before has no place", () => {
    const text = "001 BENCH V C 00:00:10:00 00:00:12:00 00:59:59:00 01:00:01:00";
    expect(framesOf(readCmx3600(text, rate("25"), "01:00:00:00"))[0]?.film).toEqual([-25, 25]);
    expect(readCmx3600(text, rate("25"), "1 o'clock").problems[0]?.where).toBe("the beginning of the film");
  });

  test("counts drop-frame where it says so: 17,982 frames in ten minutes (SMPTE ST 12-1)", () => {
    const event = "001 CAM V C 00:00:00:00 00:10:00:00 01:00:00:00 01:10:00:00";
    const drop = readCmx3600(`FCM: DROP FRAME\n${event}`, rate("29.97"));
    const non = readCmx3600(`FCM: NON-DROP FRAME\n${event}`, rate("29.97"));
    expect(framesOf(drop)[0]?.film).toEqual([0, 17_982]);
    expect(framesOf(non)[0]?.film).toEqual([0, 18_000]);
    const refused = readCmx3600(`FCM: DROP FRAME\n${event}`, rate("25"));
    expect(refused.problems[0]).toMatchObject({ severity: "wrong", where: "line 1" });
  });

  test("dissolves show both for as long as they last", () => {
    const list = in25([
      "001  BENCH V C        00:00:10:00 00:00:12:00 01:00:00:00 01:00:02:00",
      "002  BENCH V C        00:00:12:00 00:00:12:00 01:00:02:00 01:00:02:00",
      "002  CAM_A V D    010 00:01:00:00 00:01:02:00 01:00:02:00 01:00:04:00",
      "* FROM CLIP NAME: bench.mp4",
      "* TO CLIP NAME: arrival.mp4",
    ]);
    expect(framesOf(list)).toEqual([
      { source: "BENCH", film: [0, 50], from: 250, speed: 1 },
      { source: "BENCH: bench.mp4", film: [50, 60], from: 300, speed: 1 },
      { source: "CAM_A: arrival.mp4", film: [50, 100], from: 1500, speed: 1 },
    ]);
  });

  test("a later event lies over an earlier one, and that is said", () => {
    const list = in25([
      "001 A1CAM V C 00:00:10:00 00:00:14:00 01:00:00:00 01:00:04:00",
      "002 INSERT V C 00:02:00:00 00:02:01:00 01:00:01:00 01:00:02:00",
    ]);
    expect(framesOf(list)).toEqual([
      { source: "A1CAM", film: [0, 25], from: 250, speed: 1 },
      { source: "INSERT", film: [25, 50], from: 3000, speed: 1 },
      { source: "A1CAM", film: [50, 100], from: 300, speed: 1 },
    ]);
    expect(list.problems).toMatchObject([{ severity: "doubtful", where: "line 1" }]);
  });

  test("M2 speeds: twice as fast, backwards, frozen", () => {
    const list = in25([
      "001 CAM V C 00:00:10:00 00:00:14:00 01:00:00:00 01:00:02:00",
      "M2   CAM       050.0                00:00:10:00",
      "002 CAM V C 00:00:20:00 00:00:22:00 01:00:02:00 01:00:04:00",
      "M2   CAM       -025.0               00:00:20:00",
      "003 CAM V C 00:00:30:00 00:00:30:01 01:00:04:00 01:00:06:00",
      "M2   CAM       000.0                00:00:30:00",
    ]);
    expect(framesOf(list)).toEqual([
      { source: "CAM", film: [0, 50], from: 250, speed: 2 },
      { source: "CAM", film: [50, 100], from: 550, speed: -1 },
      { source: "CAM", film: [100, 150], from: 750, speed: 0 },
    ]);
  });

  test("AX is no reel: the clip's name is the file", () => {
    const list = in25([
      "001 AX V C 00:00:10:00 00:00:12:00 01:00:00:00 01:00:02:00",
      "* FROM CLIP NAME: bench one.mp4",
    ]);
    expect(list.reels).toMatchObject([{ key: "bench one.mp4", names: ["bench one.mp4"] }]);
  });

  test("black, sound and remarks are no picture", () => {
    const list = in25([
      "001 BL V C 00:00:00:00 00:00:01:00 01:00:00:00 01:00:01:00",
      "002 CAM AA C 00:00:10:00 00:00:12:00 01:00:01:00 01:00:03:00",
      "003 CAM AA/V C 00:00:10:00 00:00:12:00 01:00:01:00 01:00:03:00",
      ">>> SOURCE CAM 1",
      "AUD  3    4",
    ]);
    expect(framesOf(list)).toEqual([{ source: "CAM", film: [25, 75], from: 250, speed: 1 }]);
    expect(list.problems).toEqual([]);
  });

  test.each([
    ["what is no event", "001 what is this", "line 1", "advice"],
    ["a frame that is not", "001 CAM V C 00:00:10:25 00:00:12:00 01:00:00:00 01:00:02:00", "line 1", "wrong"],
    [
      "an end before its beginning",
      "001 CAM V C 00:00:10:00 00:00:12:00 01:00:02:00 01:00:00:00",
      "line 1",
      "wrong",
    ],
    [
      "a speed nobody wrote",
      "001 CAM V C 00:00:10:00 00:00:12:00 01:00:00:00 01:00:03:00",
      "line 1",
      "doubtful",
    ],
    ["nothing at all", "", "the file", "wrong"],
  ])("says the line of %s", (_, text, where, severity) => {
    const { problems } = readCmx3600(text, rate("25"));
    expect(problems).toContainEqual(expect.objectContaining({ where, severity }));
    for (const { found, expected, todo } of problems) expect(found && expected && todo).toBeTruthy();
  });
});

const time = (value: number, per = 25) => ({ OTIO_SCHEMA: "RationalTime.1", rate: per, value });
const range = (start: number, length: number, per = 25) => ({
  OTIO_SCHEMA: "TimeRange.1",
  start_time: time(start, per),
  duration: time(length, per),
});
const clip = (url: string, start: number, length: number, more: object = {}) => ({
  OTIO_SCHEMA: "Clip.1",
  name: url,
  source_range: range(start, length),
  media_reference: { OTIO_SCHEMA: "ExternalReference.1", target_url: url, available_range: range(0, 9000) },
  ...more,
});
const track = (children: unknown[], more: object = {}) => ({
  OTIO_SCHEMA: "Track.1",
  kind: "Video",
  children,
  ...more,
});
const timeline = (children: unknown[]) =>
  readOtio(
    JSON.stringify({ OTIO_SCHEMA: "Timeline.1", name: "film", tracks: { OTIO_SCHEMA: "Stack.1", children } }),
  );

// The form: docs/tutorials/otio-file-format-specification.md of OpenTimelineIO, as time-values.json names it.
describe("an OpenTimelineIO file", () => {
  test("upper tracks hide lower ones; titles and pictures with effects hide nothing; sound is no picture", () => {
    const title = {
      OTIO_SCHEMA: "Clip.2",
      source_range: range(0, 50),
      media_references: { DEFAULT_MEDIA: { OTIO_SCHEMA: "GeneratorReference.1", generator_kind: "title" } },
      active_media_reference_key: "DEFAULT_MEDIA",
    };
    const gap = { OTIO_SCHEMA: "Gap.1", source_range: range(0, 25) };
    const inset = clip("inset.mp4", 0, 25, { effects: [{ OTIO_SCHEMA: "Effect.1", effect_name: "scale" }] });
    const list = timeline([
      track([clip("a.mp4", 100, 100)]),
      track([gap, clip("b.mp4", 500, 25), inset]),
      track([title]),
      track([clip("sound.wav", 0, 100)], { kind: "Audio" }),
    ]);
    expect(framesOf(list)).toEqual([
      { source: "a.mp4", film: [0, 25], from: 100, speed: 1 },
      { source: "b.mp4", film: [25, 50], from: 500, speed: 1 },
      { source: "a.mp4", film: [50, 100], from: 150, speed: 1 },
      { source: "inset.mp4", film: [50, 75], from: 0, speed: 1 },
    ]);
    expect(list.problems).toEqual([]);
  });

  test("what is switched off is not seen", () => {
    const list = timeline([track([clip("a.mp4", 0, 50)]), track([clip("b.mp4", 0, 50, { enabled: false })])]);
    expect(framesOf(list).map(({ source }) => source)).toEqual(["a.mp4"]);
  });

  test("a file's first frame may bear an hour: its own time counts from there", () => {
    const media = {
      OTIO_SCHEMA: "ExternalReference.1",
      target_url: "tape.mov",
      available_range: range(90_000, 1000),
    };
    const list = timeline([track([clip("tape.mov", 90_100, 50, { media_reference: media })])]);
    expect(framesOf(list)).toMatchObject([{ from: 100 }]);
    expect(list.reels[0]?.startsAt).toEqual({ n: 0n, d: 1n });
  });

  test.each([
    ["no JSON", "{", "the file"],
    ["no timeline", '{"OTIO_SCHEMA":"Clip.2"}', "the file"],
    ["nothing in it", '{"OTIO_SCHEMA":"Timeline.1"}', "tracks"],
  ])("says that there is %s", (_, text, where) => {
    expect(readOtio(text).problems).toMatchObject([{ severity: "wrong", where }]);
  });

  test("a time that cannot be is named by its path", () => {
    for (const bad of [{ rate: 0, value: 1 }, { rate: 25, value: 1e300 }, { rate: "x", value: 1 }, 7]) {
      const list = timeline([
        track([clip("a.mp4", 0, 50), { ...clip("b.mp4", 0, 50), source_range: { duration: bad } }]),
      ]);
      expect(list.problems[0]?.where).toContain("tracks/children/0/children/1/source_range/duration");
      expect(framesOf(list)).toHaveLength(2);
    }
  });
});

describe("hostile lists", () => {
  test("are read to an end, with problems and no error", () => {
    let nest: unknown = clip("deep.mp4", 0, 50);
    for (let depth = 0; depth < 500; depth++)
      nest = {
        OTIO_SCHEMA: depth % 2 ? "Stack.1" : "Track.1",
        kind: "Video",
        source_range: range(0, 50),
        children: [nest],
      };
    const deep = timeline([nest]);
    expect(deep.segments).toEqual([]);
    expect(deep.problems.some(({ found }) => found.includes("nested"))).toBe(true);

    expect(readOtio(`${"[".repeat(200_000)}`).problems).toMatchObject([{ where: "the file" }]);
    const names =
      '{"OTIO_SCHEMA":"Timeline.1","__proto__":{"tracks":1},"tracks":{"OTIO_SCHEMA":"constructor","children":{}}}';
    expect(readOtio(names).problems.length).toBeGreaterThan(0);
  });

  test("a list of 20,000 lines that all lie over each other is read", () => {
    const line = (number: number) =>
      `${String(number % 1000).padStart(3, "0")} R${number % 7} V C 00:00:10:00 00:00:12:00 01:00:00:00 01:00:02:00`;
    const list = in25(Array.from({ length: 20_010 }, (_, index) => line(index)));
    expect(list.problems.length).toBeLessThanOrEqual(100);
    expect(list.segments).toHaveLength(1);
  });

  test("lines that a careless pattern would never finish with", () => {
    const spaces = `001 ${"A ".repeat(480)}V C 00:00:00:00`;
    const list = in25(Array.from({ length: 2000 }, () => spaces));
    expect(list.segments).toEqual([]);
  });
});
