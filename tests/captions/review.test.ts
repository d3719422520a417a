import { describe, expect, test } from "vitest";
import { type DraftDecision, draftsToDecide, readCaptionText, toDraftMarks } from "#lib/captions/index.ts";
import { sampleMark } from "../sample.ts";
import { saying } from "./helpers.ts";

/** Drafts of what is said on the sample's recording, a sentence each ten seconds, the first at second 1. */
const drafts = (...said: string[]) =>
  toDraftMarks(readCaptionText(saying(...said)).cues, { recordingId: "recording-1" });
const kindsLeft = (open: ReturnType<typeof draftsToDecide>) => open.map(({ draft }) => draft.kind);
const typed = (text: string) => ({ typed: text });

describe("a mark made by hand stands for the draft that says the same", () => {
  const measured = drafts("It has 18 thou of backlash.");
  test("there is one draft without it", () => {
    expect(kindsLeft(draftsToDecide(measured, [], []))).toEqual(["measurement"]);
  });
  // 1 thou is 0.001 in, and 1 in is 25.4 mm exactly (NIST SP 811, B.8): 18 thou is 0.4572 mm.
  test.each(["18 thou", "0.018 in", "0.4572 mm"])("a value is the same in any unit: %s", (value) => {
    const mark = sampleMark(4, "measurement", { words: "backlash", asFound: typed(value) });
    expect(draftsToDecide(measured, [], [mark])).toEqual([]);
  });
  const others: [string, ReturnType<typeof sampleMark>][] = [
    ["another value", sampleMark(4, "measurement", { asFound: typed("81 thou") })],
    ["another moment", sampleMark(40, "measurement", { asFound: typed("18 thou") })],
    ["another kind", sampleMark(4, "tool", { words: "18 thou" })],
    [
      "a mark struck out",
      sampleMark(4, "measurement", { asFound: typed("18 thou") }, { gone: "2026-05-03T10:00:00Z" }),
    ],
    [
      "another recording",
      sampleMark(4, "measurement", { asFound: typed("18 thou") }, { recordingId: "recording-2" }),
    ],
    ["a mark without film", sampleMark(null, "measurement", { asFound: typed("18 thou") })],
  ];
  test.each(others)("%s does not", (_, mark) => {
    expect(kindsLeft(draftsToDecide(measured, [], [mark]))).toEqual(["measurement"]);
  });
  test("one mark stands for one draft, the nearest", () => {
    const two = drafts(
      "It has 18 thou of backlash.",
      "Nothing of note here.",
      "The bore of the bush measures 18 thou over.",
    );
    expect(two.filter((one) => one.kind === "measurement")).toHaveLength(2);
    const left = draftsToDecide(two, [], [sampleMark(9, "measurement", { asFound: typed("18 thou") })]);
    expect(kindsLeft(left).filter((kind) => kind === "measurement")).toHaveLength(1);
  });
});

test("a mark that was accepted from a draft does not hide the draft beside it", () => {
  const two = drafts("Don't lever on the casting. Don't force the bush.");
  const cautions = two.filter((one) => one.kind === "caution");
  expect(cautions).toHaveLength(2);
  const [first] = cautions;
  if (!first) return;
  const accepted: DraftDecision = { identity: first.identity, verdict: "accepted", markId: "caution-3" };
  const open = draftsToDecide(cautions, [accepted], [sampleMark(3, "caution", { words: "the casting" })]);
  expect(open).toHaveLength(1);
});

test("a draft that was dropped stays away", () => {
  const [draft] = drafts("It has 18 thou of backlash.");
  if (!draft) return;
  expect(draftsToDecide([draft], [{ identity: draft.identity, verdict: "dropped" }], [])).toEqual([]);
});
