import type { Finding } from "#lib/finding/index.ts";
import { digest, walk } from "../disk.ts";
import { isInLog, rowsOf } from "../sqlite/read.ts";
import { type Look, said } from "./look.ts";

const stillName = /^([0-9a-f]{64})\.jpg$/;

/** Pictures in the folder of stills against their own names, which are their hashes. Needs no database. */
export async function checkPictures({ workshop, looked, onProgress }: Look): Promise<Finding[]> {
  const findings: Finding[] = [];
  const { files } = await walk(workshop.stills);
  for (const [index, { path }] of files.entries()) {
    const sha256 = stillName.exec(path)?.[1];
    if (sha256 === undefined) continue;
    onProgress({ words: "Reading the stills", done: index, of: files.length });
    const read = await digest(workshop.stills, path).catch((error: Error) => error);
    looked.stills += 1;
    if (read instanceof Error) findings.push(wrongPicture(path, `cannot be read (${read.message})`));
    else {
      looked.bytes += read.bytes;
      if (read.sha256 !== sha256) {
        findings.push(
          wrongPicture(path, `has other bytes than its name says (${read.sha256.slice(0, 12)}…)`),
        );
      }
    }
  }
  return findings;
}

function wrongPicture(path: string, why: string): Finding {
  return said({
    rule: "still-hash",
    severity: "wrong",
    where: `stills/${path}`,
    found: `The picture stills/${path} ${why}.`,
    expected: "A file whose SHA-256 is its name.",
    todo: "Put the file from the latest backup in its place, or take the still again.",
    source: "SHA-256, FIPS 180-4",
  });
}

/** Stills whose picture is not there, and pictures that no still names. */
export async function checkStills({ workshop, database }: Look): Promise<Finding[]> {
  const { files } = await walk(workshop.stills);
  const there = new Set(files.flatMap(({ path }) => stillName.exec(path)?.[1] ?? []));
  const named = new Set<string>();
  const findings: Finding[] = [];
  for (const row of rowsOf(database, "Still")) {
    const sha256 = String(row.sha256);
    named.add(sha256);
    if (sha256 !== "" && !there.has(sha256)) {
      findings.push(missingPicture(String(row.id), String(row.markId), sha256, row.gone !== null));
    }
  }
  // A picture that a still had before is kept, since undoing may bring it back.
  const orphans = [...there].filter((sha256) => !named.has(sha256) && !isInLog(database, sha256));
  return [...findings, ...orphans.map(orphanPicture)];
}

function missingPicture(id: string, mark: string, sha256: string, gone: boolean): Finding {
  return said({
    rule: "still-missing",
    severity: gone ? "doubtful" : "wrong",
    where: `stills/${sha256}.jpg`,
    place: { still: id, mark },
    found: `The picture of ${gone ? "a still that was struck out" : "a still"} is not there: stills/${sha256}.jpg.`,
    expected: "The file that the still names.",
    todo: gone
      ? "Undoing the striking out would show a still without a picture. Put the file back from a backup if it matters."
      : "Put the file back from the latest backup, or take the still again.",
  });
}

function orphanPicture(sha256: string): Finding {
  return said({
    rule: "still-orphan",
    severity: "advice",
    where: `stills/${sha256}.jpg`,
    found: `No still names the picture stills/${sha256}.jpg.`,
    expected: "Pictures that a still names, now or in its history.",
    todo: "It may just have been taken. If it is old, look at it and delete it by hand.",
  });
}
