import { AxeBuilder } from "@axe-core/playwright";
import type { Locator, Page } from "@playwright/test";
import { expect, test } from "./workshop.ts";

/** Types a question into the one field of the reference page, as a restorer would. */
async function ask(page: Page, address: string, question: string): Promise<Locator> {
  await page.goto(`${address}reference`);
  await page.getByRole("searchbox").fill(question);
  const answers = page.locator(".answers");
  await expect(answers).toHaveAttribute("data-for", question);
  return answers;
}

/** A figure's row, by its label. */
const figure = (where: Locator, label: string | RegExp): Locator =>
  where
    .getByRole("row")
    .filter({ has: where.page().getByRole("rowheader", { name: label }) })
    .first();

/** Every sheet that gives figures names where they come from. */
async function sourced(answers: Locator): Promise<void> {
  for (const entry of await answers.locator(".entry").all()) {
    await expect(entry.getByRole("list", { name: "Sources" }).getByRole("listitem").first()).toBeVisible();
    const sources = await entry.getByRole("list", { name: "Sources" }).getByRole("listitem").count();
    for (const mark of await entry.locator("tbody .mark").allTextContents()) {
      expect(Number(mark)).toBeGreaterThanOrEqual(1);
      expect(Number(mark)).toBeLessThanOrEqual(sources);
    }
  }
}

test("which thread is 0.247 in with 26 threads to the inch?", async ({ page, program }) => {
  const answers = await ask(page, program.address, "0.247 in 26 tpi");
  // BS 84 and BS 811 both list 26 to the inch at 1/4 in; the angle tells them apart.
  const candidates = answers.getByRole("region", { name: /^Candidates/ });
  await expect(candidates.getByRole("columnheader", { name: "1/4 BSF" })).toBeVisible();
  await expect(candidates.getByRole("columnheader", { name: "1/4-26 BSC" })).toBeVisible();
  await expect(figure(candidates, "angle")).toContainText("55°");
  await expect(figure(candidates, "angle")).toContainText("60°");
  await expect(answers).not.toContainText("UNC");
  await sourced(answers);
});

test("what drill taps 2 BA?", async ({ page, program }) => {
  const answers = await ask(page, program.address, "what drill taps 2 BA");
  await expect(answers.locator(".says").first()).toContainText("4 mm drill, 0.1575 in");
  await sourced(answers);
});

test("which BSF bolts does a metric spanner nearly fit?", async ({ page, program }) => {
  const answers = await ask(page, program.address, "which BSF bolts does a metric spanner nearly fit");
  // BS 1083: 7/16 BSF is 0.710 in across flats, 18.03 mm; 1/4 BSF is 0.445 in, 11.30 mm, and nothing metric suits it.
  await expect(answers.locator(".says").first()).toContainText(/7\/16 BSF takes 18.mm/);
  await expect(answers.locator(".says").first()).not.toContainText("1/4 BSF");
  await expect(figure(answers, "1/4 BSF")).toContainText("0.4450");
  await sourced(answers);
});

test("what clearance has 25 H7/g6?", async ({ page, program }) => {
  const answers = await ask(page, program.address, "25 H7/g6");
  // ISO 286-1: hole 25.000 to 25.021, shaft 24.980 to 24.993.
  await expect(answers.locator(".says").first()).toContainText("7 to 41 µm of clearance");
  await expect(figure(answers, "hole H7, largest")).toContainText(/25\.021.mm/);
  await expect(figure(answers, "shaft g6, smallest")).toContainText(/24\.98.mm/);
  await sourced(answers);
});

test("does an M6 screw go into a 0 BA hole?", async ({ page, program }) => {
  const answers = await ask(page, program.address, "0 BA and M6");
  // BS 93 and ISO 724: both 6 mm with 1 mm pitch, 47.5° against 60°.
  await expect(answers.locator(".says").first()).toContainText("do not go together");
  await expect(answers.locator(".says").first()).toContainText("47.5 / 60");
  await sourced(answers);
});

test("which bearing is 25 × 52 × 15, and is 6205-2RS the same size?", async ({ page, program }) => {
  const answers = await ask(page, program.address, "25 x 52 x 15 mm");
  await expect(answers.getByRole("heading", { name: "Bearing 6205" })).toBeVisible();
  const sealed = await ask(page, program.address, "6205-2RS");
  await expect(figure(sealed, "outside diameter")).toContainText(/52.mm/);
  await sourced(sealed);
});

