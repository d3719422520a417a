import fs from "node:fs";
import path from "node:path";
import type { Page } from "@playwright/test";
import type { BuildDocument } from "#lib/build/index.ts";
import { readCaptionText, toWebVtt } from "#lib/captions/index.ts";
import { tabTo } from "./keyboard.ts";
import { expect, onDisk, openDemo, test } from "./workshop.ts";

const shared = path.resolve(import.meta.dirname, "../captions/shared");

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

  // What a file cannot carry is said where it is taken away; a HowTo brings its pictures along.
  await page.goto(`${build}/film`);
  await page.getByText("What each file cannot carry").click();
  await expect(page.getByText("HowTo has no place for", { exact: false }).first()).toBeVisible();
  const howTo = await page.request.get(`${program.address}print/${build.split("/").at(-1)}/howto`);
  expect(await howTo.text()).toContain("data:image/jpeg;base64,");
});

test("chapters and captions of the film play in the browser", async ({ page, program }) => {
  const build = await openDemo(page, program.address);
  await page.goto(`${build}/film`);
  await page.getByRole("button", { name: "Mark the cut by hand" }).click();
  await expect(page.getByText("One stretch in 2:05", { exact: false })).toBeVisible();
  await onDisk(page);

  // A page of nothing but a player, its film and its two tracks, each by the address that the program gives it.
  const print = `/print/${build.split("/").at(-1)}`;
  await page.route("**/player", (route) =>
    route.fulfill({
      contentType: "text/html",
      body: `<!doctype html><title>Player</title><link rel="icon" href="data:,"><video muted src="/media/recordings/demo-recording-water-pump">
        <track kind="chapters" src="${print}/chapters-vtt" srclang="en" label="Steps">
        <track kind="captions" src="${print}/captions" srclang="en" label="Captions" default></video>`,
    }),
  );
  await page.goto(`${program.address}player`);
  const tracks = await page.evaluate(async () => {
    const video = document.querySelector("video") as HTMLVideoElement;
    const elements = [...video.querySelectorAll("track")];
    for (const one of elements) one.track.mode = one.track.mode === "showing" ? "showing" : "hidden";
    const loaded = (one: HTMLTrackElement) =>
      new Promise((resolve, reject) => {
        if (one.readyState === 2) resolve(null);
        one.addEventListener("load", resolve);
        one.addEventListener("error", () => reject(new Error(`${one.kind} did not load`)));
      });
    await Promise.all(elements.map(loaded));
    return elements.map(({ track }) => ({
      kind: track.kind,
      cues: [...(track.cues as TextTrackCueList)].map((cue) => [
        cue.startTime,
        cue.endTime,
        (cue as VTTCue).text,
      ]),
    }));
  });
  const [chapters, captions] = tracks;
  expect(tracks.map(({ kind }) => kind)).toEqual(["chapters", "captions"]);
  expect(chapters?.cues.length).toBeGreaterThan(3);
  // The film shows the recording from its beginning, so that each caption stands where it stood.
  const { document: kept } = (await (await page.request.get(`${build}/document`)).json()) as {
    document: BuildDocument;
  };
  const cues = readCaptionText(kept.captions[0]?.text ?? "").cues;
  expect(cues.length).toBeGreaterThan(3);
  expect(captions?.cues.map(([, , text]) => text)).toEqual(
    cues.map(({ text }) => toWebVtt([{ start: 0, end: 1, text }]).split("\n")[3]),
  );
  captions?.cues.forEach(([start], index) => {
    expect(start).toBeCloseTo(cues[index]?.start ?? 0, 2);
  });

  const active = (track: number, at: number) =>
    page.evaluate(
      async ([index, second]) => {
        const video = document.querySelector("video") as HTMLVideoElement;
        const sought = new Promise((resolve) => video.addEventListener("seeked", resolve, { once: true }));
        video.currentTime = second;
        await sought;
        await new Promise(requestAnimationFrame);
        return [...(video.textTracks[index]?.activeCues ?? [])].map((cue) => (cue as VTTCue).text);
      },
      [track, at] as const,
    );
  for (const [index, track] of [chapters, captions].entries()) {
    const [start = 0, end = 0, text = ""] = (track?.cues[2] ?? []) as [number, number, string];
    await expect.poll(() => active(index, (start + end) / 2)).toContain(text);
  }
});

test("captions of the published film come to the recording, and are drafted from there", async ({
  page,
  program,
}, info) => {
  const build = await openLongFilm(page, program.address);
  await page.goto(`${build}/film`);
  await page.getByRole("button", { name: "Mark the cut by hand" }).click();
  // The film begins where the recording has run for a minute.
  await page.getByLabel("Recording, from").fill("1:00");
  await page.keyboard.press("Tab");
  await expect(page.getByText("One stretch in 6:10", { exact: false })).toBeVisible();
  await onDisk(page);
  const spoken = readCaptionText(fs.readFileSync(path.join(shared, "treadle-head.vtt"), "utf8")).cues;
  const shown = spoken.filter(({ start }) => start >= 60);
  const inFilm = shown.map((cue) => ({ ...cue, start: cue.start - 60, end: cue.end - 60 }));
  const after = { start: 5000, end: 5004, text: "Thank you for watching" };
  await page.getByLabel(/^Captions of/).setInputFiles({
    name: "published.vtt",
    mimeType: "text/vtt",
    buffer: Buffer.from(toWebVtt([...inFilm, after])),
  });
  await expect(
    page.getByText(`Of ${shown.length + 1} captions ${shown.length} come from recordings of this build.`),
  ).toBeVisible();
  await page.getByText("1 has no recording", { exact: false }).click();
  await expect(page.getByText("Thank you for watching")).toBeVisible();
  await onDisk(page);
  await info.attach("captions of the film", {
    body: await page.screenshot({ fullPage: true }),
    contentType: "image/png",
  });

  const { document: kept } = (await (await page.request.get(`${build}/document`)).json()) as {
    document: BuildDocument;
  };
  expect(kept.captions.map(({ clock, name }) => [clock, name])).toEqual([
    ["recording", "published.vtt, from the film"],
  ]);
  const came = readCaptionText(kept.captions[0]?.text ?? "").cues;
  expect(came.map(({ text }) => text)).toEqual(shown.map(({ text }) => text));
  came.forEach(({ start }, index) => {
    expect(start).toBeCloseTo(shown[index]?.start ?? 0, 2);
  });
  await page.goto(build);
  await page.getByRole("link", { name: "Open the log" }).click();
  await expect(page.locator(".spoken [role='status']")).toContainText(/\d/);
});

/** A build with one recording of seven minutes and no captions; its address. */
async function openLongFilm(page: Page, address: string): Promise<string> {
  await page.goto(address);
  await page.getByLabel("Machine, as you call it").fill("Treadle head");
  await page.getByLabel("What is restored").fill("The hook and its timing");
  await page.keyboard.press("Enter");
  await page.waitForURL(/\/builds\//);
  const film = path.resolve(import.meta.dirname, "../fixtures/video/long/treadle-head.mp4");
  await page.getByLabel("Drop films here").setInputFiles(film);
  await expect(page.getByText(/430 frames/)).toBeVisible();
  return page.url();
}

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
