import path from "node:path";
import { expect, openDemo, test } from "./workshop.ts";
const film = path.resolve(import.meta.dirname, "../fixtures/video/long/treadle-head.mp4");
const captions = path.resolve(import.meta.dirname, "../captions/shared/treadle-head.vtt");
test("look", async ({ page, program }) => {
  await page.goto(program.address);
  await page.getByLabel("Machine, as you call it").fill("Treadle head");
  await page.getByLabel("What is restored").fill("The hook and its timing");
  await page.keyboard.press("Enter");
  await page.waitForURL(/\/builds\//);
  await page.getByLabel("Drop films here").setInputFiles([film, captions]);
  await expect(page.getByText(/430 frames/)).toBeVisible();
  await page.screenshot({ path: "/tmp/look-review-bench.png", fullPage: true });
  await page.getByRole("link", { name: "Open the log" }).click();
  await expect(page.locator(".transport .frame")).toHaveText(/frame \d+ of \d+/);
  await page.locator(".log-body").focus();
  for (const k of [".", "a", "a", "a", "x", "a"]) await page.keyboard.press(k);
  await page.waitForTimeout(800);
  const at = page.url();
  for (const [w, h] of [[1440, 900], [390, 844]] as const)
    for (const scheme of ["light", "dark"] as const) {
      await page.setViewportSize({ width: w, height: h });
      await page.emulateMedia({ colorScheme: scheme });
      await page.waitForTimeout(500);
      await page.screenshot({ path: `/tmp/look-review-${w}-${scheme}.png` });
    }
  const build = await openDemo(page, program.address);
  await page.setViewportSize({ width: 1440, height: 900 });
  await page.goto(`${build}/sittings/demo-sitting-bench?mark=demo-mark-030`);
  await expect(page.locator(".log-row.hand")).toBeVisible();
  await page.waitForTimeout(1500);
  await page.screenshot({ path: "/tmp/look-review-demo.png" });
  void at;
});
