import { z } from "zod";
import type { PrismaClient } from "./prisma-client/client.ts";

/** What the restorer has chosen for the whole workshop. */
export const settings = z.object({
  /** How long the hand lags behind the eye, in seconds: a mark is set that much before the moment shown. */
  reactionTime: z.number().finite().min(0).max(30),
  /** Whether single keys act at all. */
  singleKeys: z.boolean(),
  /** The restorer's own command that makes captions from sound; empty: nothing is run. */
  captionCommand: z
    .string()
    .max(2000)
    .refine((text) => !/\p{Cc}/u.test(text), { error: "a command is one line without control characters" }),
  /** Keys chosen instead of the usual ones, by the name of what they do. */
  keys: z.record(z.string().max(40), z.string().max(20)),
});
export type Settings = z.infer<typeof settings>;

export const usualSettings: Settings = { reactionTime: 0, singleKeys: true, captionCommand: "", keys: {} };

/** The settings of this workshop. A value that no longer fits its form is left at the usual one. */
export async function readSettings(client: PrismaClient): Promise<Settings> {
  const row = await client.setting.findUnique({ where: { name: "workshop" } });
  const read = settings.safeParse({ ...usualSettings, ...(row ? JSON.parse(row.value) : {}) });
  return read.success ? read.data : usualSettings;
}

export async function writeSettings(client: PrismaClient, chosen: Settings): Promise<void> {
  const value = JSON.stringify(settings.parse(chosen));
  await client.setting.upsert({
    where: { name: "workshop" },
    create: { name: "workshop", value },
    update: { value },
  });
}
