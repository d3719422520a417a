import { createHash } from "node:crypto";
import fs from "node:fs";
import os from "node:os";
import path from "node:path";
import { expect, onDisk, openDemo, test } from "./workshop.ts";

test("a procedure is released, a mistake is reported against it, and the next revision has it right", async ({
  page,
  program,
}) => {
  const build = await openDemo(page, program.address);
  await page.goto(`${build}/releases`);
  await page.getByRole("button", { name: "Release revision A" }).click();
  const first = page.getByRole("article", { name: /^Revision A/ });
  await expect(first).toBeVisible({ timeout: 60_000 });
  const [id = ""] = fs.readdirSync(path.join(program.folder, "releases"));
  const file = path.join(program.folder, "releases", id, "procedure.html");
  const published = sha256(file);

  // What is downloaded is what was frozen.
  const download = page.waitForEvent("download");
  await first.getByRole("link", { name: "One HTML file" }).click();
  expect(sha256(await (await download).path())).toBe(published);
  expect(fs.readFileSync(file, "utf8")).toContain("Revision A");

  // A viewer finds a mistake.
  await first.getByRole("link", { name: "Revision A" }).click();
  await expect(page.locator(".procedure .step").first()).toBeVisible();
  await page.getByLabel("What was reported").fill("Surely the pump is drained first?");
  await page.getByRole("combobox", { name: "Step" }).selectOption({ index: 1 });
  await page.getByLabel("The value or words").fill("with the engine warm");
  await page.getByRole("button", { name: "Keep the report" }).click();
  await expect(page.getByText("Kept. What comes of it")).toBeVisible();

  // The restorer agrees, mends the mark, and releases again.
  await page.goto(`${build}/releases`);
  const report = page.locator(".report");
  await expect(report).toContainText("revision A (");
  await report.getByLabel("What came of it").selectOption("mistake");
  await report.getByLabel("What is right").fill("with the engine cold");
  await report.getByLabel("What is right").blur();
  await onDisk(page);
  await report.getByRole("link", { name: "Show the mark" }).click();
  const words = page.locator("[data-hand] [data-field]").nth(1);
  await words.fill("Drain the water with the engine cold");
  await words.blur();
  await onDisk(page);
  await page.goto(`${build}/releases`);
  await page.getByText("What differs from revision A").click();
  await expect(page.locator("ins", { hasText: "Drain the water with the engine cold" })).toBeVisible();
  await page.getByLabel("What has changed since revision A").fill("The engine is cold when it is drained.");
  await page.getByLabel("What somebody who followed revision A").fill("Nothing, if nobody was scalded.");
  await expect(page.getByRole("checkbox", { name: "with the engine warm" })).toBeChecked();
  await page.getByRole("button", { name: "Release revision B" }).click();
  const second = page.getByRole("article", { name: /^Revision B/ });
  await expect(second).toBeVisible({ timeout: 60_000 });
  await expect(report).toContainText("Mended in revision B.");

  // The first is as it was; its page says what came after.
  expect(sha256(file)).toBe(published);
  await first.getByRole("link", { name: "Revision A" }).click();
  await expect(page.locator(".notice").first()).toContainText("There is a later revision: B");
  await expect(page.locator("#corrections")).toContainText("with the engine cold");
  const site = path.join(fs.mkdtempSync(path.join(os.tmpdir(), "site-")), "pump");
  await page.getByLabel("Folder on this computer").fill(site);
  await page.getByRole("button", { name: "Write the folder" }).click();
  await expect(page.getByText("files were written")).toBeVisible();
  expect(fs.readFileSync(path.join(site, "index.html"), "utf8")).toContain("There is a later revision: B");
  expect(sha256(path.join(site, "procedure.html"))).toBe(published);

  // What prints now carries the correction, and nothing that is wrong can be released.
  await page.goto(`${build}/sittings/demo-sitting-desk`);
  await page.locator(".log-row").first().click();
  await page.keyboard.press("Escape");
  await page.keyboard.press("d");
  await onDisk(page);
  await page.goto(`${build}/releases`);
  await expect(page.getByText(/finding says that something is wrong/)).toBeVisible();
  await expect(page.getByRole("button", { name: "Release revision C" })).toBeDisabled();
});

function sha256(file: string): string {
  return createHash("sha256").update(fs.readFileSync(file)).digest("hex");
}
