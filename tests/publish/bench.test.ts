import { beforeAll, describe, expect, test } from "vitest";
import { toPdf } from "#lib/publish/index.ts";
import { type ReadPdf, readPdf, unspaced } from "./read-pdf.ts";
import { checked, hostileJob, longJob, options, smallJob } from "./sample.ts";

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
  let standard: string;
  beforeAll(async () => {
    const job = await smallJob();
    page = (await printed(job)).pdf;
    const made = await printed(job, { edition: "bench" });
    bench = made.pdf;
    standard = made.output.standard;
  });

  test("is tagged and claims PDF/UA-1, as the page edition does", () => {
    expect(standard).toBe("ua-1");
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
  });
});

test("on Letter and A4, of 60 long steps, no word of the input is lost and every caution stands before its step", async () => {
  const job = await longJob(60);
  const texts = job.stages.flatMap((stage) =>
    stage.steps.flatMap((step) => [
      step.title,
      ...step.details.map((one) => one.text),
      ...step.cautions.flatMap((one) => [one.hazard, one.avoid]),
    ]),
  );
  for (const paper of ["a4", "letter"] as const) {
    const { pdf } = await printed(job, { edition: "bench", paper });
    const all = unspaced(pdf.nodes.map((node) => node.text).join(""));
    expect(texts.filter((text) => !all.includes(unspaced(text)))).toEqual([]);
    expect(pdf.pages[0]?.width).toBeCloseTo(paper === "a4" ? 210 * mm : 612, 0);
  }
});

test("of hostile words loses no mark of the test", async () => {
  const { pdf } = await printed(await hostileJob(), { edition: "bench" });
  const all = unspaced(pdf.nodes.map((node) => node.text).join(""));
  for (const letter of "ABCDEFGHI") expect(all.includes(`HOSTILE${letter}`), letter).toBe(true);
});
