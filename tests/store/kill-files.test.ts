import fs from "node:fs";
import path from "node:path";
import { afterAll, describe, expect, test } from "vitest";
import { readFolder } from "#lib/folder/index.ts";
import { findFfmpeg, probe } from "#lib/media/index.ts";
import { audit } from "#lib/store/audit/index.ts";
import { loadBuild, type Workshop } from "#lib/store/index.ts";
import { filmPath } from "#tests/fixtures/video/films.ts";
import { sampleDocument } from "../sample.ts";
import { freshWorkshop, writeDocument } from "./fresh.ts";
import { allRows, freshFolder, programRoot, workshopWithEverything } from "./kept.ts";
import { bundleChild, killAgainAndAgain, patience, runChild, startChild, tell, times } from "./kill/kill.ts";
import { seeded } from "./kill/random.ts";
import { type Brought, bytesOf } from "./kill/works/bring.ts";

const bundle = await bundleChild();
afterAll(bundle.remove);

const ffmpeg = await findFfmpeg().catch(() => null);

describe("killed with SIGKILL at a random moment, nothing that was acknowledged is missing", () => {
  test("bringing a file in", { timeout: patience }, async () => {
    const { client, workshop } = freshWorkshop();
    await writeDocument({ client, workshop }, sampleDocument());
    await client.$disconnect();
    const acknowledged: Brought[] = [];

    const counts = await killAgainAndAgain<Brought>({
      work: "bring",
      times: times(10, 100),
      random: seeded(17),
      within: { acknowledgements: 11, milliseconds: 30 },
      order: (run) => ({ folder: workshop.folder, run, count: null }),
      look: async (ended) => {
        acknowledged.push(...ended.acknowledged);
        expectBrought(workshop, acknowledged);
        // Under its own name a file is whole, whoever was told of it.
        for (const [name, bytes] of filesOf(workshop.recordings)) {
          expect(bytes.equals(bytesOf(name)), name).toBe(true);
        }
      },
    });

    // The next start finishes what was cut short: every file with a name is listed.
    await runChild(startChild("bring"), { folder: workshop.folder, run: 0, count: 0 }, null);
    expectBrought(workshop, acknowledged);
    const { findings } = await audit(workshop, { programRoot });
    const usual = ["recording-nowhere", "file-unfinished"];
    expect(findings.map((one) => one.rule).filter((rule) => !usual.includes(rule))).toEqual([]);
    tell("Bringing a file in", counts);
  });

  test("writing a build folder", { timeout: patience }, async () => {
    const { client, workshop } = await workshopWithEverything();
    const expected = await loadBuild(client, "build-1");
    await client.$disconnect();
    const target = freshFolder();
    const film = fs.readFileSync(path.join(workshop.recordings, "first.mp4"));
    const looked = new Set<string>();

    const counts = await killAgainAndAgain<string>({
      work: "send",
      file: bundle.file,
      times: times(10, 100),
      random: seeded(5),
      within: { acknowledgements: 3, milliseconds: 15 },
      order: (run) => ({ folder: workshop.folder, target, run }),
      look: async ({ acknowledged }) => {
        const there = fs.readdirSync(target).filter((name) => !name.startsWith("."));
        expect(there).toEqual(expect.arrayContaining(acknowledged));
        for (const name of there.filter((one) => !looked.has(one))) {
          looked.add(name);
          const read = await readFolder(path.join(target, name));
          expect(read.missing).toEqual([]);
          expect(read.document).toEqual(expected);
          expect(fs.readFileSync(path.join(target, name, "recordings/first.mp4")).equals(film)).toBe(true);
        }
      },
    });
    tell("Writing a build folder", counts);
  });

  test.skipIf(!ffmpeg)("making a copy that plays", { timeout: patience }, async () => {
    const folder = freshFolder();
    const looked = new Set<string>();
    const film = filmPath("constant-25.mp4");
    const original = await probe(film);

    const counts = await killAgainAndAgain<string>({
      work: "copy",
      file: bundle.file,
      times: times(10, 100),
      random: seeded(13),
      within: { acknowledgements: 1, milliseconds: 400 },
      order: (run) => ({ film, folder, run }),
      look: async ({ acknowledged }) => {
        const there = fs.readdirSync(folder).filter((name) => !name.startsWith("."));
        expect(there).toEqual(expect.arrayContaining(acknowledged));
        for (const name of there.filter((one) => !looked.has(one))) {
          looked.add(name);
          const copy = await probe(path.join(folder, name));
          if (!copy.ok || !original.ok) throw new Error(`${name} is not whole`);
          expect(copy.frames.starts).toHaveLength(original.frames.starts.length);
        }
      },
    });
    tell("Making a copy that plays", counts);
  });
});

/** Each file that was taken is listed with its bytes; of the others, what had arrived is there to go on from. */
function expectBrought(workshop: Workshop, acknowledged: readonly Brought[]): void {
  const { Recording, Place } = allRows(workshop.database, ["Recording", "Place"]) as Record<
    string,
    Record<string, unknown>[]
  >;
  const whole = new Set(acknowledged.filter((one) => one.whole).map((one) => one.id));
  for (const { id, name, bytes } of acknowledged) {
    const listed = Recording?.some((row) => row.id === id);
    if (listed || whole.has(id)) {
      const place = Place?.find((row) => row.recordingId === id);
      if (!listed || !place) throw new Error(`${name} was acknowledged and is not listed`);
      const kept = fs.readFileSync(path.join(workshop.recordings, String(place.path)));
      expect(kept.equals(bytesOf(name)), name).toBe(true);
      continue;
    }
    const arriving = path.join(workshop.recordings, ".incoming", id);
    const size = fs.existsSync(arriving) ? fs.statSync(arriving).size : 0;
    const named = fs.existsSync(path.join(workshop.recordings, name));
    if (!named && size < bytes)
      throw new Error(`${name}: ${bytes} bytes were acknowledged, ${size} are there`);
  }
}

function filesOf(folder: string): [string, Buffer][] {
  const names = fs.readdirSync(folder).filter((name) => !name.startsWith("."));
  return names.map((name) => [name, fs.readFileSync(path.join(folder, name))]);
}
