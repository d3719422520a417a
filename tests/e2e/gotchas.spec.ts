import fs from "node:fs";
import type { Page } from "@playwright/test";
import { readPdf } from "../pdf.ts";
import { leaveFields, press, tabTo } from "./keyboard.ts";
import { expect, onDisk, test } from "./workshop.ts";

async function mark(page: Page, key: string, ...fields: string[]): Promise<void> {
  await page.keyboard.press(key);
  await page.keyboard.press("Enter");
  for (const [index, field] of fields.entries()) {
    if (index > 0) await page.keyboard.press("Tab");
    if (field !== "") await page.keyboard.type(field);
  }
  await leaveFields(page);
  await onDisk(page);
}

test("one build teaches, the next is warned at the first removal, its answer counts, and the brief is printed", async ({
  page,
  program,
}) => {
  await page.goto(program.address);
  await page.getByLabel("Machine, as you call it").fill("The mangle");
  await page.getByLabel("What is restored").fill("Gearbox");
  await page.getByLabel("Maker").fill("Orrin");
  await page.getByLabel("Model").fill("Two");
  await page.getByRole("button", { name: "Begin", exact: true }).click();
  await page.waitForURL(/\/builds\//);

  await page.getByRole("link", { name: "Open the log" }).click();
  await page.locator(".log-body").focus();
  await mark(
    page,
    "g",
    "The key stands proud and splits the hub",
    "The keyway was cut deeper",
    "File the key to the hub",
  );
  await press(page, "Put it in the gotcha book");
  await onDisk(page);
  const own = page.locator(".into-book a");
  await expect(own).toHaveText("its page");
  const gotcha = new URL((await own.getAttribute("href")) ?? "", program.address).href;
  // What this build has taught is in its own log: it is not warned of it.
  await expect(page.locator(".brief.of-log")).toHaveCount(0);

  await page.goto(gotcha);
  await expect(page.locator(".standing")).toContainText("Met once");
  await expect(page.getByLabel("Model").first()).toHaveValue("Two");

  await page.goto(program.address);
  await page.getByRole("link", { name: "The mangle" }).click();
  await page.getByLabel("What is restored this time").fill("Gear case");
  await page.getByRole("button", { name: "Begin a build" }).click();
  await page.waitForURL(/\/builds\/[^/]+$/);
  await expect(page.locator(".brief-lines li")).toHaveCount(1);
  await expect(page.locator(".brief-lines")).toContainText("Met once");

  await page.getByRole("link", { name: "Open the log" }).click();
  await expect(page.locator(".brief.of-log button[aria-expanded='false']")).toBeVisible();
  await page.locator(".log-body").focus();
  // Before anything is removed the brief is folded, and its keys do nothing.
  await page.keyboard.press("2");
  await mark(page, "p", "Key of the hub", "removed");
  await expect(page.locator(".brief.of-log .symptom")).toHaveText("The key stands proud and splits the hub");
  await expect(page.locator(".brief.of-log")).toContainText("1 to know before you open it");
  await page.keyboard.press("2");
  await onDisk(page);
  await expect(page.getByRole("button", { name: "avoided" })).toHaveAttribute("aria-pressed", "true");
  await expect(page.locator(".brief.of-log")).toContainText("All of the brief is answered");
  // It is one step of the build's own history.
  await page.keyboard.press("u");
  await expect(page.locator(".brief.of-log")).toContainText("1 to know");
  await page.keyboard.press("U");
  await expect(page.locator(".brief.of-log")).toContainText("All of the brief");
  await mark(page, "s", "Draw the hub");

  await press(page, /^Procedure$/);
  await expect(page.locator("#brief")).toContainText("File the key to the hub");
  const download = page.waitForEvent("download");
  await press(page, "PDF, A4");
  const pdf = await readPdf(fs.readFileSync(await (await download).path()));
  const words = pdf.pages.map((one) => one.text).join(" ");
  for (const said of ["What bit before", "The key stands proud", "File the key", "avoided"])
    expect(words).toContain(said);

  await page.goto(gotcha);
  await expect(page.locator(".standing")).toContainText("Met twice, once of them avoided");
  await page.goto(`${program.address.replace(/\/$/, "")}/gotchas`);
  await tabTo(page, "Find in the gotchas");
  await page.keyboard.type("proud ky");
  await expect(page.getByRole("list", { name: "Found" })).toContainText("The key stands proud");
});

test("the demonstration: the third build is warned by what the first two taught, and by nothing else", async ({
  page,
  program,
}) => {
  await page.goto(program.address);
  await page.getByRole("button", { name: "Open three builds that teach each other" }).click();
  await page.waitForURL(/halvern-build-third$/);
  const brief = page.locator(".brief-lines");
  await expect(brief.locator("li")).toHaveCount(3);
  await expect(brief).toContainText("met twice, once of them avoided", { ignoreCase: true });
  await expect(brief).toContainText("leather cup is a reproduction");
  // The foot valve's trap is the other variant's.
  await expect(brief).not.toContainText("foot valve leaks");

  await page.getByRole("link", { name: "Open the log" }).click();
  await page.locator(".log-row").first().click();
  await expect(page.locator(".part-hints")).toContainText("This part bit before");

  await page.goto(`${program.address}gotchas`);
  await expect(
    page.getByRole("link", { name: "The foot valve leaks more after it was lapped" }),
  ).toBeVisible();
  const csv = page.waitForEvent("download");
  await page.getByRole("link", { name: "CSV, for a spreadsheet" }).click();
  const text = fs.readFileSync(await (await csv).path(), "utf8");
  expect(text.split("\r\n")).toHaveLength(6);
  // Brought back under another name, it writes over nothing.
  await page.getByLabel("A book as JSON or CSV").setInputFiles({
    name: "theirs.csv",
    mimeType: "text/csv",
    buffer: Buffer.from("symptom,assembly\r\nThe handle works loose,Lever\r\n"),
  });
  await expect(page.getByText("1 brought in as heard")).toBeVisible();
  await page.getByRole("link", { name: "The handle works loose" }).click();
  await expect(page.locator(".standing")).toContainText("Heard of, never met here");
  await expect(page.locator("main")).toContainText("Brought in from theirs.csv");
});
