import fs from "node:fs";
import path from "node:path";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type Captions, draft, readCaptions, toPlainMarks, toWebVtt } from "#lib/captions/index.ts";

/** 5,000 files in the ordinary run; LONG=1 reads 200,000. */
const numRuns = process.env.LONG ? 200_000 : 5_000;

const folders = ["shared", "recordings"].map((name) => path.join(import.meta.dirname, name));
const files = folders.flatMap((folder) =>
  fs
    .readdirSync(folder)
    .filter((name) => /\.(?:vtt|srt|txt)$/.test(name))
    .sort()
    .map((name) => fs.readFileSync(path.join(folder, name))),
);

/** Pieces that lead a reader on: half times, arrows, tags, references, numbers, units, words of every rule. */
const piece = fc.constantFrom(
  ..."WEBVTT NOTE STYLE REGION id:a --> 00:01.000 00:00:02,500 [0:03] 1:02:03 99:99:99.999 1 12 <v <c> </c> <00:01.000> &amp; &#x110000; &nosuch; three eighths point oh one five thou inch and a half to by M6 BSF minus 50:1 3/8 do not never mind your fingers new one for now left hand it looks like % ° £ ½ … — ♪ [Music] \u0000 \ud800 \u200e 🔧 __proto__ constructor toString hasOwnProperty".split(
    " ",
  ),
  "\n",
  "\n\n",
  "\r\n",
  "\r",
  " ",
  "\t",
  "00:00:01.000 --> 00:00:02.000\n",
  "<".repeat(40),
  "a".repeat(300),
  "9".repeat(40),
);
const made = fc
  .array(piece, { maxLength: 40 })
  .chain((pieces) => fc.constantFrom(" ", "", "\n").map((join) => Buffer.from(pieces.join(join), "utf8")));
const noise = fc.uint8Array({ maxLength: 200 }).map((bytes) => Buffer.from(bytes));

/** A piece of a real file, with some of its bytes changed, left out or doubled. */
const mutated = fc
  .record({
    file: fc.nat({ max: files.length - 1 }),
    from: fc.nat({ max: 20_000 }),
    length: fc.integer({ min: 1, max: 900 }),
    head: fc.constantFrom("", "WEBVTT\n\n", "\ufeff"),
    changes: fc.array(
      fc.record({ at: fc.nat({ max: 900 }), byte: fc.nat({ max: 255 }), how: fc.nat({ max: 2 }) }),
      { maxLength: 12 },
    ),
  })
  .map(({ file, from, length, head, changes }) => {
    const whole = files[file] as Buffer;
    const start = from % whole.length;
    const bytes = [...whole.subarray(start, start + length)];
    for (const { at, byte, how } of changes) {
      if (how === 0) bytes[at % bytes.length] = byte;
      else if (how === 1) bytes.splice(at % bytes.length, 1 + (byte % 9));
      else bytes.splice(at % bytes.length, 0, ...bytes.slice(0, byte % 60));
    }
    return Buffer.concat([Buffer.from(head), Buffer.from(bytes)]);
  });

function holds({ cues, problems }: Captions): void {
  for (const [i, cue] of cues.entries()) {
    expect(Number.isFinite(cue.start) && cue.start >= 0 && cue.end >= cue.start).toBe(true);
    expect(cue.start).toBeGreaterThanOrEqual(cues[i - 1]?.start ?? 0);
    expect(cue.text).toBe(cue.words.map((word) => word.text).join(" "));
    expect(cue.words.length).toBeGreaterThan(0);
  }
  for (const one of problems) {
    expect(one.line).toBeGreaterThan(0);
    expect(one.found !== "" && one.expected !== "" && one.todo !== "").toBe(true);
  }
}

function drafts({ cues }: Captions): void {
  for (const mark of toPlainMarks(draft(cues))) {
    expect(Number.isFinite(mark.t) && mark.t_end >= mark.t).toBe(true);
    expect(JSON.parse(JSON.stringify(mark))).toEqual(mark);
  }
}

describe("any file at all", () => {
  it(`is read and drafted without throwing, over ${numRuns} files`, { timeout: 3_600_000 }, () => {
    fc.assert(
      fc.property(
        fc.oneof(
          { weight: 2, arbitrary: made },
          { weight: 1, arbitrary: noise },
          { weight: 3, arbitrary: mutated },
        ),
        (bytes) => {
          const read = readCaptions(bytes);
          holds(read);
          drafts(read);
          expect(readCaptions(Buffer.from(toWebVtt(read.cues))).cues.length).toBe(read.cues.length);
        },
      ),
      { seed: 7, numRuns },
    );
  });
});
