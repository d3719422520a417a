import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { newCut } from "#lib/build/index.ts";
import type { Procedure } from "#lib/procedure/index.ts";
import { chaptersForDescription } from "#lib/publish/film/index.ts";
import { cuesInFilm, type OutputFile, toCaptions, toChapters, webVtt } from "#lib/publish/index.ts";
import { cut, filmedJob } from "./filmed.ts";
import { procedure as procedureOf, step } from "./sample.ts";

const textOf = (files: readonly OutputFile[], name: string): string =>
  new TextDecoder().decode(files.find((file) => file.name === name)?.bytes);

describe("a moment's places in the film", () => {
  test("are none, one or two, and links lead to the first", () => {
    const { procedure } = filmedJob();
    const moments = procedure.stages.flatMap(({ steps }) => steps.map(({ moment }) => moment));
    expect(moments.map((moment) => moment?.film?.map(({ at }) => at))).toEqual([
      [2],
      [20, 150],
      [26, 156],
      [],
      [70],
      [130],
    ]);
    expect(moments[1]).toMatchObject({
      written: "0:20",
      link: "https://video.example.org/pump#t=20",
      of: "The pump comes apart",
    });
    // Not in the film, and the uncut recording is not published.
    expect(moments[3]).toMatchObject({ written: "1:40", link: null, film: [] });
    expect(moments[4]?.film).toMatchObject([{ at: 70, until: 90 }]);
  });

  test("move with the cut, and go with it", () => {
    const recut = { ...cut, text: cut.text.replace("00:00:20:00 00:01:20:00", "00:00:21:00 00:01:21:00") };
    const [first] = filmedJob({ cuts: [recut] }).procedure.stages.flatMap(({ steps }) => steps);
    expect(first?.moment?.film).toMatchObject([{ at: 1 }]);
    const { procedure } = filmedJob({ cuts: [] });
    expect(procedure.film).toBeUndefined();
    expect(procedure.stages[0]?.steps[0]?.moment).not.toHaveProperty("film");
  });

  test("an address may say seconds in its own way; another kind of address is none", () => {
    const linkWith = (publishedAt: string) =>
      filmedJob({ cuts: [{ ...cut, publishedAt }] }).procedure.stages[0]?.steps[1]?.moment?.link;
    expect(linkWith("https://video.example.org/watch?v=pump&t={seconds}s")).toBe(
      "https://video.example.org/watch?v=pump&t=20s",
    );
    expect(linkWith("javascript:alert({seconds})")).toBeNull();
    expect(linkWith("file:///films/pump.mp4")).toBeNull();
    expect(linkWith("")).toBeNull();
  });
});

// First at 0:00, ascending, at least three, at least ten seconds each: common practice, no source.
describe("chapters for a film's description", () => {
  test("join what is shorter than ten seconds", async () => {
    const { files, losses } = await toChapters(filmedJob());
    expect(textOf(files, "chapters.txt")).toBe(
      [
        "0:00 Drain the water",
        "0:20 Undo the six cover nuts; Lift the cover off",
        "1:10 Fit the new <packing>",
        "2:10 Run it & listen",
        "2:30 Undo the six cover nuts; Lift the cover off",
        "",
      ].join("\n"),
    );
    expect(losses).toContain("Step 4 is not in the film.");
  });

  const places = fc.array(
    fc.integer({ max: 3_000_000, min: 0 }).map((thousandths) => thousandths / 1000),
    { maxLength: 40 },
  );
  test("keep what hosts ask for, and lose no step", () => {
    let listed = 0;
    fc.assert(
      fc.property(places, fc.integer({ min: 1, max: 3100 }), (moments, duration) => {
        const inFilm = moments.filter((at) => at < duration);
        const chapters = chaptersForDescription(filmedAt(inFilm, duration));
        if (chapters.length === 0) return;
        listed += 1;
        expect(chapters.length).toBeGreaterThanOrEqual(3);
        expect(chapters[0]?.at).toBe(0);
        chapters.forEach(({ at }, index) => {
          const end = chapters[index + 1]?.at ?? Math.floor(duration);
          expect(Number.isInteger(at)).toBe(true);
          expect(end - at).toBeGreaterThanOrEqual(10);
        });
        const said = chapters.map(({ title }) => title).join("; ");
        for (const [index] of inFilm.entries()) expect(said.split("; ")).toContain(`Step ${index} words`);
      }),
    );
    expect(listed).toBeGreaterThan(20);
  });

  test("are not written when they are too few, and that is said", async () => {
    const { files, losses } = await toChapters({ procedure: filmedAt([0, 30], 60) });
    expect(files.map(({ name }) => name)).toEqual(["chapters.vtt"]);
    expect(losses.join(" ")).toContain("fewer than 3 chapters");
    const none = await toChapters(filmedJob({ cuts: [] }));
    expect(none.files).toEqual([]);
    expect(none.losses.join(" ")).toContain("no edited film");
  });
});

