import { startProgram, stopProgram } from "./program.ts";
import { expect, onDisk, openDemo, test } from "./workshop.ts";

test("a kit is pasted, what is left over is asked about, and a part not to be used becomes a gotcha", async ({
  page,
  program,
}) => {
  const build = await openDemo(page, program.address);
  await page.goto(`${build}/parts`);
  await page.getByText("Another kit").click();
  await page.getByLabel("What it is called").fill("Seal kit");
  await page.getByLabel(/What is in it/).fill("1 x Lip seal\n1 x Round gasket");
  await expect(page.getByText("Read as 2 lines: 1 Lip seal; 1 Round gasket")).toBeVisible();
  await page.getByRole("button", { name: "Keep the kit" }).click();
  const findings = page.getByRole("region", { name: "What does not add up" });
  await expect(findings).toContainText("1 of 1 “Round gasket” left over, and nobody says why.");

  const kit = page.getByRole("region", { name: "Seal kit" });
  await kit.getByText("Round gasket").click();
  const row = kit.getByRole("listitem").filter({ hasText: "Round gasket" });
  await row.getByLabel("Must not be used, because").fill("its holes are on another circle");
  await expect(findings.getByText("Round gasket")).toHaveCount(0);
  await row.getByRole("button", { name: /Make a gotcha of it/ }).click();
  await expect(page.getByText(/On disk: Gotcha: Round gasket/)).toBeVisible();

  await page.reload();
  await expect(kit).toContainText("not to be used");
});

test("a fitting that was never marked is found, marked at the bench, and the ledger follows without a reload", async ({
  page,
  program,
}) => {
  const build = await openDemo(page, program.address);
  await page.goto(`${build}/sittings/demo-sitting-bench?mark=demo-mark-075`);
  await page.getByRole("button", { name: "Strike out" }).last().click();
  await onDisk(page);
  await page.evaluate(() => Object.assign(window, { sameDocument: true }));
  const around = page.getByRole("navigation", { name: "Title block" });
  await around.getByRole("link", { name: "Parts", exact: true }).click();

  const off = page.getByRole("region", { name: "Off the machine" });
  await expect(off).toContainText("Cover nut");
  const findings = page.getByRole("region", { name: "What does not add up" });
  await expect(findings).toContainText(
    "Cover nut: 4 pieces came off at 0:18, and no mark says what became of them.",
  );
  await page.getByRole("button", { name: /Fitted now.*Cover nut/ }).click();
  await expect(off).toContainText("Nothing that the marks know of.");
  await expect(findings).toHaveCount(0);
  await onDisk(page);
  expect(await page.evaluate(() => "sameDocument" in window)).toBe(true);
});

test("a deferred item left open stands first on the build, the machine and the first screen, until a mark closes it", async ({
  page,
  program,
}) => {
  const build = await openDemo(page, program.address);
  // The mark that closed it: what it closed is open again when it is struck out.
  await page.goto(`${build}/sittings/demo-sitting-bench?mark=demo-mark-078`);
  await page.getByRole("button", { name: "Strike out" }).last().click();
  await onDisk(page);
  const words = "The four cover nuts are finger-tight only.";
  for (const address of [build, `${program.address}machines/demo-machine-ostrey-b`, program.address]) {
    await page.goto(address);
    await expect(page.getByRole("link", { name: words }).first()).toBeVisible();
  }
  await page.goto(`${build}/parts`);
  await expect(page.getByRole("region", { name: "Before it first runs" })).toContainText(words);
});

test("a bath that is overdue is said wherever the restorer is: on every sheet, in other builds, after a restart of the program", async ({
  page,
  program,
}) => {
  await page.goto(program.address);
  await page.getByRole("button", { name: "Open three builds that teach each other" }).click();
  await page.waitForURL(/halvern-build-third$/);
  const build = await openDemo(page, program.address);
  await page.goto(`${build}/sittings/demo-sitting-bench?mark=demo-mark-076`);
  await page.getByText("More about this deferred").click();
  await page.getByLabel("At most").fill("4 h");
  await page.getByLabel(/^Began/).fill("2026-05-03 10:00");
  await page.getByLabel(/^Began/).blur();
  await onDisk(page);
  await page.goto(`${build}/sittings/demo-sitting-bench?mark=demo-mark-078`);
  await page.getByRole("button", { name: "Strike out" }).last().click();
  await onDisk(page);
  for (const sheet of ["", "/procedure", "/parts", "/changes"]) {
    await page.goto(`${build}${sheet}`);
    await expect(page.getByRole("link", { name: "Deferred 1 open, 1 overdue" })).toBeVisible();
  }
  await page.goto(build);
  await expect(page.getByRole("region", { name: "Where was I?" })).toContainText("Take out:");

  const words = "The four cover nuts are finger-tight only.";
  const due = page.getByRole("complementary", { name: "Due" });
  const isSaid = async (address: string) => {
    for (const place of ["", "builds/halvern-build-third", "settings", "gotchas", "reference"]) {
      await page.goto(`${address}${place}`);
      await expect(due, place).toContainText(`Overdue: ${words} since`);
    }
    await page.goto(address);
    await expect(page.getByRole("region", { name: "In a bath, or curing" })).toContainText(words);
  };
  await isSaid(program.address);
  await page.goto("about:blank");
  await stopProgram(program);
  const again = await startProgram(program.folder);
  await isSaid(again.address);

  // The log makes room for the line, and a closing mark takes it away.
  await due.getByRole("link").first().click();
  await expect(page.locator("[data-hand]")).toBeVisible();
  const tooHigh = await page.evaluate(() => document.documentElement.scrollHeight - window.innerHeight);
  expect(tooHigh).toBeLessThanOrEqual(0);
  await page.getByText("More about this deferred").click();
  await page.locator('[data-field="ended"]').fill("2026-05-03 13:00");
  await page.locator('[data-field="ended"]').blur();
  await onDisk(page);
  await page.goto(again.address);
  await expect(page.getByRole("region", { name: "Left provisional" })).toBeVisible();
  await expect(due).toHaveCount(0);
  await page.goto("about:blank");
  await stopProgram(again);
});
