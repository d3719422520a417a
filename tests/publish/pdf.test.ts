import { beforeAll, describe, expect, test } from "vitest";
import { type PdfOutput, toPdf } from "#lib/publish/index.ts";
import { oneSpaced, type ReadPdf, readPdf, unspaced } from "./read-pdf.ts";
import {
  caution,
  checked,
  hostileJob,
  hostileTexts,
  longJob,
  measurement,
  options,
  part,
  picture,
  procedure,
  smallJob,
  step,
  typed,
} from "./sample.ts";

/** Points in a millimetre; a point is 1/72 of an inch (ISO 32000-1, 8.3.2.3), an inch is 25.4 mm. */
const mm = 72 / 25.4;

async function printed(of: Parameters<typeof checked>[0], rest: Parameters<typeof options>[0] = {}) {
  const output = await toPdf(checked(of), options(rest));
  return { output, pdf: await readPdf(output.files[0]?.bytes as Uint8Array, 4) };
}

/** Place of a text in the order of the structure tree, from a place on. */
function placeOf(pdf: ReadPdf, text: string, from = 0): number {
  return pdf.nodes.findIndex((node, index) => index >= from && node.text.includes(text));
}

const pageOf = (pdf: ReadPdf, place: number) => pdf.nodes[place]?.page;

describe("a small job", () => {
  let output: PdfOutput;
  let pdf: ReadPdf;
  beforeAll(async () => {
    ({ output, pdf } = await printed(await smallJob()));
  });

  // ISO 14289-1 (PDF/UA-1), from public summaries: tagged, identified, with title and language.
  test("is tagged, says its language and title, and claims PDF/UA-1", () => {
    expect(output.standard).toBe("ua-1");
    expect(output.losses).toEqual([]);
    expect(pdf.marked).toBe(true);
    expect(pdf.uaPart).toBe("1");
    expect(pdf.language).toBe("en-GB");
    expect(pdf.title).toBe("Water pump: strip and refit");
  });

  test("describes every figure: two stills and two codes", () => {
    const figures = pdf.nodes.filter((node) => node.role === "Figure");
    expect(figures.map((node) => node.alt)).toEqual([
      "QR code: the film at 1:12",
      "The drain cock under the hopper, seen from the flywheel side",
      "QR code: the film at 13:04",
      "The impeller half off its shaft, both jacking screws in",
    ]);
  });

  test("begins with its one title and skips no level of heading", () => {
    const levels = pdf.nodes.flatMap((node) => /^H(\d)$/.exec(node.role)?.[1] ?? []).map(Number);
    expect(levels[0]).toBe(1);
    expect(levels.filter((level) => level === 1)).toHaveLength(1);
    levels.forEach((level, index) => {
      if (index > 0) expect(level - (levels[index - 1] as number)).toBeLessThanOrEqual(1);
    });
  });

  test("gives heads to its tables", () => {
    const heads = pdf.nodes
      .filter((node) => node.path.includes("TH") || node.role === "TH")
      .map((node) => node.text);
    expect(heads).toEqual(
      expect.arrayContaining(["Quantity", "As found", "Specified", "Limit", "As fitted"]),
    );
  });

  test("says on every page what it is, how it stands and which page this is", () => {
    pdf.pages.forEach(({ text }, index) => {
      expect(text).toContain(`Page ${index + 1} of ${pdf.pages.length}`);
      expect(text).toContain("Water pump: strip and refit");
      expect(text).toContain("Unreleased · 2 open findings");
      expect(text).toContain("3 May 2026");
      expect(text).toMatch(/Sheet code [0-9a-f]{8}/);
    });
  });

  test("puts each caution before its action and on its page", () => {
    expectCautionsBeforeActions(pdf, [
      { step: 1, cautions: ["Water in the hopper may still be hot"], action: "Drain the cooling hopper" },
      {
        step: 2,
        cautions: ["The gland packing may hold asbestos", "The vanes are thin cast brass"],
        action: "Draw the impeller off with the two jacking screws",
      },
    ]);
  });

  test("puts what was left open, and the limits of the sheet, on the first page", () => {
    const first = pdf.pages[0]?.text ?? "";
    expect(first).toContain("Left open Cover nuts finger-tight. Until: the new belt is here.");
    expect(first).toContain(
      "cannot judge wear, choose a substitute or decide that anything is without danger",
    );
    expect(first).toContain("Local codes and licensed practice come first");
    expect(first).not.toContain("Old gasket for the trial");
  });

  test("never prints what has not been sorted or placed", () => {
    const all = pdf.pages.map(({ text }) => text).join(" ");
    expect(all).not.toContain("UNSORTEDWORD");
    expect(all).not.toContain("TRAYWORD");
  });

  test("says outright where there is no picture, and writes the time beside each code", () => {
    const at = placeOf(pdf, "Fit the cover with its four nuts");
    expect(pdf.nodes[at + 1]?.text).toBe("No picture");
    expect(pdf.nodes.map(({ text }) => text)).toContain("13:04 pump-strip.mp4");
  });

  // Clear print: 12 pt at least for text (guidance of blind people's associations, by public summaries). The
  // sizes of instruction, tick box and value box are those of the sheet at the bench: common practice, no source.
  test("is set large enough to read and to write on at the bench", () => {
    const size = (text: string) => pdf.pages[3]?.sizes.find((one) => one.text.includes(text))?.size ?? 0;
    expect(size("Draw the impeller off")).toBeGreaterThanOrEqual(14);
    for (const words of [
      "The gland packing may hold",
      "Leave it wet and whole",
      "Turn the two screws",
      "Vanes point",
    ]) {
      expect(size(words)).toBeGreaterThanOrEqual(12);
    }
    const ticks = pdf.pages[3]?.boxes.filter(
      ({ width, height }) => Math.abs(width - height) < 0.1 && width > 7.9 * mm && width < 12 * mm,
    );
    expect(ticks).toHaveLength(1);
    const place = (text: string) => pdf.pages[3]?.sizes.find((one) => one.text === text);
    const [found, specified, reading] = [place("As found"), place("Specified"), place("your reading")];
    const unit = pdf.pages[3]?.sizes.findLast((one) => one.text === "in");
    expect((specified?.x ?? 0) - (found?.x ?? 0)).toBeGreaterThanOrEqual(35 * mm);
    expect((reading?.y ?? 0) - (unit?.y ?? 0)).toBeGreaterThanOrEqual(8 * mm);
  });

  test("prints what was typed, and the same in the other system", () => {
    expect(pdf.pages[3]?.text).toContain("0.4965 in 12.611 mm");
  });

  test("is the same to the byte when it is made again", async () => {
    const same = procedure([step(1, "Once", { mark: "one" })], { tray: [], unsorted: [] });
    const [a, b] = [await toPdf(checked(same, []), options()), await toPdf(checked(same, []), options())];
    expect(Buffer.compare(a.files[0]?.bytes as Uint8Array, b.files[0]?.bytes as Uint8Array)).toBe(0);
  });
});

