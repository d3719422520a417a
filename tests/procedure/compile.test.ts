import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { BuildDocument } from "#lib/build/index.ts";
import { kindNames } from "#lib/mark/index.ts";
import { compile, reorder, stepsOf, withEdits } from "#lib/procedure/index.ts";
import { sampleDocument, sampleMark } from "../sample.ts";

const now = "2026-05-03T10:00:00Z";
const titles = (document: BuildDocument) => stepsOf(compile(document)).map((step) => step.title);

describe("where a mark belongs", () => {
  test("a warning up to 20 s before an action belongs to it, one earlier to the action before", () => {
    const document = sampleDocument({
      marks: [
        sampleMark(10, "action", { words: "Drain the tank" }),
        sampleMark(39.9, "caution", { words: "too early" }),
        sampleMark(40, "caution", { words: "just in time" }),
        sampleMark(45, "part", { item: "Cover", event: "removed" }),
        sampleMark(60, "action", { words: "Lift the cover off" }),
      ],
    });
    const [drain, lift] = stepsOf(compile(document));
    expect(drain?.cautions.map((one) => one.hazard)).toEqual(["too early"]);
    expect(drain?.parts.map((one) => one.name)).toEqual(["Cover"]);
    expect(lift?.cautions.map((one) => one.hazard)).toEqual(["just in time"]);
  });

  test("marks before the first action, and those without film, are not placed", () => {
    const document = sampleDocument({
      marks: [
        sampleMark(5, "part", { item: "Cover", event: "inspected" }),
        sampleMark(60, "action", { words: "Lift the cover off" }),
        sampleMark(null, "part", { item: "Seal", event: "obtained", count: "1" }),
      ],
    });
    const procedure = compile(document);
    expect(procedure.tray.map((one) => one.words)).toEqual(["Cover", "Seal"]);
    expect(procedure.parts.map((one) => [one.name, one.quantity])).toEqual([
      ["Cover", null],
      ["Seal", 1],
    ]);
  });

  test("what is left has its limits of time as typed, and none where none was written", () => {
    const document = sampleDocument({
      marks: [
        sampleMark(10, "action", { words: "Hang the brackets in the bath" }),
        sampleMark(11, "deferred", { words: "In the bath", longest: { typed: "24 h" }, limitWhy: "it pits" }),
        sampleMark(12, "deferred", { words: "Finger-tight" }),
      ],
    });
    const [bath, nuts] = compile(document).deferred;
    expect(bath?.soak).toEqual({ least: "", longest: "24 h", why: "it pits" });
    expect(nuts && "soak" in nuts).toBe(false);
  });

  test("a stage is the action's own, else the one before, else the sitting's; stages print in their order", () => {
    const document = sampleDocument({
      marks: [
        sampleMark(10, "action", { words: "Take it off" }),
        sampleMark(20, "action", { words: "Put it on", stage: "assemble" }),
        sampleMark(30, "action", { words: "Tighten it" }),
        sampleMark(40, "action", { words: "Wash it", stage: "clean" }),
      ],
    });
    const procedure = compile(document);
    expect(procedure.stages.map((stage) => stage.stage)).toEqual(["strip", "clean", "assemble"]);
    expect(titles(document)).toEqual(["Take it off", "Wash it", "Put it on", "Tighten it"]);
    expect(stepsOf(procedure).map((step) => step.number)).toEqual([1, 2, 3, 4]);
  });

  test("as many parts as were fitted, a trial fit apart; else as many as came off", () => {
    const part = (at: number, item: string, event: string, count: string) =>
      sampleMark(at, "part", { item, event, count }, { id: `${item}-${at}` });
    const document = sampleDocument({
      marks: [
        sampleMark(10, "action", { words: "Strip" }),
        part(11, "Nut", "removed", "4"),
        part(12, "Washer", "removed", "3"),
        sampleMark(20, "action", { words: "Try", stage: "trial fit" }),
        part(21, "Nut", "fitted", "4"),
        sampleMark(30, "action", { words: "Fit", stage: "assemble" }),
        part(31, "Nut", "fitted", "2"),
        part(32, "Nut", "fitted", "2"),
      ],
    });
    expect(compile(document).parts.map((one) => [one.balloon, one.name, one.quantity])).toEqual([
      [1, "Nut", 4],
      [2, "Washer", 3],
    ]);
  });

  test("what comes off and goes on again is one part, in whatever stage that happens", () => {
    const part = (at: number, item: string, event: string, count: string) =>
      sampleMark(at, "part", { item, event, count }, { id: `${item}-${at}` });
    const document = sampleDocument({
      marks: [
        sampleMark(10, "action", { words: "Drain it" }),
        part(11, "Plug", "removed", "1"),
        sampleMark(20, "action", { words: "Fit it", stage: "assemble" }),
        part(21, "Plug", "fitted", "1"),
        part(22, "Washer", "fitted", "2"),
        sampleMark(30, "action", { words: "Open it once more", stage: "strip" }),
        part(31, "Plug", "removed", "1"),
        sampleMark(40, "action", { words: "Close it", stage: "assemble" }),
        part(41, "Washer", "replaced", "1"),
        part(42, "Plug", "fitted", "1"),
      ],
    });
    expect(compile(document).parts.map((one) => [one.name, one.quantity])).toEqual([
      ["Plug", 1],
      ["Washer", 2],
    ]);
  });
});

