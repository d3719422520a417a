import path from "node:path";
import type { Finding } from "#lib/finding/index.ts";
import { FolderError, lacksOfRelease } from "#lib/folder/index.ts";
import { rowsOf } from "../sqlite/read.ts";
import { type Look, said } from "./look.ts";

/** Releases whose files are gone, or are not what was published. */
export async function checkReleases({ workshop, database, onProgress }: Look): Promise<Finding[]> {
  const rows = [...rowsOf(database, "Release")].filter((row) => row.gone === null);
  const findings: Finding[] = [];
  for (const [index, row] of rows.entries()) {
    onProgress({ words: "Reading the releases", done: index, of: rows.length });
    const where = `releases/${row.id}`;
    try {
      const lacks = await lacksOfRelease(path.join(workshop.releases, String(row.id)));
      findings.push(...lacks.map((lack) => changed(`${where}/${lack.path}`, lack.why, String(row.revision))));
    } catch (error) {
      if (!(error instanceof FolderError)) throw error;
      findings.push(missing(where, String(row.revision)));
    }
  }
  return findings;
}

function changed(where: string, why: string, revision: string): Finding {
  return said({
    rule: "release-changed",
    severity: "wrong",
    where,
    found: `A file of revision ${revision} is not what was published: ${where}: ${why}.`,
    expected: "Every file of a release with the bytes it was published with.",
    todo: "Put the file from the latest backup in its place.",
    source: "SHA-256, FIPS 180-4",
  });
}

function missing(where: string, revision: string): Finding {
  return said({
    rule: "release-missing",
    severity: "wrong",
    where,
    found: `The files of revision ${revision} are not there: ${where}.`,
    expected: "The folder that was written when it was released.",
    todo: "Put the folder back from the latest backup. A build that was brought in from another workshop left them there.",
  });
}
