import path from "node:path";
import { pathToFileURL } from "node:url";
import type { Page } from "@playwright/test";
import type { BuildDocument, Still } from "#lib/build/index.ts";
import { press, tabTo } from "./keyboard.ts";
import { expect, onDisk, openDemo, test } from "./workshop.ts";

const nutsOff = "demo-still-nuts-off";
const washer = "demo-still-washer-thickness";

/** A still as it is on disk. */
async function stillOnDisk(page: Page, build: string, id: string): Promise<Still> {
  await onDisk(page);
  const { document } = (await (await page.request.get(`${build}/document`)).json()) as {
    document: BuildDocument;
  };
  return document.stills.find((still) => still.id === id) as Still;
}

async function openFigure(page: Page, build: string, id: string): Promise<void> {
  await page.goto(`${build}/figures/${id}`);
  await expect(page.locator(".figure-stage image")).toBeVisible();
}

/** Where on the screen a place of the picture is, which is shown whole and upright. */
async function onScreen(page: Page, at: { x: number; y: number }) {
  const box = await page.locator(".figure-stage image").boundingBox();
  if (!box) throw new Error("there is no picture");
  return { x: box.x + at.x * box.width, y: box.y + at.y * box.height };
}

const balloons = (page: Page) => page.locator(".figure-stage .drawn text");

test("by keyboard alone a balloon is placed, kept, moved and taken off", async ({ page, program }) => {
  const build = await openDemo(page, program.address);
  await page.goto(`${build}/figures`);
  await press(page, "picture 1 of step 4");
  await expect(page).toHaveURL(/\/figures\/demo-still-nuts-off$/);
  await press(page, "Point at it: Cover nut");
  const stage = page.locator(".figure-stage");
  await expect(stage).toBeFocused();
  const said = page.locator(".figure-said");
  await expect(said).toHaveText("Point at: Cover nut. Cross-hair middle, 50 % across, 50 % down.");
  for (let times = 0; times < 3; times++) await page.keyboard.press("Shift+ArrowRight");
  for (let times = 0; times < 4; times++) await page.keyboard.press("ArrowRight");
  for (let times = 0; times < 4; times++) await page.keyboard.press("Shift+ArrowUp");
  await expect(said).toHaveText("Point at: Cover nut. Cross-hair upper right, 67 % across, 30 % down.");
  await page.keyboard.press("Enter");
  await expect(said).toHaveText(/^Balloon: Cover nut: upper right, 67 % across, 30 % down\.$/);
  await expect(balloons(page)).toHaveCount(1);
  // The hand is back where it was, ready for the next part.
  await expect(page.locator(":focus")).toHaveText(/^Point at another/);
  const [balloon] = (await stillOnDisk(page, build, nutsOff)).drawing.balloons;
  expect(balloon?.at.x).toBeCloseTo(0.67, 6);
  expect(balloon?.at.y).toBeCloseTo(0.3, 6);

  await page.reload();
  await expect(balloons(page)).toHaveCount(1);
  const number = await page.locator(".figure-row", { hasText: "Cover nut" }).locator(".item").textContent();
  await expect(balloons(page).first()).toContainText(number ?? "none");

  await press(page, "Move the balloon: Cover nut");
  for (let times = 0; times < 2; times++) await page.keyboard.press("Shift+ArrowDown");
  await page.keyboard.press("Enter");
  expect((await stillOnDisk(page, build, nutsOff)).drawing.balloons[0]?.seat).not.toBeNull();
  await press(page, "Back to the rule: Cover nut");
  expect((await stillOnDisk(page, build, nutsOff)).drawing.balloons[0]?.seat).toBeNull();

  await press(page, "Take off: Cover nut");
  await expect(balloons(page)).toHaveCount(0);
  await tabTo(page, "Undo");
  await page.keyboard.press("Enter");
  await expect(balloons(page)).toHaveCount(1);
  for (let times = 0; times < 3; times++) await page.keyboard.press("Enter");
  await expect(balloons(page)).toHaveCount(0);
  expect((await stillOnDisk(page, build, nutsOff)).drawing.balloons).toEqual([]);
});

test("Esc puts away what is in hand, and nothing is changed", async ({ page, program }) => {
  const build = await openDemo(page, program.address);
  await openFigure(page, build, nutsOff);
  const before = await stillOnDisk(page, build, nutsOff);
  await press(page, "Point at it: Cover nut");
  await page.keyboard.press("ArrowLeft");
  await page.keyboard.press("Escape");
  await expect(page.locator(".figure-said")).toHaveText("Put away. Nothing was changed.");
  await page.locator(".figure-stage").focus();
  await page.keyboard.press("Enter");
  expect(await stillOnDisk(page, build, nutsOff)).toEqual(before);
});

