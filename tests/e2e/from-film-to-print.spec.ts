import fs from "node:fs";
import os from "node:os";
import path from "node:path";
import sharp from "sharp";
import { readPdf } from "../pdf.ts";
import { chooseFiles, leaveFields, press, tabTo } from "./keyboard.ts";
import { expect, onDisk, test } from "./workshop.ts";

const film = path.resolve(import.meta.dirname, "../fixtures/video/data/constant-25.mp4");

test("by keyboard alone, from an empty workshop to a printed procedure", async ({ page, program }) => {
  await page.goto(program.address);
  await tabTo(page, "Machine, as you call it");
  await page.keyboard.type("Bench grinder");
  await page.keyboard.press("Tab");
  await page.keyboard.type("Renew the bearings");
  await page.keyboard.press("Enter");
  await page.waitForURL(/\/builds\//);

  await tabTo(page, "Drop films here");
  await chooseFiles(page, film);
  await expect(page.getByText(/\d+ frames/)).toBeVisible();
  await press(page, "Open the log");
  await expect(page.locator(".transport .frame")).toHaveText(/frame \d+ of \d+/);

  const on = async (frames: number) => {
    for (let count = 0; count < frames; count++) await page.keyboard.press("ArrowRight");
  };
  /** Drops a mark by its letter and writes into its fields, in the order in which Tab reaches them. */
  const mark = async (key: string, ...fields: string[]) => {
    await on(4);
    await page.keyboard.press(key);
    await page.keyboard.press("Enter");
    for (const [index, field] of fields.entries()) {
      if (index > 0) await page.keyboard.press("Tab");
      if (field !== "") await page.keyboard.type(field);
    }
    await leaveFields(page);
    await onDisk(page);
  };

  await mark(
    "n",
    "The wheel can burst",
    "Pieces fly out",
    "a person",
    "death",
    "it could",
    "Stand aside for a minute",
  );
  await mark("s", "Take the wheel guard off");
  await page.keyboard.press("f");
  await expect(page.locator(".still img")).toHaveCount(1);
  await mark("t", "Spanner", "1/2 in");
  await mark("p", "Guard screw", "removed", "3");
  await mark("s", "Draw the bearing");
  await page.keyboard.press("f");
  await expect(page.locator(".log-row.hand .still img")).toHaveCount(1);
  const photograph = path.join(os.tmpdir(), `photograph-${process.pid}.jpg`);
  await sharp({ create: { width: 640, height: 480, channels: 3, background: "#8a8f86" } })
    .withExif({ IFD0: { Make: "Invented" }, IFD3: { GPSLatitude: "51/1 30/1 0/1" } })
    .jpeg()
    .toFile(photograph);
  await tabTo(page, "Add a photograph");
  await chooseFiles(page, photograph);
  await expect(page.locator(".log-row.hand .still img")).toHaveCount(2);
  await leaveFields(page);
  await mark("m", "Bearing bore", "Bearing", "17 mm", "", "", "", "bore gauge", "measured");
  await mark("g", "The puller slips", "The groove is worn", "Pack it with brass shim");
  await mark("c", "Oil", "2 drops");
  await mark("d", "Guard screws finger-tight", "the new washers");
  await on(4);
  await page.keyboard.press(" ");
  await onDisk(page);
  await expect(page.locator(".log-row")).toHaveCount(10);

  await press(page, /^Procedure$/);
  await expect(page.locator(".procedure [data-step]")).toHaveCount(2);
  await expect(page.getByText("A mark at", { exact: false })).toBeVisible();
  await press(page, "Move step 2 up");
  await expect(page.locator(".procedure [data-step] .instruction").first()).toHaveText("Draw the bearing");
  await onDisk(page);

  const download = page.waitForEvent("download");
  await press(page, "PDF, A4");
  const pdf = await readPdf(fs.readFileSync(await (await download).path()));
  fs.rmSync(photograph);

  expect(pdf.tagged).toBe(true);
  expect(pdf.title).toContain("Renew the bearings");
  const all = pdf.pages.map((one) => one.text).join(" ");
  for (const words of [
    "Guard screw",
    "Spanner",
    "17 mm",
    "The puller slips",
    "Oil",
    "Guard screws finger-tight",
  ]) {
    expect(all).toContain(words);
  }
  for (const [index, one] of pdf.pages.entries()) {
    expect(one.text).toContain("Unreleased");
    expect(one.text).toMatch(new RegExp(`${index + 1} of ${pdf.pages.length}`));
  }
  // The step that was moved comes first; the caution stands before its action, on its page.
  const at = (words: string, from = 0) =>
    pdf.nodes.findIndex((node, index) => index >= from && node.text.includes(words));
  const figures = pdf.nodes.filter((node) => node.role === "Figure");
  expect(figures.length).toBeGreaterThanOrEqual(3);
  for (const figure of figures) expect(figure.alt ?? "").not.toBe("");
  const steps = pdf.nodes.findIndex((node) => /^H\d$/.test(node.role) && node.text.includes("Step 1"));
  const draw = at("Draw the bearing", steps);
  const caution = pdf.nodes.findIndex(
    (node, index) => index > draw && node.text.includes("The wheel can burst"),
  );
  const guard = pdf.nodes.findIndex(
    (node, index) => index > caution && node.text === "Take the wheel guard off",
  );
  expect(draw).toBeGreaterThan(steps);
  expect(caution).toBeGreaterThan(draw);
  expect(guard).toBeGreaterThan(caution);
  expect(pdf.nodes[guard]?.page).toBe(pdf.nodes[caution]?.page);
  expect(pdf.pages[(pdf.nodes[caution]?.page ?? 1) - 1]?.text).toContain("WARNING");
});
