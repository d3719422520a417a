import { expect, openDemo, test } from "./workshop.ts";

test("a part marked at the bench leaves the list of what is off, without a reload; undo brings it back", async ({
  page,
  program,
}) => {
  const build = await openDemo(page, program.address);
  await page.goto(`${build}/sittings/demo-sitting-bench?mark=demo-mark-030`);
  await page.goto(`${build}/parts`);
  const off = page.getByRole("region", { name: "Off the machine" });
  await expect(off).toContainText("Nothing that the marks know of.");

  await page.getByText("Another kit").click();
  await page.getByLabel("What it is called").fill("Seal kit");
  await page.getByLabel(/What is in it/).fill("1 x Lip seal\n1 x Round gasket");
  await expect(page.getByText("Read as 2 lines: 1 Lip seal; 1 Round gasket")).toBeVisible();
  await page.getByRole("button", { name: "Keep the kit" }).click();
  const findings = page.getByRole("region", { name: "What does not add up" });
  await expect(findings).toContainText("1 of 1 “Round gasket” left over, and nobody says why.");

  const kits = page.getByRole("region", { name: "Seal kit" });
  await kits.getByText("Round gasket").click();
  const row = kits.getByRole("listitem").filter({ hasText: "Round gasket" });
  await row.getByLabel("Must not be used, because").fill("its holes are on another circle");
  await expect(findings).not.toContainText("Round gasket");
  await row.getByRole("button", { name: /Make a gotcha of it/ }).click();
  await expect(page.getByText(/On disk: Gotcha: Round gasket/)).toBeVisible();

  await page.reload();
  await expect(kits).toContainText("not to be used");
});
