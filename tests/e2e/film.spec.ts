import fs from "node:fs";
import path from "node:path";
import { tabTo } from "./keyboard.ts";
import { expect, onDisk, openDemo, test } from "./workshop.ts";

const list = [
  "TITLE: THE PUMP, EDITED",
  "FCM: NON-DROP FRAME",
  "001 AX       V C        00:00:02:00 00:00:42:00 01:00:00:00 01:00:40:00",
  "* FROM CLIP NAME: water-pump.mp4",
  "002 PUMPCAM  V C        00:00:44:00 00:01:34:00 01:00:40:00 01:01:30:00",
].join("\n");

test("an edit list is brought in, its reel mended, and every moment has its place in the film", async ({
  page,
  program,
}, info) => {
  const build = await openDemo(page, program.address);
  await page.getByRole("link", { name: "Film", exact: false }).first().click();
  await expect(page.getByRole("heading", { name: "Film", level: 1 })).toBeVisible();

  const file = info.outputPath("pump.edl");
  fs.mkdirSync(path.dirname(file), { recursive: true });
  fs.writeFileSync(file, list);
  await page.getByLabel("Edit list", { exact: true }).setInputFiles(file);
  const bring = page.getByRole("button", { name: "Bring in pump" });
  await expect(bring, "the rate is asked for, never guessed").toBeDisabled();
  await page.getByLabel(/Frames a second/).selectOption("25");
  await bring.click();

  const film = page.getByRole("region", { name: "pump", exact: true });
  await expect(film.getByText("Found by its name.")).toBeVisible();
  await expect(
    film.getByText("It is not known which recording “PUMPCAM” is", { exact: false }),
  ).toBeVisible();
  await film
    .getByRole("listitem")
    .filter({ hasText: "PUMPCAM" })
    .getByLabel("Recording")
    .selectOption({ index: 1 });
  await expect(film.getByText("As you said.")).toBeVisible();
  await expect(film.getByText("What cannot be followed")).toHaveCount(0);
  await film.getByLabel(/Address of the film/).fill("https://video.example.org/pump");
  await onDisk(page);
  await expect(page.getByText(/marked moments .* not in the film\./)).toBeVisible();
  await info.attach("film", { body: await page.screenshot({ fullPage: true }), contentType: "image/png" });

  // The log says each moment's place; the print leads there.
  await page.goto(`${build}/sittings/demo-sitting-bench`);
  await expect(page.getByText(/· film 0:\d\d/).first()).toBeVisible();
  const html = await (
    await page.request.get(`${program.address}print/${build.split("/").at(-1)}/html`)
  ).text();
  expect(html).toMatch(/https:\/\/video\.example\.org\/pump#t=\d+/);
  const chapters = await page.request.get(`${program.address}print/${build.split("/").at(-1)}/chapters`);
  expect(await chapters.text()).toMatch(/^0:00 /);

  // Chapters play in the browser as chapters.
  const vtt = await (
    await page.request.get(`${program.address}print/${build.split("/").at(-1)}/chapters-vtt`)
  ).text();
  const cues = await page.evaluate(async (text) => {
    const video = document.createElement("video");
    const track = document.createElement("track");
    track.kind = "chapters";
    track.src = URL.createObjectURL(new Blob([text], { type: "text/vtt" }));
    video.append(track);
    document.body.append(video);
    track.track.mode = "hidden";
    await new Promise((resolve, reject) => {
      track.addEventListener("load", resolve);
      track.addEventListener("error", reject);
    });
    return [...(track.track.cues ?? [])].map((cue) => ({
      start: cue.startTime,
      end: cue.endTime,
      text: (cue as VTTCue).text,
    }));
  }, vtt);
  expect(cues.length).toBeGreaterThan(10);
  for (const [index, cue] of cues.entries()) {
    expect(cue.end).toBeGreaterThan(cue.start);
    if (index > 0) expect(cue.start).toBeGreaterThanOrEqual(cues[index - 1]?.end ?? 0);
  }
});

test("a cut is marked by hand, with the keyboard alone", async ({ page, program }, info) => {
  const build = await openDemo(page, program.address);
  await page.setViewportSize({ width: 390, height: 844 });
  await page.goto(`${build}/film`);
  await expect(page.getByRole("heading", { name: "Film", level: 1 })).toBeVisible();
  await tabTo(page, "Mark the cut by hand");
  await page.keyboard.press("Enter");
  await expect(page.getByText("One stretch in 2:05", { exact: false })).toBeVisible();
  await tabTo(page, "Film, until");
  await page.keyboard.type("0:20");
  await tabTo(page, "Recording, from");
  await page.keyboard.press("Control+a");
  await page.keyboard.type("0:10");
  await onDisk(page);
  await expect(page.getByText("One stretch in 0:20", { exact: false })).toBeVisible();
  await expect(page.getByText(/marked moments .* not in the film\./)).toBeVisible();
  await info.attach("film by hand", {
    body: await page.screenshot({ fullPage: true }),
    contentType: "image/png",
  });
});
