import path from "node:path";
import type { Finding } from "#lib/finding/index.ts";
import { said } from "../audit/look.ts";
import { openToRead, type Reading, readPlaces, rowsOf } from "../sqlite/read.ts";
import type { KeptFile } from "./manifest.ts";

/**
 * What the database of a backup names and the backup does not hold, or holds with other bytes than it should have:
 * the workshop itself lacked it when the backup was made.
 */
export function lacksOf(backup: string, files: readonly KeptFile[]): Finding[] {
  const kept = new Map(files.map((file) => [file.path, file.sha256]));
  const database = openToRead(path.join(backup, "workshop.db"));
  try {
    return expectedFiles(database).flatMap(({ place, name, sha256 }) => {
      const found = kept.get(place);
      if (found === undefined) return [lack(place, `${name} is not in the backup: ${place} was not there.`)];
      if (sha256 === null || found === sha256) return [];
      return [lack(place, `${name} has other bytes than it should have: ${place}.`)];
    });
  } finally {
    database.close();
  }
}

function expectedFiles(database: Reading): { place: string; name: string; sha256: string | null }[] {
  const stills = [...rowsOf(database, "Still")]
    .filter((row) => row.gone === null && row.sha256 !== "")
    .map((row) => ({ place: `stills/${row.sha256}.jpg`, name: "A still", sha256: String(row.sha256) }));
  const films = readPlaces(database)
    .filter((place) => place.own && place.role === "original" && place.gone === null)
    .map(({ path: place, name, sha256 }) => ({ place: `recordings/${place}`, name, sha256 }));
  return [...stills, ...films];
}

function lack(where: string, found: string): Finding {
  return said({
    rule: "backup-lacks",
    severity: "wrong",
    where,
    found,
    expected: "Every file that the workshop names, with the bytes it had.",
    todo: "The rest of the backup is whole. Put the file back from an earlier backup, which you should keep.",
  });
}
