import type { BuildDocument } from "#lib/build/index.ts";
import { startProgram, stopProgram } from "./program.ts";
import { expect, onDisk, openDemo, test } from "./workshop.ts";

const desk = "/sittings/demo-sitting-desk";

async function documentOf(page: import("@playwright/test").Page, build: string): Promise<BuildDocument> {
  const answer = await (await page.request.get(`${build}/document`)).json();
  return (answer as { document: BuildDocument }).document;
}

test("two tabs on one mark: the later write is refused, both versions are shown, and the restorer chooses", async ({
  page,
  program,
  context,
}) => {
  const build = await openDemo(page, program.address);
  await page.goto(build + desk);
  const other = await context.newPage();
  await other.goto(build + desk);
  for (const tab of [page, other]) {
    await expect(tab.locator(".log-row").first()).toBeVisible();
    await tab.keyboard.press("ArrowDown");
    await tab.keyboard.press("Enter");
  }
  const field = (tab: typeof page) => tab.locator(".log-row.hand [data-field='words']");
  await field(page).fill("Written in the first tab");
  await onDisk(page);
  await expect(page.getByText(/^On disk:/)).toBeVisible();
  await field(other).fill("Written in the second tab");
  const conflict = other.getByText("Changed in two places.");
  await expect(conflict).toBeVisible();
  await expect(other.locator(".conflict")).toContainText("Written in the first tab");
  await expect(other.locator(".conflict")).toContainText("Written in the second tab");
  const kept = await documentOf(page, build);
  expect(kept.marks.some((mark) => mark.fields.words === "Written in the first tab")).toBe(true);
  await other.getByRole("button", { name: "Write this one over it" }).click();
  await expect(conflict).toBeHidden();
  await expect(other.getByText(/^On disk:/)).toBeVisible();
  const written = await documentOf(page, build);
  expect(written.marks.some((mark) => mark.fields.words === "Written in the second tab")).toBe(true);
});

test("undo and redo go on after a reload, deletions included", async ({ page, program }) => {
  const build = await openDemo(page, program.address);
  await page.goto(build + desk);
  const rows = page.locator(".log-row");
  await expect(rows.first()).toBeVisible();
  const before = await rows.count();
  await page.keyboard.press("p");
  await expect(page.getByText("On disk: Part without film")).toBeVisible();
  await page.keyboard.press("Delete");
  await expect(page.getByText(/On disk: .*struck out/)).toBeVisible();
  await expect(rows).toHaveCount(before);
  await page.reload();
  await expect(rows).toHaveCount(before);
  await page.keyboard.press("u");
  await expect(rows).toHaveCount(before + 1);
  await page.keyboard.press("u");
  await expect(rows).toHaveCount(before);
  await page.goto(`${build}/changes`);
  await page.getByRole("button", { name: "Redo" }).click();
  await expect(page.getByText("On disk: redo: Part without film")).toBeVisible();
  await page.goto(build + desk);
  await expect(rows).toHaveCount(before + 1);
});

test.describe("with the program killed", () => {
  // What the browser says of a program that has gone is not the page's doing.
  test.use({ toleratedErrors: /ERR_CONNECTION_REFUSED|ERR_EMPTY_RESPONSE|ERR_CONNECTION_RESET/ });

  test("what was said to be on disk is there, and what was typed meanwhile goes to disk when it is back", async ({
    page,
    program,
  }) => {
    const build = await openDemo(page, program.address);
    await page.goto(build + desk);
    await expect(page.locator(".log-row").first()).toBeVisible();
    await page.keyboard.press("d");
    await page.keyboard.press("Enter");
    await page.keyboard.type("Said to be on disk");
    await expect(page.getByText("On disk: Deferred: what is left provisional")).toBeVisible();
    await stopProgram(program, "SIGKILL");
    await page.keyboard.press("Escape");
    await page.keyboard.press("g");
    await page.keyboard.press("Enter");
    await page.keyboard.type("Typed while it was gone");
    await expect(page.getByText(/^Not on disk yet:/)).toBeVisible();
    const back = await startProgram(program.folder, { PORT: new URL(program.address).port });
    expect(back.address).toBe(program.address);
    await expect(page.getByText(/^On disk: Gotcha/)).toBeVisible({ timeout: 30_000 });
    const words = (await documentOf(page, build)).marks.map((mark) => mark.fields.words);
    expect(words).toContain("Said to be on disk");
    expect(words).toContain("Typed while it was gone");
    await page.close();
    await stopProgram(back);
  });
});

test("a key can be changed, and single keys switched off", async ({ page, program }) => {
  const build = await openDemo(page, program.address);
  await page.goto(`${program.address}settings`);
  await page.getByLabel("Key for: part").focus();
  await page.keyboard.press("k");
  await expect(page.getByText("On disk.")).toBeVisible();
  await page.getByLabel("Key for: gotcha").focus();
  await page.keyboard.press("k");
  await expect(page.getByText("already: part")).toBeVisible();
  await page.goto(build + desk);
  const rows = page.locator(".log-row");
  await expect(rows.first()).toBeVisible();
  const before = await rows.count();
  await page.keyboard.press("p");
  await page.keyboard.press("k");
  await expect(rows).toHaveCount(before + 1);
  await expect(page.locator(".log-row.hand .sign")).toContainText("Part");
  await page.goto(`${program.address}settings`);
  await page.getByLabel("Single keys act on the log sheet").uncheck();
  await expect(page.getByText("On disk.")).toBeVisible();
  await page.goto(build + desk);
  await expect(rows).toHaveCount(before + 1);
  await page.keyboard.press("k");
  await page.keyboard.press(" ");
  await expect(rows).toHaveCount(before + 1);
  await page.getByRole("button", { name: "Mark", exact: true }).click();
  await expect(rows).toHaveCount(before + 2);
});
