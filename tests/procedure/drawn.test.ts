import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type BuildDocument, newItem, newStill } from "#lib/build/index.ts";
import { type Drawing, figureLines, plainDrawing } from "#lib/figure/index.ts";
import { compile, dimensionText, stepsOf } from "#lib/procedure/index.ts";
import { sampleDocument, sampleMark } from "../sample.ts";
import "../seed.ts";

const size = { picture: { width: 1280, height: 720 }, room: { width: 142, height: 104 }, text: 4.23 };

/** A build with one step, `parts` parts in it, every second one an item of its own, and a still with these balloons. */
function buildWith(parts: number, pointed: readonly number[]): BuildDocument {
  const isItem = (at: number) => at % 2 === 0;
  const drawing: Drawing = {
    ...plainDrawing,
    balloons: pointed.map((part, index) => ({
      id: `b${index}`,
      item: isItem(part) ? `item-${part}` : `name:part ${part}`,
      at: { x: (index % 7) / 7, y: index / 40 },
      seat: null,
    })),
  };
  const numbers = Array.from({ length: parts }, (_, index) => index);
  return sampleDocument({
    items: numbers
      .filter(isItem)
      .map((at) => newItem({ id: `item-${at}`, machineId: "machine-1", name: `Part ${at}` })),
    marks: [
      sampleMark(1, "action", { words: "Take it apart" }),
      ...numbers.map((at) =>
        sampleMark(2 + at / 100, "part", {
          item: `Part ${at}`,
          event: "removed",
          ...(isItem(at) && { itemId: `item-${at}` }),
        }),
      ),
    ],
    stills: [
      newStill({ id: "still-1", buildId: "build-1", markId: "action-1", width: 1280, height: 720, drawing }),
    ],
  });
}

describe("numbers on figures", () => {
  test("each is a line of the parts list, the same part has one everywhere, and where all are pointed out each line is one", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 20 }),
        fc.array(fc.nat(25), { minLength: 1, maxLength: 20 }),
        fc.boolean(),
        (parts, some, all) => {
          const pointed = all ? [...some.filter((at) => at < parts), ...Array(parts).keys()] : some;
          const procedure = compile(buildWith(parts, pointed));
          const drawn = stepsOf(procedure)[0]?.stills[0]?.drawn;
          if (!drawn) throw new Error("the still has a drawing");
          const numberOf = (item: string) => drawn.numbers.find((one) => one.item === item)?.number ?? null;
          const { balloons, undrawn } = figureLines(drawn.drawing, size, numberOf, () => null);
          const listed = new Map(procedure.parts.map((line) => [line.balloon, line.name]));
          for (const { id, number } of balloons) {
            const part = pointed[Number(id.slice(1))];
            expect(listed.get(number)).toBe(`Part ${part}`);
          }
          expect(undrawn).toHaveLength(pointed.filter((at) => at >= parts).length);
          if (all) expect(new Set(balloons.map(({ number }) => number))).toEqual(new Set(listed.keys()));
        },
      ),
      { numRuns: 200 },
    );
  });

  test("a balloon from before its part had an identity finds it by name afterwards", () => {
    const document = buildWith(1, [0]);
    const [still] = document.stills;
    if (still)
      still.drawing.balloons = [{ id: "b", item: "name:part 0", at: { x: 0.5, y: 0.5 }, seat: null }];
    expect(stepsOf(compile(document))[0]?.stills[0]?.drawn?.numbers).toEqual([
      { item: "name:part 0", number: 1 },
    ]);
  });

  test("a plain still has no drawing, so that what was published before figures keeps its hash", () => {
    const document = buildWith(1, []);
    expect(stepsOf(compile(document))[0]?.stills[0]).not.toHaveProperty("drawn");
  });
});

describe("what stands on a dimension", () => {
  const typed = (values: Record<string, string>) =>
    Object.fromEntries(Object.entries(values).map(([name, text]) => [name, { typed: text, read: null }]));
  test.each([
    [{ asFound: "0.48 in", asFitted: "0.50 in", limit: "0.49 in" }, "0.50 in (limit 0.49 in)"],
    [{ specified: "8 to 12 thou", limit: "at most 20 thou" }, "8 to 12 thou"],
    [{ asFitted: "0.4982 in (12.654 mm), mean" }, "0.4982 in (12.654 mm),…"],
    [{ specified: "1.3780 to 1.3790 in (35.00 mm)" }, "1.3780 to 1.3790 in"],
    [{ limit: "0.03 mm" }, "limit 0.03 mm"],
    // As found is not as it should be.
    [{ asFound: "0.48 in" }, "Bore"],
  ])("of %j is %s", (values, text) => {
    expect(dimensionText({ values: typed(values) as never, what: "Bore" })).toBe(text);
  });
});