test("paper: A4 is 210 × 297 mm (ISO 216), Letter 8.5 × 11 in (ANSI Y14.1)", async () => {
  const job = procedure([step(1, "Look at it")]);
  const a4 = (await printed(job)).pdf.pages[0];
  const letter = (await printed(job, { paper: "letter" })).pdf.pages[0];
  expect(a4?.width).toBeCloseTo(210 * mm, 1);
  expect(a4?.height).toBeCloseTo(297 * mm, 1);
  expect(letter?.width).toBeCloseTo(8.5 * 72, 1);
  expect(letter?.height).toBeCloseTo(11 * 72, 1);
});

test("a released sheet says its revision and date on every page, and not that it is unreleased", async () => {
  const release = { revision: "B", date: "2026-04-01" };
  const { pdf } = await printed(procedure([step(1, "Look at it"), step(2, "Look again")]), { release });
  for (const { text } of pdf.pages) {
    expect(text).toContain("Revision B");
    expect(text).toContain("1 April 2026");
    expect(text).not.toContain("Unreleased");
  }
});

test("an empty procedure is one page that says so", async () => {
  const nobody = { name: "", maker: "", model: "", years: "", serial: "", variant: "" };
  const { pdf, output } = await printed(
    procedure([], { title: "", summary: "", assembly: "", machine: nobody }),
  );
  expect(output.standard).toBe("ua-1");
  expect(pdf.pages).toHaveLength(1);
  expect(pdf.pages[0]?.text).toContain("There are no steps yet");
  expect(pdf.title).toBe("Untitled procedure");
});

test("ten cautions stand before their action on its page, and what they say is all there", async () => {
  const signals = ["DANGER", "WARNING", "CAUTION", "NOTICE", null] as const;
  const cautions = Array.from({ length: 10 }, (_, index) =>
    caution({ hazard: `Hazard number ${index} of this step`, signal: signals[index % 5] ?? null }),
  );
  const stills = [await picture("The flywheel in its sling")];
  const { pdf, output } = await printed(procedure([step(1, "Lift the flywheel off", { cautions, stills })]));
  expect(output.losses).toEqual([]);
  expectCautionsBeforeActions(pdf, [
    { step: 1, cautions: cautions.map((one) => one.hazard), action: "Lift the flywheel off" },
  ]);
  const ungraded = pdf.pages.map(({ text }) => text).join(" ");
  expect(ungraded).toContain("Hazard, not graded");
});

