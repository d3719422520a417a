import { beforeAll, describe, expect, test } from "vitest";
import type { Edition } from "#lib/publish/index.ts";
import { toPdf } from "#lib/publish/index.ts";
import { changedText } from "#lib/publish/words.ts";
import { type ReadPdf, readPdf, unspaced } from "./read-pdf.ts";
import { caution, checked, measurement, options, part, picture, procedure, step, typed } from "./sample.ts";

/** How the print uses its paper: what stays together, what is said where it cannot, and how many pages it takes. */

async function printed(of: Parameters<typeof checked>[0], edition: Edition): Promise<ReadPdf> {
  const { files } = await toPdf(checked(of), options({ edition }));
  return readPdf(files[0]?.bytes as Uint8Array);
}

const pagesOf = (pdf: ReadPdf, text: string) => [
  ...new Set(
    pdf.nodes.filter((node) => unspaced(node.text).includes(unspaced(text))).map(({ page }) => page),
  ),
];

describe.each(["page", "bench"] as const)("lists of the %s edition, longer than a page", (edition) => {
  const long = "one of a kind that was made in the shop, after a pattern that hangs beside the lathe";
  let pdf: ReadPdf;
  beforeAll(async () => {
    const steps = Array.from({ length: 45 }, (_, index) =>
      step(index + 1, `Take off part ${index + 1}`, {
        parts: [part(index + 1, `Bracket ${index + 1} of the row, ${long}, ENDS${index + 1}E`)],
        tools: [
          {
            mark: `t${index}`,
            name: `Spanner ${index + 1}B`,
            detail: `${long}, TOOL${index + 1}E`,
            note: "",
          },
        ],
        measurements: [
          measurement(`Width of bracket ${index + 1}M`, {
            values: { asFound: typed(`1${index + 10}.5 mm`) },
          }),
        ],
      }),
    );
    pdf = await printed(procedure(steps), edition);
  });

  test("no row of them goes over a page", () => {
    const first = pdf.nodes.findIndex(({ role, path }) => [...path, role].includes("H3"));
    const front = pdf.nodes.slice(0, first);
    const pageOf = (text: string) => front.find((node) => node.text.includes(text))?.page;
    for (let row = 1; row <= 45; row++) {
      expect(pageOf(`Bracket ${row} of the row`)).toBe(pageOf(`ENDS${row}E`));
      expect(pageOf(`OB-${100 + row}`)).toBe(pageOf(`ENDS${row}E`));
      expect(pageOf(`Spanner ${row}B`)).toBe(pageOf(`TOOL${row}E`));
    }
    expect(new Set(front.map(({ page }) => page)).size).toBeGreaterThan(3);
    const list = pdf.nodes.slice(
      pdf.nodes.findIndex(({ role, text }) => role === "H2" && text === "Measurements"),
    );
    for (let row = 1; row <= 45; row++) {
      const [what, value] = [`Width of bracket ${row}M`, `1${row + 9}.5 mm`].map(
        (text) => list.find((node) => unspaced(node.text).includes(unspaced(text)))?.page,
      );
      expect(what).toBeGreaterThan(0);
      expect(value).toBe(what);
    }
  });

  // Large print is 16 pt at least (clear print guidelines; a public summary); at arm's length a value is read as words are.
  test("its values are as large as large print has them at the bench, and as the words on the page", () => {
    const values = pdf.pages
      .flatMap(({ sizes }) => sizes)
      .filter(({ text }) => /^1\d\d\.5/.test(text.trim()));
    expect(values.length).toBeGreaterThanOrEqual(90);
    expect(Math.min(...values.map(({ size }) => size))).toBeGreaterThanOrEqual(edition === "bench" ? 16 : 11);
  });
});

test("steps with a picture, what is done, a tool and a part stand three to a page in the page edition", async () => {
  const steps = await Promise.all(
    Array.from({ length: 12 }, async (_, index) =>
      step(index + 1, `Unscrew the four nuts of cover ${index + 1}, half a turn at a time`, {
        details: [
          { mark: `d${index}`, text: "Half a turn on each before any comes off, so that it is not bent." },
        ],
        tools: [{ mark: `t${index}`, name: "Open-ended spanner", detail: "1/4 in BSF", note: "" }],
        parts: [part(index + 1, `Nut ${index + 1}`)],
        stills: [await picture(`cover ${index + 1}`)],
      }),
    ),
  );
  const pdf = await printed(procedure(steps), "page");
  const heads = pdf.nodes.filter(({ role, path }) => [...path, role].includes("H3"));
  expect(new Set(heads.map(({ page }) => page)).size).toBeLessThanOrEqual(4);
  for (const { page, text } of heads) {
    const number = text.replace(/\D/g, "");
    const figure = pdf.nodes.find(({ role, alt }) => role === "Figure" && alt === `cover ${number}`);
    expect(figure?.page).toBe(page);
    expect(pagesOf(pdf, `Nut ${number} ·`)).toEqual([page]);
  }
});

describe.each(["page", "bench"] as const)("a step of several pages in the %s edition", (edition) => {
  test("says on each of them where it goes on, and where its picture is if that is not beside its action", async () => {
    const cautions = Array.from({ length: edition === "bench" ? 5 : 12 }, (_, index) =>
      caution({
        hazard: `Hazard number ${index} of this step`,
        source: "The maker's own book of the engine, page 12",
      }),
    );
    const details = [{ mark: "how", text: Array.from({ length: 400 }, (_, index) => `w${index}`).join(" ") }];
    const stills = [await picture("The flywheel in its sling")];
    const pdf = await printed(
      procedure([step(1, "Begin"), step(2, "Lift the flywheel off", { cautions, details, stills })]),
      edition,
    );
    const acts = pagesOf(pdf, "Lift the flywheel off").at(-1) as number;
    const figure = pdf.nodes.find(({ alt }) => alt === "The flywheel in its sling")?.page as number;
    const last = pagesOf(pdf, "w399").at(-1) as number;
    expect(last).toBeGreaterThan(acts);
    for (let page = acts; page < last; page++)
      expect(pdf.pages[page - 1]?.text).toContain(`Step 2 continues on page ${page + 1}`);
    expect(pdf.pages[last - 1]?.text).not.toContain("Step 2 continues");
    if (figure !== acts) expect(pdf.pages[acts - 1]?.text).toContain(`Picture on page ${figure}.`);
  });
});

test("a revision always says what has changed, or that nobody wrote it down", () => {
  const line = (changed: string) => ({ revision: "B", date: "3 May 2026", changed, again: "" });
  const all = [line("New limit in step 4"), line(" "), line("")];
  expect(all.map((_, at) => changedText(all, at))).toEqual([
    "New limit in step 4",
    "Nobody wrote down what has changed.",
    "First release.",
  ]);
});
