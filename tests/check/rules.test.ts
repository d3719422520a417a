import { describe, expect, test } from "vitest";
import { check, drawSketch, rules } from "#lib/check/index.ts";
import { compile } from "#lib/procedure/index.ts";

describe.each(rules.map((rule) => [rule.id, rule] as const))("%s", (id, rule) => {
  test.each(rule.examples.map((example) => [example.says, example] as const))(
    "%s",
    (_, { sketch, finds }) => {
      const document = drawSketch(sketch);
      const { findings } = check(compile(document), document);
      const own = findings.filter((finding) => finding.rule === id);
      expect(own.map((finding) => finding.found)).toHaveLength(finds);
      expect(new Set(own.map((finding) => finding.key)).size).toBe(own.length);
    },
  );

  test("says why it asks and where it comes from", () => {
    expect(rule.explanation.length).toBeGreaterThan(40);
    expect(rule.source).not.toBe("");
    expect(rule.examples.some((example) => example.finds === 0)).toBe(true);
  });
});

describe("an answer", () => {
  const sketch = drawSketch({ marks: [[1, "deferred", { words: "Old gasket" }]] });
  const answered = (evidence: string) => {
    const [finding] = check(compile(sketch), sketch).findings;
    const answer = {
      id: "a",
      buildId: "sketch",
      key: finding?.key ?? "",
      evidence,
      reason: "new one ordered",
      gone: null,
      rev: 1,
    };
    return check(compile(sketch), { ...sketch, answers: [answer] }).findings[0]?.answer;
  };

  test("holds while what it spoke of stands, and lapses when that changes", () => {
    expect(answered("Old gasket\n")).toBe("new one ordered");
    expect(answered("Another gasket\n")).toBeUndefined();
  });
});
