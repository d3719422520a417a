import fs from "node:fs/promises";
import path from "node:path";
import { type BuildDocument, present, type Release } from "#lib/build/index.ts";
import { check } from "#lib/check/index.ts";
import { open } from "#lib/finding/index.ts";
import { FolderError, frozen, readRelease, writeRelease } from "#lib/folder/index.ts";
import { type CheckedProcedure, compile } from "#lib/procedure/index.ts";
import {
  type BriefNote,
  contentHash,
  nextRevision,
  printedBrief,
  releasesInOrder,
} from "#lib/publish/index.ts";
import {
  apply,
  bookOf,
  loadBook,
  loadBuild,
  type OpenWorkshop,
  type Put,
  Refused,
  type Workshop,
  type Written,
} from "#lib/store/index.ts";
import { stillPath } from "./doors/stills.ts";
import { inTurn } from "./in-turn.ts";

/** What the restorer says of a release. */
export interface ToRelease {
  /** Made where it was asked for: asking again with the same id releases once. */
  id: string;
  build: string;
  changed: string;
  again: string;
  /** Reports that are mended in it. */
  mended: readonly string[];
  /** The day of release, ISO 8601. */
  date: string;
}

/**
 * Releases a procedure: freezes it with its outputs, and writes it down. Its bytes are on disk before the workshop
 * says that there is a release.
 *
 * @throws Refused while a `wrong` finding has no answer, or when there is nothing to release
 */
export function releaseBuild(opened: OpenWorkshop, asked: ToRelease): Promise<Written[]> {
  // Two at once would bear the same letter.
  return inTurn(`${opened.workshop.folder} releases of ${asked.build}`, () => releaseOne(opened, asked));
}

async function releaseOne(opened: OpenWorkshop, asked: ToRelease): Promise<Written[]> {
  const document = await loadBuild(opened.client, asked.build);
  if (!document || document.build.gone !== null) throw noSuchBuild();
  if (document.releases.some((one) => one.id === asked.id)) return [];
  if (await opened.client.release.count({ where: { id: asked.id } })) throw takenElsewhere();
  const release = rowOf(document, asked);
  const errata = mendedBy(document, release.id, asked.mended);
  const next = frozen({
    ...document,
    releases: [...document.releases, release],
    errata: document.errata.map((one) => errata.find((mended) => mended.id === one.id) ?? one),
  });
  const folder = releaseFolder(opened.workshop, release.id);
  await fs.mkdir(opened.workshop.releases, { recursive: true });
  // What an attempt left that was cut short before it was written down is of no use: the build may have changed.
  await fs.rm(folder, { recursive: true, force: true });
  await writeRelease(next, release, folder, {
    still: (sha256) => fs.readFile(stillPath(opened.workshop, sha256)).catch(() => null),
    before: await latestOf(opened.workshop, document),
    brief: await briefOf(opened, next, asked.date),
  });
  return writeDown(opened, release, errata);
}

/** Where the bytes of a release lie. */
export function releaseFolder(workshop: Workshop, id: string): string {
  if (!/^[A-Za-z0-9_-]{1,100}$/.test(id)) throw noSuchBuild();
  return path.join(workshop.releases, id);
}

function rowOf(document: BuildDocument, { id, changed, again, date }: ToRelease): Release {
  const checked = check(compile(document), document);
  const wrong = open(checked.findings).filter((one) => one.severity === "wrong");
  if (wrong.length > 0) throw stillWrong(wrong.length, wrong[0]?.found ?? "");
  if (checked.procedure.stages.length === 0) throw nothingToRelease();
  return {
    id,
    buildId: document.build.id,
    revision: nextRevision(document.releases.map((one) => one.revision)),
    date,
    changed,
    again,
    contentHash: contentHash(checked),
    gone: null,
    rev: 0,
  };
}

function mendedBy(document: BuildDocument, release: string, ids: readonly string[]) {
  return present(document.errata)
    .filter((one) => ids.includes(one.id) && one.disposition === "mistake" && one.mendedIn === null)
    .map((one) => ({ ...one, mendedIn: release }));
}

/** What the workshop's book says of the machine, as it is printed in front of the steps. */
async function briefOf(
  { client }: OpenWorkshop,
  document: BuildDocument,
  date: string,
): Promise<BriefNote[]> {
  return printedBrief(bookOf(await loadBook(client), document), document, date);
}

/** A release that came with a build folder left its files where it was made: it tells nothing of what has changed. */
async function latestOf(workshop: Workshop, document: BuildDocument): Promise<CheckedProcedure | null> {
  const latest = releasesInOrder(document).at(-1);
  if (!latest) return null;
  return readRelease(releaseFolder(workshop, latest.id)).then(
    (read) => read.checked,
    (error: unknown) => {
      if (error instanceof FolderError) return null;
      throw error;
    },
  );
}

async function writeDown(
  { client }: OpenWorkshop,
  release: Release,
  errata: BuildDocument["errata"],
): Promise<Written[]> {
  const { rev: _, ...columns } = release;
  const puts: Put[] = [
    { table: "release", id: release.id, rev: 0, set: columns },
    ...errata.map(({ id, rev, mendedIn }): Put => ({ table: "erratum", id, rev, set: { mendedIn } })),
  ];
  const label = `Released as revision ${release.revision}`;
  // What has been published cannot be undone; it stands in the history all the same.
  return (
    await apply(client, { id: `release-${release.id}`, buildId: release.buildId, label, puts }, "noted")
  ).rows;
}

function takenElsewhere(): Refused {
  return new Refused({
    found: "Another build of this workshop has a release of that id.",
    expected: "An id that no release has.",
    todo: "Load the page again, and release from there.",
  });
}

function noSuchBuild(): Refused {
  return new Refused({
    found: "There is no such build in this workshop.",
    expected: "A build that has not been struck out.",
    todo: "Load the page again.",
  });
}

function stillWrong(count: number, first: string): Refused {
  return new Refused({
    found: `${count === 1 ? "One finding says" : `${count} findings say`} that something is wrong: ${first}`,
    expected: "A procedure in which nothing wrong is left without an answer.",
    todo: "Mend it, or say beside the finding why it may stand.",
  });
}

function nothingToRelease(): Refused {
  return new Refused({
    found: "The procedure has no steps yet.",
    expected: "A procedure with at least one step.",
    todo: "Mark an action in a sitting; each begins a step.",
  });
}
