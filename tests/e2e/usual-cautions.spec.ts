import { AxeBuilder } from "@axe-core/playwright";
import { tabTo } from "./keyboard.ts";
import { expect, onDisk, openDemo, test } from "./workshop.ts";

test("a step that names a hazard is offered the usual caution; nothing is put in unasked", async ({
  page,
  program,
}, info) => {
  const build = await openDemo(page, program.address);
  await page.goto(`${build}/procedure`);
  const cautions = page.locator(".procedure section.step .caution");
  await expect(cautions.first()).toBeVisible();
  const before = await cautions.count();

  await page.goto(`${build}/sittings/demo-sitting-desk`);
  await page.locator(".log-body").focus();
  await page.keyboard.press("s");
  await page.keyboard.press("Enter");
  await page.keyboard.type("Wash the impeller in petrol");
  await onDisk(page);
  const offer = page.getByText("Usually said of: Petrol");
  await expect(offer).toBeVisible();
  await page.goto(`${build}/procedure`);
  await expect(page.getByText("Wash the impeller in petrol").first()).toBeVisible();
  expect(await cautions.count()).toBe(before);

  await page.goBack();
  await page.getByText("Wash the impeller in petrol").first().click();
  await tabTo(page, "Usually said of: Petrol");
  await page.keyboard.press("Enter");
  await expect(page.getByText("Extremely flammable liquid and vapour.", { exact: false })).toBeVisible();
  const { violations } = await new AxeBuilder({ page }).include(".usual-caution").analyze();
  expect(violations).toEqual([]);
  await info.attach("offered", { body: await page.screenshot(), contentType: "image/png" });
  await tabTo(page, "Put this caution before the step");
  await page.keyboard.press("Enter");
  await onDisk(page);
  await expect(offer).toHaveCount(0);
  await page.goto(`${build}/procedure`);
  await expect(cautions).toHaveCount(before + 1);
  const step = page.locator("section.step").filter({ hasText: "Wash the impeller in petrol" });
  await expect(step.locator(".caution")).toContainText("WARNING");
});
