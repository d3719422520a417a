import { describe, expect, test } from "vitest";
import type { BuildDocument } from "#lib/build/index.ts";
import { check } from "#lib/check/index.ts";
import { open } from "#lib/finding/index.ts";
import { compile, stepsOf } from "#lib/procedure/index.ts";
import { builds } from "./builds.ts";
import { type Fault, seeders } from "./faults.ts";

const findingsOf = (document: BuildDocument) => open(check(compile(document), document).findings);

/** Whether a finding that the clean build does not have says what was seeded. */
function isFound({ document, rules, names }: Fault, before: ReadonlySet<string>): boolean {
  return findingsOf(document).some(
    (one) =>
      !before.has(`${one.key}\n${one.evidence}`) &&
      rules.includes(one.rule) &&
      one.found.toLowerCase().includes(names.toLowerCase()),
  );
}

const seeded = builds.map(({ title, document }) => {
  const before = new Set(findingsOf(document).map((one) => `${one.key}\n${one.evidence}`));
  const faults = seeders.flatMap((seed) => seed(document));
  return { title, faults: faults.map((one) => ({ ...one, isFound: isFound(one, before) })) };
});

describe("twelve clean builds of five trades", () => {
  test("are twelve, of five trades", () => {
    expect(builds).toHaveLength(12);
    expect(new Set(builds.map(({ trade }) => trade)).size).toBe(5);
  });

  test.each(builds.map(({ title, document }) => [title, document] as const))(
    "%s: nothing wrong, and less than one doubt in twenty steps",
    (_, document) => {
      const findings = findingsOf(document);
      expect(findings.filter((one) => one.severity === "wrong").map((one) => one.found)).toEqual([]);
      const doubts = findings.filter((one) => one.severity === "doubtful");
      const steps = stepsOf(compile(document)).length;
      expect(doubts.length / steps, doubts.map((one) => `${one.rule}: ${one.found}`).join("\n")).toBeLessThan(
        1 / 20,
      );
    },
  );
});

describe("one fault at a time", () => {
  test("four hundred or more are seeded, each once", () => {
    const all = seeded.flatMap(({ title, faults }) => faults.map((one) => `${title}\n${one.says}`));
    expect(all.length).toBeGreaterThanOrEqual(400);
  });

  test.each(seeded.map((one) => [one.title, one] as const))("all of %s are found", (_, { faults }) => {
    expect(faults.filter((one) => !one.isFound).map((one) => one.says)).toEqual([]);
  });

  test("the table", () => {
    const kinds = new Map<string, { seeded: number; found: number }>();
    for (const { faults } of seeded) {
      for (const one of faults) {
        const line = kinds.get(one.kind) ?? { seeded: 0, found: 0 };
        line.seeded += 1;
        if (one.isFound) line.found += 1;
        kinds.set(one.kind, line);
      }
    }
    const sum = (column: "seeded" | "found") =>
      [...kinds.values()].reduce((total, line) => total + line[column], 0);
    console.table(Object.fromEntries([...kinds, ["all", { seeded: sum("seeded"), found: sum("found") }]]));
    for (const [kind, line] of kinds) expect(line.found, kind).toBe(line.seeded);
  });
});
