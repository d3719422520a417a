import fs from "node:fs/promises";
import path from "node:path";
import type { BuildDocument, Erratum, Release } from "#lib/build/index.ts";
import { check } from "#lib/check/index.ts";
import { FolderError, isFree, type ReadRelease, readRelease } from "#lib/folder/index.ts";
import { makeFolder } from "#lib/media/index.ts";
import { compareProcedures, compile, type Difference, sayingsAt } from "#lib/procedure/index.ts";
import { historyOf, noticesOf, releasesInOrder, toHtml } from "#lib/publish/index.ts";
import { loadBuild, type OpenWorkshop, readRelease as readReleaseRow } from "#lib/store/index.ts";
import { stillPath } from "./doors/stills.ts";
import { releaseFolder } from "./release.ts";

/** A release as it was frozen, and its build as it is now. */
export interface OpenedRelease extends ReadRelease {
  release: Release;
  now: BuildDocument;
}

/**
 * Opens a release; null where the workshop has none of that id.
 *
 * @throws FolderError when its bytes are not there
 */
export async function openRelease(opened: OpenWorkshop, id: string): Promise<OpenedRelease | null> {
  const release = await readReleaseRow(opened.client, id);
  const now = release && (await loadBuild(opened.client, release.buildId));
  if (!release || !now) return null;
  return { ...(await readRelease(releaseFolder(opened.workshop, id))), release, now };
}

/** What differs between a release and another, or the build as it is now. */
export async function differencesSince(
  opened: OpenWorkshop,
  from: OpenedRelease,
  to: string | null,
): Promise<Difference[]> {
  const later = to === null ? null : await openRelease(opened, to);
  const { procedure } = later ? later.checked : check(compile(from.now), from.now);
  return compareProcedures(from.checked.procedure, procedure);
}

/** A release that said the same at the place of a report, with the files that carry it. */
export interface Carrier {
  revision: string;
  files: string[];
}

/** Every output that carried what was reported: of the release it was reported against, and of each that says the same. */
export async function carriersOf(
  opened: OpenWorkshop,
  reported: OpenedRelease,
  { markId }: Pick<Erratum, "markId">,
): Promise<Carrier[]> {
  const files = reported.manifest.files.map((file) => file.path);
  if (markId === null) return [{ revision: reported.release.revision, files }];
  const said = sayingsAt(reported.checked.procedure, markId).join("\n");
  const carriers: Carrier[] = [];
  for (const release of releasesInOrder(reported.now)) {
    const one = await readRelease(releaseFolder(opened.workshop, release.id));
    if (sayingsAt(one.checked.procedure, markId).join("\n") === said)
      carriers.push({ revision: release.revision, files: one.manifest.files.map((file) => file.path) });
  }
  return carriers;
}

/**
 * Writes a release as a folder for any web server: `index.html`, which says what has been found since, and the files
 * as they were published. The folder must be new or empty, or hold an earlier writing of the same release.
 *
 * @returns the names of the files
 */
export async function writeReading(
  opened: OpenWorkshop,
  read: OpenedRelease,
  folder: string,
): Promise<string[]> {
  const { manifest, checked, now, release } = read;
  if (!(await isFree(folder)) && !(await isWritingOf(folder, manifest.id))) throw notFree(folder);
  const page = await toHtml(checked, {
    stills: (sha256) => fs.readFile(stillPath(opened.workshop, sha256)).catch(() => null),
    printedOn: release.date,
    release: { revision: release.revision, date: release.date },
    history: historyOf(now, checked.procedure),
    changedSteps: manifest.changedSteps,
    notices: noticesOf(now, release),
  });
  const from = releaseFolder(opened.workshop, release.id);
  await makeFolder(folder);
  const names = [...manifest.files.map((file) => file.path), "release.json"];
  for (const name of names) {
    const to = path.join(folder, ...name.split("/"));
    await fs.mkdir(path.dirname(to), { recursive: true });
    await fs.copyFile(path.join(from, ...name.split("/")), to);
  }
  for (const file of page.files) await fs.writeFile(path.join(folder, "index.html"), file.bytes);
  return ["index.html", ...names];
}

async function isWritingOf(folder: string, id: string): Promise<boolean> {
  const text = await fs.readFile(path.join(folder, "release.json"), "utf8").catch(() => "{}");
  return text.includes(`"id": ${JSON.stringify(id)}`);
}

function notFree(folder: string): FolderError {
  return new FolderError({
    found: `There is something else in ${folder} already.`,
    expected: "A new or empty folder, or one that this release was written to before.",
    todo: "Name another one; nothing there was changed.",
  });
}
