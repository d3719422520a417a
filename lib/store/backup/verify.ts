import path from "node:path";
import { type Finding, ToldError } from "#lib/finding/index.ts";
import { type OnProgress, said } from "../audit/look.ts";
import { digest, walk } from "../disk.ts";
import { brokenReferences, integrityTroubles, openToRead, strangeParts } from "../sqlite/read.ts";
import { type Manifest, readManifest, unlisted } from "./manifest.ts";

/** What a backup is, and how it differs from what its manifest says. */
export interface Verified {
  manifest: Manifest;
  /** Empty when every file is there with its bytes, and the database is whole. */
  findings: Finding[];
  /** Files that may be used: they are as the manifest says. */
  whole: ReadonlySet<string>;
}

/**
 * Reads a backup through: every file against its size and hash, the database by SQLite's own checks. Nothing is
 * written.
 *
 * @throws Refused when the folder is no backup of this form
 */
export async function verifyBackup(
  folder: string,
  onProgress: OnProgress = () => undefined,
): Promise<Verified> {
  const manifest = await readManifest(folder);
  const of = manifest.files.reduce((sum, file) => sum + file.bytes, 0);
  const whole = new Set<string>();
  const findings: Finding[] = [];
  let done = 0;
  for (const file of manifest.files) {
    const trouble = await compare(folder, file, (bytes) => {
      done += bytes;
      onProgress({ words: "Reading it back", done, of });
    });
    if (trouble === null) whole.add(file.path);
    else findings.push(differs(file.path, trouble));
  }
  if (whole.has("workshop.db")) findings.push(...databaseTroubles(path.join(folder, "workshop.db")));
  else if (findings.length === 0) findings.push(differs("workshop.db", "it is not in the manifest"));
  return { manifest, findings: [...findings, ...(await strangers(folder, manifest))], whole };
}

async function compare(
  folder: string,
  file: Manifest["files"][number],
  onBytes: (bytes: number) => void,
): Promise<string | null> {
  const read = await digest(folder, file.path, onBytes).catch((error: Error) => error);
  if (read instanceof ToldError) return read.found.replace(/\.$/, "");
  if (read instanceof Error) return read.message;
  if (read.bytes !== file.bytes) return `it has ${read.bytes} bytes, not ${file.bytes}`;
  return read.sha256 === file.sha256 ? null : `its bytes have the hash ${read.sha256.slice(0, 12)}…`;
}

function differs(place: string, why: string): Finding {
  return said({
    rule: "backup-differs",
    severity: "wrong",
    where: place,
    found: `${place} is not as it was written: ${why}.`,
    expected: "The size and SHA-256 that manifest.json gives.",
    todo: "Use another backup, or take this file from another one. The drive it lies on may have faults.",
    source: "SHA-256, FIPS 180-4",
  });
}

function databaseTroubles(file: string): Finding[] {
  const database = openToRead(file);
  try {
    const damage = [...integrityTroubles(database), ...strangeParts(database)];
    const broken =
      damage.length > 0 ? [] : brokenReferences(database).map(({ table, id }) => `${table} ${id}`);
    if (damage.length === 0 && broken.length === 0) return [];
    return [
      said({
        rule: "backup-database",
        severity: "wrong",
        where: "workshop.db",
        evidence: [...damage, ...broken].join("\n"),
        found: `The database is not whole: ${[...damage, ...broken].slice(0, 3).join("; ").slice(0, 500)}.`,
        expected:
          "A workshop's database that SQLite reads through without a fault, in which no row names one that is missing.",
        todo: "Let audit say what the workshop has. Keep earlier backups.",
        source: "SQLite, PRAGMA integrity_check and foreign_key_check",
      }),
    ];
  } finally {
    database.close();
  }
}

/** Files in the folder that its manifest does not know. */
async function strangers(folder: string, { files }: Manifest): Promise<Finding[]> {
  const known = new Set(files.map((file) => file.path));
  const tree = await walk(folder);
  return tree.files
    .filter((file) => !known.has(file.path) && !unlisted.has(file.path))
    .map((file) =>
      said({
        rule: "backup-stranger",
        severity: "advice",
        where: file.path,
        found: `${file.path} is not one of the backup's files.`,
        expected: "The files that manifest.json lists.",
        todo: "It is left where it is, and not restored.",
      }),
    );
}
