import fs from "node:fs";
import path from "node:path";
import { describe, expect, test } from "vitest";
import { type Cue, readCaptions, readCaptionText, toWebVtt } from "#lib/captions/index.ts";

const file = (name: string) => readCaptions(fs.readFileSync(path.join(import.meta.dirname, name)));
const said = (cues: readonly Cue[]) => cues.map((cue) => cue.text).join(" ");
const bytes = (text: string, encoding: BufferEncoding) => new Uint8Array(Buffer.from(text, encoding));

/** The same recording in two shapes says the same words. */
describe("one recording, several shapes", () => {
  test.each([
    ["shared/lathe-apron.vtt", "shared/lathe-apron.srt"],
    ["shared/outboard-lower.vtt", "shared/outboard-lower.txt"],
  ])("%s and %s", (one, other) => {
    const [a, b] = [file(one), file(other)];
    expect(said(a.cues)).toBe(said(b.cues));
    expect(a.cues.length).toBe(b.cues.length);
    for (const [i, cue] of a.cues.entries())
      expect(Math.abs(cue.start - (b.cues[i]?.start ?? -9))).toBeLessThan(1);
    expect([...a.problems, ...b.problems]).toEqual([]);
  });
});

/** SRT has no standard; these are the shapes that are met with (common practice, no source). */
describe("SRT", () => {
  const lines = [
    "1",
    "00:00:01,000 --> 00:00:03,500",
    "First line",
    "second line",
    "",
    "2",
    "00:00:04,000 --> 00:00:05,000",
    "Third",
  ];
  const plain = lines.join("\n");
  test.each([
    ["with line feeds", plain],
    ["with carriage returns and line feeds", plain.replaceAll("\n", "\r\n")],
    ["with a byte order mark", `\ufeff${plain}`],
    ["without numbers", lines.filter((line) => !/^\d$/.test(line)).join("\n")],
    ["with odd numbers", plain.replace(/^1$/m, "17").replace(/^2$/m, "17")],
    ["with full stops for commas", plain.replaceAll(",", ".")],
    ["with positions behind the times", plain.replaceAll("500", "500 X1:100 X2:200 Y1:1 Y2:2")],
    ["with empty lines before it", `\n\n${plain}\n\n\n`],
    [
      "with tags of style",
      plain
        .replace("First line", '<i>First</i> <font color="red">line</font>')
        .replace("Third", "{\\an8}Third"),
    ],
  ])("%s", (_, text) => {
    const { cues, format, problems } = readCaptionText(text);
    expect(format).toBe("SRT");
    expect(cues.map(({ start, end, text: words }) => [start, end, words])).toEqual([
      [1, 3.5, "First line second line"],
      [4, 5, "Third"],
    ]);
    expect(problems).toEqual([]);
  });
  test("hours may be missing or large, thousandths short", () => {
    const { cues } = readCaptionText("1\n01:02,5 --> 01:03,05\na\n\n2\n100:00:00,000 --> 100:00:01,000\nb");
    expect(cues.map(({ start, end }) => [start, end])).toEqual([
      [62.5, 63.05],
      [360000, 360001],
    ]);
  });
  test("a number that is said stays", () => {
    const { cues } = readCaptionText(
      "1\n00:00:01,000 --> 00:00:02,000\nI make that\n12\n\n2\n00:00:02,000 --> 00:00:03,000\nthou",
    );
    expect(said(cues)).toBe("I make that 12 thou");
  });
  test("a bad time line costs its own cue and no other, and is named", () => {
    const { cues, problems } = readCaptionText(plain.replace("00:00:01,000 -->", "00:00:01 before -->"));
    expect(said(cues)).toBe("Third");
    expect(problems).toHaveLength(1);
    expect(problems[0]).toMatchObject({
      line: 2,
      found: expect.stringContaining("before"),
      expected: expect.stringMatching(/-->/),
      todo: expect.stringContaining("2"),
    });
  });
});