test("how thick is 18 gauge?", async ({ page, program }) => {
  const answers = await ask(page, program.address, "18 gauge");
  // BS 3737: 0.048 in; ASTM B258: 0.0403 in. Without a system it is asked about, and each is answered.
  await expect(answers.locator(".asked")).toBeVisible();
  await expect(figure(answers.getByRole("article", { name: "18 SWG" }), "diameter")).toContainText(
    /0\.0480.in/,
  );
  await expect(figure(answers.getByRole("article", { name: "18 AWG" }), "diameter")).toContainText(
    /0\.0403.in/,
  );
  await sourced(answers);
});

test("what resistor is brown black red, and can it be 1.3 kΩ?", async ({ page, program }) => {
  const answers = await ask(page, program.address, "brown black red");
  // IEC 60062: no fourth band is 20 %, so 800 Ω to 1.2 kΩ.
  await expect(answers.locator(".says").first()).toContainText(/1.kΩ ± 20 %: 800.Ω to 1\.2.kΩ/);
  await sourced(answers);
});

test("how tight is an M8 8.8, and when is the figure not to be used?", async ({ page, program }) => {
  const answers = await ask(page, program.address, "M8 8.8 torque");
  // Shigley 8-27 and 8-31: K d 0.75 Sp As = 25.5 N m dry.
  await expect(answers.locator(".says").first()).toContainText("25.5 N m");
  await expect(answers.locator(".note").first()).toContainText("casting");
  await sourced(answers);
});

test("what does a 3/8 Whitworth spanner fit?", async ({ page, program }) => {
  const answers = await ask(page, program.address, "3/8 Whitworth spanner");
  await expect(answers.locator(".says").first()).toContainText("7/16 BSF");
  await expect(figure(answers, "18 mm")).toContainText("fits");
  await sourced(answers);
});

test("what size is a No. 7 drill, and what does it tap?", async ({ page, program }) => {
  const answers = await ask(page, program.address, "No. 7 drill");
  await expect(figure(answers, "diameter")).toContainText(/0\.2010.in/);
  await expect(answers.locator(".says").first()).toContainText("1/4-20 UNC");
  await sourced(answers);
});

test("there is no M6 with 1.25 mm pitch: nothing is made up, what is near is named", async ({
  page,
  program,
}) => {
  const answers = await ask(page, program.address, "M6x1.25");
  await expect(answers.locator(".says").first()).toContainText("No table here has M6x1.25");
  await expect(answers.locator(".says").first()).toContainText("M8x1.25");
  const nothing = await ask(page, program.address, "600 H7");
  await expect(nothing.locator(".nothing")).toContainText("ISO 286 to 500 mm has no such class");
  await expect(nothing.locator(".entry")).toHaveCount(0);
});

test("a question stands in the address, and the tables open by standard", async ({ page, program }) => {
  await page.goto(`${program.address}reference?q=1%2F4%20BSF`);
  await expect(page.getByRole("searchbox")).toHaveValue("1/4 BSF");
  await expect(page.locator(".entry").first()).toContainText(/0\.2254.in/);
  await page.getByText("British Association (BA)").click();
  const table = page.getByRole("region", { name: "British Association (BA)" });
  await expect(table.getByRole("row")).toHaveCount(18);
});

for (const [scheme, width, height] of [
  ["light", 1440, 900],
  ["dark", 390, 844],
] as const) {
  test(`the reference at ${width} px, ${scheme}: nothing serious, nothing cut off`, async ({
    page,
    program,
  }, info) => {
    await page.emulateMedia({ colorScheme: scheme });
    await page.setViewportSize({ width, height });
    for (const question of ["0.247 in 26 tpi", "25 H7/g6", "7 mm spanner", "M8 8.8"]) {
      await ask(page, program.address, question);
      await page.getByText("Imperial standard wire gauge (SWG)").click();
      await page.evaluate(() => document.fonts.ready);
      const { violations } = await new AxeBuilder({ page }).analyze();
      const serious = violations.filter((one) => one.impact === "serious" || one.impact === "critical");
      expect(
        serious.map((one) => `${one.id}: ${one.nodes.map((node) => node.target.join(" ")).join(", ")}`),
      ).toEqual([]);
      const sideways = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
      expect(sideways, `${question} scrolls sideways`).toBeLessThanOrEqual(0);
      await info.attach(`${question} ${width} ${scheme}`, {
        body: await page.screenshot({ fullPage: true }),
        contentType: "image/png",
      });
    }
  });
}
