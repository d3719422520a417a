import { describe, expect, test } from "vitest";
import { newGotcha, newScope, newSighting } from "#lib/build/index.ts";
import { brief } from "#lib/gotcha/index.ts";
import { briefNotes, contentHash, toHtml, toMarkdown, toPdf } from "#lib/publish/index.ts";
import { readPdf } from "../pdf.ts";
import { checked, options, smallJob } from "./sample.ts";

const noted = "2026-01-01T00:00:00.000Z";
const gotchas = [
  newGotcha({
    id: "seal",
    symptom: "The seal *leaks* with its <lip> outward",
    mechanism: "The pressure lifts the lip",
    consequence: "Oil on the belt",
    severity: "part",
    avoid: "Lip to the oil",
    noted,
    appliesTo: [newScope({ assembly: "Pump" })],
  }),
];
const sightings = [newSighting({ id: "s", gotchaId: "seal", outcome: "happened", at: noted })];
const lines = brief(
  { gotchas, sightings },
  {
    machine: { id: "m", maker: "Ostrey", model: "No. 2", variant: "", serial: "", years: "" },
    assembly: { name: "Water pump", inside: [] },
    parts: [],
    kits: [],
    buildId: null,
  },
  noted,
);

describe("a printed brief", () => {
  const publishing = options({ brief: briefNotes(lines) });
  const text = (bytes: Uint8Array | undefined) => new TextDecoder().decode(bytes);

  test("stands before the steps in HTML and Markdown, its words as they were written", async () => {
    const job = checked(await smallJob());
    const html = text((await toHtml(job, publishing)).files[0]?.bytes);
    expect(html).toContain("The seal *leaks* with its &#x3C;lip> outward");
    expect(html.indexOf("What bit before")).toBeLessThan(html.indexOf("data-step"));
    const markdown = text((await toMarkdown(job, publishing)).files[0]?.bytes);
    expect(markdown).toContain("\\*leaks\\* with its \\<lip> outward");
    for (const words of [
      "as is suspected",
      "a spoiled part. Oil on the belt",
      "Lip to the oil",
      "Met once",
    ]) {
      expect(html).toContain(words);
      expect(markdown).toContain(words);
    }
  });

  test("stands in the PDF before step 1, and nothing of it where there is none", async () => {
    const job = checked(await smallJob());
    const made = await toPdf(job, publishing);
    const pdf = await readPdf(Buffer.from(made.files[0]?.bytes ?? []));
    const nodes = pdf.nodes.map((node) => node.text);
    const at = nodes.indexOf("What bit before");
    expect(at).toBeGreaterThan(0);
    expect(nodes.findIndex((one, index) => index > at && one.includes("Lip to the oil"))).toBeGreaterThan(at);
    expect(nodes.findIndex((one, index) => index > 0 && one.startsWith("Step 1"))).toBeGreaterThan(at);
    expect(made.standard).toBe("ua-1");
    const without = await readPdf(Buffer.from((await toPdf(job, options())).files[0]?.bytes ?? []));
    expect(without.pages.map((page) => page.text).join(" ")).not.toContain("What bit before");
  });

  test("is no part of the content hash: it is what was known on that day", async () => {
    const job = checked(await smallJob());
    const hash = contentHash(job).slice(0, 8);
    expect(text((await toHtml(job, publishing)).files[0]?.bytes)).toContain(hash);
  });
});
