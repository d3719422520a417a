import { AxeBuilder } from "@axe-core/playwright";
import { expect, openDemo, test } from "./workshop.ts";

/** Every screen, by what its address ends in, and a key that is pressed there. `BUILD` stands for the demonstration's build. */
const screens = [
  ["first screen", "/", "main"],
  ["machine", "/machines/demo-machine-ostrey-b", "main"],
  ["build", "BUILD", "main"],
  ["log with film", "BUILD/sittings/demo-sitting-bench?mark=demo-mark-030", ".log-row.hand"],
  ["log with a draft in hand", "BUILD/sittings/demo-sitting-bench", ".log-row.draft.hand", "."],
  ["log without film", "BUILD/sittings/demo-sitting-desk", ".log-row"],
  ["procedure", "BUILD/procedure", ".procedure"],
  ["figures", "BUILD/figures", ".thumbnail"],
  ["figure", "BUILD/figures/demo-still-nuts-off", ".figure-stage image"],
  ["figure that is not there", "BUILD/figures/nothing", "main h1"],
  ["releases", "BUILD/releases", "main"],
  ["findings", "BUILD/findings", "main"],
  ["film", "BUILD/film", "main"],
  ["parts", "BUILD/parts", ".accounts"],
  ["labels", "BUILD/parts/labels", ".label-code"],
  ["changes", "BUILD/changes", "main"],
  ["settings", "/settings", "main"],
  ["keeping", "/keep", "main"],
  ["reference", "/reference?q=1/4+BSF", "main"],
  ["find", "/find?q=water", ".finder .lines"],
  ["gotcha book", "/gotchas", ".finder"],
  ["gotcha", "/gotchas/halvern-gotcha-gland", ".standing"],
  ["perhaps the same", "/gotchas/same", "main h1"],
  ["brief in a build", "/builds/halvern-build-third", ".brief-lines li"],
  ["brief in a log", "/builds/halvern-build-second/sittings/halvern-sitting-second", ".brief.of-log"],
] as const;

/** Every width in every light with LONG=1; else the narrow one in the dark, where most faults show. */
const looks = [
  ["dark", 390, 844],
  ...(process.env.LONG
    ? ([
        ["light", 390, 844],
        ["light", 1440, 900],
        ["dark", 1440, 900],
      ] as const)
    : []),
] as const;

for (const [scheme, width, height] of looks) {
  test(`every screen at ${width} px, ${scheme}: nothing serious, nothing cut off`, async ({
    page,
    program,
  }, info) => {
    await page.emulateMedia({ colorScheme: scheme });
    await page.setViewportSize({ width, height });
    await page.goto(program.address);
    await page.getByRole("button", { name: "Open three builds that teach each other" }).click();
    await page.waitForURL(/halvern-build-third$/);
    const build = await openDemo(page, program.address);
    for (const [name, place, there, key] of screens) {
      const address = place.startsWith("BUILD")
        ? place.replace("BUILD", build)
        : program.address.replace(/\/$/, "") + place;
      await page.goto(address);
      if (key) {
        await expect(page.locator(".spoken [role='status']")).toHaveText(/drafts wait/);
        await page.keyboard.press(key);
      }
      await expect(page.locator(there).first(), name).toBeVisible();
      await page.evaluate(() => document.fonts.ready);
      const { violations } = await new AxeBuilder({ page }).analyze();
      const serious = violations.filter((one) => one.impact === "serious" || one.impact === "critical");
      expect(
        serious.map((one) => `${one.id}: ${one.nodes.map((node) => node.target.join(" ")).join(", ")}`),
        name,
      ).toEqual([]);
      const sideways = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
      expect(sideways, `${name} scrolls sideways`).toBeLessThanOrEqual(0);
      await info.attach(`${name} ${width} ${scheme}`, {
        body: await page.screenshot(),
        contentType: "image/png",
      });
    }
  });
}

test("at 390 px the marking button is at least 88 CSS px high and as wide as the sheet", async ({
  page,
  program,
}) => {
  await page.setViewportSize({ width: 390, height: 844 });
  const build = await openDemo(page, program.address);
  await page.goto(`${build}/sittings/demo-sitting-bench`);
  const button = page.getByRole("button", { name: "Mark", exact: true });
  await expect(button).toBeInViewport();
  const box = await button.boundingBox();
  expect(box?.height).toBeGreaterThanOrEqual(88);
  expect(box?.width).toBeGreaterThanOrEqual(300);
  const before = await page.locator(".log-row").count();
  await expect(page.locator(".transport")).toBeVisible();
  await button.tap().catch(() => button.click());
  await expect(page.getByText(/On disk: Unsorted at/)).toBeVisible();
  expect(await page.locator(".log-row").count()).toBeGreaterThanOrEqual(Math.min(before, 3));
});