test("with the mouse: what is pointed at is kept to a pixel, and can be dragged", async ({
  page,
  program,
}) => {
  const build = await openDemo(page, program.address);
  await openFigure(page, build, nutsOff);
  const pixel = 1 / ((await page.locator(".figure-stage image").boundingBox())?.width ?? 1);
  for (const at of [
    { x: 0.25, y: 0.75 },
    { x: 0.6, y: 0.4 },
  ]) {
    await page.getByRole("button", { name: /^Point at (it|another): Cover nut/ }).click();
    const place = await onScreen(page, at);
    await page.mouse.click(place.x, place.y);
    const kept = (await stillOnDisk(page, build, nutsOff)).drawing.balloons.at(-1)?.at;
    expect(Math.abs((kept?.x ?? 0) - at.x)).toBeLessThan(2 * pixel);
    expect(Math.abs((kept?.y ?? 0) - at.y)).toBeLessThan(4 * pixel);
  }
  // What a balloon points at is dragged; the balloon stays on its rule.
  const from = await onScreen(page, { x: 0.6, y: 0.4 });
  const to = await onScreen(page, { x: 0.5, y: 0.55 });
  await page.mouse.move(from.x, from.y);
  await page.mouse.down();
  await page.mouse.move((from.x + to.x) / 2, (from.y + to.y) / 2);
  await page.mouse.move(to.x, to.y);
  await page.mouse.up();
  await expect(page.locator(".figure-said")).toHaveText(/^Balloon points elsewhere: Cover nut/);
  const moved = (await stillOnDisk(page, build, nutsOff)).drawing.balloons[1];
  expect(moved?.at.x).toBeCloseTo(0.5, 2);
  expect(moved?.at.y).toBeCloseTo(0.55, 2);
  expect(moved?.seat).toBeNull();
  // A click that drags nothing changes nothing.
  const label = await page.locator(".saved").first().textContent();
  await page.mouse.click(to.x, to.y);
  await onDisk(page);
  expect(await page.locator(".saved").first().textContent()).toBe(label);
});

test("a dimension line stands between two places and says the value; cropping moves no place", async ({
  page,
  program,
}) => {
  const build = await openDemo(page, program.address);
  await openFigure(page, build, washer);
  const row = page.locator(".figure-row", { hasText: "Thrust washer, thickness" });
  const value = await row.locator(".num").textContent();
  await row.getByRole("button", { name: /^Draw it/ }).click();
  const ends = [
    { x: 0.4, y: 0.3 },
    { x: 0.62, y: 0.34 },
  ] as const;
  for (const end of ends) {
    const place = await onScreen(page, end);
    await page.mouse.click(place.x, place.y);
  }
  await expect(page.locator(".figure-stage .drawn text")).toContainText(value ?? "none");
  const drawn = (await stillOnDisk(page, build, washer)).drawing.dimensions;
  expect(drawn).toHaveLength(1);
  expect(drawn[0]?.from.x).toBeCloseTo(0.4, 2);
  expect(drawn[0]?.to.y).toBeCloseTo(0.34, 2);

  await page.getByLabel("at the left").fill("10");
  await page.getByLabel("at the bottom").fill("25");
  await expect(page.getByText("On disk: Picture cropped")).toBeVisible();
  await page.getByLabel("at the left").press("Tab");
  const cropped = await stillOnDisk(page, build, washer);
  expect(cropped.drawing.crop).toEqual({ x: 0.1, y: 0, width: 0.9, height: 0.75 });
  expect(cropped.drawing.dimensions).toEqual(drawn.map((line) => ({ ...line, stand: expect.any(Number) })));

  await page.getByLabel("at the left").fill("400");
  await expect(page.getByText("A number from 0 to 95 was expected; the drawing is as it was.")).toBeVisible();
  await page.getByRole("button", { name: "The whole picture" }).click();
  const whole = await stillOnDisk(page, build, washer);
  expect(whole.drawing.crop).toEqual({ x: 0, y: 0, width: 1, height: 1 });
  expect(whole.sha256).toBe(cropped.sha256);
});

test("four quarter turns are none, and each takes the drawing with it", async ({ page, program }) => {
  const build = await openDemo(page, program.address);
  await openFigure(page, build, nutsOff);
  await page.getByRole("button", { name: /^Point at it: Cover nut/ }).click();
  const place = await onScreen(page, { x: 0.2, y: 0.3 });
  await page.mouse.click(place.x, place.y);
  await page.getByLabel("at the top").fill("10");
  await expect(page.getByText("On disk: Picture cropped")).toBeVisible();
  const before = await stillOnDisk(page, build, nutsOff);
  for (let turn = 1; turn <= 4; turn++) {
    await page.getByRole("button", { name: "Turn a quarter to the right" }).click();
    expect((await stillOnDisk(page, build, nutsOff)).drawing.quarter).toBe((90 * turn) % 360);
  }
  const after = await stillOnDisk(page, build, nutsOff);
  expect(after.drawing.balloons).toEqual(before.drawing.balloons);
  for (const side of ["x", "y", "width", "height"] as const)
    expect(after.drawing.crop[side]).toBeCloseTo(before.drawing.crop[side], 9);
});

