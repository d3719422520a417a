import { describe, expect, test } from "vitest";
import {
  type DraftDecision,
  type DraftMark,
  matchDecisions,
  readCaptionText,
  toDraftMarks,
} from "#lib/captions/index.ts";
import { cuesOf, known, type Recording, saying } from "./helpers.ts";

const marksOf = (recording: Recording, recordingId = "r") => toDraftMarks(cuesOf(recording), { recordingId });
const decide = (marks: readonly DraftMark[]): DraftDecision[] =>
  marks.map(({ identity }, i) => ({
    identity,
    verdict: i % 2 === 0 ? "accepted" : "dropped",
    markId: `m${i}`,
  }));

describe("decisions survive", () => {
  test.each(known.map((recording) => [recording.name, recording] as const))(
    "the same file read again: %s",
    (_, recording) => {
      const marks = marksOf(recording);
      const { open, decided, orphaned } = matchDecisions(marksOf(recording), decide(marks));
      expect(open).toEqual([]);
      expect(orphaned).toEqual([]);
      expect(decided.map(({ decision }) => decision.markId).sort()).toEqual(
        marks.map((_one, i) => `m${i}`).sort(),
      );
    },
  );
  test("the same recording from a file of another shape, with whole seconds for thousandths", () => {
    const [vtt, txt] = ["outboard-lower.vtt", "outboard-lower.txt"].map((name) =>
      known.find((one) => one.name === name),
    );
    const old = marksOf(vtt as Recording);
    const { decided, open } = matchDecisions(marksOf(txt as Recording), decide(old));
    expect(decided.length).toBeGreaterThan(0.95 * old.length);
    expect(open.length).toBeLessThan(0.05 * old.length + 1);
  });
  test("a mended word elsewhere", () => {
    const before = saying(
      "It's 18 though of backlash.",
      "So they're scrap, new half nuts.",
      "Don't ream sintered bronze.",
    );
    const after = before.replace("though", "thou").replace("half nuts", "half-nuts");
    const marks = (text: string) => toDraftMarks(readCaptionText(text).cues, { recordingId: "r" });
    const { open, decided } = matchDecisions(marks(after), decide(marks(before)));
    expect(open).toEqual([]);
    expect(decided.length).toBe(marks(before).length);
  });
});

describe("what is new is asked again", () => {
  const marks = (text: string) => toDraftMarks(readCaptionText(saying(text)).cues, { recordingId: "r" });
  test("a value that was mended is open, and says what was decided of the old one", () => {
    const old = decide(marks("It's 18 thou of backlash."));
    const { open, decided, orphaned } = matchDecisions(marks("It's 80 thou of backlash."), old);
    expect(decided).toEqual([]);
    expect(open[0]?.formerly).toBe(old[0]);
    expect(orphaned).toEqual([]);
  });
  test("a draft that is gone leaves its decision, which holds again when the words come back", () => {
    const old = decide(marks("It's 18 thou of backlash."));
    expect(matchDecisions(marks("It's fine."), old).orphaned).toEqual(old);
    expect(matchDecisions(marks("It's 18 thou of backlash."), old).decided).toHaveLength(1);
  });
  test("another recording has decisions of its own", () => {
    const old = decide(marks("It's 18 thou of backlash."));
    const other = toDraftMarks(readCaptionText(saying("It's 18 thou of backlash.")).cues, {
      recordingId: "other",
    });
    expect(matchDecisions(other, old)).toMatchObject({ decided: [], orphaned: old });
  });
  test("of two like drafts in one sentence each has its own decision", () => {
    const two = marks(
      "It's 20 microfarads, and the other side of the can is for another circuit, 20 microfarads.",
    );
    const old = decide(two).map((one, i) => ({ ...one, markId: `m${i}` }));
    expect(new Set(matchDecisions(two, old).decided.map(({ decision }) => decision.markId)).size).toBe(
      old.length,
    );
  });
});
