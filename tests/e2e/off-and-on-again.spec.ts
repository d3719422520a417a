import fs from "node:fs";
import path from "node:path";
import { fillHand, filmTo, handOf, markAs } from "./marking.ts";
import { expect, onDisk, test } from "./workshop.ts";

const films = path.resolve(import.meta.dirname, "../../content-demo/ostrey-pump/recordings");
/** How long the two recordings of the demonstration are, in seconds: content-demo/job/beats.mjs. */
const [length, laterLength] = [125, 11];

const layer = (place: string) => ({ stack: "Drain plug", stackPlace: place });

test("a pump comes apart and goes together: a swap in a stack is found and mended, and nothing is released while something is left provisional", async ({
  page,
  program,
}, info) => {
  test.setTimeout(360_000);
  const show = async (name: string) => {
    for (const [width, height] of [
      [390, 844],
      [1440, 900],
    ] as const) {
      await page.setViewportSize({ width, height });
      await info.attach(`${name} ${width}`, { body: await page.screenshot(), contentType: "image/png" });
    }
  };

  // A new build, and its film.
  await page.goto(program.address);
  await page.getByLabel("Machine, as you call it").fill("Stationary engine, 2 hp");
  await page.getByLabel("Machine, as you call it").press("Tab");
  await page.keyboard.type("Water pump");
  await page.keyboard.press("Enter");
  await page.waitForURL(/\/builds\//);
  const build = page.url();
  await page.getByLabel(/^Drop films here/).setInputFiles(path.join(films, "water-pump.mp4"));
  await expect(page.getByText(/ 3125 frames/)).toBeVisible();
  await page.getByRole("link", { name: "Open the log" }).click();
  await expect(page.locator(".transport .frame")).toHaveText(/frame \d+ of 3125/);
  const log = page.url();

  const at = (second: number) => filmTo(page, second, length);
  const step = (words: string, more: Record<string, string> = {}) => markAs(page, "s", { words, ...more });
  /** An action that closes what was left open. */
  const stepThatCloses = async (words: string, open: string) => {
    await step(words);
    await page.getByLabel(open).check();
    await page.keyboard.press("Escape");
    await onDisk(page);
  };
  const part = (item: string, event: string, more: Record<string, string> = {}) =>
    markAs(page, "p", { item, event, count: "1", ...more });

  // It comes apart.
  await at(13.6);
  await step("Unscrew the four cover nuts.");
  await at(18.8);
  await part("Cover nut", "removed", { count: "4", container: "tin 1" });
  await at(19.6);
  await step("Draw the cover off its studs.");
  await at(22.6);
  await part("Cover", "removed", { wayRound: "drain at the bottom", covers: "Cover gasket" });
  await at(26);
  await step("Peel the old gasket off in one piece.");
  await at(30.4);
  await part("Cover gasket", "removed");
  await at(31.2);
  await part("Cover gasket", "scrapped");
  await at(67);
  await step("Unscrew the drain plug from the cover.");
  await at(69);
  await part("Drain plug", "removed", { container: "tin 1" });
  await at(71);
  await part("Steel washer", "removed", layer("2"));
  await at(72.4);
  await part("Fibre washer", "removed", layer("1"));
  await show("strip-down");

  // The cover in its bath: overdue for as long as nobody says when it came out.
  await at(74.4);
  await step("Lower the cover into the citric acid bath.", { stage: "clean" });
  await at(77);
  await markAs(page, "d", {
    words: "The cover lies in the bath.",
    waitsFor: "clean metal",
    least: "2 h",
    longest: "12 h",
    limitWhy: "later it eats the iron",
    began: "2026-05-03 10:00",
  });
  await page.goto(program.address);
  await expect(page.getByRole("complementary", { name: "Due" })).toContainText(
    "Overdue: The cover lies in the bath. since",
  );
  await show("first screen with a bath overdue");
  await page.getByRole("complementary", { name: "Due" }).getByRole("link").first().click();
  await expect(handOf(page)).toBeVisible();
  await fillHand(page, { ended: "2026-05-03 14:10" });
  await handOf(page).locator('[data-field="ended"]').blur();
  await onDisk(page);
  await page.goto(log);
  await expect(page.locator(".transport .frame")).toHaveText(/frame \d+ of 3125/);
  await expect(page.getByRole("complementary", { name: "Due" })).toHaveCount(0);
  await at(79);
  await stepThatCloses("Lift the cover out of the bath.", "The cover lies in the bath.");

  // The kit is one short, and its gasket does not fit.
  await page.goto(`${build}/parts`);
  await page.getByText("Another kit").click();
  await page.getByLabel("What it is called").fill("Gasket kit");
  await page.getByLabel(/What is in it/).fill("1 x Cover gasket\n1 x Fibre washer");
  await page.getByRole("button", { name: "Keep the kit" }).click();
  const kit = page.getByRole("region", { name: "Gasket kit" });
  const line = (name: string) => kit.getByRole("listitem").filter({ hasText: name });
  await line("Fibre washer").getByText("Fibre washer").click();
  await line("Fibre washer").getByLabel("How many really came").fill("0");
  await expect(line("Fibre washer")).toContainText("1 short");
  await onDisk(page);
  await page.goto(log);
  await expect(page.locator(".transport .frame")).toHaveText(/frame \d+ of 3125/);
  await at(83);
  await step("Try the cover gasket of the kit on the studs.", { stage: "trial fit" });
  await at(84.8);
  await part("Cover gasket", "fitted");
  await at(87.2);
  await part("Cover gasket", "removed");
  await at(88);
  await part("Cover gasket", "left out", { words: "The one of the kit." });
  await page.goto(`${build}/parts`);
  await line("Cover gasket").getByText("Cover gasket").click();
  await line("Cover gasket").getByLabel("Must not be used, because").fill("its holes lie on a larger circle");
  await line("Cover gasket")
    .getByRole("button", { name: /Make a gotcha of it/ })
    .click();
  await expect(page.getByText(/On disk: Gotcha: Cover gasket/)).toBeVisible();
  await show("the kit");

  // It goes together, with two washers changed places and the old fibre washer.
  await page.goto(log);
  await expect(page.locator(".transport .frame")).toHaveText(/frame \d+ of 3125/);
  await at(88.9);
  await step("Screw the drain plug into the cover.", { stage: "assemble" });
  await at(89.8);
  await part("Fibre washer", "fitted", layer("2"));
  await at(90.8);
  await part("Steel washer", "fitted", layer("1"));
  await at(92.8);
  await part("Drain plug", "fitted");
  await at(94);
  await markAs(page, "d", {
    words: "The drain plug has its old fibre washer.",
    waitsFor: "the washer that the kit lacked",
    item: "Fibre washer",
  });
  await at(107.6);
  await step("Fit the new gasket and then the cover.");
  await at(108.4);
  await part("Cover gasket", "made", { source: "made here" });
  await at(108.8);
  await part("Cover gasket", "fitted");
  await at(110);
  await part("Cover", "fitted", { wayRound: "drain at the bottom" });
  await at(110.8);
  await step("Run the four cover nuts on.");
  await at(112.4);
  await part("Cover nut", "fitted", { count: "4" });

  // Reconciled: all is back, and the swap is found and mended.
  await page.goto(`${build}/parts`);
  await expect(page.getByRole("region", { name: "Off the machine" })).toContainText(
    "Nothing that the marks know of.",
  );
  await show("all back");
  await page.goto(`${build}/findings`);
  const wrong = page.getByRole("region", { name: /^Wrong/ });
  const swap = wrong.locator(".finding", { hasText: "“Drain plug” went back the other way round." });
  await expect(swap).toContainText("Off, from the bottom: Fibre washer; Steel washer.");
  await expect(wrong.locator(".finding")).toHaveCount(2);
  await show("the swap found");
  const putAt = async (item: string, place: string) => {
    await expect(handOf(page).locator('[data-field="item"]')).toHaveValue(item);
    await fillHand(page, { stackPlace: place });
    await handOf(page).locator('[data-field="stackPlace"]').blur();
    await onDisk(page);
  };
  await swap.getByRole("link", { name: /^Show/ }).click();
  await putAt("Steel washer", "2");
  await page.goto(`${build}/parts`);
  const fibre = page.getByRole("region", { name: "On, left out or scrapped" }).locator("li", {
    has: page.locator("summary", { hasText: "Fibre washer" }),
  });
  await fibre.locator("summary").click();
  await fibre.locator(".history li", { hasText: "fitted" }).getByRole("link").click();
  await putAt("Fibre washer", "1");
  await page.goto(`${build}/findings`);
  await expect(wrong.locator(".finding")).toHaveCount(1);
  await expect(swap).toHaveCount(0);

  // What is left provisional stops the release, and is named.
  const refused = async () => {
    await page.goto(`${build}/releases`);
    await expect(page.getByRole("note")).toContainText("The drain plug has its old fibre washer.");
    await expect(page.getByRole("button", { name: "Release revision A" })).toBeDisabled();
  };
  await refused();
  await show("refused");

  // A week later, on a recording of its own.
  await page.goto(build);
  await page.getByRole("button", { name: "Another sitting" }).click();
  const second = page.getByLabel(/^Drop films here/).nth(1);
  await second.setInputFiles(path.join(films, "drain-plug.mp4"));
  await expect(page.getByText(/ 275 frames/)).toBeVisible();
  await show("the second recording");
  await page.getByRole("link", { name: "Open the log" }).nth(1).click();
  await expect(page.locator(".transport .frame")).toHaveText(/frame \d+ of 275/);
  const later = (seconds: number) => filmTo(page, seconds, laterLength);
  await later(1);
  await step("Unscrew the drain plug from the cover again.", { stage: "assemble" });
  await later(1.6);
  await part("Fibre washer", "obtained", { source: "bearing stockist" });
  await later(2.6);
  await part("Drain plug", "removed");
  await later(3.8);
  await part("Steel washer", "removed", layer("2"));
  await later(4.6);
  await part("Fibre washer", "removed", layer("1"));
  await later(5);
  await part("Fibre washer", "scrapped");
  await refused();
  await page.goBack();
  await expect(page.locator(".transport .frame")).toHaveText(/frame \d+ of 275/);
  await later(5.4);
  await stepThatCloses(
    "Screw the drain plug in with the new fibre washer.",
    "The drain plug has its old fibre washer.",
  );
  await show("closed from the second recording");
  await later(6.4);
  await part("Fibre washer", "fitted", layer("1"));
  await later(7.4);
  await part("Steel washer", "fitted", layer("2"));
  await later(9.4);
  await part("Drain plug", "fitted");

  // Only now it is released, and what was provisional is in it as closed.
  await page.goto(`${build}/releases`);
  await expect(page.getByRole("note")).toHaveCount(0);
  await page.getByRole("button", { name: "Release revision A" }).click();
  await expect(page.getByRole("article", { name: /^Revision A/ })).toBeVisible({ timeout: 60_000 });
  await show("released");
  const [id = ""] = fs.readdirSync(path.join(program.folder, "releases"));
  const html = fs.readFileSync(path.join(program.folder, "releases", id, "procedure.html"), "utf8");
  expect(html).toContain("Screw the drain plug in with the new fibre washer.");
});
