import { HtmlValidate } from "html-validate";
import sharp from "sharp";
import { describe, expect, test } from "vitest";
import { type Drawing, isPlain, type Point, plainDrawing, shown } from "#lib/figure/index.ts";
import { compareProcedures } from "#lib/procedure/index.ts";
import type { DrawnFigure, Figure } from "#lib/procedure/tree.ts";
import { shownPicture } from "#lib/publish/figures.ts";
import { toHowTo, toHtml, toMarkdown, toPdf } from "#lib/publish/index.ts";
import "../seed.ts";
import { readPdf } from "./read-pdf.ts";
import { checked, options, part, picture, procedure, step } from "./sample.ts";

const balloon = (id: string, item: string, at: Point) => ({ id, item, at, seat: null });
const drawn = (more: Partial<Drawing> = {}): DrawnFigure => ({
  drawing: {
    ...plainDrawing,
    view: "view A",
    balloons: [
      balloon("b1", "name:cover", { x: 0.3, y: 0.4 }),
      balloon("b2", "name:stud", { x: 0.7, y: 0.6 }),
      balloon("b3", "name:gone", { x: 0.5, y: 0.5 }),
    ],
    dimensions: [{ id: "d1", mark: "m", from: { x: 0.2, y: 0.8 }, to: { x: 0.8, y: 0.8 }, stand: 0.05 }],
    ...more,
  },
  numbers: [
    { item: "name:cover", number: 11 },
    { item: "name:stud", number: 12 },
  ],
  values: [{ mark: "m", text: "34.92 mm" }],
});

async function job(given: DrawnFigure) {
  const figure: Figure = { ...(await picture("The cover on its studs")), drawn: given };
  const parts = [part(11, "Cover"), part(12, "Stud")];
  return checked(procedure([step(1, "Take off the cover", { stills: [figure], parts })]));
}

const alt =
  "View A: The cover on its studs. Pointed out: items 11, 12 of the parts list. Dimensions: 34.92 mm.";
const textOf = (bytes: Uint8Array | undefined) => new TextDecoder().decode(bytes);
const fileNamed = (files: { name: string; bytes: Uint8Array }[], end: string) =>
  files.find(({ name }) => name.endsWith(end));

describe("a figure with two balloons, one whose part is gone, a dimension, and a name", () => {
  test.each(["page", "bench"] as const)(
    "in print (%s) is one figure with words for all of it, PDF/UA-1",
    async (edition) => {
      const output = await toPdf(await job(drawn()), options({ edition }));
      expect([output.standard, output.losses]).toEqual(["ua-1", []]);
      const { nodes } = await readPdf(output.files[0]?.bytes as Uint8Array);
      expect(nodes.filter(({ role }) => role === "Figure").map((one) => one.alt)).toContain(alt);
      expect(nodes.map(({ text }) => text).join(" ")).toContain("View A");
    },
  );

  test("with forty balloons in print says that their numbers are small", async () => {
    const balloons = Array.from({ length: 40 }, (_, index) =>
      balloon(`b${index}`, "name:cover", { x: (index % 8) / 8, y: index / 40 }),
    );
    const { losses, standard } = await toPdf(await job(drawn({ balloons })), options());
    expect(standard).toBe("ua-1");
    expect(losses.join(" ")).toContain("Step 1: a picture has more balloons than room");
  });

  test("in HTML is a picture with vectors over it, named, valid, and nothing is fetched", async () => {
    const { files } = await toHtml(await job(drawn()), options());
    const html = textOf(files[0]?.bytes);
    const [svg = ""] = /<svg[\s\S]*?<\/svg>/.exec(html) ?? [];
    expect(svg).toContain(`aria-label="${alt}"`);
    expect(svg).toContain('role="img"');
    expect([...svg.matchAll(/<text[^>]*>([^<]*)/g)].map(([, text]) => text)).toEqual([
      "11",
      "12",
      "34.92 mm",
    ]);
    expect([...svg.matchAll(/href="([^"]{0,22})/g)].map(([, to]) => to)).toEqual(["data:image/jpeg;base64"]);
    expect(html).toContain("<figcaption>View A</figcaption>");
    const report = await new HtmlValidate({
      extends: ["html-validate:recommended"],
      rules: {
        "doctype-style": "off",
        "void-style": "off",
        "attribute-boolean-style": "off",
        "attribute-empty-style": "off",
        "no-trailing-whitespace": "off",
        "require-sri": "off",
        "no-inline-style": "error",
      },
    }).validateString(html);
    expect(report.results.flatMap(({ messages }) => messages.map(({ message }) => message))).toEqual([]);
  });

  test("beside Markdown and HowTo is an SVG file that holds its picture, and a picture reader draws it", async () => {
    for (const make of [toMarkdown, toHowTo]) {
      const { files } = await make(await job(drawn()), options());
      const svg = fileNamed(files, ".svg");
      expect(textOf(files[0]?.bytes)).toContain(svg?.name);
      expect(textOf(files[0]?.bytes)).toContain("Pointed out: items 11, 12");
      expect(textOf(svg?.bytes)).toMatch(/^<svg[^>]* xmlns="http:\/\/www.w3.org\/2000\/svg"/);
      const { width, height } = await sharp(svg?.bytes).metadata();
      expect(width).toBeGreaterThan(800);
      // The black of a number's circle is there, in a place that the picture does not reach.
      const { channels } = await sharp(svg?.bytes).stats();
      expect(channels[0]?.min).toBe(0);
      expect(height).toBeGreaterThan(400);
    }
  });

  test("gives the same bytes each time", async () => {
    const given = await job(
      drawn({ straighten: 3, light: 0.4, crop: { x: 0.1, y: 0.1, width: 0.8, height: 0.8 } }),
    );
    for (const make of [toMarkdown, toHtml, toPdf]) {
      const [one, other] = [await make(given, options()), await make(given, options())];
      for (const [index, { bytes }] of one.files.entries())
        expect(Buffer.compare(bytes, other.files[index]?.bytes ?? new Uint8Array())).toBe(0);
    }
  });
});