test("cautions that fill more than a page are printed whole, and named among the losses", async () => {
  const cautions = Array.from({ length: 25 }, (_, index) => caution({ hazard: `Hazard number ${index}.` }));
  const { pdf, output } = await printed(procedure([step(1, "Begin"), step(2, "Lift it off", { cautions })]));
  expect(output.losses.join(" ")).toMatch(/^Step 2: its cautions fill more than a page/);
  const from = placeOf(pdf, "Step 2", placeOf(pdf, "Begin"));
  const places = cautions.map(({ hazard }) => placeOf(pdf, hazard, from));
  expect(places.every((place, index) => place > (places[index - 1] ?? from))).toBe(true);
  const act = placeOf(pdf, "Lift it off", from);
  expect(act).toBeGreaterThan(places.at(-1) as number);
  const [first, page] = [pdf.nodes[places[0] as number]?.page, pdf.nodes[act]?.page];
  expect(page).toBeGreaterThan(first as number);
  expect(pdf.pages[(page as number) - 1]?.text).toContain(
    `Read all 25 cautions of step 2 first: they begin on page ${first}.`,
  );
});

test("nothing is lost in a step of several pages: every word is there, in order", async () => {
  const words = Array.from({ length: 2400 }, (_, index) => `w${String(index).padStart(4, "0")}`);
  const details = Array.from({ length: 12 }, (_, index) => ({
    mark: `d${index}`,
    text: words.slice(index * 200, index * 200 + 200).join(" "),
  }));
  const stills = [await picture("one"), await picture("two", 720, 1280), await picture("three", 900, 900)];
  const { pdf, output } = await printed(procedure([step(1, "Do all this", { details, stills })]));
  const found = pdf.nodes.flatMap((node) => node.text.match(/w\d{4}/g) ?? []);
  expect(found).toEqual(words);
  const pages = new Set(pdf.nodes.filter((node) => /w\d{4}/.test(node.text)).map((node) => node.page));
  expect(pages.size).toBeGreaterThanOrEqual(3);
  expect(pdf.nodes.filter((node) => node.role === "Figure")).toHaveLength(3);
  expect(output.losses).toEqual([]);
  const last = Math.max(...pages);
  expect(pdf.pages[last - 1]?.text).toContain("Step 1, continued");
});

test.each([
  ["page", "a4"],
  ["page", "letter"],
  ["bench", "a4"],
  ["bench", "letter"],
] as const)(
  "%s edition on %s: what is higher than a page is printed to its last letter",
  async (edition, paper) => {
    const long = Array.from({ length: 900 }, (_, index) => `c${index}`).join(" ");
    const word = "W".repeat(5000);
    const cautions = [caution({ hazard: long, avoid: "LASTOFCAUTION" })];
    const soak = { least: `${word} LASTOFLEAST`, longest: "", why: `${long} LASTOFWHY` };
    const deferred = [
      { mark: "d", step: 1, what: `${long} LASTOFLEFT`, waitsFor: long, soak, closedBy: null },
    ];
    const note = `${long} LASTOFNOTE`;
    const measurements = [measurement(long, { note, values: { limit: typed(`${word} LASTOFLIMIT`) } })];
    const parts = [part(1, word, { note: `${long} LASTOFPART` })];
    const rest = { cautions, result: word, deferred, measurements, parts };
    const job = procedure([step(1, `${word} LASTOFACTION`, rest)], { title: word });
    const { pdf } = await printed(job, { edition, paper });
    const all = unspaced(pdf.nodes.map((node) => node.text).join(""));
    const lasts = ["LEAST", "WHY", "LEFT", "NOTE", "LIMIT", "PART", "CAUTION"].map((of) => `LASTOF${of}`);
    const expected = [unspaced(`${long}.`), `${word}LASTOFACTION`, ...lasts];
    expect(expected.filter((text) => !all.includes(text))).toEqual([]);
    for (const page of pdf.pages) {
      for (const { x } of page.sizes) expect(x).toBeLessThan(page.width);
    }
  },
);

