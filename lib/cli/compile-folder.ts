import fs from "node:fs/promises";
import path from "node:path";
import { type BuildDocument, type Cut, present } from "#lib/build/index.ts";
import { check } from "#lib/check/index.ts";
import { type Finding, finding, open, worstFirst } from "#lib/finding/index.ts";
import { pathIn, type ReadFolder, readFolder, readInside } from "#lib/folder/index.ts";
import { bakePicture, findFfmpeg, makeFolder, probe, stillWithFfmpeg } from "#lib/media/index.ts";
import { type CheckedProcedure, compile } from "#lib/procedure/index.ts";
import {
  type Edition,
  everyFormat,
  historyOf,
  type Paper,
  printedBrief,
  recordingCues,
  together,
  toPdf,
} from "#lib/publish/index.ts";

/** What compiling a folder came to. */
export interface Compiled {
  checked: CheckedProcedure;
  files: string[];
  losses: string[];
  /** Findings of severity `wrong` that nobody has answered. */
  wrong: number;
}

/**
 * A build folder in, its procedure out in every form there is, and the findings. Needs neither database nor browser.
 * A cut that is given is the film; else the folder's own. A moment without a picture is taken from the film with ffmpeg where both are there; else it is a finding.
 */
export async function compileFolder(
  folder: string,
  out: string,
  options: { edition?: Edition; paper: Paper; printedOn: string; cut?: Cut },
): Promise<Compiled> {
  const read = await readFolder(folder);
  if (options.cut) read.document.cuts.push(foremost(options.cut, read.document));
  const taken = await takeMissingStills(read);
  const checked = checkFolder(read);
  const publishing = {
    ...options,
    history: historyOf(read.document, checked.procedure),
    // What the folder itself carries of the gotcha book.
    brief: printedBrief(read.document, read.document, options.printedOn),
    stills: (sha256: string) => stillBytes(read, taken, sha256),
    captions: recordingCues(read.document),
  };
  const output = together([await toPdf(checked, publishing), ...(await everyFormat(checked, publishing))]);
  const findings = {
    name: "findings.json",
    bytes: Buffer.from(`${JSON.stringify(checked.findings, null, 2)}\n`),
  };
  return {
    checked,
    files: await writeAll(out, [...output.files, findings]),
    losses: output.losses,
    wrong: open(checked.findings).filter((one) => one.severity === "wrong").length,
  };
}

/** A cut that comes from elsewhere stands before those of the folder. */
function foremost(cut: Cut, { build, cuts }: BuildDocument): Cut {
  return { ...cut, buildId: build.id, rank: Math.max(0, ...cuts.map(({ rank }) => rank)) + 1 };
}

/** What the rules say, and what the folder itself lacks. */
export function checkFolder(read: ReadFolder): CheckedProcedure {
  const { procedure, findings } = check(compile(read.document), read.document);
  return { procedure, findings: worstFirst([...findings, ...missingFiles(read)]) };
}

function missingFiles(read: ReadFolder): Finding[] {
  const stills = new Map(read.document.stills.map((still) => [still.id, still]));
  return read.missing.map(({ id, path: place, why }) =>
    finding({
      rule: "file-missing",
      severity: "doubtful",
      place: { still: stills.has(id) ? id : undefined, mark: stills.get(id)?.markId, field: place },
      evidence: `${place}\n${why}`,
      found: `build.json names ${place}, and it cannot be used: ${why}.`,
      expected: "The file in the folder, as it was when the folder was written.",
      todo: "Put the file back, or take the still again.",
      source: "docs/build-folder.md",
    }),
  );
}

/** Stills that have a moment and no picture, taken from the film: by the hash of what was taken. */
async function takeMissingStills(read: ReadFolder): Promise<Map<string, Buffer>> {
  const taken = new Map<string, Buffer>();
  const wanting = present(read.document.stills).filter((still) => still.sha256 === "" && still.at !== null);
  const ffmpeg = wanting.length > 0 ? await findFfmpeg() : null;
  if (!ffmpeg) return taken;
  for (const still of wanting) {
    const film = still.recordingId === null ? null : pathIn(read, still.recordingId);
    const probed = film ? await probe(film) : null;
    if (!film || !probed?.ok) continue;
    const { png } = await stillWithFfmpeg({
      ffmpeg,
      path: film,
      frames: probed.frames,
      moment: still.at as number,
    });
    const { jpeg, sha256, width, height } = await bakePicture(png);
    taken.set(sha256, jpeg);
    const row = read.document.stills.find((one) => one.id === still.id);
    if (row) Object.assign(row, { sha256, width, height });
  }
  return taken;
}

async function stillBytes(read: ReadFolder, taken: ReadonlyMap<string, Buffer>, sha256: string) {
  const still = read.document.stills.find((one) => one.sha256 === sha256 && read.files.has(one.id));
  const place = still && read.files.get(still.id);
  return taken.get(sha256) ?? (place ? readInside(read.folder, place, 80_000_000) : null);
}

async function writeAll(out: string, files: { name: string; bytes: Uint8Array }[]): Promise<string[]> {
  for (const { name, bytes } of files) {
    const to = path.join(out, ...name.split("/"));
    await makeFolder(path.dirname(to));
    await fs.writeFile(to, bytes);
  }
  return files.map((file) => file.name);
}
