import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { BuildDocument } from "#lib/build/index.ts";
import { compareProcedures, compile } from "#lib/procedure/index.ts";
import { sampleDocument, sampleMark } from "../sample.ts";

const typed = (text: string) => ({ typed: text });

/** Five actions, with a part, two values and a caution. */
function build(): BuildDocument {
  return sampleDocument({
    marks: [
      ...[10, 20, 30, 40, 50].map((at) => sampleMark(at, "action", { words: `Do what is at ${at}` })),
      sampleMark(21, "part", { name: "Gland nut", event: "removed", count: "1" }),
      sampleMark(22, "measurement", {
        words: "Torque",
        specified: typed("20 N·m"),
        asFound: typed("12 N·m"),
      }),
      sampleMark(29, "caution", { hazard: "The shaft is sharp", avoid: "Wear gloves" }),
    ],
  });
}

const edited = (change: (document: BuildDocument) => void) => {
  const document = build();
  change(document);
  return compareProcedures(compile(build()), compile(document)).map(({ what, before, after, concern }) => ({
    what,
    before,
    after,
    concern,
  }));
};
const mark = (document: BuildDocument, id: string) => {
  const found = document.marks.find((one) => one.id === id);
  if (!found) throw new Error(id);
  return found;
};

describe("two procedures of a build", () => {
  test("that are equal differ in nothing", () => {
    expect(compareProcedures(compile(build()), compile(build()))).toEqual([]);
  });

  test("differ in the value that is worked to, which may mean doing it again", () => {
    const differences = edited((document) => {
      mark(document, "measurement-22").fields.specified = typed("15 N·m");
    });
    expect(differences).toEqual([
      { what: "Specified", before: "Torque · 20 N·m", after: "Torque · 15 N·m", concern: "redo" },
    ]);
  });

  test("differ in what the restorer's own machine had, which is read", () => {
    const [one] = edited((document) => {
      mark(document, "measurement-22").fields.asFound = typed("11 N·m");
    });
    expect(one).toMatchObject({ what: "As found", concern: "read" });
  });

  test("differ in a step that was left out, one that was added, and a caution", () => {
    const differences = edited((document) => {
      mark(document, "action-50").gone = "2026-01-01T00:00:00.000Z";
      mark(document, "caution-29").fields.avoid = "Wear leather gloves";
      document.marks.push(sampleMark(60, "action", { words: "Wipe it down" }));
    });
    expect(differences.map(({ what, concern }) => [what, concern])).toEqual([
      ["Caution", "read"],
      ["Step added", "redo"],
      ["Step left out", "redo"],
    ]);
  });

  test("one step that was moved to the front is one difference, not five", () => {
    const differences = edited((document) => {
      mark(document, "action-50").at = 5;
    });
    expect(differences).toEqual([
      { what: "Step moved", before: "Step 5, strip", after: "Step 1, strip", concern: "redo" },
    ]);
  });

  test("any order: as few steps are said to be moved as are outside a longest rising run", () => {
    fc.assert(
      fc.property(fc.shuffledSubarray([1, 2, 3, 4, 5, 6, 7], { minLength: 7 }), (order) => {
        const actions = (places: number[]) =>
          sampleDocument({
            marks: places.map((at, index) =>
              sampleMark(at * 10, "action", { words: `Do ${index}` }, { id: `step-${index}` }),
            ),
          });
        const differences = compareProcedures(
          compile(actions([1, 2, 3, 4, 5, 6, 7])),
          compile(actions(order)),
        );
        const moved = differences.filter((one) => one.what === "Step moved").length;
        expect(moved).toBe(7 - longestRising(order));
      }),
      { numRuns: 200, seed: 7 },
    );
  });
});

/** By trying every subset: the definition itself. */
function longestRising(places: number[]): number {
  let best = 0;
  for (let chosen = 0; chosen < 1 << places.length; chosen++) {
    const some = places.filter((_, index) => chosen & (1 << index));
    if (some.every((one, index) => index === 0 || one > (some[index - 1] as number)))
      best = Math.max(best, some.length);
  }
  return best;
}
