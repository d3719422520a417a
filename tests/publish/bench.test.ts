import { readFile } from "node:fs/promises";
import { beforeAll, describe, expect, test } from "vitest";
import { toPdf } from "#lib/publish/index.ts";
import { projectPath } from "#lib/publish/root.ts";
import { type ReadPdf, readPdf, unspaced } from "./read-pdf.ts";
import { checked, hostileJob, options, smallJob } from "./sample.ts";

const mm = 72 / 25.4;

async function printed(of: Parameters<typeof checked>[0], rest: Parameters<typeof options>[0] = {}) {
  const output = await toPdf(checked(of), options(rest));
  return { output, pdf: await readPdf(output.files[0]?.bytes as Uint8Array, 4) };
}

/** Everything that a sheet says outside its title block's foot, each text once. */
const said = (pdf: ReadPdf) =>
  new Set(pdf.nodes.map((node) => unspaced(node.text)).filter((text) => text !== ""));

describe("the bench edition", () => {
  let page: ReadPdf;
  let bench: ReadPdf;
  let made: Awaited<ReturnType<typeof printed>>;
  beforeAll(async () => {
    const job = await smallJob();
    page = (await printed(job)).pdf;
    made = await printed(job, { edition: "bench" });
    bench = made.pdf;
  });

  test("is tagged and claims PDF/UA-1, as the page edition does", () => {
    expect(made.output.standard).toBe("ua-1");
    expect(bench.marked).toBe(true);
  });

  test("says every word that the page edition says, in the same order of its steps", () => {
    const words = (pdf: ReadPdf) => unspaced(pdf.nodes.map((node) => node.text).join(""));
    const all = words(bench);
    expect([...said(page)].filter((text) => !all.includes(text))).toEqual([]);
    const heads = (pdf: ReadPdf) =>
      pdf.nodes.filter((node) => node.path.includes("H3")).map((node) => node.text);
    expect(unspaced(heads(bench).join(""))).toBe(unspaced(heads(page).join("")));
  });

  // Large print is 16 pt at least, 18 pt better (clear print guidelines; a public summary).
  test("sets how it is done in 18 pt, what is to be done larger, and half as large again as the page edition", async () => {
    const { stages } = await smallJob();
    const steps = stages.flatMap((stage) => stage.steps);
    const sizesOf = (pdf: ReadPdf, texts: string[]) =>
      pdf.pages
        .flatMap((one) => one.sizes)
        .filter((one) => one.text.length > 12 && texts.some((text) => text.includes(one.text.trim())))
        .map((one) => one.size);
    const how = steps.flatMap((step) => step.details.map((one) => one.text));
    expect(sizesOf(bench, how).length).toBeGreaterThan(2);
    expect(Math.min(...sizesOf(bench, how))).toBeCloseTo(18, 1);
    expect(Math.min(...sizesOf(page, how))).toBeCloseTo(12, 1);
    expect(
      Math.max(
        ...sizesOf(
          bench,
          steps.map((step) => step.title),
        ),
      ),
    ).toBeCloseTo(25.5, 1);
  });

  test("rules a stop point after each stage, and says above each page where to begin again", async () => {
    const { stages } = await smallJob();
    const stops = bench.nodes.filter((node) => node.text.startsWith("Stop point: "));
    expect(stops.map((node) => node.text)).toEqual(
      stages.map(({ steps }) => {
        const [first, last] = [steps[0]?.number, steps.at(-1)?.number];
        return `Stop point: ${first === last ? `Step ${first}` : `Steps ${first} to ${last}`} done`;
      }),
    );
    const heads = bench.nodes.filter((node) => node.role === "H3");
    for (const head of heads) {
      const firstOfPage = heads.find((one) => one.page === head.page);
      const text = bench.pages[head.page - 1]?.text ?? "";
      if (firstOfPage === head && !text.includes(", continued"))
        expect(text).toContain(`begin again here: step ${head.text.replace(/\D/g, "")}`);
    }
    expect(page.pages.some((one) => one.text.includes("Stop point:"))).toBe(false);
    const goesOn = bench.pages.filter((one) => one.text.includes(", continued"));
    expect(goesOn.length).toBeGreaterThan(0);
    for (const { text } of goesOn) {
      const [, step, from] =
        /Step (\d+), continued\. After a pause, begin again on page (\d+)/.exec(text) ?? [];
      expect(heads.find((one) => unspaced(one.text) === `Step${step}`)?.page).toBe(Number(from));
    }
  });

  // DOE-STD-1029 (a writer's guide for procedures, public): a step that depends on time gives places to record its
  // start and its latest time. Boxes of 10 by 35 mm and more: common practice, no source.
  test("has boxes for when a soak began and between which times it ends, with the reason of its limits", () => {
    for (const pdf of [page, bench]) {
      const heads = ["Began", "Not before", "Not after"].map((text) =>
        pdf.nodes.find((node) => node.text === text),
      );
      for (const head of heads) expect(head && [head.role, ...head.path]).toContain("TH");
      const sheet = pdf.pages[(heads[0]?.page ?? 0) - 1];
      expect(sheet?.text).toContain(
        "At least 2 h, at most 24 h. Why: after that it no longer takes up the nuts' pull.",
      );
      const place = (text: string) => sheet?.sizes.find((one) => one.text.startsWith(text));
      const [began, before, after] = ["Began", "Not before", "Not after"].map(place);
      expect((before?.x ?? 0) - (began?.x ?? 0)).toBeGreaterThanOrEqual(35 * mm);
      expect((after?.x ?? 0) - (before?.x ?? 0)).toBeGreaterThanOrEqual(35 * mm);
      const reckoned = pdf.nodes.filter((node) => /^began \+ \d/.test(node.text));
      expect(reckoned.map((node) => node.text)).toEqual(["began + 2 h", "began + 24 h"]);
      for (const node of reckoned) expect([node.role, ...node.path]).toContain("TD");
    }
  });

  test("has the boxes for both readings side by side, right below the limit", () => {
    const sheet = bench.pages.find(
      (one) => one.text.includes("Shaft at the seal, two places") && one.text.includes("your reading"),
    );
    const all = (text: string) => sheet?.sizes.filter((one) => one.text === text) ?? [];
    const [limit, fitted, [found, beside, ...more]] = [
      all("Limit")[0],
      all("As fitted")[0],
      all("your reading"),
    ];
    expect(more).toEqual([]);
    expect(limit?.x).toBe(fitted?.x);
    expect(found?.y).toBe(beside?.y);
    expect(beside?.x).toBe(fitted?.x);
    expect((beside?.x ?? 0) - (found?.x ?? 0)).toBeGreaterThanOrEqual(35 * mm);
    expect(limit?.y ?? 0).toBeGreaterThan(found?.y ?? Number.POSITIVE_INFINITY);
    expect((limit?.y ?? 0) - (found?.y ?? 0)).toBeLessThan(50 * mm);
  });

  test("ends with what to look at before the work counts as done", async () => {
    for (const pdf of [page, bench]) {
      const from = pdf.nodes.findIndex((node) => node.role === "H2" && node.text === "Close-out checks");
      const text = unspaced(
        pdf.nodes
          .slice(from)
          .map((node) => node.text)
          .join(" "),
      );
      for (const said of [
        "All 3 steps ticked, none left out.",
        "No longer left open (step 3): Cover nuts finger-tight.",
        "Within its time (step 3): Jointing compound cures under the cover.",
        "The one reading as fitted written down and within its limit.",
        "All 6 parts fitted, or left out on purpose; none left over.",
        "All 2 tools counted back; none left in the machine.",
      ])
        expect(text).toContain(unspaced(said));
      expect(text).not.toContain("Oldgasket");
    }
  });

  test("leaves a margin of 20 mm for filing, and a box to tick for each step", async () => {
    for (const { sizes } of bench.pages)
      for (const { x, text } of sizes) expect(x, text).toBeGreaterThanOrEqual(20 * mm);
    for (const head of bench.nodes.filter((node) => node.role === "H3")) {
      const { output } = made;
      const { pages } = await readPdf(output.files[0]?.bytes as Uint8Array, head.page);
      const boxes = pages[head.page - 1]?.boxes.filter(
        ({ width, height }) => Math.abs(width - height) < 0.1 && width > 8 * mm && width < 10 * mm,
      );
      expect(boxes).toHaveLength(1);
    }
  });
});

