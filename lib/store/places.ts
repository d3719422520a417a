import path from "node:path";
import { inTransaction } from "./apply.ts";
import type { PrismaClient } from "./prisma-client/client.ts";

/** Where the bytes of a recording lie: a root folder and a path in it, with `/`. */
export interface KnownPlace {
  id: string;
  recordingId: string;
  root: string;
  path: string;
  size: number;
  modifiedAt: number;
  role: "original" | "copy";
  /** What its first and last megabyte come to; empty until they have been read. */
  fingerprint: string;
}

/** What is told of a place when it is noted. */
export type NewPlace = Omit<KnownPlace, "id" | "root" | "fingerprint"> & { fingerprint?: string };

/** The folder's root row, made if it is not known yet. `own` is the workshop's own folder of recordings. */
export async function rootFor(client: PrismaClient, folder: string, own: boolean): Promise<string> {
  const full = path.resolve(folder);
  const row = await client.root.upsert({
    where: { path: full },
    create: { id: crypto.randomUUID(), path: full, own },
    update: {},
  });
  return row.id;
}

/** Notes where a recording's bytes lie. A place it has already (same root and path) is brought up to date. */
export async function addPlace(client: PrismaClient, rootId: string, place: NewPlace): Promise<void> {
  const { path: inRoot, recordingId } = place;
  await client.place.upsert({
    where: { rootId_path_recordingId: { rootId, path: inRoot, recordingId } },
    create: { id: crypto.randomUUID(), rootId, ...place },
    update: { ...place },
  });
}

/** What is new of a place: the file has been moved, has changed, or its ends have been read. */
export interface Renewal {
  id: string;
  facts: Partial<Pick<KnownPlace, "path" | "size" | "modifiedAt" | "fingerprint">> & { rootId?: string };
}

/** Brings a place up to date. */
export function renewPlace(client: PrismaClient, id: string, facts: Renewal["facts"]): Promise<void> {
  return renewPlaces(client, [{ id, facts }]);
}

/** How many places are brought up to date at a time: others wait for their turn meanwhile. */
const AT_ONCE = 500;

/** Brings places up to date. */
export async function renewPlaces(client: PrismaClient, renewals: readonly Renewal[]): Promise<void> {
  for (let at = 0; at < renewals.length; at += AT_ONCE) {
    await inTransaction(client, async (tx) => {
      for (const { id, facts } of renewals.slice(at, at + AT_ONCE)) {
        const place = await tx.place.findUnique({ where: { id } });
        if (!place) continue;
        const { rootId, path: inRoot, recordingId } = { ...place, ...facts };
        // The recording may have been seen there before: one place remains.
        await tx.place.deleteMany({ where: { rootId, path: inRoot, recordingId, id: { not: id } } });
        await tx.place.update({ where: { id }, data: facts });
      }
    });
  }
}

/** The places of a recording, a copy that plays before the original. */
export async function placesOf(client: PrismaClient, recordingId: string): Promise<KnownPlace[]> {
  const rows = await client.place.findMany({ where: { recordingId }, include: { root: true } });
  return rows.map(known).sort((a, b) => (a.role === b.role ? 0 : a.role === "copy" ? -1 : 1));
}

/** The places of a build's recordings that have not been struck out, with the recording's name. */
export async function placesOfBuild(
  client: PrismaClient,
  buildId: string,
): Promise<(KnownPlace & { name: string })[]> {
  const rows = await client.place.findMany({
    where: { recording: { buildId, gone: null } },
    include: { root: true, recording: { select: { name: true } } },
  });
  return rows.map(({ recording, ...row }) => ({ ...known(row), name: recording.name }));
}

/** A place of an original, with what tells whose it is. */
export interface OriginalPlace extends KnownPlace {
  rootId: string;
  buildId: string;
  sha256: string | null;
  /** Whether its recording is no more than its name: no film was seen in its file, and nothing was marked on it. */
  bare: boolean;
}

/** The places of all originals in the workshop, recordings struck out aside. */
export async function originals(client: PrismaClient): Promise<OriginalPlace[]> {
  const counted = { _count: { select: { marks: true, captions: true } } };
  const rows = await client.place.findMany({
    where: { role: "original", recording: { gone: null } },
    include: {
      root: true,
      recording: { select: { buildId: true, sha256: true, probeJson: true, ...counted } },
    },
  });
  return rows.map(({ recording, ...row }) => {
    const { buildId, sha256, probeJson, _count: hanging } = recording;
    const bare = probeJson === "null" && hanging.marks + hanging.captions === 0;
    return { ...known(row), rootId: row.rootId, buildId, sha256, bare };
  });
}

function known<T extends { rootId: string; root: { path: string }; role: string }>(row: T) {
  const { root, rootId: _, ...place } = row;
  return { ...place, root: root.path, role: place.role as KnownPlace["role"] };
}
