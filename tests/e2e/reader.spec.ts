import fs from "node:fs";
import os from "node:os";
import path from "node:path";
import { pathToFileURL } from "node:url";
import { AxeBuilder } from "@axe-core/playwright";
import { readPdf, unspaced } from "../publish/read-pdf.ts";
import { expect, openDemo, test } from "./workshop.ts";

test("a reader's file keeps ticks and readings without a network, and a saved copy carries them", async ({
  page,
  program,
  context,
}) => {
  const build = await openDemo(page, program.address);
  const given = page.waitForEvent("download");
  await page.getByRole("link", { name: "One HTML file" }).click();
  const folder = fs.mkdtempSync(path.join(os.tmpdir(), "reader-"));
  const file = path.join(folder, "procedure.html");
  await (await given).saveAs(file);
  expect(build).toContain("/builds/");

  await context.setOffline(true);
  await page.goto(pathToFileURL(file).href);
  await expect(page.getByText("0 of 29 steps done.")).toBeVisible();
  await page.getByRole("checkbox", { name: "Step 1 done", exact: true }).check();
  await page.getByRole("checkbox", { name: "Step 2 done", exact: true }).check();
  await page
    .getByLabel(/^Your reading, as found: End float/)
    .first()
    .fill("12 thou </script>");
  await page.getByRole("checkbox", { name: "Every guard that came off is back on." }).check();
  await page.reload();
  await expect(page.getByText("2 of 29 steps done.")).toBeVisible();
  await expect(page.getByRole("link", { name: "Go on at Step 3" })).toHaveAttribute("href", "#step-3");
  await expect(page.getByLabel(/^Your reading, as found: End float/).first()).toHaveValue(
    "12 thou </script>",
  );

  const saved = page.waitForEvent("download");
  await page.getByRole("button", { name: "Save a copy" }).click();
  const copy = path.join(folder, "copy.html");
  await (await saved).saveAs(copy);
  // In a browser that knows nothing of it, under another name: what was written is in the file itself.
  const elsewhere = await page
    .context()
    .browser()
    ?.newContext({ offline: true, viewport: { width: 390, height: 844 } });
  if (!elsewhere) throw new Error("no browser");
  const other = await elsewhere.newPage();
  const errors: string[] = [];
  other.on("pageerror", (error) => errors.push(error.message));
  await other.goto(pathToFileURL(copy).href);
  await expect(other.getByText("2 of 29 steps done.")).toBeVisible();
  await expect(other.getByRole("checkbox", { name: "Step 2 done", exact: true })).toBeChecked();
  await expect(other.getByLabel(/^Your reading, as found: End float/).first()).toHaveValue(
    "12 thou </script>",
  );

  await expect(other.getByRole("checkbox", { name: "Every guard that came off is back on." })).toBeChecked();

  // Found by its words; nothing is cut off on a telephone; nothing serious for who hears it read out.
  await other.getByLabel("Find words").fill("impeller nut");
  await expect(other.getByText(/\d of 29 steps have it\./)).toBeVisible();
  await expect(other.locator("#step-1")).toBeHidden();
  await other.getByLabel("Find words").fill("");
  await expect(other.locator("#step-1")).toBeVisible();
  expect(
    await other.evaluate(() => document.documentElement.scrollWidth - window.innerWidth),
  ).toBeLessThanOrEqual(0);
  for (const [colorScheme, width] of [
    ["light", 390],
    ["dark", 390],
    ["light", 1440],
  ] as const) {
    await other.setViewportSize({ width, height: 844 });
    await other.emulateMedia({ colorScheme });
    const { violations } = await new AxeBuilder({ page: other }).analyze();
    expect(violations.map((one) => `${one.id}: ${one.nodes[0]?.html}`)).toEqual([]);
  }
  await other.emulateMedia({ colorScheme: "light" });
  await other.emulateMedia({ media: "print" });
  await expect(other.getByRole("button", { name: "Save a copy" })).toBeHidden();
  await expect(other.getByRole("checkbox", { name: "Step 2 done", exact: true })).toBeVisible();
  // On paper: every instruction is there, and what the reader wrote.
  const titles = await other.locator("section.step p.instruction").allTextContents();
  const paper = await readPdf(new Uint8Array(await other.pdf({ format: "A4" })));
  const said = unspaced(paper.pages.map(({ text }) => text).join(""));
  expect(titles).toHaveLength(29);
  expect(titles.filter((title) => !said.includes(unspaced(title)))).toEqual([]);
  expect(said).toContain(unspaced("12 thou </script>"));
  expect(errors).toEqual([]);
  await elsewhere.close();
  await context.setOffline(false);
});
