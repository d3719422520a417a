import { z } from "zod";
import type { PrismaClient } from "./prisma-client/client.ts";

/** When the workshop was last backed up, and where to. */
export const lastBackup = z.object({
  /** ISO 8601 in UTC. */
  at: z.string(),
  folder: z.string(),
  files: z.number(),
  bytes: z.number(),
});
export type LastBackup = z.infer<typeof lastBackup>;

/** The last backup of this workshop; null when there has been none. */
export async function readLastBackup(client: PrismaClient): Promise<LastBackup | null> {
  const row = await client.setting.findUnique({ where: { name: "lastBackup" } });
  const read = lastBackup.safeParse(row ? JSON.parse(row.value) : null);
  return read.success ? read.data : null;
}
