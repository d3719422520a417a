import { describe, expect, test } from "vitest";
import { newStill } from "#lib/build/index.ts";
import { type Drawing, plainDrawing } from "#lib/figure/index.ts";
import { apply, loadBuild, Refused, step, withNewIds } from "#lib/store/index.ts";
import { sampleDocument, sampleMark } from "../sample.ts";
import { commandOf, freshWorkshop, writeDocument } from "./fresh.ts";

const mark = sampleMark(12, "measurement", { words: "Bore" });
const drawing: Drawing = {
  ...plainDrawing,
  view: "detail B",
  quarter: 90,
  balloons: [{ id: "balloon-1", item: "item-cover", at: { x: 0.4, y: 0.6 }, seat: { x: 1.1, y: 0.5 } }],
  dimensions: [
    { id: "dimension-1", mark: mark.id, from: { x: 0.1, y: 0.2 }, to: { x: 0.9, y: 0.2 }, stand: 0.1 },
  ],
};

async function workshopWithStill() {
  const opened = freshWorkshop();
  const stills = [newStill({ id: "still-1", buildId: "build-1", markId: mark.id })];
  await writeDocument(opened, sampleDocument({ marks: [mark], stills }));
  const now = async () => (await loadBuild(opened.client, "build-1"))?.stills[0]?.drawing;
  const put = (drawing: unknown) =>
    apply(opened.client, commandOf([{ table: "still", id: "still-1", rev: 1, set: { drawing } }]));
  return { ...opened, now, put };
}

describe("a drawing in the workshop", () => {
  test("is kept to the letter, undone to a plain one, and redone", async () => {
    const { client, now, put } = await workshopWithStill();
    expect(await now()).toEqual(plainDrawing);
    await put(drawing);
    expect(await now()).toEqual(drawing);
    await step(client, { id: "undo-1", buildId: "build-1", step: "undo" });
    expect(await now()).toEqual(plainDrawing);
    await step(client, { id: "redo-1", buildId: "build-1", step: "redo" });
    expect(await now()).toEqual(drawing);
  });

  test("that no drawing can be is refused, and the one before stands", async () => {
    const { now, put } = await workshopWithStill();
    const hostile: unknown[] = [
      { ...drawing, version: 2 },
      { ...drawing, straighten: 40 },
      { ...drawing, crop: { x: 0.9, y: 0, width: 0.5, height: 1 } },
      { ...drawing, balloons: [{ ...drawing.balloons[0], at: { x: Number.NaN, y: 0 } }] },
      { ...drawing, balloons: Array.from({ length: 61 }, () => drawing.balloons[0]) },
      "a drawing",
    ];
    for (const one of hostile) await expect(put(one)).rejects.toBeInstanceOf(Refused);
    expect(await now()).toEqual(plainDrawing);
  });

  test("of a second copy belongs to the copy's own measurement, and to the same part of the machine", () => {
    const stills = [newStill({ id: "still-1", buildId: "build-1", markId: mark.id, drawing })];
    const copy = withNewIds(sampleDocument({ marks: [mark], stills }));
    const [still] = copy.stills;
    expect(copy.marks[0]?.id).not.toBe(mark.id);
    expect(still?.drawing.dimensions[0]?.mark).toBe(copy.marks[0]?.id);
    expect(still?.drawing.balloons).toEqual(drawing.balloons);
  });
});
