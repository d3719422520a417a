import fs from "node:fs/promises";
import path from "node:path";
import type { Finding } from "#lib/finding/index.ts";
import { errorCode, sayBytes } from "#lib/media/index.ts";
import { digest } from "../disk.ts";
import { type ReadPlace, readPlaces, rowsOf } from "../sqlite/read.ts";
import { few, type Look, said, sameTime } from "./look.ts";

/** Files of recordings against what is known of them: there, as long, as old, with the bytes they had. */
export async function checkPlaces(look: Look): Promise<Finding[]> {
  const places = readPlaces(look.database);
  const away = await rootsAway(places);
  const findings = awayFindings(places, away);
  for (const [index, place] of places.entries()) {
    if (place.own) look.looked.recordings += 1;
    else look.looked.elsewhere += 1;
    if (away.has(place.root)) continue;
    look.onProgress({ words: `Reading ${place.name}`, done: index, of: places.length });
    findings.push(...(await checkPlace(look, place)));
  }
  return [...findings, ...withoutPlace(look, places)];
}

/** Folders that cannot be reached, most often on a drive that is not plugged in. */
async function rootsAway(places: readonly ReadPlace[]): Promise<Set<string>> {
  const away = new Set<string>();
  for (const root of new Set(places.map((place) => place.root))) {
    if (!(await fs.stat(root).catch(() => null))?.isDirectory()) away.add(root);
  }
  return away;
}

function awayFindings(places: readonly ReadPlace[], away: ReadonlySet<string>): Finding[] {
  return [...away].map((root) => {
    const names = places.filter((place) => place.root === root).map((place) => place.name);
    const own = places.some((place) => place.root === root && place.own && place.role === "original");
    return said({
      rule: "folder-away",
      severity: own ? "wrong" : "doubtful",
      where: root,
      found: `The folder ${root} cannot be reached; ${names.length} files lie in it: ${few(names)}.`,
      expected: "The folder where these recordings were.",
      todo: "Plug the drive in, or put the folder back. The marks made on these recordings are kept.",
    });
  });
}

async function checkPlace(look: Look, place: ReadPlace): Promise<Finding[]> {
  const file = path.join(place.root, ...place.path.split("/"));
  const stats = await fs.lstat(file).catch((error: unknown) => errorCode(error) || String(error));
  if (typeof stats === "string") return [missing(place, file, stats)];
  if (stats.size !== place.size) {
    return [changed(place, file, `has ${stats.size} bytes`, `${place.size} bytes, as when it was listed`)];
  }
  const hash = place.sha256 !== null && place.role === "original" && (place.own || look.films);
  const findings = hash ? await checkBytes(look, place, file) : [];
  // Bytes that are the same are the same film, whatever time the file bears.
  if (!hash && Math.abs(stats.mtimeMs - place.modifiedAt) > sameTime)
    findings.push(touched(place, file, stats.mtime));
  return findings;
}

async function checkBytes(look: Look, place: ReadPlace, file: string): Promise<Finding[]> {
  const read = await digest(place.root, place.path).catch((error: Error) => error);
  if (read instanceof Error)
    return [changed(place, file, `cannot be read (${read.message})`, "a file that can be read")];
  look.looked.bytes += read.bytes;
  if (read.sha256 === place.sha256) return [];
  const found = `has other bytes than when it was brought in (${read.sha256.slice(0, 12)}…)`;
  return [changed(place, file, found, `the SHA-256 ${place.sha256?.slice(0, 12)}…`)];
}

function missing(place: ReadPlace, file: string, why: string): Finding {
  if (place.role === "copy") {
    return said({
      rule: "copy-missing",
      severity: "advice",
      where: file,
      found: `The copy that plays of ${place.name} is not there (${why}).`,
      expected: `${file}; it can be made again from the original.`,
      todo: "Make a copy that plays again.",
    });
  }
  return said({
    rule: "recording-missing",
    severity: place.own && place.gone === null ? "wrong" : "doubtful",
    where: file,
    found: `The recording ${place.name} is not where it was: ${file} (${why}).`,
    expected: `A file of ${sayBytes(place.size)}.`,
    todo: place.own
      ? "Put the file back from the latest backup. The marks made on it are kept."
      : "Plug its drive in, or put the file back. The marks made on it are kept.",
  });
}

function changed(place: ReadPlace, file: string, found: string, expected: string): Finding {
  return said({
    rule: "recording-changed",
    severity: place.role === "copy" || (!place.own && place.sha256 === null) ? "doubtful" : "wrong",
    where: file,
    found: `The file of ${place.name} ${found}: ${file}.`,
    expected: `It was expected to have ${expected}.`,
    todo: place.own
      ? "Marks may no longer lie on the frames they mean. Put the file back from the latest backup."
      : "Marks may no longer lie on the frames they mean. Look whether another file has taken its name.",
    source: "SHA-256, FIPS 180-4",
  });
}

function touched(place: ReadPlace, file: string, mtime: Date): Finding {
  return said({
    rule: "recording-touched",
    severity: "doubtful",
    where: file,
    found: `The file of ${place.name} was changed on ${mtime.toISOString()}: ${file}.`,
    expected: `A time of change of ${new Date(place.modifiedAt).toISOString()}, as when it was listed.`,
    todo: "Its length is the same. Play it at a mark; if the frame is the right one, all is well.",
  });
}

/** Recordings whose rows have no file at all. One that came with a build folder without films is so on purpose. */
function withoutPlace({ database }: Look, places: readonly ReadPlace[]): Finding[] {
  const placed = new Set(places.map((place) => place.recordingId));
  const without = [...rowsOf(database, "Recording")].filter(
    (row) => row.gone === null && !placed.has(String(row.id)),
  );
  return without.map((row) =>
    said({
      rule: "recording-nowhere",
      severity: "advice",
      where: `recording ${row.id}`,
      found: `The recording ${row.name} has no file.`,
      expected: "A file in the workshop or in a folder that is listed.",
      todo: "It may have come in a build folder without its films. Bring the film in if you have it.",
    }),
  );
}
