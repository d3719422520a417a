import { describe, expect, test } from "vitest";
import { followsOn, gapsOf, newRecording, proposeClocks, type Recording } from "#lib/build/index.ts";

/** A film of the sample sitting: its name, when it was begun, how long it runs in seconds. */
function film(
  name: string,
  madeAt: string | null,
  duration: number,
  more: Partial<Recording> = {},
): Recording {
  const probe = {
    duration,
    frameCount: Math.round(duration * 25),
    width: 1280,
    height: 720,
    rotation: 0,
    videoCodec: "avc",
    audioCodec: "aac",
    playable: true,
  };
  return newRecording({
    id: name,
    buildId: "b",
    sittingId: "s",
    name,
    madeAt,
    madeAtTrust: "Trust.",
    probe,
    ...more,
  });
}

const on = (time: string) => `2026-05-03T${time}Z`;
const wall = (time: string) => Date.parse(on(time)) / 1000;

describe("what was not filmed", () => {
  test("is between the end of one film and the beginning of the next, by the times in the files", () => {
    const films = [film("b.mp4", on("14:31:00"), 600), film("a.mp4", on("13:50:00"), 720)];
    expect(gapsOf(films)).toEqual({
      clock: "wall",
      gaps: [{ start: wall("14:02:00"), end: wall("14:31:00") }],
      unknown: 0,
    });
  });

  test("is nothing where a second camera ran, and where the pause is short", () => {
    const first = [film("a.mp4", on("13:50:00"), 720), film("b.mp4", on("14:31:00"), 600)];
    expect(gapsOf([...first, film("side.mp4", on("14:00:00"), 1860)]).gaps).toEqual([]);
    const side = film("side.mp4", on("14:10:00"), 300);
    expect(gapsOf([...first, side]).gaps).toEqual([
      { start: wall("14:02:00"), end: wall("14:10:00") },
      { start: wall("14:15:00"), end: wall("14:31:00") },
    ]);
    expect(gapsOf([film("a.mp4", on("13:50:00"), 720), film("b.mp4", on("14:02:59"), 10)]).gaps).toEqual([]);
  });

  test("follows the clocks that the restorer has set, rates and all, not the cameras'", () => {
    const films = [
      film("a.mp4", on("13:50:00"), 1000),
      // The second camera's own clock is an hour out; it lies at 2,000 s of the sitting and runs slow by a tenth.
      film("side.mp4", on("15:50:00"), 1000, { offset: 2000, rate: 1.1 }),
      film("c.mp4", null, 100, { offset: 3200 }),
    ];
    expect(gapsOf(films)).toEqual({
      clock: "wall",
      gaps: [
        { start: wall("13:50:00") + 1000, end: wall("13:50:00") + 2000 },
        { start: wall("13:50:00") + 3100, end: wall("13:50:00") + 3200 },
      ],
      unknown: 0,
    });
  });

  test("is told on the sitting's clock where no file says when it was made", () => {
    const films = [film("a.mp4", null, 100), film("b.mp4", null, 100, { offset: 400 })];
    expect(gapsOf(films)).toEqual({ clock: "sitting", gaps: [{ start: 100, end: 400 }], unknown: 0 });
  });

  test("is not claimed of films whose time nobody knows: they are counted", () => {
    const films = [
      film("a.mp4", on("13:50:00"), 10),
      film("b.mp4", on("14:00:00"), 10),
      film("c.mp4", null, 60),
    ];
    expect(gapsOf(films)).toMatchObject({
      unknown: 1,
      gaps: [{ start: wall("13:50:10"), end: wall("14:00:00") }],
    });
    expect(gapsOf([film("a.mp4", null, 10), film("b.mp4", null, 10)])).toMatchObject({
      gaps: [],
      unknown: 2,
    });
    expect(gapsOf([])).toMatchObject({ gaps: [], unknown: 0 });
  });
});

describe("proposed clocks", () => {
  test("two cameras lie apart by the difference of their times, with words of trust, and nothing is changed", () => {
    const films = [film("bench.mp4", on("14:00:00"), 900), film("side.mov", on("14:03:20"), 300)];
    const before = structuredClone(films);
    expect(proposeClocks(films)).toEqual([
      {
        recording: "side.mov",
        offset: 200,
        rate: 1,
        trust: "By the times in the files, against bench.mp4. Trust.",
      },
    ]);
    expect(films).toEqual(before);
  });

  test("parts of one film follow each other to the frame, whatever whole second their files bear", () => {
    const films = [
      film("clip_0010.mp4", on("14:20:01"), 1200.04),
      film("clip_0009.mp4", on("14:00:00"), 1200.04),
      film("clip_0011.mp4", on("14:40:01"), 300),
    ];
    expect(proposeClocks(films).map(({ recording, offset }) => [recording, offset])).toEqual([
      ["clip_0010.mp4", 1200.04],
      ["clip_0011.mp4", 2400.08],
    ]);
  });

  test("parts that all bear the time of the first follow each other too", () => {
    const films = [1, 2, 3].map((part) => film(`film-0${part}.mp4`, on("14:00:00"), 600));
    expect(proposeClocks(films).map((one) => one.offset)).toEqual([600, 1200]);
  });

  test("clocks that were set stand, and what follows them is proposed after them", () => {
    const films = [
      film("side_01.mp4", on("09:00:00"), 100, { offset: 50, rate: 1.0002 }),
      film("side_02.mp4", on("09:01:40"), 100),
    ];
    const [next, ...none] = proposeClocks(films);
    expect(none).toEqual([]);
    expect(next).toMatchObject({ recording: "side_02.mp4", rate: 1.0002 });
    expect(next?.offset).toBeCloseTo(50 + 100 * 1.0002, 9);
  });

  test("what has been taken is not proposed again", () => {
    const films = [film("a.mp4", on("14:00:00"), 60), film("b.mp4", on("14:10:00"), 60)];
    const [proposal] = proposeClocks(films);
    const taken = films.map((one) =>
      one.id === proposal?.recording ? { ...one, offset: proposal.offset } : one,
    );
    expect(proposeClocks(taken)).toEqual([]);
  });

  test("nothing is proposed where neither name nor time says anything", () => {
    expect(proposeClocks([film("bench.mp4", null, 60), film("side.mp4", null, 60)])).toEqual([]);
    expect(proposeClocks([film("a.mp4", on("14:00:00"), 60), film("b.mp4", null, 60)])).toEqual([]);
  });

  test.each([
    ["clip_0009.mp4", "clip_0010.mp4", true],
    ["AB010023.MP4", "AB020023.MP4", true],
    ["day 2/clip 1.mov", "day 2/clip 2.mov", true],
    ["clip_19.mp4", "clip_21.mp4", false],
    ["clip_2.mp4", "clip_1.mp4", false],
    ["film.mp3", "film.mp4", false],
    ["clip_1.mp4", "clip_1.mp4", false],
    ["clip_1.mp4", "clop_2.mp4", false],
  ])("%s, then %s: %s", (one, next, follows) => {
    const a = film(one, on("14:00:00"), 60);
    expect(followsOn(a, film(next, on("14:01:00"), 60)) !== null).toBe(follows);
    // Ten minutes later it is another take, and another size another camera.
    expect(followsOn(a, film(next, on("14:10:00"), 60))).toBeNull();
    const other = film(next, on("14:01:00"), 60);
    expect(followsOn(a, { ...other, probe: other.probe && { ...other.probe, width: 640 } })).toBeNull();
  });
});