describe("plain timed text", () => {
  test.each([
    ["brackets", "[0:03] one\n[1:07] two", [3, 67]],
    ["round brackets", "(0:03) one\n(1:07) two", [3, 67]],
    ["hours", "0:00:03 one\n1:02:03 two", [3, 3723]],
    ["dashes", "0:03 - one\n1:07 – two", [3, 67]],
    ["times on lines of their own", "0:03\none\n1:07\ntwo", [3, 67]],
    ["thousandths", "[00:00:03.250] one\n[00:01:07,5] two", [3.25, 67.5]],
    ["first and last time", "0:00:03.0,0:00:04.0\none\n\n0:01:07.0,0:01:09.0\ntwo", [3, 67]],
    ["a range in brackets", "[00:03.000 --> 00:04.000] one\n[01:07.000 --> 01:09.000] two", [3, 67]],
  ])("%s", (_, text, starts) => {
    const { cues, format } = readCaptionText(text);
    expect(format).toBe("timed text");
    expect(cues.map((cue) => cue.start)).toEqual(starts);
    expect(said(cues)).toBe("one two");
  });
  test("a cue lasts until the next; a line without a time goes on", () => {
    const { cues } = readCaptionText("[0:03] one\nand more\n[0:09] two");
    expect(cues[0]).toMatchObject({ start: 3, end: 9, text: "one and more" });
    expect(cues[1]?.end).toBeGreaterThan(9);
  });
  test("words above the first time are told of", () => {
    const { cues, problems } = readCaptionText("My transcript\n[0:03] one");
    expect(said(cues)).toBe("one");
    expect(problems[0]).toMatchObject({ line: 1, found: expect.stringContaining("My transcript") });
  });
});

describe("rolling captions", () => {
  test("each word is read once, at its own time", () => {
    const { cues, rolling } = file("recordings/tube-radio.vtt");
    expect(rolling).toBe(true);
    const words = cues.flatMap((cue) => cue.words);
    expect(words.map((word) => word.text).join(" ")).toMatch(
      /^hey everybody so this is the little five tube table radio my neighbor found in a barn it's a 1939/,
    );
    for (const cue of cues) {
      const times = cue.words.map((word) => word.at ?? cue.start);
      expect(times).toEqual([...times].sort((a, b) => a - b));
      expect(times.every((time) => time >= cue.start && time <= cue.end)).toBe(true);
    }
  });
  test("a cue that grows word by word", () => {
    const shown = [
      "so",
      "so today",
      "so today we",
      "so today we strip",
      "so today we strip it",
      "so today we strip it down",
    ];
    const text = shown
      .map((line, i) => `${i + 1}\n00:00:0${i},000 --> 00:00:0${i + 1},000\n${line}\n`)
      .join("\n");
    expect(said(readCaptionText(text).cues)).toBe("so today we strip it down");
  });
  test("two lines that scroll", () => {
    const lines = ["one two", "three four", "five six", "seven eight", "nine ten"];
    const text = lines
      .map(
        (line, i) => `00:00:0${i}.000 --> 00:00:0${i + 1}.000\n${i > 0 ? `${lines[i - 1]}\n` : ""}${line}\n`,
      )
      .join("\n");
    expect(said(readCaptionText(`WEBVTT\n\n${text}`).cues)).toBe(lines.join(" "));
  });
  test("what a speaker says twice is kept twice", () => {
    const text =
      "[0:01] three\n[0:02] three\n[0:03] three thou\n[0:04] and that's it\n[0:05] right\n[0:06] so next the worm\n[0:07] which is bronze\n[0:08] and worn\n[0:09] so new\n[0:10] and on\n[0:11] we go\n[0:12] again\n[0:13] now";
    expect(said(readCaptionText(text).cues)).toMatch(/^three three three thou/);
  });
});

