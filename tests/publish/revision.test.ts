import { describe, expect, test } from "vitest";
import { compareRevisions, nextRevision } from "#lib/publish/index.ts";

describe("revision letters", () => {
  // ASME Y14.35: I, O, Q, S, X and Z are not used; AA follows Y. From memory.
  test("go from A to Y without those that are taken for others, then in pairs", () => {
    const all: string[] = [];
    while (all.length < 500) all.push(nextRevision(all));
    expect(all.slice(0, 21).join("")).toBe("ABCDEFGHJKLMNPRTUVWYAA");
    expect(all.join("")).not.toMatch(/[IOQSXZ]/);
    expect(new Set(all).size).toBe(500);
    expect([...all].reverse().sort(compareRevisions)).toEqual(all);
  });

  test("of a build whose letters came from elsewhere goes on after the last that is known", () => {
    expect(nextRevision(["B", "A"])).toBe("C");
    expect(nextRevision(["first"])).toBe("A");
  });
});
