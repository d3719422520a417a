import fs from "node:fs";
import path from "node:path";
import { describe, expect, test } from "vitest";
import {
  parseCueText,
  parseSettings,
  parseVtt,
  plainText,
  readCaptionText,
  type Span,
} from "#lib/captions/index.ts";
import { adapter as cueAdapter } from "../reference/adapters/webvtt-cue.ts";
import { adapter as timestampAdapter } from "../reference/adapters/webvtt-timestamp.ts";
import type { Row } from "../reference/row.ts";

/**
 * W3C WebVTT: The Web Video Text Tracks Format. Sections are those of the community group's draft; where a case is not
 * one of the standard's own examples, it is made from the sentence of the standard that stands beside it.
 */
const rows = JSON.parse(
  fs.readFileSync(path.join(import.meta.dirname, "data/time-values.json"), "utf8"),
) as Row[];
const topic = (name: string) =>
  rows.filter((row) => row.category === name).map((row) => [row.id, row] as const);

describe("published values", () => {
  test.each(topic("webvtt-timestamp"))("%s", (_, row) => {
    expect(timestampAdapter(row), row.source).toEqual(row.expected);
  });
  test.each(topic("webvtt-cue"))("%s", (_, row) => {
    expect(cueAdapter(row).conforming, row.source).toBe(row.expected.conforming);
  });
});

const vtt = (...lines: string[]) => parseVtt(lines.join("\n"));
const texts = (...lines: string[]) => vtt(...lines).cues.map((cue) => cue.text);

describe("6.1 file parsing: the signature", () => {
  const cue = ["00:01.000 --> 00:02.000", "words"];
  test.each([
    ["WEBVTT alone", "WEBVTT\n\n"],
    ["a blank and words behind it", "WEBVTT - a title\n\n"],
    ["a tab behind it", "WEBVTT\tnotes\n\n"],
    ["carriage returns", "WEBVTT\r\r"],
    ["carriage return and line feed", "WEBVTT\r\n\r\n"],
  ])("%s", (_, head) => {
    expect(parseVtt(head + cue.join("\n")).cues).toHaveLength(1);
  });
  test.each([
    ["letters behind it", "WEBVTTx\n\n"],
    ["small letters", "webvtt\n\n"],
    ["a blank before it", " WEBVTT\n\n"],
    ["nothing", ""],
    ["half of it", "WEBV"],
  ])("%s: the file is not processed", (_, head) => {
    const file = parseVtt(head + (head === "" ? "" : cue.join("\n")));
    expect(file.signed).toBe(false);
    expect(file.cues).toEqual([]);
  });
  test("six letters and no more are a file without cues", () => {
    expect(parseVtt("WEBVTT")).toMatchObject({ signed: true, cues: [] });
  });
});

describe("6.1 file parsing: blocks", () => {
  test("a cue may follow the header without an empty line", () => {
    expect(texts("WEBVTT", "00:01.000 --> 00:02.000", "words")).toEqual(["words"]);
  });
  test("words of the header are passed over up to an arrow or an empty line", () => {
    expect(texts("WEBVTT", "Kind: captions", "Language: en", "", "00:01.000 --> 00:02.000", "a")).toEqual([
      "a",
    ]);
  });
  test("2.1: two cues are made even if the empty line between them is missing", () => {
    const lines = ["00:01.000 --> 00:02.000", "one", "00:02.000 --> 00:03.000", "two"];
    expect(texts("WEBVTT", "", ...lines)).toEqual(["one", "two"]);
  });
  test("a line above the times is the name of the cue", () => {
    const [cue] = vtt("WEBVTT", "", "crédit de transcription", "00:04.000 --> 00:05.000", "Transcrit").cues;
    expect(cue).toMatchObject({ id: "crédit de transcription", start: 4, end: 5, line: 4 });
  });
  test("two lines above the times: the first is lost, as are times on a third line", () => {
    expect(texts("WEBVTT", "", "one", "two", "00:01.000 --> 00:02.000", "words")).toEqual(["words"]);
  });
  test("a bad time line ends its block; the next cue is read", () => {
    const file = vtt(
      "WEBVTT",
      "",
      "00:01.000 -> 00:02",
      "a",
      "",
      "00:03.000 --> 00:04.00",
      "b",
      "",
      "00:05.000 --> 00:06.000",
      "c",
    );
    expect(file.cues.map((cue) => cue.text)).toEqual(["c"]);
    expect(file.problems.map((one) => one.line)).toEqual([3, 6]);
  });
  test("an empty cue is a cue", () => {
    expect(texts("WEBVTT", "", "00:01.000 --> 00:02.000", "", "00:02.000 --> 00:03.000", "b")).toEqual([
      "",
      "b",
    ]);
  });
  test("NUL becomes the replacement character", () => {
    expect(texts("WEBVTT", "", "00:01.000 --> 00:02.000", "a\0b")).toEqual(["a\ufffdb"]);
  });
  test("line ends of all three kinds count alike", () => {
    const lines = ["WEBVTT", "", "00:01.000 --> 00:02.000", "one", "two"];
    for (const end of ["\n", "\r\n", "\r"]) expect(parseVtt(lines.join(end)).cues[0]?.text).toBe("one\ntwo");
  });
  test("1.3: style blocks stand before the first cue, and behind it are none", () => {
    const style = ["STYLE", "::cue(b) {", "  color: peachpuff;", "}"];
    const cue = ["hello", "00:00:00.000 --> 00:00:10.000", "Hello <b>world</b>."];
    const file = vtt("WEBVTT", "", ...style, "", "NOTE between", "", ...cue, "", ...style);
    expect(file.styles).toEqual(["::cue(b) {\n  color: peachpuff;\n}"]);
    expect(file.cues).toHaveLength(1);
  });
  test("1.5: comments are passed over, of one line and of several", () => {
    const note = [
      "NOTE",
      "This file was written by Jill. I hope",
      "you enjoy reading it. Some things to",
      "bear in mind:",
    ];
    const file = vtt(
      "WEBVTT",
      "",
      ...note,
      "",
      "00:01.000 --> 00:04.000",
      "Never drink liquid nitrogen.",
      "",
      "NOTE check next cue",
      "",
      "00:05.000 --> 00:09.000",
      "— It will perforate your stomach.",
      "— You could die.",
      "",
      "NOTE end of file",
    );
    expect(file.cues.map((cue) => cue.text)).toEqual([
      "Never drink liquid nitrogen.",
      "— It will perforate your stomach.\n— You could die.",
    ]);
    expect(file.problems).toEqual([]);
  });
  test("1.7: what is no caption is read as a cue all the same", () => {
    expect(
      texts(
        "WEBVTT",
        "",
        "ATTRIBUTES",
        "kind: metadata",
        "",
        "1",
        "00:00:00.100 --> 00:00:07.342",
        "{",
        ' "type": "x"',
        "}",
      ),
    ).toEqual(['{\n "type": "x"\n}']);
  });
});

