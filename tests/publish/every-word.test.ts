import { beforeAll, describe, expect, test } from "vitest";
import { compile } from "#lib/procedure/index.ts";
import type { Procedure } from "#lib/procedure/tree.ts";
import { toHtml, toMarkdown, toPdf } from "#lib/publish/index.ts";
import { everyWord, type Written } from "./every-word.ts";
import { readHtml } from "./read-html.ts";
import { type ReadPdf, readPdf, unspaced } from "./read-pdf.ts";
import { checked, options, picture } from "./sample.ts";

/** 25 steps in the ordinary run; LONG=1 sets 200. */
const count = process.env.LONG ? 200 : 25;

/** What is no part of a procedure: marks not yet sorted, and when the restorer's own soak ran. */
const leftOut = ["deferred.began", "deferred.ended", "unsorted.words"];

let procedure: Procedure;
let words: Written[];
beforeAll(async () => {
  const made = everyWord(count);
  const figure = await picture("every word");
  procedure = compile(made.document);
  for (const { steps } of procedure.stages)
    for (const step of steps) step.stills = [{ ...figure, alt: `Picture of step ${step.number}` }];
  words = made.words;
});

/** Fields of which some word is not in a text. */
const lostFrom = (text: string) =>
  [...new Set(words.filter(({ word }) => !text.includes(unspaced(word))).map(({ field }) => field))].sort();

describe.each([
  ["page", "a4"],
  ["page", "letter"],
  ["bench", "a4"],
  ["bench", "letter"],
] as const)("%s edition on %s, of steps with marks of every kind", (edition, paper) => {
  let pdf: ReadPdf;
  let losses: string[];
  beforeAll(async () => {
    const output = await toPdf(checked(procedure), options({ edition, paper }));
    losses = output.losses;
    pdf = await readPdf(output.files[0]?.bytes as Uint8Array);
  }, 600_000);

  test("has every word that was written", () => {
    expect(words.length).toBeGreaterThan(count * 40);
    expect(lostFrom(unspaced(pdf.nodes.map(({ text }) => text).join("")))).toEqual(leftOut);
    expect(losses).toEqual([]);
  });

  test("has each step's caution before its action and on its page", () => {
    const at = (word: string, from: number) =>
      pdf.nodes.findIndex((node, index) => index > from && node.text.includes(word));
    const wordOf = (field: string, step: number) =>
      words.find((one) => one.field === field && one.step === step)?.word ?? "";
    const heads = headsOf(pdf);
    expect(heads.map(({ text }) => text)).toEqual(
      Array.from({ length: count }, (_, index) => `Step${index + 1}`),
    );
    for (const [index, head] of heads.entries()) {
      const places = ["caution.words", "caution.avoid", "action.words"].map((field) =>
        at(wordOf(field, index + 1), head.index),
      );
      expect(places.every((place, order) => place > (places[order - 1] ?? head.index))).toBe(true);
      expect(places.map((place) => pdf.nodes[place]?.page)).toEqual(places.map(() => head.page));
    }
  });

  // PDF/UA-1 (ISO 14289-1, 7.1 to 7.5, by public summaries).
  test("has heads in every table, a text for every figure, and headings that skip no level", () => {
    const inTables = pdf.nodes.filter(({ path, role }) => path.includes("Table") && role !== "Table");
    expect(
      inTables.every(({ path, role }) => [...path, role].some((one) => one === "TH" || one === "TD")),
    ).toBe(true);
    const heads = inTables.filter(({ path, role }) => role === "TH" || path.includes("TH"));
    const named = (title: string) => heads.filter(({ text }) => text === title).length;
    // One table of readings and one of times a step, and the lists of parts and of measurements.
    expect(["Limit", "As fitted", "Began", "Not after", "Quantity"].map(named)).toEqual([
      count + 1,
      count + 1,
      count,
      count,
      1,
    ]);
    const figures = pdf.nodes.filter(({ role }) => role === "Figure");
    expect(figures.filter(({ alt }) => /^Picture of step \d+$/.test(alt))).toHaveLength(count);
    expect(figures.every(({ alt }) => alt.trim() !== "")).toBe(true);
    const levels = pdf.nodes.flatMap(({ role }) => /^H(\d)$/.exec(role)?.[1] ?? []).map(Number);
    expect(levels[0]).toBe(1);
    expect(levels.every((level, index) => level - (levels[index - 1] ?? 0) <= 1)).toBe(true);
  });

  test("numbers its pages, and has a bookmark for each stage and each step", () => {
    pdf.pages.forEach(({ text }, index) => {
      expect(text).toContain(`Page ${index + 1} of ${pdf.pages.length}`);
    });
    const steps = pdf.bookmarks.filter(({ title }) => /^Step ?\d+$/.test(title));
    expect(steps.map(({ title }) => Number(title.replace(/\D/g, "")))).toEqual(
      Array.from({ length: count }, (_, index) => index + 1),
    );
    expect(new Set(steps.map(({ depth }) => depth))).toEqual(new Set([2]));
    const titles = pdf.bookmarks.filter(({ depth }) => depth === 1).map(({ title }) => title);
    expect(titles).toEqual(
      expect.arrayContaining(["Parts list", "Strip", "Trial fit", "Prove", "Measurements"]),
    );
  });
});

test("HTML and Markdown have every word of it too", async () => {
  const [html, markdown] = await Promise.all([
    toHtml(checked(procedure), options()),
    toMarkdown(checked(procedure), options()),
  ]);
  const text = (bytes?: Uint8Array) => new TextDecoder().decode(bytes);
  expect(lostFrom(unspaced(readHtml(text(html.files[0]?.bytes)).text))).toEqual(leftOut);
  expect(lostFrom(unspaced(text(markdown.files[0]?.bytes)))).toEqual(leftOut);
});

function headsOf(pdf: ReadPdf) {
  return pdf.nodes.flatMap((node, index) =>
    node.role === "H3" || node.path.includes("H3")
      ? [{ text: unspaced(node.text), page: node.page, index }]
      : [],
  );
}
