import fs from "node:fs";
import path from "node:path";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type Captions, draft, readCaptions, toPlainMarks, toWebVtt } from "#lib/captions/index.ts";

/** A tenth in the ordinary run; LONG=1 reads them all. */
const numRuns = process.env.LONG ? 200_000 : 20_000;

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

/** What is wrong with what was read: nothing, for any file. */
function flawsOf({ cues, problems }: Captions): string[] {
  const flaws: string[] = [];
  let last = 0;
  for (const { start, end, text, words } of cues) {
    if (!(Number.isFinite(end) && start >= last && end >= start)) flaws.push(`times ${start} to ${end}`);
    if (words.length === 0 || text !== words.map((word) => word.text).join(" "))
      flaws.push(`words of “${text}”`);
    last = start;
  }
  for (const one of problems) {
    if (!(one.line > 0 && one.found !== "" && one.expected !== "" && one.todo !== ""))
      flaws.push(JSON.stringify(one));
  }
  for (const mark of toPlainMarks(draft(cues))) {
    const kept = JSON.stringify(mark);
    if (!(Number.isFinite(mark.t) && mark.t_end >= mark.t) || kept.includes("null")) flaws.push(kept);
  }
  return flaws;
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
          expect(flawsOf(read)).toEqual([]);
          expect(readCaptions(Buffer.from(toWebVtt(read.cues))).cues.length).toBe(read.cues.length);
        },
      ),
      { seed: 7, numRuns },
    );
  });
});
