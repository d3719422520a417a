import { expect, test } from "vitest";
import { printedValue, tieUnits, unitOf } from "#lib/publish/quantity.ts";
import { projectRoot } from "#lib/publish/root.ts";
import { groupedCautions, inRuns, partEventText, sentence, stepNumbers } from "#lib/publish/words.ts";
import { caution, part, procedure, step, typed } from "./sample.ts";

test("steps are named in runs", () => {
  expect(inRuns([1, 2, 3, 5, 7, 8])).toBe("1 to 3, 5, 7, 8");
  expect(stepNumbers([4])).toBe("Step 4");
  expect(stepNumbers([1, 2, 3])).toBe("Steps 1 to 3");
  expect(stepNumbers([])).toBe("");
});

test("the same caution in two steps is grouped once, and the gravest stands first", () => {
  const grave = caution({ signal: "DANGER", hazard: "The mains are live" });
  const notice = caution({ signal: "NOTICE", hazard: "Thin brass" });
  const groups = groupedCautions(
    procedure([
      step(1, "a", { cautions: [notice] }),
      step(2, "b", { cautions: [grave, { ...notice, mark: "other" }] }),
    ]),
  );
  expect(groups.map(({ signal, steps, marks }) => [signal, steps, marks.length])).toEqual([
    ["DANGER", [2], 1],
    ["NOTICE", [1, 2], 2],
  ]);
});

test("what happens to a part, in words", () => {
  expect(partEventText(part(1, "Nut", { event: "removed", count: "4" }))).toBe("removed, 4 off");
  expect(partEventText(part(1, "Nut", { event: "left out", count: "" }))).toBe("left out on purpose");
  expect(partEventText(part(1, "Nut", { event: "", count: "a few" }))).toBe("a few");
});

test("words end with one stop", () => {
  expect(sentence("Leave it wet")).toBe("Leave it wet.");
  expect(sentence("Is it wet?")).toBe("Is it wet?");
  expect(sentence("  ")).toBe("");
});

test("a number is tied to its unit, and to nothing else", () => {
  expect(tieUnits("wait 10 minutes, then 12 N·m, 1 1/2 in and 4 off")).toBe(
    "wait 10\u00a0minutes, then 12\u00a0N·m, 1\u00a01/2\u00a0in and 4\u00a0off",
  );
  expect(tieUnits("5 lbf ft (6.8 N m), 120.25 N m, 5 N more")).toBe(
    "5\u00a0lbf\u00a0ft (6.8\u00a0N\u00a0m), 120.25\u00a0N m, 5\u00a0N more",
  );
  expect(tieUnits("step 4 comes before")).toBe("step 4 comes before");
});

// 1 in = 25.4 mm exactly (NIST SP 811, appendix B); 0.4965 in is 12.6111 mm.
test("a value is printed as typed, with the other system where it was read", () => {
  expect(printedValue(typed("0.4965 in"))).toEqual({ typed: "0.4965 in", other: "12.611\u00a0mm" });
  expect(printedValue({ typed: " finger-tight " })).toEqual({ typed: "finger-tight", other: null });
});

test("what was read is not taken on trust", () => {
  for (const read of [
    null,
    7,
    "x",
    {},
    { kind: "quantity" },
    { kind: "quantity", quantities: [{}] },
    { kind: "quantity", quantities: [{ ucum: "mm", value: { exact: "x" } }] },
  ]) {
    expect(printedValue({ typed: "5 mm", read }).typed).toBe("5 mm");
    expect(unitOf({ typed: "5 mm", read })).toBe("mm");
  }
});

test("the unit of a value is the one that was typed", () => {
  expect(unitOf(typed("1/2 in −0.001"))).toBe("in");
  expect(unitOf({ typed: "1/2 in −0.001" })).toBe("in");
  expect(unitOf({ typed: "25 lbf·ft" })).toBe("lbf·ft");
  expect(unitOf({ typed: "12 lbf ft (16.3 N m)" })).toBe("lbf ft");
  expect(unitOf({ typed: "finger-tight" })).toBe("");
  expect(unitOf(undefined)).toBe("");
});

test("the project's folder is found from inside it, and its absence is explained", () => {
  const root = projectRoot();
  const before = process.env.WITNESS_MARK_ROOT;
  try {
    process.env.WITNESS_MARK_ROOT = `${root}/lib/publish`;
    expect(projectRoot()).toBe(root);
    process.env.WITNESS_MARK_ROOT = "/";
    expect(() => projectRoot()).toThrow(/no package\.json named "witness-mark".*WITNESS_MARK_ROOT/);
  } finally {
    if (before === undefined) delete process.env.WITNESS_MARK_ROOT;
    else process.env.WITNESS_MARK_ROOT = before;
  }
});
