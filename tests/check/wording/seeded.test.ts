import { describe, expect, test } from "vitest";
import type { BuildDocument } from "#lib/build/index.ts";
import { check } from "#lib/check/index.ts";
import { compile } from "#lib/procedure/index.ts";
import { buildOf, instructionsIn, procedures } from "./procedures.ts";
import { seeds } from "./seeds.ts";

const say = (document: BuildDocument) => check(compile(document), document).findings;
const total = procedures.reduce((sum, one) => sum + instructionsIn(one), 0);

describe("clean procedures of five trades", () => {
  test("there are ten of them, with more than a hundred steps", () => {
    expect(procedures).toHaveLength(10);
    expect(new Set(procedures.map(({ trade }) => trade)).size).toBe(5);
    expect(total).toBeGreaterThan(100);
  });

  test("none is called wrong, fewer than one doubtful in 20 steps, advice at most one in 8", () => {
    const found = procedures.flatMap((one) => say(buildOf(one)));
    const of = (severity: string) => found.filter((one) => one.severity === severity).map((one) => one.found);
    expect(of("wrong")).toEqual([]);
    expect(of("doubtful").length).toBeLessThan(total / 20);
    expect(of("advice").length).toBeLessThan(total / 8);
  });

  test("a build in another language is not judged by English", () => {
    for (const one of procedures) {
      const document = buildOf(one);
      const german = { ...document, build: { ...document.build, language: "de-DE" } };
      expect(say(german).map((finding) => finding.rule)).toEqual([]);
    }
  });
});

/** One fault at a time in every step of every procedure: how many were put in, and how many of those were found. */
function sow(rule: string) {
  const seed = seeds.find((one) => one.rule === rule);
  const missed: string[] = [];
  let sown = 0;
  for (const one of procedures) {
    const clean = buildOf(one);
    const before = new Set(say(clean).map(({ key, evidence }) => `${key}\n${evidence}`));
    for (const action of clean.marks.filter(({ kind }) => kind === "action")) {
      const way = seed?.ways[sown++ % seed.ways.length];
      const found = way ? say(way(clean, action)) : [];
      const isNew = found.some((it) => it.rule === rule && !before.has(`${it.key}\n${it.evidence}`));
      if (!isNew) missed.push(`${one.title}, ${action.id}: ${action.fields.words}`);
    }
  }
  return { sown, missed };
}

describe("one fault in a clean procedure is found", () => {
  test.each(seeds.map(({ rule, least = 0.95 }) => [rule, least] as const))("%s", (rule, least) => {
    const { sown, missed } = sow(rule);
    if (process.env.SHOW_COUNTS) console.log(`| ${rule} | ${sown} | ${sown - missed.length} |`);
    expect(sown).toBe(total);
    expect(missed.length, missed.slice(0, 5).join("\n")).toBeLessThanOrEqual(sown * (1 - least));
  });
});
