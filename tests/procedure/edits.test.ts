import { describe, expect, test } from "vitest";
import type { BuildDocument, Edit } from "#lib/build/index.ts";
import {
  compile,
  mergeWithPrevious,
  moveMark,
  moveStep,
  restage,
  setEdit,
  splitAt,
  stepsOf,
  withEdits,
} from "#lib/procedure/index.ts";
import { sampleDocument, sampleMark } from "../sample.ts";

const now = "2026-05-03T10:00:00Z";
const start = sampleDocument({
  marks: [
    sampleMark(10, "action", { words: "Drain it" }),
    sampleMark(12, "tool", { words: "Tray" }),
    sampleMark(30, "action", { words: "Undo the nuts" }),
    sampleMark(35, "part", { item: "Nut", event: "removed", count: "4" }),
    sampleMark(36, "gotcha", { words: "One nut is left-handed" }),
    sampleMark(60, "action", { words: "Lift the cover", detail: "Straight up." }),
    sampleMark(90, "action", { words: "Wash it", stage: "clean" }),
  ],
});

const by = (document: BuildDocument, rows: Edit[]) => withEdits(document, rows);
const titles = (document: BuildDocument) => stepsOf(compile(document)).map((step) => step.title);
/** The same build after every mark's words were mended and one mark was added in between. */
function later(document: BuildDocument): BuildDocument {
  const marks = document.marks.map((mark) => ({
    ...mark,
    fields: { ...mark.fields, words: `${mark.fields.words}!` },
  }));
  return { ...document, marks: [...marks, sampleMark(45, "action", { words: "Prise the joint" })] };
}

describe("hand edits are kept when marks change", () => {
  test("a step moved up stays before its neighbour; one added later finds its place by its time", () => {
    const moved = by(start, moveStep(start, "action-30", -1, now));
    expect(titles(moved)).toEqual(["Undo the nuts", "Drain it", "Lift the cover", "Wash it"]);
    expect(titles(later(moved))).toEqual([
      "Undo the nuts!",
      "Drain it!",
      "Prise the joint",
      "Lift the cover!",
      "Wash it!",
    ]);
  });

  test("past the end of its stage a step goes over into the next", () => {
    const moved = by(start, moveStep(start, "action-60", 1, now));
    expect(compile(moved).stages.map((one) => [one.stage, one.steps.map((step) => step.title)])).toEqual([
      ["strip", ["Drain it", "Undo the nuts"]],
      ["clean", ["Lift the cover", "Wash it"]],
    ]);
  });

  test("a merged step keeps its words, its parts and its details, and comes apart again", () => {
    const merged = by(start, mergeWithPrevious(start, "action-60", now));
    const [, nuts] = stepsOf(compile(merged));
    expect(nuts?.details.map((one) => one.text)).toEqual(["Lift the cover", "Straight up."]);
    expect(nuts?.marks).toEqual(["action-30", "tool-12", "part-35", "gotcha-36", "action-60"]);
    expect(titles(by(merged, splitAt(merged, "action-60", now)))).toEqual(titles(start));
  });

  test("a step begun at a mark is called by its words, or by the title it is given", () => {
    const split = by(start, splitAt(start, "gotcha-36", now));
    expect(titles(split)).toEqual([
      "Drain it",
      "Undo the nuts",
      "One nut is left-handed",
      "Lift the cover",
      "Wash it",
    ]);
    const named = by(split, setEdit(split, "gotcha-36", "title", "Turn the odd nut to the right", now));
    expect(titles(named)[2]).toBe("Turn the odd nut to the right");
    expect(titles(later(named))[2]).toBe("Turn the odd nut to the right");
  });

  test("a step put under another stage stands there by its time", () => {
    const document = by(start, restage(start, "action-30", "clean", now));
    expect(compile(document).stages.map((one) => one.steps.map((step) => step.title))).toEqual([
      ["Drain it", "Lift the cover"],
      ["Undo the nuts", "Wash it"],
    ]);
  });

  test("one key moves a mark to the step before or after", () => {
    const before = by(start, moveMark(start, "part-35", -1, now));
    expect(stepsOf(compile(before)).map((step) => step.parts.length)).toEqual([1, 0, 0, 0]);
    const after = by(start, moveMark(start, "part-35", 1, now));
    expect(stepsOf(compile(after)).map((step) => step.parts.length)).toEqual([0, 0, 1, 0]);
  });

  test("an edit whose mark is gone is kept, changes nothing, and works again when the mark comes back", () => {
    const named = by(start, setEdit(start, "action-60", "title", "Lift it off", now));
    const without = {
      ...named,
      marks: named.marks.map((mark) => (mark.id === "action-60" ? { ...mark, gone: now } : mark)),
    };
    expect(compile(without).orphans.map((one) => one.why)).toEqual(["mark gone"]);
    expect(compile(named).orphans).toEqual([]);
    expect(titles(named)).toContain("Lift it off");
  });
});
