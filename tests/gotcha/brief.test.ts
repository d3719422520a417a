import { describe, expect, test } from "vitest";
import { briefLength } from "#lib/gotcha/index.ts";
import { measureBriefs } from "./measure.ts";
import { makeWorld } from "./truth.ts";

describe("briefs for 200 openings of invented machines with a written truth", () => {
  test.each([1, 2, 3, 4, 5])("world %i: they find the truth, and little else", (seed) => {
    const { openings, superseded, ...book } = makeWorld(seed);
    const asked = openings.map(({ opening, truth }) => ({
      opening,
      asked: truth.slice(0, briefLength),
      right: truth,
      open: [],
    }));
    const { recall, precision, longest, never } = measureBriefs(book, asked, superseded);
    console.log(`world ${seed}: recall ${recall.toFixed(3)}, precision ${precision.toFixed(3)}`);
    expect(recall).toBeGreaterThanOrEqual(0.95);
    expect(precision).toBeGreaterThanOrEqual(0.8);
    expect(longest).toBeLessThanOrEqual(5);
    expect(never).toBe(0);
  });
});