describe("1.4 and 6.2: regions", () => {
  const region = [
    "REGION",
    "id:fred",
    "width:40%",
    "lines:3",
    "regionanchor:0%,100%",
    "viewportanchor:10%,90%",
    "scroll:up",
  ];
  test("the example's region, and a cue that lies in it", () => {
    const file = vtt(
      "WEBVTT",
      "",
      ...region,
      "",
      "00:00:00.000 --> 00:00:20.000 region:fred align:left",
      "<v Fred>Hi, my name is Fred",
    );
    expect(file.regions).toEqual([
      { id: "fred", width: 40, lines: 3, regionAnchor: [0, 100], viewportAnchor: [10, 90], scroll: "up" },
    ]);
    expect(file.cues[0]?.settings).toMatchObject({ region: "fred", align: "left" });
  });
  test("a region that was not defined is none", () => {
    expect(vtt("WEBVTT", "", "00:00.000 --> 00:01.000 region:bill", "x").cues[0]?.settings.region).toBeNull();
  });
  test("settings that are wrong leave the first values", () => {
    const [one] = vtt(
      "WEBVTT",
      "",
      "REGION",
      "width:140% lines:3.5 regionanchor:10% scroll:down id:",
      "",
    ).regions;
    expect(one).toEqual({
      id: "",
      width: 100,
      lines: 3,
      regionAnchor: [0, 100],
      viewportAnchor: [0, 100],
      scroll: "",
    });
  });
});

describe("6.3 cue settings", () => {
  test.each([
    [
      "1.4",
      "position:10%,line-left align:left size:35%",
      { position: 10, positionAlign: "line-left", align: "left", size: 35 },
    ],
    [
      "1.4",
      "position:45%,line-right align:center size:35%",
      { position: 45, positionAlign: "line-right", align: "center" },
    ],
    ["4.4", "vertical:rl", { vertical: "rl" }],
    ["4.4", "line:0", { line: 0, snapToLines: true }],
    ["4.4", "line:-1,end", { line: -1, lineAlign: "end" }],
    ["4.4", "line:85%", { line: 85, snapToLines: false }],
    ["6.3, only the first colon parts name and value", "align:start:end", { align: "center" }],
    ["6.3, a percentage is 0 to 100", "size:101% position:-1%", { size: 100, position: "auto" }],
    ["6.3, a line has one full stop at most", "line:1.5.2", { line: "auto" }],
    ["6.3, a line may be a decimal", "line:1.5", { line: 1.5 }],
    [
      "6.3, a wrong alignment spoils the setting",
      "line:4,middle position:5%,middle",
      { line: "auto", position: "auto" },
    ],
    ["6.3, small letters count", "ALIGN:start", { align: "center" }],
    ["6.3, tabs part settings too", "align:end\tsize:50%", { align: "end", size: 50 }],
  ])("%s: %s", (_, text, expected) => {
    expect(parseSettings(text)).toMatchObject(expected);
  });
  test("a line or a size takes a cue out of its region", () => {
    const regions = new Set(["fred"]);
    expect(parseSettings("region:fred line:1", regions).region).toBeNull();
    expect(parseSettings("region:fred size:50%", regions).region).toBeNull();
    expect(parseSettings("region:fred size:100%", regions).region).toBe("fred");
    expect(parseSettings("region:fred vertical:lr", regions).region).toBeNull();
  });
  test("times may stand close to the arrow, with blanks before them", () => {
    expect(vtt("WEBVTT", "", " \t00:01.000-->00:02.000 align:end", "x").cues[0]).toMatchObject({
      start: 1,
      end: 2,
      settings: { align: "end" },
    });
  });
});

