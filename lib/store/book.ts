import type { BuildDocument, Gotcha, Sighting } from "#lib/build/index.ts";
import { type Book, type BookFile, bookHistory, newcomers, sameText } from "#lib/gotcha/index.ts";
import { apply } from "./apply.ts";
import type { Put } from "./command.ts";
import type { PrismaClient } from "./prisma-client/client.ts";
import { type Row, readRows, type TableName } from "./tables.ts";

/** The gotcha book whole, as it is at one moment, with what has been struck out. */
export async function loadBook(client: PrismaClient): Promise<{ gotchas: Gotcha[]; sightings: Sighting[] }> {
  return client.$transaction(
    async (tx) => ({
      gotchas: await readRows<Gotcha>(tx, "gotcha", {}),
      sightings: await readRows<Sighting>(tx, "sighting", {}),
    }),
    { timeout: 60_000, maxWait: 30_000 },
  );
}

/** What of the book could concern a machine: entries of another maker alone are left out, with their sightings. */
export function bookOf({ gotchas, sightings }: Book, { machine }: Pick<BuildDocument, "machine">): Book {
  const mayBe = (maker: string) =>
    maker.trim() === "" || machine.maker === "" || sameText(maker, machine.maker);
  const concerned = gotchas.filter((one) => one.appliesTo.some((scope) => mayBe(scope.maker)));
  // What is joined into one of these, or supersedes one, comes along.
  const ids = new Set(concerned.map((one) => one.id));
  const kept = gotchas.filter(
    (one) => ids.has(one.id) || ids.has(one.joinedInto ?? "") || one.supersedes.some((id) => ids.has(id)),
  );
  const told = new Set(kept.map((one) => one.id));
  return { gotchas: kept, sightings: sightings.filter((one) => told.has(one.gotchaId)) };
}

/** What came of bringing in somebody else's book. */
export interface BroughtBook {
  gotchas: number;
  sightings: number;
  /** Entries that the workshop had already, and that were left as they are. */
  known: number;
}

/** Brings another book in as one change of the book's history. Nothing is written over. */
export async function importBook(
  client: PrismaClient,
  given: BookFile,
  origin: string,
): Promise<BroughtBook> {
  const ids = async (rows: Promise<{ id: string }[]>) => new Set((await rows).map((row) => row.id));
  const select = { id: true };
  const here = {
    gotchas: await ids(client.gotcha.findMany({ select })),
    sightings: await ids(client.sighting.findMany({ select })),
  };
  const { gotchas, sightings, known } = newcomers(here, given, origin);
  const put =
    (table: TableName) =>
    (row: { id: string }): Put => {
      const { rev: _, ...set } = row as Row;
      return { table, id: row.id, rev: 0, set };
    };
  const puts = [...gotchas.map(put("gotcha")), ...sightings.map(put("sighting"))];
  if (puts.length > 0) {
    const label = `Brought in: ${gotchas.length} gotchas of ${origin}`.slice(0, 500);
    await apply(client, { id: crypto.randomUUID(), buildId: bookHistory, label, puts });
  }
  return { gotchas: gotchas.length, sightings: sightings.length, known };
}

/** Where a sighting's mark is shown. */
export interface SightingPlace {
  build: string;
  buildTitle: string;
  sitting: string;
  mark: string;
  /** Seconds of the recording's clock; null without film. */
  at: number | null;
  /** SHA-256 of its stills. */
  stills: string[];
}

/** Where the marks of sightings are shown, by the mark; only of those that are here and not struck out. */
export async function sightingPlaces(
  client: PrismaClient,
  sightings: readonly Sighting[],
): Promise<Record<string, SightingPlace>> {
  const ids = sightings.map((one) => one.markId).filter((id) => id !== null);
  const places: Record<string, SightingPlace> = {};
  for (let from = 0; from < ids.length; from += 500) {
    const marks = await client.mark.findMany({
      where: { id: { in: ids.slice(from, from + 500) }, gone: null, build: { gone: null } },
      select: {
        id: true,
        buildId: true,
        sittingId: true,
        at: true,
        build: { select: { title: true } },
        stills: { where: { gone: null, sha256: { not: "" } }, select: { sha256: true } },
      },
    });
    for (const { id, buildId, sittingId, at, build, stills } of marks) {
      const hashes = stills.map((still) => still.sha256);
      places[id] = {
        build: buildId,
        buildTitle: build.title,
        sitting: sittingId,
        mark: id,
        at,
        stills: hashes,
      };
    }
  }
  return places;
}
