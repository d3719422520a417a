import { describe, expect, test } from "vitest";
import { brief, briefLength } from "#lib/gotcha/index.ts";
import { makeWorld } from "./truth.ts";

const TODAY = "2026-11-28";

/** Recall of the truth's first five, and precision, over all openings of a world. */
function measure(seed: number) {
  const { openings, superseded, ...book } = makeWorld(seed);
  const count = { wanted: 0, found: 0, shown: 0, right: 0, superseded: 0, longest: 0 };
  for (const { opening, truth } of openings) {
    const shown = brief(book, opening, TODAY).map((line) => line.entry.gotcha.id);
    const wanted = truth.slice(0, briefLength);
    count.wanted += wanted.length;
    count.found += wanted.filter((id) => shown.includes(id)).length;
    count.shown += shown.length;
    count.right += shown.filter((id) => truth.includes(id)).length;
    count.superseded += shown.filter((id) => superseded.has(id)).length;
    count.longest = Math.max(count.longest, shown.length);
  }
  return { ...count, recall: count.found / count.wanted, precision: count.right / count.shown };
}

describe("briefs for 200 openings of invented machines with a written truth", () => {
  test.each([1, 2, 3, 4, 5])("world %i: they find the truth, and little else", (seed) => {
    const { recall, precision, longest, superseded } = measure(seed);
    console.log(`world ${seed}: recall ${recall.toFixed(3)}, precision ${precision.toFixed(3)}`);
    expect(recall).toBeGreaterThanOrEqual(0.95);
    expect(precision).toBeGreaterThanOrEqual(0.8);
    expect(longest).toBeLessThanOrEqual(5);
    expect(superseded).toBe(0);
  });
});
