import path from "node:path";
import { z } from "zod";
import { ToldError } from "#lib/finding/index.ts";
import { checkRelativePath, openInside } from "#lib/media/index.ts";
import { Refused } from "../command.ts";
import { type Digest, writeWhole } from "../disk.ts";

/** The version of the form of a backup. */
export const backupVersion = 1;

/** A path below the backup's folder, with `/`. */
const place = z
  .string()
  .max(4000)
  .superRefine((text, context) => {
    try {
      checkRelativePath(text);
    } catch (error) {
      const message = error instanceof ToldError ? error.found : String(error);
      context.addIssue({ code: "custom", message });
    }
  });

/** `manifest.json` of a backup: every file with its size and hash, and what is not in the backup and why. */
export const manifest = z.object({
  form: z.literal("witness-mark-backup"),
  version: z.literal(backupVersion),
  /** The moment of the database, ISO 8601 in UTC. */
  at: z.string().max(40),
  /** Where the workshop lay; for people. */
  workshop: z.string().max(4000),
  /** What the database had been brought to. */
  migrations: z.array(z.string().max(200)).max(10_000),
  files: z
    .array(
      z.object({
        path: place,
        bytes: z.number().int().min(0),
        sha256: z.string().regex(/^[0-9a-f]{64}$/),
      }),
    )
    .max(5_000_000)
    .refine((files) => new Set(files.map((file) => file.path)).size === files.length, {
      error: "a file stands in it twice",
    }),
  /** Films that are listed where they lie: they are not in the backup. */
  elsewhere: z
    .array(
      z.object({
        recording: z.string(),
        name: z.string(),
        folder: z.string(),
        path: z.string(),
        bytes: z.number(),
      }),
    )
    .max(1_000_000),
  /** What was left out, and why. */
  leftOut: z.array(z.object({ path: z.string(), why: z.string() })).max(1_000_000),
});
export type Manifest = z.infer<typeof manifest>;

/** A file of a backup, by its path in it. */
export type KeptFile = Digest & { path: string };

const MOST_BYTES = 1_500_000_000;

/** Writes the manifest, and the same hashes once more in the form that `sha256sum -c` reads. */
export async function writeManifest(folder: string, made: Manifest): Promise<void> {
  await writeWhole(path.join(folder, "manifest.json"), `${JSON.stringify(made, null, 1)}\n`);
  const lines = made.files.map((file) => `${file.sha256}  ${file.path}\n`);
  await writeWhole(path.join(folder, "SHA256SUMS"), lines.join(""));
}

/** The files of a backup that its manifest does not list: itself, and the same hashes in another form. */
export const unlisted: ReadonlySet<string> = new Set(["manifest.json", "SHA256SUMS"]);

/**
 * Reads the manifest of a backup.
 *
 * @throws Refused when the folder is no backup, or one of another version
 */
export async function readManifest(folder: string): Promise<Manifest> {
  const read = manifest.safeParse(await readJson(folder));
  if (read.success) return read.data;
  const issue = read.error.issues[0];
  throw new Refused({
    found: `manifest.json in ${folder} does not have the form of a backup: ${issue?.path.join(".") || "the whole"}: ${issue?.message}.`,
    expected: `A backup of form witness-mark-backup, version ${backupVersion}.`,
    todo: "If a later version of the program made it, use that version. Its files can be read without the program: see README.txt.",
  });
}

async function readJson(folder: string): Promise<unknown> {
  try {
    const { handle, size } = await openInside(folder, "manifest.json");
    try {
      if (size > MOST_BYTES) throw new Error(`it has ${size} bytes`);
      return JSON.parse(await handle.readFile("utf8"));
    } finally {
      await handle.close();
    }
  } catch (error) {
    throw new Refused({
      found: `There is no readable manifest.json in ${folder} (${error instanceof ToldError ? error.found : (error as Error).message}).`,
      expected: "The folder of one backup, whose name begins with “witness-mark-” and a date.",
      todo: "Name that folder itself, not the one above it.",
    });
  }
}