describe("a picture as it is shown", () => {
  // A white picture with one red square: where it lies afterwards is what the drawing says.
  const at = { x: 0.7, y: 0.3 };
  const original = { width: 1200, height: 800 };
  const red = Buffer.from(
    `<svg xmlns="http://www.w3.org/2000/svg" width="1200" height="800"><rect width="1200" height="800" fill="#eee"/><rect x="820" y="220" width="40" height="40" fill="#f00"/></svg>`,
  );
  const turns: [string, Partial<Drawing>][] = [
    ["turned a quarter", { quarter: 90 }],
    ["turned three quarters", { quarter: 270 }],
    ["straightened", { straighten: 7.5 }],
    ["cropped", { crop: { x: 0.5, y: 0.1, width: 0.4, height: 0.5 } }],
    [
      "turned, straightened and cropped",
      { quarter: 180, straighten: -11, crop: { x: 0.1, y: 0.4, width: 0.5, height: 0.5 } },
    ],
  ];
  test.each(turns)("%s has each place where the drawing says, and the size it says", async (_, turn) => {
    const drawing = { ...plainDrawing, ...turn };
    const bytes = new Uint8Array(await sharp(red).jpeg({ quality: 95 }).toBuffer());
    const made = await shownPicture(bytes, original, { drawing, numbers: [], values: [] });
    const view = shown(drawing, original);
    const { data, info } = await sharp(made.bytes).raw().toBuffer({ resolveWithObject: true });
    expect(info).toMatchObject({ width: view.width, height: view.height });
    const { x, y } = view.toShown(at);
    const pixel = (Math.round(y) * info.width + Math.round(x)) * info.channels;
    expect(data[pixel]).toBeGreaterThan(200);
    expect(data[pixel + 1]).toBeLessThan(60);
  });

  test("as taken has the very bytes that came; lit, the middle grey is as many times as light", async () => {
    const grey = new Uint8Array(
      await sharp({ create: { width: 40, height: 40, channels: 3, background: { r: 80, g: 80, b: 80 } } })
        .jpeg()
        .toBuffer(),
    );
    const size = { width: 40, height: 40 };
    const show = (light: number) =>
      shownPicture(grey, size, { drawing: { ...plainDrawing, light }, numbers: [], values: [] });
    expect((await show(0)).bytes).toBe(grey);
    const level = async (light: number) =>
      (await sharp((await show(light)).bytes).stats()).channels[0]?.mean ?? 0;
    expect(await level(1)).toBeCloseTo(160, -0.5);
    expect(await level(-1)).toBeCloseTo(40, -0.5);
  });
});

test("a drawing that changed is a difference to be read, a plain one is none", async () => {
  const of = async (given: DrawnFigure) => (await job(given)).procedure;
  const first = await of(drawn());
  const again = (more: Partial<Drawing>) => ({
    ...first,
    stages: first.stages.map((stage) => ({
      ...stage,
      steps: stage.steps.map((one) => ({
        ...one,
        stills: one.stills.map((still) => ({ ...still, drawn: drawn(more) })),
      })),
    })),
  });
  expect(compareProcedures(first, again({}))).toEqual([]);
  for (const more of [{ view: "view B" }, { balloons: [] }, { quarter: 90 as const }, { light: 0.5 }]) {
    expect(compareProcedures(first, again(more))).toMatchObject([
      { step: 1, what: "Drawing on picture 1", concern: "read" },
    ]);
  }
  expect(isPlain(plainDrawing)).toBe(true);
});
