import type { Release } from "#lib/build/index.ts";
import type { PrismaClient } from "./prisma-client/client.ts";
import { readRow } from "./tables.ts";

/** The row of a release; null where there is none of that id, or it has been struck out. */
export async function readRelease(client: PrismaClient, id: string): Promise<Release | null> {
  const row = (await readRow(client, "release", id)) as Release | null;
  return row?.gone === null ? row : null;
}
