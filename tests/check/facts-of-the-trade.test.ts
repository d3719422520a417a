import { describe, expect, test } from "vitest";
import { checkEntry, type Entry } from "#lib/check/index.ts";

const found = (text: string, what: string, context: Entry["context"] = {}) =>
  checkEntry({ text, what, context });

/** Common practice, no source. */
describe("five facts of the trade", () => {
  test("tube of 1-3/8 in and of 1-1/2 in outside diameter are both sold: 34.9 and 38.1 mm", () => {
    expect(found("1-3/8 in (34.9 mm)", "tube outside diameter")).toEqual([]);
    expect(found("1-1/2 in (38.1 mm)", "tube outside diameter")).toEqual([]);
    for (const confused of ["1-3/8 in (38.1 mm)", "1-1/2 in (34.9 mm)"])
      expect(found(confused, "tube outside diameter")[0]?.severity, confused).toBe("wrong");
  });

  test("leaving out a 1/16 in washer under a seat lowers it by 1.59 mm", () => {
    const context = { related: [{ what: "washer left out from under the seat", text: "1/16 in" }] };
    expect(found("1.59 mm", "seat lowered by", context)).toEqual([]);
    const [wrong] = found("3.18 mm", "seat lowered by", context);
    expect(wrong?.expected).toContain("1.59");
  });

  test("a screw one and a half turns out is 540 degrees from its stop", () => {
    expect(found("one and a half turns (540°)", "screw, out from its stop")).toEqual([]);
    expect(found("one and a half turns (450°)", "screw, out from its stop")[0]?.severity).toBe("wrong");
  });

  test("a zinc casting lies in a cold dip two and a half hours at the most", () => {
    expect(found("2.5 h", "time in the cold dip", { material: "zinc casting" })).toEqual([]);
    expect(found("4 h", "time in the cold dip", { material: "zinc casting" })[0]?.severity).toBe("doubtful");
    expect(found("4 h", "time in the cold dip", { material: "steel" })).toEqual([]);
  });

  test("a nut on a thin flange is tightened by feel, and its stud's full strength is asked about", () => {
    const stud = { fastener: "M8, 8.8" };
    expect(found("25 N·m", "nut torque", { ...stud, part: "thin flange of the silencer" })[0]?.severity).toBe(
      "doubtful",
    );
    expect(found("25 N·m", "nut torque", { ...stud, part: "cylinder base" })).toEqual([]);
  });
});
