import path from "node:path";
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
}

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

/** Notes where a recording's bytes lie. A place already known (same root and path) is brought up to date. */
export async function addPlace(
  client: PrismaClient,
  rootId: string,
  place: Omit<KnownPlace, "id" | "root">,
): Promise<void> {
  await client.place.upsert({
    where: { rootId_path: { rootId, path: place.path } },
    create: { id: crypto.randomUUID(), rootId, ...place },
    update: { ...place },
  });
}

/** The places of a recording, a copy that plays before the original. */
export async function placesOf(client: PrismaClient, recordingId: string): Promise<KnownPlace[]> {
  const rows = await client.place.findMany({ where: { recordingId }, include: { root: true } });
  return rows
    .map(({ root, rootId: _, ...place }) => ({
      ...place,
      root: root.path,
      role: place.role as KnownPlace["role"],
    }))
    .sort((a, b) => (a.role === b.role ? 0 : a.role === "copy" ? -1 : 1));
}

/** Paths already known under a folder, so that listing it twice adds nothing. */
export async function knownPaths(client: PrismaClient, rootId: string): Promise<Map<string, string>> {
  const rows = await client.place.findMany({ where: { rootId }, select: { path: true, recordingId: true } });
  return new Map(rows.map((row) => [row.path, row.recordingId]));
}
