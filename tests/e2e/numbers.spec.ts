import { expect, onDisk, openDemo, test } from "./workshop.ts";

test("a value is read and checked as it is typed, picked from what was used before, answered, and the answer lapses", async ({
  page,
  program,
}) => {
  const build = await openDemo(page, program.address);
  await page.goto(`${build}/sittings/demo-sitting-desk`);
  await expect(page.locator(".log-row").first()).toBeVisible();
  await page.keyboard.press("m");
  const hand = page.locator("[data-hand]");
  const field = (name: string) => hand.locator(`[data-field="${name}"]`);
  await field("words").fill("Shaft diameter");
  await field("item").fill("Shaft with pulley");

  // 1/2 in is 12.7 mm exactly (international yard and pound agreement, 1959).
  await field("specified").fill("1/2 in");
  await expect(hand.locator(".read-as", { hasText: "12.7 mm" })).toBeVisible();
  await field("asFound").fill("0.4995 in (13.7 mm)");
  await field("asFound").blur();
  const finding = hand.locator(".finding");
  await expect(finding.first()).toBeVisible();
  await expect(finding.first()).toContainText("13.7");

  // Mended, it goes.
  await field("asFound").fill("0.4995 in");
  await expect(finding.filter({ hasText: "13.7" })).toHaveCount(0);

  // What stands in the field of other marks is offered.
  const offered = await field("instrument").evaluate((input: HTMLInputElement) =>
    [...(input.list?.options ?? [])].map((option) => option.value),
  );
  expect(offered.length).toBeGreaterThan(0);
  expect(offered).toContain("feeler gauge, 2 to 25 thou");
  await hand.getByText("More about this measurement").click();
  const mates = await field("mate").evaluate((input: HTMLInputElement) =>
    [...(input.list?.options ?? [])].map((option) => option.value),
  );
  expect(mates).toContain("Cover nut");

  // The reference answers for what was typed.
  await expect(hand.getByRole("link", { name: "1/2 in" }).first()).toHaveAttribute(
    "href",
    /^\/reference\?q=/,
  );

  // A slip that stays is answered; the answer lapses when the value changes, and holds again when it is back.
  await field("asFound").fill("0.4995 in (13.7 mm)");
  await field("asFound").blur();
  await onDisk(page);
  await page.goto(`${build}/findings`);
  const note = page.locator(".finding", { hasText: "13.7" }).first();
  await note.getByRole("button", { name: "Answer" }).click();
  await note.getByLabel("Why it may stand").fill("Copied as it was written on the card");
  await note.getByRole("button", { name: "Let it stand" }).click();
  await expect(page.getByRole("region", { name: /^Answered/ })).toContainText("Copied as it was written");
  await note.getByRole("link", { name: "Show the mark" }).click();
  await field("asFound").fill("0.4995 in (13.8 mm)");
  await field("asFound").blur();
  await onDisk(page);
  await page.goto(`${build}/findings`);
  await expect(page.getByRole("region", { name: /lapsed/ })).toContainText("Copied as it was written");
});