describe("encodings", () => {
  const text = "[0:01] it's 140° and ½ inch";
  test.each([
    ["UTF-8", bytes(text, "utf8"), "UTF-8"],
    ["UTF-8 with its mark", bytes(`\ufeff${text}`, "utf8"), "UTF-8"],
    ["UTF-16 with its mark", bytes(`\ufeff${text}`, "utf16le"), "UTF-16"],
    ["UTF-16, the other way round", swapped(bytes(`\ufeff${text}`, "utf16le")), "UTF-16"],
    ["UTF-16 without its mark", bytes(text, "utf16le"), "UTF-16"],
    ["Latin-1", bytes(text, "latin1"), "Latin-1"],
  ])("%s", (_, data, encoding) => {
    const read = readCaptions(data);
    expect(read.encoding).toBe(encoding);
    expect(said(read.cues)).toBe("it's 140° and ½ inch");
    expect(read.problems).toEqual([]);
  });
  test("a broken byte among good ones is told of, and spoils nothing else", () => {
    const data = new Uint8Array([...bytes("[0:01] 140° ½ é ", "utf8"), 0xff, ...bytes(" inch", "utf8")]);
    const read = readCaptions(data);
    expect(read.encoding).toBe("UTF-8");
    expect(said(read.cues)).toContain("140° ½ é");
    expect(read.problems[0]?.found).toMatch(/letters/);
  });
});

function swapped(data: Uint8Array): Uint8Array {
  return data.map((_, i) => data[i ^ 1] ?? 0);
}

describe("what is wrong is said, and loses nothing", () => {
  test("a cue that ends before it begins keeps its words", () => {
    const { cues, problems } = readCaptionText("WEBVTT\n\n00:05.000 --> 00:04.000\nwords");
    expect(cues[0]).toMatchObject({ start: 5, end: 5, text: "words" });
    expect(problems[0]).toMatchObject({ line: 3 });
  });
  test("cues out of order are put in order", () => {
    const { cues, problems } = readCaptionText("[0:09] two\n[0:03] one\n[0:12] three");
    expect(said(cues)).toBe("one two three");
    expect(problems.map((one) => one.line)).toEqual([2]);
  });
  test.each(["", "   \n\n", "Dear diary, nothing was timed.", '{"json": true}', "\0\0\0\0"])(
    "no captions: %j",
    (text) => {
      const read = readCaptionText(text);
      expect(read.cues).toEqual([]);
      expect(read.problems.length).toBeGreaterThan(0);
      expect(read.problems.at(-1)).toMatchObject({
        found: expect.any(String),
        expected: expect.stringContaining("WebVTT"),
        todo: expect.any(String),
      });
    },
  );
  test("a signed file with times of another kind is read with a word about it", () => {
    const { cues, problems } = readCaptionText(
      "WEBVTT\n\n1\n00:00:01,000 --> 00:00:02,000\none\n\n2\n00:00:02,000 --> 00:00:03,000\ntwo",
    );
    expect(said(cues)).toBe("one two");
    expect(problems).toHaveLength(1);
    expect(problems[0]?.found).toMatch(/comma/);
  });
  test("problems are not listed without end", () => {
    const text = `WEBVTT\n\n${"00:01.000 --> x\n\n".repeat(5000)}`;
    expect(readCaptionText(text).problems.length).toBeLessThan(600);
  });
});

describe("cues written for a player", () => {
  test.each([
    "shared/lathe-apron.srt",
    "shared/outboard-lower.txt",
    "recordings/hub-gear.vtt",
    "recordings/tube-radio.vtt",
  ])("%s comes back as it was", (name) => {
    const { cues } = file(name);
    const back = readCaptionText(toWebVtt(cues)).cues;
    expect(back.map(({ start, end, text, voice }) => [start, end, text, voice])).toEqual(
      cues.map(({ start, end, text, voice }) => [start, end, text, voice]),
    );
  });
  test("signs of the format come back too", () => {
    const cue = { start: 1, end: 2, text: "a < b & c > d --> e &lt;", words: [{ text: "x" }], line: 1 };
    expect(readCaptionText(toWebVtt([cue])).cues[0]?.text).toBe(cue.text);
  });
});