/** A tree written short: tags with their children, texts, times. */
function shape(node: Span["children"][number]): unknown {
  if ("text" in node) return node.text;
  if ("time" in node) return node.time;
  const classes = node.classes.map((name) => `.${name}`).join("");
  return [`${node.tag}${classes}${node.value === "" ? "" : ` ${node.value}`}`, ...node.children.map(shape)];
}
const tree = (text: string) => parseCueText(text).children.map(shape);

describe("6.4 cue text", () => {
  test.each([
    [
      "1.4 voices with classes",
      "<v.first.loud Esme>It's a blue apple tree!",
      [["v.first.loud Esme", "It's a blue apple tree!"]],
    ],
    [
      "1.4 a closed voice and italics",
      "<v Esme>Hee!</v> <i>laughter</i>",
      [["v Esme", "Hee!"], " ", ["i", "laughter"]],
    ],
    [
      "1.4 classes and languages",
      "<i.foreignphrase><lang en>playground</lang></i>, ici",
      [["i.foreignphrase", ["lang en", "playground"]], ", ici"],
    ],
    [
      "5 default classes",
      "<c.yellow.bg_blue>This is yellow text</c>",
      [["c.yellow.bg_blue", "This is yellow text"]],
    ],
    ["a time", "<00:01.000>one<00:02.500> two", [1, "one", 2.5, " two"]],
    ["a time with more behind it is none", "<00:01.000x>one", ["one"]],
    ["a number that is no time is passed over", "<1>one", ["one"]],
    ["a tag that is not known is passed over", "<x>one</x>", ["one"]],
    ["an end without a beginning is passed over", "one</b>", ["one"]],
    ["ends out of order are passed over", "<b>a<i>b</b>c</i>", [["b", "a", ["i", "b", "c"]]]],
    ["a tag that is not closed lasts to the end", "<b>a <i>b", [["b", "a ", ["i", "b"]]]],
    ["ruby, whose end closes the small print too", "<ruby>a<rt>b</ruby>c", [["ruby", "a", ["rt", "b"]], "c"]],
    ["small print outside of ruby is none", "<rt>a</rt>", ["a"]],
    ["empty classes are left out", "<c..a.>x</c>", [["c.a", "x"]]],
    ["blanks in a voice become one", "<v  Mary \n Ann >x", [["v Mary Ann", "x"]]],
    ["a tag cut off by the end", "a<b", ["a", ["b"]]],
    ["an empty tag", "<>x", ["x"]],
    ["references", "&lt;b&gt; &amp;&nbsp;&quot;&lrm;", ['<b> &\u00a0"\u200e']],
    ["references by number", "&#65;&#x42;&#128;&#0;", ["AB€\ufffd"]],
    ["references without their semicolon", "&amp &ltx &copy2", ["& <x ©2"]],
    ["what is no reference stays", "& &; &nosuch; &#; AT&T", ["& &; &nosuch; &#; AT&T"]],
    ["references in a voice", "<v A &amp; B>x", [["v A & B", "x"]]],
  ])("%s", (_, text, expected) => {
    expect(tree(text)).toEqual(expected);
  });
  test("6.6: the plain text leaves the small print out", () => {
    expect(plainText(parseCueText("<ruby>base<rt>over</rt></ruby> <b>bold</b>"))).toBe("base bold");
  });
  test("thousands of open tags do no harm", () => {
    expect(plainText(parseCueText(`${"<b>".repeat(20_000)}x`))).toBe("x");
  });
});

describe("cues for drafting", () => {
  test("words know their own time and their voice", () => {
    const { cues } = readCaptionText(
      "WEBVTT\n\n00:01.000 --> 00:05.000\n<v Jo>one<00:02.000> two</v> <v Ray>three\n",
    );
    expect(cues[0]?.words).toEqual([
      { text: "one", voice: "Jo" },
      { text: "two", at: 2, voice: "Jo" },
      { text: "three", voice: "Ray" },
    ]);
    expect(cues[0]).toMatchObject({ text: "one two three", voice: "Jo", start: 1, end: 5, line: 3 });
  });
  test("a time outside of its cue is no time of a word", () => {
    const { cues } = readCaptionText(
      "WEBVTT\n\n00:10.000 --> 00:12.000\none <00:05.000>two <00:30.000>three\n",
    );
    expect(cues[0]?.words.map((word) => word.at)).toEqual([undefined, undefined, undefined]);
  });
});
