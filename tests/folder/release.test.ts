import fs from "node:fs";
import os from "node:os";
import path from "node:path";
import { afterAll, afterEach, describe, expect, test, vi } from "vitest";
import type { BuildDocument, Release } from "#lib/build/index.ts";
import { check } from "#lib/check/index.ts";
import {
  frozen,
  lacksOfRelease,
  readFolder,
  readInside,
  readRelease,
  rebuildRelease,
  writeRelease,
} from "#lib/folder/index.ts";
import { compile } from "#lib/procedure/index.ts";
import { contentHash } from "#lib/publish/index.ts";

const demo = path.resolve("content-demo/ostrey-pump");
const base = fs.mkdtempSync(path.join(os.tmpdir(), "release-"));
afterAll(() => fs.rmSync(base, { recursive: true, force: true }));
const zone = process.env.TZ;
afterEach(() => {
  vi.useRealTimers();
  if (zone === undefined) delete process.env.TZ;
  else process.env.TZ = zone;
});

function releaseOf(document: BuildDocument, given: Partial<Release> = {}): Release {
  return {
    id: "release-a",
    buildId: document.build.id,
    revision: "A",
    date: "2026-05-03",
    changed: "",
    again: "",
    contentHash: contentHash(check(compile(document), document)),
    gone: null,
    rev: 1,
    ...given,
  };
}

/** The demonstration, released once; each test has a copy of its folder. */
async function released(name: string) {
  once ??= release();
  const made = await once;
  const folder = path.join(base, name);
  fs.cpSync(made.folder, folder, { recursive: true });
  return { ...made, folder };
}

let once: ReturnType<typeof release> | null = null;

async function release() {
  const read = await readFolder(demo);
  const row = releaseOf(read.document);
  const document = frozen({ ...read.document, releases: [row] });
  const still = async (sha256: string) => {
    const row = read.document.stills.find((one) => one.sha256 === sha256 && read.files.has(one.id));
    return row ? readInside(demo, read.files.get(row.id) as string, 80_000_000) : null;
  };
  const folder = path.join(base, "as released");
  const manifest = await writeRelease(document, row, folder, { still, before: null });
  return { folder, manifest, document, still };
}

describe("a release", () => {
  test("holds every file its page names, and says itself which revision it is", async () => {
    const { folder, manifest, document } = await released("whole");
    const names = manifest.files.map((file) => file.path);
    expect(names).toEqual(
      expect.arrayContaining([
        "procedure-a4.pdf",
        "procedure-letter.pdf",
        "procedure.html",
        "procedure.md",
        "parts.csv",
        "findings.json",
      ]),
    );
    expect(await lacksOfRelease(folder)).toEqual([]);
    expect(fs.readFileSync(path.join(folder, "procedure.md"), "utf8")).toContain("Revision A");
    expect(fs.readFileSync(path.join(folder, "procedure.html"), "utf8")).not.toContain("Unreleased");
    const read = await readRelease(folder);
    expect(read.build.document).toEqual(document);
    expect(read.manifest.contentHash).toBe(contentHash(read.checked));
  });

  test("made anew from its frozen values, on another day and in another time zone, has the same bytes", async () => {
    const { folder, manifest } = await released("again");
    process.env.TZ = "Pacific/Kiritimati";
    vi.useFakeTimers({ toFake: ["Date"], now: new Date("2031-02-28T23:30:00Z") });
    expect(new Date().getDate()).toBe(1);
    const rebuilt = await rebuildRelease(folder);
    expect(rebuilt.map((file) => file.name)).toEqual(manifest.files.map((file) => file.path));
    for (const { name, bytes } of rebuilt) {
      expect(Buffer.compare(fs.readFileSync(path.join(folder, name)), bytes), name).toBe(0);
    }
  });

  test("says which of its files are gone or hold other bytes", async () => {
    const { folder } = await released("damaged");
    fs.rmSync(path.join(folder, "procedure.html"));
    fs.appendFileSync(path.join(folder, "procedure.md"), "one word more");
    expect(await lacksOfRelease(folder)).toEqual([
      { path: "procedure.html", why: "it is not there" },
      { path: "procedure.md", why: "it holds other bytes" },
    ]);
  });

  test("prints its past: revisions latest first, mistakes before the steps, a bar where a step has changed", async () => {
    const first = await released("first");
    const { procedure } = (await readRelease(first.folder)).checked;
    const step = procedure.stages[0]?.steps[0];
    const mark = first.document.marks.find((one) => one.id === step?.mark);
    const second = releaseOf(first.document, {
      id: "release-b",
      revision: "B",
      date: "2026-06-01",
      changed: "Cold, not warm.",
      again: "Step 1, if it was done warm.",
    });
    const document = frozen({
      ...first.document,
      marks: first.document.marks.map((one) =>
        one.id === mark?.id
          ? { ...one, fields: { ...one.fields, words: "Let the engine cool for a night" } }
          : one,
      ),
      releases: [...first.document.releases, second],
      errata: [
        {
          id: "erratum-1",
          buildId: first.document.build.id,
          releaseId: "release-a",
          reportedAt: "2026-05-20T08:00:00.000Z",
          words: "Should it not be cold?",
          markId: mark?.id ?? null,
          value: "warm",
          disposition: "mistake",
          correction: "cold",
          mendedIn: "release-b",
          gone: null,
          rev: 1,
        },
      ],
    });
    const folder = path.join(base, "second");
    const before = await readRelease(first.folder);
    const manifest = await writeRelease(document, second, folder, {
      still: first.still,
      before: before.checked,
    });
    expect(manifest.changedSteps).toEqual([step?.mark]);
    const text = fs.readFileSync(path.join(folder, "procedure.md"), "utf8");
    const order = [
      "Revision B",
      "Corrections",
      "Right is: cold",
      "Mended in revision B",
      "Parts list",
      "Revisions",
    ];
    const places = order.map((words) => text.indexOf(words));
    expect(
      places.every((place) => place >= 0),
      JSON.stringify(places),
    ).toBe(true);
    expect([...places].sort((a, b) => a - b)).toEqual(places);
    expect(text).toContain("To be done again: Step 1, if it was done warm.");
    const html = fs.readFileSync(path.join(folder, "procedure.html"), "utf8");
    expect(html.match(/class="step changed"/g)).toHaveLength(1);
    // What was published before is as it was.
    expect(await lacksOfRelease(first.folder)).toEqual([]);
  });
});