test("of hostile words loses no mark of the test", async () => {
  const { pdf } = await printed(await hostileJob(), { edition: "bench" });
  const all = unspaced(pdf.nodes.map((node) => node.text).join(""));
  for (const letter of "ABCDEFGHI") expect(all.includes(`HOSTILE${letter}`), letter).toBe(true);
});

// WCAG 2.2, 1.4.3 and its definition of relative luminance: a grey printer keeps the luminance and nothing else, so a
// word that is 4.5 times as bright or dark as its ground is read on it as well.
test("the signal words are read as well in black and white", async () => {
  const template = await readFile(projectPath("lib", "publish", "pdf", "template", "pieces.typ"), "utf8");
  const colours = [...template.matchAll(/([A-Z]+): \(fill: rgb\("#(\w{6})"\), text: (white|black)\)/g)];
  expect(colours.map(([, word]) => word)).toEqual(["DANGER", "WARNING", "CAUTION"]);
  for (const [, word, fill = "", text] of colours) {
    const [r = 0, g = 0, b = 0] = [0, 2, 4]
      .map((at) => Number.parseInt(fill.slice(at, at + 2), 16) / 255)
      .map((part) => (part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4));
    const ground = 0.2126 * r + 0.7152 * g + 0.0722 * b;
    const contrast = text === "white" ? 1.05 / (ground + 0.05) : (ground + 0.05) / 0.05;
    expect(contrast, word).toBeGreaterThanOrEqual(4.5);
  }
});