describe("hand edits", () => {
  const steps = [10, 20, 30, 40, 50].map((at) => sampleMark(at, "action", { words: `Do ${at}` }));
  const document = sampleDocument({ marks: steps });

  test("any order of the steps can be reached, and stands when a mark's words change", () => {
    fc.assert(
      fc.property(
        fc.shuffledSubarray(
          steps.map((step) => step.id),
          { minLength: 5 },
        ),
        fc.nat(4),
        (wanted, other) => {
          const first = withEdits(document, reorder(document, wanted, now));
          expect(stepsOf(compile(first)).map((step) => step.mark)).toEqual(wanted);
          const again = [...wanted.slice(other), ...wanted.slice(0, other)];
          const second = withEdits(first, reorder(first, again, now));
          expect(stepsOf(compile(second)).map((step) => step.mark)).toEqual(again);
          const mended = second.marks.map((mark) => ({
            ...mark,
            fields: { ...mark.fields, words: "mended" },
          }));
          expect(stepsOf(compile({ ...second, marks: mended })).map((step) => step.mark)).toEqual(again);
        },
      ),
      { seed: 1904, numRuns: 300 },
    );
  });
});

test("the same procedure, whatever order the rows stand in", () => {
  const kind = fc.constantFrom(...kindNames, "" as const);
  const word = fc.constantFrom("Cover", "Nut", "Seal", "cover", "");
  const mark = fc.record({ at: fc.option(fc.nat(40)), kind, word, rank: fc.nat(2), id: fc.uuid() });
  const edit = fc.record({
    from: fc.nat(30),
    to: fc.nat(30),
    edit: fc.constantFrom("title", "stage", "after", "merged", "split", "belongs"),
  });
  fc.assert(
    fc.property(
      fc.uniqueArray(mark, { maxLength: 30, selector: (one) => one.id }),
      fc.array(edit, { maxLength: 12 }),
      fc.infiniteStream(fc.double({ min: 0, max: 1, noNaN: true })),
      (given, edits, random) => {
        const marks = given.map(({ at, kind, word, rank, id }) =>
          sampleMark(at, kind, { words: word, item: word, event: "removed", count: "2" }, { id, rank }),
        );
        const idAt = (index: number) => marks[index % Math.max(1, marks.length)]?.id ?? "none";
        const document = sampleDocument({
          marks,
          edits: edits.map(({ from, to, edit }) => ({
            id: `${edit}-${idAt(from)}`,
            buildId: "build-1",
            markId: idAt(from),
            edit: edit as "title",
            value: edit === "stage" ? "assemble" : edit === "title" ? "Named" : idAt(to),
            basis: "",
            gone: null,
            rev: 1,
          })),
        });
        // One edit of a kind for each mark, as the store keeps them.
        document.edits = [...new Map(document.edits.map((row) => [row.id, row])).values()];
        const shuffled = <T>(rows: T[]) =>
          rows
            .map((row) => ({ row, key: random.next().value }))
            .sort((a, b) => a.key - b.key)
            .map(({ row }) => row);
        const procedure = compile(document);
        const other = { ...document, marks: shuffled(document.marks), edits: shuffled(document.edits) };
        expect(compile(other)).toEqual(procedure);
        // Nothing is lost: every mark is in exactly one step, in the tray, or unsorted.
        const seen = [
          ...stepsOf(procedure).flatMap((step) => step.marks),
          ...procedure.tray.map((one) => one.mark),
          ...procedure.unsorted.map((one) => one.mark),
        ];
        expect(seen.sort()).toEqual(marks.map((one) => one.id).sort());
      },
    ),
    { seed: 1904, numRuns: process.env.LONG ? 20_000 : 2000 },
  );
});
