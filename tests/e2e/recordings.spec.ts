import { createHash } from "node:crypto";
import fs from "node:fs";
import os from "node:os";
import path from "node:path";
import { findFfmpeg } from "#lib/media/index.ts";
import { expect, test } from "./workshop.ts";

const data = path.resolve(import.meta.dirname, "../fixtures/video/data");

async function beginBuild(page: import("@playwright/test").Page, address: string): Promise<void> {
  await page.goto(address);
  await page.getByLabel("Machine, as you call it").fill("Mantel clock");
  await page.getByLabel("What is restored").fill("Strike train");
  await page.getByRole("button", { name: "Begin" }).click();
  await page.waitForURL(/\/builds\//);
}

test("a folder of films is listed where it lies: nothing in it is copied, changed or deleted", async ({
  page,
  program,
}) => {
  const folder = fs.mkdtempSync(path.join(os.tmpdir(), "films-"));
  fs.copyFileSync(path.join(data, "variable.mp4"), path.join(folder, "Tag 1 – Rückplatine.mp4"));
  fs.mkdirSync(path.join(folder, "second evening"));
  fs.copyFileSync(path.join(data, "vp9.webm"), path.join(folder, "second evening", "b.webm"));
  fs.writeFileSync(path.join(folder, "flat battery.mp4"), "");
  fs.writeFileSync(path.join(folder, "notes.mp4"), "no film at all, only words");
  fs.writeFileSync(path.join(folder, "shopping.txt"), "brass rod");
  const whole = fs.readFileSync(path.join(data, "long-gop.mp4"));
  fs.writeFileSync(path.join(folder, "cut short.mp4"), whole.subarray(0, whole.length >> 1));
  const look = () =>
    (fs.readdirSync(folder, { recursive: true, withFileTypes: true }) as fs.Dirent[])
      .filter((entry) => entry.isFile())
      .map((entry) => {
        const full = path.join(entry.parentPath, entry.name);
        const { mtimeMs, size } = fs.statSync(full);
        return [full, mtimeMs, size, createHash("sha256").update(fs.readFileSync(full)).digest("hex")].join(
          " ",
        );
      })
      .sort();
  const before = look();

  await beginBuild(page, program.address);
  await page.getByLabel("Or a folder where films lie").fill(folder);
  await page.getByRole("button", { name: "List it" }).click();
  await expect(
    page.getByText("5 listed where they lie; 0 were known already; 1 other files left alone."),
  ).toBeVisible();
  await expect(page.getByText(/\d+ frames/)).toHaveCount(2);
  // What cannot be used stays listed, with words for it.
  for (const name of ["flat battery.mp4", "notes.mp4", "cut short.mp4"]) {
    await expect(page.locator("li", { hasText: name }).locator(".finding").first()).not.toBeEmpty();
  }
  await page.getByLabel("Or a folder where films lie").fill(folder);
  await page.getByRole("button", { name: "List it" }).click();
  await expect(page.getByText("0 listed where they lie; 5 were known already")).toBeVisible();

  await page.getByRole("link", { name: "Tag 1 – Rückplatine.mp4" }).click();
  await expect(page.locator(".transport .frame")).toHaveText(/frame \d+ of \d+/);
  await page.keyboard.press("f");
  await expect(page.locator(".still img")).toHaveCount(1);
  expect(look()).toEqual(before);
  expect(fs.readdirSync(path.join(program.folder, "recordings"))).toEqual([]);
  fs.rmSync(folder, { recursive: true });
});

test.describe("films that are away", () => {
  // Naming the wrong film, and asking for one that is away, are refused; the browser and the player note it.
  test.use({ toleratedErrors: /status of (400|404)|MEDIA_ERR_SRC_NOT_SUPPORTED/ });

  test("films of a drive that was unplugged are said to be away, and are known again under other names", async ({
    page,
    program,
  }) => {
    const drive = fs.mkdtempSync(path.join(os.tmpdir(), "drive-"));
    fs.copyFileSync(path.join(data, "constant-25.mp4"), path.join(drive, "0001.mp4"));
    fs.copyFileSync(path.join(data, "vp9.webm"), path.join(drive, "0002.webm"));
    await beginBuild(page, program.address);
    await page.getByLabel("Or a folder where films lie").fill(drive);
    await page.getByRole("button", { name: "List it" }).click();
    await expect(page.getByText(/\d+ frames/)).toHaveCount(2);
    await expect(page.getByRole("region", { name: "Films being looked at" })).toHaveCount(0);
    await page.getByRole("link", { name: "0001.mp4" }).click();
    await expect(page.locator(".transport .frame")).toHaveText(/frame \d+ of \d+/);
    await page.keyboard.press("p");
    await expect(page.getByText(/^On disk: Part/)).toBeVisible();
    await page.goBack();

    const other = `${drive} (E)`;
    fs.renameSync(drive, other);
    await page.reload();
    const lines = page.locator(".lines > li", { hasText: "frames" });
    await expect(
      page.getByText(`The drive or folder ${drive} is not there. 2 films lie in it.`),
    ).toBeVisible();
    await expect(lines.getByText("Its drive or folder is not there.")).toHaveCount(2);
    await expect(lines.getByRole("link")).toHaveCount(0);
    fs.renameSync(path.join(other, "0001.mp4"), path.join(other, "Deckel ab.mp4"));
    await page.getByLabel("Or a folder where films lie").fill(other);
    await page.getByRole("button", { name: "List it" }).click();
    await expect(page.getByText("Found again: 0002.webm; 0001.mp4, now Deckel ab.mp4.")).toBeVisible();
    await expect(page.getByText("is not there.")).toHaveCount(0);
    await page.getByRole("link", { name: "Deckel ab.mp4" }).click();
    await expect(page.locator(".transport .frame")).toHaveText(/frame \d+ of \d+/);
    await expect(page.locator(".log-row")).toHaveCount(1);
    // Unplugged while its log is open: the log says so, and shows the film when the drive is back.
    fs.renameSync(other, drive);
    await page.reload();
    await expect(page.getByText(`The drive or folder ${other} is not there.`)).toBeVisible();
    fs.renameSync(drive, other);
    await expect(page.getByText(`The drive or folder ${other} is not there.`)).toHaveCount(0);
    await expect(page.locator(".transport .frame")).toHaveText(/frame \d+ of \d+/);
    await page.goBack();

    // One more goes by itself, and the restorer says where it is.
    const away = path.join(os.tmpdir(), `moved-${path.basename(drive)}.mp4`);
    fs.renameSync(path.join(other, "Deckel ab.mp4"), away);
    await page.reload();
    await expect(page.getByText("Deckel ab.mp4 is not in")).toBeVisible();
    await page.getByText("Say where it is now").click();
    const where = page.getByLabel("The film's whole path on this computer");
    await where.fill(path.join(other, "0002.webm"));
    await page.getByRole("button", { name: "Take it" }).click();
    await expect(page.getByText("The film of this recording has")).toBeVisible();
    await where.fill(away);
    await page.getByRole("button", { name: "Take it" }).click();
    await expect(page.getByRole("link", { name: "Deckel ab.mp4" })).toBeVisible();
    fs.rmSync(other, { recursive: true });
    fs.rmSync(away);
  });
});

/** The film with another time of making in its header (ISO/IEC 14496-12, 8.2.2: seconds since 1904, UTC). */
function madeAt(film: string, iso: string): Buffer {
  const bytes = fs.readFileSync(path.join(data, film));
  const header = bytes.indexOf("mvhd");
  if (bytes[header + 4] !== 0) throw new Error("a header of version 0 was expected");
  bytes.writeUInt32BE(Date.parse(iso) / 1000 + 2_082_844_800, header + 8);
  return bytes;
}

test("two cameras in one sitting: what was not filmed is said, and their clocks are set by clear moments", async ({
  page,
  program,
}) => {
  const folder = fs.mkdtempSync(path.join(os.tmpdir(), "cameras-"));
  fs.writeFileSync(path.join(folder, "bench.mp4"), madeAt("constant-25.mp4", "2026-05-03T12:00:00Z"));
  fs.writeFileSync(path.join(folder, "side.mp4"), madeAt("constant-2997.mp4", "2026-05-03T12:30:00Z"));
  await beginBuild(page, program.address);
  await page.getByLabel("Or a folder where films lie").fill(folder);
  await page.getByRole("button", { name: "List it" }).click();
  await expect(
    page.getByText(/Nothing filmed \d\d:00 to \d\d:30, by the times in the files\./),
  ).toBeVisible();
  // The times in the files are proposed, with words of trust; nothing is set before it is taken.
  const side = page.locator(".lines > li", { hasText: "side.mp4" });
  await expect(page.getByText("By the times in the files, against bench.mp4.")).toBeVisible();
  await expect(side.getByText("begins at 0:00.0")).toBeVisible();
  await page.getByRole("button", { name: "Take this time" }).click();
  await expect(side.getByText("begins at 30:00.0")).toBeVisible();
  await expect(page.getByRole("button", { name: "Take this time" })).toHaveCount(0);

  await side.getByRole("button", { name: "Set it by clear moments" }).click();
  await side.getByLabel("First moment in this film").fill("0:01");
  await side.getByLabel("The same in bench.mp4").first().fill("0:03.5");
  await expect(side.getByText("This film begins at 0:02.5.")).toBeVisible();
  await side.getByLabel("Second moment in this film").fill("0:03");
  await side.getByLabel("The same in bench.mp4").nth(1).fill("0:05.6");
  await expect(side.getByText(/Its clock would be out by 5 %/)).toBeVisible();
  await side.getByLabel("The same in bench.mp4").nth(1).fill("");
  await side.getByRole("button", { name: "Set the clock" }).click();
  await expect(side.getByText("On the sitting's clock: begins at 0:02.5")).toBeVisible();
  await expect(page.getByText("Nothing filmed")).toHaveCount(0);
  await page.reload();
  await expect(side.getByText("On the sitting's clock: begins at 0:02.5")).toBeVisible();
  fs.rmSync(folder, { recursive: true });
});

test("HEVC from a telephone: the message says what would help, and a copy plays with the same frames", async ({
  page,
  program,
}) => {
  test.skip((await findFfmpeg()) === null, "ffmpeg is not installed here");
  await beginBuild(page, program.address);
  await page.getByLabel("Drop films here").setInputFiles(path.join(data, "hevc.mp4"));
  const line = page.locator("li", { hasText: "hevc.mp4" });
  await expect(line.locator(".finding").first()).toContainText(/HEVC/);
  await line.getByRole("button", { name: "Make a copy that plays" }).click();
  await expect(line.getByRole("link", { name: "hevc.mp4" })).toBeVisible({ timeout: 60_000 });
  await line.getByRole("link", { name: "hevc.mp4" }).click();
  await expect(page.locator(".transport .frame")).toHaveText("frame 1 of 60");
  await page.keyboard.press("ArrowRight");
  await expect(page.locator(".transport .frame")).toHaveText("frame 2 of 60");
  await page.keyboard.press("f");
  await expect(page.locator(".still img")).toHaveCount(1);
});

test("the same address from elsewhere, and another origin, change nothing", async ({
  page,
  program,
  request,
}) => {
  await beginBuild(page, program.address);
  const command = {
    id: "0123456789",
    buildId: null,
    label: "x",
    puts: [{ table: "machine", id: "m", rev: 0, set: {} }],
  };
  for (const headers of [{ origin: "http://evil.example" }, { origin: "null" }, {}] as Record<
    string,
    string
  >[]) {
    const response = await request.post(`${program.address}commands`, { data: command, headers });
    expect(response.status(), JSON.stringify(headers)).toBe(403);
  }
  const misled = await request.get(program.address, { headers: { host: "workshop.example" } });
  expect(misled.status()).toBe(421);
});