test("hostile text stays text, and what no font can print is shown and named", async () => {
  const { pdf, output } = await printed(await hostileJob());
  const all = unspaced(pdf.nodes.map((node) => node.text).join(""));
  const said = [...hostileTexts.slice(0, 4), ...hostileTexts.slice(6)].flatMap((text) =>
    text.split(/[\r\n]+/),
  );
  const absent = said.filter((line) => !all.includes(unspaced(line)));
  expect(absent).toEqual([]);
  expect(all.includes("▯DESREVER▯▯bell▯nul▯halfHOSTILEE")).toBe(true);
  expect(all.includes("HOSTILEF▯▯▯▯éé")).toBe(true);
  const lost = output.losses.find((one) => one.includes("shown as ▯")) ?? "";
  for (const code of ["U+0000", "U+0007", "U+202E", "U+4E2D", "U+1F527", "U+D800"])
    expect(lost).toContain(code);
});

test("a long parts list and a long list of measurements repeat their heads on every page", async () => {
  const steps = Array.from({ length: 45 }, (_, index) =>
    step(index + 1, `Take off part ${index + 1}`, {
      parts: [part(index + 1, `Bracket ${index + 1}`)],
      measurements: [measurement(`Width of bracket ${index + 1}`, { values: { asFound: typed("12.5 mm") } })],
    }),
  );
  const { pdf } = await printed(procedure(steps));
  const inTable = (node: ReadPdf["nodes"][number]) => node.path.includes("Table");
  const rowPages = (text: string) =>
    new Set(pdf.nodes.filter((node) => inTable(node) && node.text.startsWith(text)).map((node) => node.page));
  const partPages = rowPages("Bracket ");
  expect(partPages.size).toBeGreaterThanOrEqual(2);
  for (const page of partPages) expect(pdf.pages[page - 1]?.text).toMatch(/No\. Part Quantity Steps/);
  const measured = rowPages("Width of bracket ");
  const lists = [...measured].filter((page) => !pdf.pages[page - 1]?.text.includes("your reading"));
  expect(lists.length).toBeGreaterThanOrEqual(2);
  for (const page of lists)
    expect(pdf.pages[page - 1]?.text).toMatch(/Step As found Specified Limit As fitted/);
});

test("sixty steps: each whole on one page, in order, with the page's foot naming them", async () => {
  const { pdf, output } = await printed(await longJob(60));
  expect(output.standard).toBe("ua-1");
  const heads = pdf.nodes.flatMap((node, index) => (/^H3$/.test(node.role) ? [{ ...node, index }] : []));
  expect(heads.map((node) => node.text)).toEqual(
    Array.from({ length: 60 }, (_, index) => `Step ${index + 1}`),
  );
  heads.forEach(({ index, page }, number) => {
    const next = heads[number + 1]?.index ?? placeOf(pdf, "Measurements", index);
    const inside = pdf.nodes
      .slice(index, next)
      .filter((node) => node.role !== "H2" && !/^Steps? /.test(node.text));
    for (const node of inside) expect(node.page).toBe(page);
    expect(pdf.pages[page - 1]?.text).toMatch(/Steps \d+( to \d+)? /);
  });
});

test("a picture that is missing or no picture is said in its place and among the losses", async () => {
  const stills = [await picture("gone")];
  const job = procedure([step(1, "Look", { stills })]);
  const gone = await printed(job, { stills: async () => null });
  expect(gone.pdf.pages.map(({ text }) => text).join(" ")).toContain("Picture missing");
  expect(gone.output.losses).toEqual(["Step 1: a picture is missing. Take the still again."]);
  const junk = await printed(job, { stills: async () => new Uint8Array([255, 216, 255, 1, 2, 3]) });
  expect(junk.output.losses).toEqual(["Step 1: a picture's file is not a JPEG. Take the still again."]);
});

test("an address too long for a code is named, and its time is still written", async () => {
  const moment = { recordingId: "r", recordingName: "long.mp4", at: 5, written: "0:05" };
  const link = `https://film.example/${"a".repeat(1500)}`;
  const { pdf, output } = await printed(procedure([step(1, "Look", { moment: { ...moment, link } })]));
  expect(output.losses.join(" ")).toContain("too long for a QR code");
  expect(pdf.pages.map(({ text }) => text).join(" ")).toContain("0:05");
});

function expectCautionsBeforeActions(
  pdf: ReadPdf,
  steps: { step: number; cautions: string[]; action: string }[],
): void {
  for (const { step: number, cautions, action } of steps) {
    const from = pdf.nodes.findIndex((node) => node.role === "H3" && node.text === `Step ${number}`);
    expect(from).toBeGreaterThanOrEqual(0);
    const acts = placeOf(pdf, oneSpaced(action), from);
    for (const words of cautions) {
      const warns = placeOf(pdf, words, from);
      expect(warns).toBeGreaterThan(from);
      expect(acts).toBeGreaterThan(warns);
      expect(pageOf(pdf, warns)).toBe(pageOf(pdf, acts));
    }
  }
}
