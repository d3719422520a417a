import fs from "node:fs/promises";
import path from "node:path";
import type { Finding } from "#lib/finding/index.ts";
import { isUnfinished, walk } from "../disk.ts";
import { readPlaces } from "../sqlite/read.ts";
import { type Look, said } from "./look.ts";

/** Files of recordings that no recording names. */
export async function checkOrphans({ workshop, database }: Look): Promise<Finding[]> {
  const named = new Set(readPlaces(database).map((place) => path.join(place.root, ...place.path.split("/"))));
  const { files } = await walk(workshop.recordings);
  return files
    .filter((file) => !named.has(path.join(workshop.recordings, ...file.path.split("/"))))
    .map((file) =>
      said({
        rule: "recording-orphan",
        severity: "advice",
        where: `recordings/${file.path}`,
        found: `No recording names the file recordings/${file.path}.`,
        expected: "Files that a recording names.",
        todo: "It may be arriving just now. Else bring it in again as a file, and then delete this one by hand.",
      }),
    );
}

/** What lies in the workshop's folder and is not the program's, and what was cut short while it grew. */
export async function checkUnknown({ workshop }: Look): Promise<Finding[]> {
  const folders = Object.values(workshop).map((place) => path.basename(place));
  const findings: Finding[] = [];
  for (const name of await fs.readdir(workshop.folder)) {
    if (folders.includes(name) || /^workshop\.db-(wal|shm|journal)$/.test(name)) continue;
    if (/^before-.+\.db$/.test(name)) continue;
    findings.push(isUnfinished(name) ? unfinished(name) : unknown(name));
  }
  for (const folder of [workshop.recordings, workshop.stills, workshop.made]) {
    const { leftOut } = await walk(folder);
    for (const { path: place } of leftOut) findings.push(unfinished(`${path.basename(folder)}/${place}`));
  }
  const { files } = await walk(workshop.stills);
  const strange = files.filter((file) => !/^[0-9a-f]{64}\.jpg$/.test(file.path));
  return [...findings, ...strange.map((file) => unknown(`stills/${file.path}`))];
}

function unknown(name: string): Finding {
  return said({
    rule: "file-unknown",
    severity: "advice",
    where: name,
    found: `${name} in the workshop's folder is not the program's.`,
    expected: "The database, and the folders that README.txt of a backup names.",
    todo: "If you put it there, keep it elsewhere: a backup does not take it along.",
  });
}

function unfinished(name: string): Finding {
  return said({
    rule: "file-unfinished",
    severity: "advice",
    where: name,
    found: `${name} is still growing, or its making was cut short.`,
    expected: "Whole files.",
    todo: "If nothing is being brought in, copied or saved now, it may be deleted by hand. Nothing names it.",
  });
}