/** A procedure of steps that are seen at these seconds of a film. */
function filmedAt(moments: readonly number[], duration: number): Procedure {
  const steps = moments.map((at, index) =>
    step(index + 1, `Step ${index} words`, {
      moment: {
        recordingId: "r",
        recordingName: "r.mp4",
        at,
        written: "",
        link: null,
        film: [{ at, until: null, written: "", link: null }],
      },
    }),
  );
  const film = { cut: "c", name: "film", rate: "25", duration, publishedAt: "", segments: [] };
  return procedureOf(steps, { film });
}

/** Reads a WebVTT file by the letter of W3C WebVTT, as far as it is written here. */
function readVtt(text: string): { start: number; end: number; text: string }[] {
  const [head, ...blocks] = text.trimEnd().split("\n\n");
  expect(head).toBe("WEBVTT");
  const seconds = (stamp: string) => stamp.split(":").reduce((sum, part) => sum * 60 + Number(part), 0);
  return blocks.map((block) => {
    const [timing = "", ...lines] = block.trimEnd().split("\n");
    const parts = /^(\d{2,}:[0-5]\d:[0-5]\d\.\d{3}) --> (\d{2,}:[0-5]\d:[0-5]\d\.\d{3})$/.exec(timing);
    expect(parts, timing).not.toBeNull();
    return { start: seconds(`${parts?.[1]}`), end: seconds(`${parts?.[2]}`), text: lines.join("\n") };
  });
}

describe("WebVTT", () => {
  test("chapters follow each other to the film's end, markup stays words", async () => {
    const { files } = await toChapters(filmedJob());
    const cues = readVtt(textOf(files, "chapters.vtt"));
    expect(cues.map(({ start }) => start)).toEqual([2, 20, 26, 70, 130, 150, 156]);
    cues.forEach((cue, index) => {
      expect(cue.end).toBe(cues[index + 1]?.start ?? 160);
    });
    expect(cues[3]?.text).toBe("Fit the new &lt;packing&gt;");
    expect(cues[4]?.text).toBe("Run it &amp; listen");
  });

  test("no cue has a blank line or an end that is not after its start; none precedes the one before", () => {
    const cue = fc.record({
      start: fc.double({ min: 0, max: 400_000, noNaN: true }),
      long: fc.double({ min: 0, max: 10, noNaN: true }),
      text: fc.string({ unit: "binary" }),
    });
    fc.assert(
      fc.property(fc.array(cue), (given) => {
        const cues = readVtt(
          webVtt(given.map(({ start, long, text }) => ({ start, end: start + long, text: `x${text}` }))),
        );
        cues.forEach(({ start, end, text }, index) => {
          expect(end).toBeGreaterThan(start);
          expect(start).toBeGreaterThanOrEqual(cues[index - 1]?.start ?? 0);
          expect(text).not.toContain("-->");
        });
      }),
    );
  });

  test("captions go where they are heard: cut up, twice, or nowhere", async () => {
    const { procedure } = filmedJob();
    const said = (start: number, end: number, text: string) => ({
      recordingId: "recording-1",
      start,
      end,
      text,
    });
    const cues = [said(78, 122, "across the cut"), said(40, 42, "twice"), said(90, 95, "cut out")];
    const { files, losses } = await toCaptions({ procedure }, cues);
    expect(readVtt(textOf(files, "captions.vtt"))).toEqual([
      { start: 20, end: 22, text: "twice" },
      { start: 58, end: 62, text: "across the cut" },
      { start: 150, end: 152, text: "twice" },
    ]);
    expect(losses).toEqual(["captions.vtt: 1 of 3 captions are not heard in the film."]);
  });

  test("nobody is heard where the film runs backwards or stands still", () => {
    const segments = [
      { at: 0, until: 10, recordingId: "recording-1", from: 30, speed: -1 },
      { at: 10, until: 20, recordingId: "recording-1", from: 20, speed: 0 },
      { at: 20, until: 30, recordingId: "recording-1", from: 20, speed: 2 },
    ];
    const byHand = newCut({ id: "c", buildId: "build-1", form: "hand", segments });
    const { film } = filmedJob({ cuts: [byHand] }).procedure;
    if (!film) throw new Error("no film");
    const cue = { recordingId: "recording-1", start: 20, end: 30, text: "x" };
    expect(cuesInFilm([cue], film).moved).toEqual([{ start: 20, end: 25, text: "x" }]);
  });
});