test("further views of a step: one is added, named, moved forward, and printed in that order", async ({
  page,
  program,
}) => {
  const build = await openDemo(page, program.address);
  await openFigure(page, build, nutsOff);
  await page.getByLabel("Name of the view").fill("before");
  await expect(page.getByText("On disk: Name of a view")).toBeVisible();
  await page.getByLabel("Another still of this build").selectOption("demo-still-cover-off");
  await page.getByRole("button", { name: "Add it as a view" }).click();
  await expect(page).not.toHaveURL(/nuts-off$/);
  await page.getByLabel("Name of the view").fill("after");
  await expect(page.locator("h1")).toHaveText("Figure of step 4: after");
  const names = page.locator(".figure-views > li > a");
  await expect(names).toHaveText(["before", "after"]);
  await page.getByRole("button", { name: "Earlier: after" }).click();
  await expect(names).toHaveText(["after", "before"]);
  await onDisk(page);
  const printed = await page.request.get(`${build.replace("/builds/", "/print/")}/html`);
  const sheet = await printed.text();
  const step = sheet.slice(sheet.indexOf('id="step-4"'), sheet.indexOf('id="step-5"'));
  expect(step.indexOf(">After<")).toBeGreaterThan(0);
  expect(step.indexOf(">After<")).toBeLessThan(step.indexOf(">Before<"));
});

test("the HTML edition has the numbers of the parts list", async ({ page, program }) => {
  const build = await openDemo(page, program.address);
  await openFigure(page, build, nutsOff);
  const parts = ["Cover", "Cover nut", "Cover gasket"];
  await page.getByText(/^Other parts of this build/).click();
  for (const [place, part] of parts.entries()) {
    const button = page.getByRole("button", { name: `Point at it: ${part}`, exact: true });
    await button.click();
    const at = await onScreen(page, { x: 0.3 + 0.2 * place, y: 0.4 + 0.1 * place });
    await page.mouse.click(at.x, at.y);
    await expect(balloons(page)).toHaveCount(place + 1);
  }
  await onDisk(page);
  await page.goto(`${build}/procedure`);
  const download = page.waitForEvent("download");
  await page.getByRole("link", { name: "One HTML file" }).click();
  const file = path.join(program.folder, "edition.html");
  await (await download).saveAs(file);
  await page.goto(pathToFileURL(file).href);
  const figure = page.locator('figure[data-still="demo-still-nuts-off"]');
  const drawn = await figure.locator("svg text").allTextContents();
  const listed = await page.evaluate(
    (names) =>
      [...document.querySelectorAll("tr")]
        .map((row) => [...row.querySelectorAll("th, td")].map((cell) => cell.textContent?.trim() ?? ""))
        .filter((cells) => names.some((name) => cells.includes(name)) && /^\d+$/.test(cells[0] ?? ""))
        .map((cells) => cells[0]),
    parts,
  );
  expect(listed).toHaveLength(parts.length);
  expect(drawn.map((text) => text.trim()).sort()).toEqual([...listed].sort());
});

test.describe("by touch", () => {
  test.use({ hasTouch: true, viewport: { width: 390, height: 844 } });

  test("a touch points, and the page still scrolls under a finger when nothing is in hand", async ({
    page,
    program,
  }) => {
    const build = await openDemo(page, program.address);
    await openFigure(page, build, nutsOff);
    await expect(page.locator(".figure-stage")).toHaveCSS("touch-action", "pan-y");
    await page.getByRole("button", { name: /^Point at it: Cover nut/ }).tap();
    await expect(page.locator(".figure-stage")).toHaveCSS("touch-action", "none");
    await expect(page.locator(".figure-stage")).toBeInViewport({ ratio: 0.99 });
    const place = await onScreen(page, { x: 0.4, y: 0.6 });
    await page.touchscreen.tap(place.x, place.y);
    await expect(balloons(page)).toHaveCount(1);
    const kept = (await stillOnDisk(page, build, nutsOff)).drawing.balloons[0]?.at;
    expect(kept?.x).toBeCloseTo(0.4, 1);
    expect(kept?.y).toBeCloseTo(0.6, 1);
  });
});
