import { createHash } from "node:crypto";
import fs from "node:fs/promises";
import path from "node:path";
import { z } from "zod";
import { type BuildDocument, type Release, rowLists } from "#lib/build/index.ts";
import { check } from "#lib/check/index.ts";
import { syncFolder, syncTree } from "#lib/media/index.ts";
import { type CheckedProcedure, compareProcedures, compile } from "#lib/procedure/index.ts";
import {
  type BriefNote,
  contentHash,
  historyOf,
  type OutputFile,
  recordingCues,
  releaseOutputs,
} from "#lib/publish/index.ts";
import { FolderError, type ReadFolder, readFolder, readInside } from "./read.ts";
import { writeFolder } from "./write.ts";

/** `release.json`: what a release is, and every file of it with its hash. */
const manifestForm = z.object({
  form: z.literal("witness-mark-release"),
  version: z.literal(1),
  id: z.string().max(100),
  build: z.string().max(100),
  title: z.string().max(500),
  revision: z.string().max(5),
  date: z.string().max(10),
  contentHash: z.string().length(64),
  /** Marks of the steps that are not as in the revision before. */
  changedSteps: z.array(z.string().max(100)).max(100_000),
  /** What the gotcha book said of the machine that day, as printed. */
  brief: z.array(z.array(z.tuple([z.string().max(500), z.string().max(20_000)])).max(50)).max(50),
  losses: z.array(z.string().max(20_000)).max(10_000),
  files: z.array(
    z.object({ path: z.string().max(1000), bytes: z.number().int().min(0), sha256: z.string().length(64) }),
  ),
});
export type ReleaseManifest = z.infer<typeof manifestForm>;

/** The build as it was released, in the folder of a release. */
const frozenFolder = "build";
const manifestName = "release.json";

/** A release that has been read: what it says of itself, the build as it was frozen, and its procedure. */
export interface ReadRelease {
  manifest: ReleaseManifest;
  build: ReadFolder;
  checked: CheckedProcedure;
}

type StillBytes = (sha256: string) => Promise<Uint8Array | null>;

/** A build as it is frozen: what has been struck out stays behind. */
export function frozen(document: BuildDocument): BuildDocument {
  const kept = rowLists.map((list) => [list, document[list].filter((row) => row.gone === null)]);
  return { ...document, ...Object.fromEntries(kept) };
}

/**
 * Freezes a procedure: writes the build as it is, every output, and `release.json` into a new folder. It grows under
 * another name and is on disk when this returns; cut short, nothing has its name.
 *
 * @param document the build, frozen, with the row of this release in it
 * @param before the procedure of the revision before, to say what has changed; null for the first
 */
export async function writeRelease(
  document: BuildDocument,
  release: Release,
  folder: string,
  given: { still: StillBytes; before: CheckedProcedure | null; brief?: readonly BriefNote[] },
): Promise<ReleaseManifest> {
  const { still, before, brief = [] } = given;
  const checked = check(compile(document), document);
  const changed = before ? compareProcedures(before.procedure, checked.procedure).map((one) => one.step) : [];
  const steps = checked.procedure.stages.flatMap((stage) => stage.steps);
  const changedSteps = steps.filter((step) => changed.includes(step.number)).map((step) => step.mark);
  const { files, losses } = await publishFrozen(document, checked, { release, changedSteps, brief, still });
  const growing = path.join(path.dirname(folder), `.writing-${crypto.randomUUID()}`);
  try {
    await writeFolder(document, path.join(growing, frozenFolder), { still, recording: async () => null });
    for (const file of files) await writeWhole(growing, file);
    const manifest: ReleaseManifest = {
      form: "witness-mark-release",
      version: 1,
      id: release.id,
      build: document.build.id,
      title: document.build.title,
      revision: release.revision,
      date: release.date,
      contentHash: contentHash(checked),
      changedSteps,
      brief: brief.map((note) => note.map(([label, text]): [string, string] => [label, text])),
      losses,
      files: files.map(({ name, bytes }) => ({ path: name, bytes: bytes.length, sha256: sha256(bytes) })),
    };
    const text = `${JSON.stringify(manifest, null, 2)}\n`;
    await writeWhole(growing, { name: manifestName, bytes: Buffer.from(text) });
    await syncTree(growing);
    await fs.rename(growing, folder);
    await syncFolder(path.dirname(folder));
    return manifest;
  } finally {
    await fs.rm(growing, { recursive: true, force: true });
  }
}

/**
 * Reads a release as it was frozen.
 *
 * @throws FolderError when it is not there, or not of its form
 */
export async function readRelease(folder: string): Promise<ReadRelease> {
  const manifest = await readManifest(folder);
  const build = await readFolder(path.join(folder, frozenFolder));
  return { manifest, build, checked: check(compile(build.document), build.document) };
}

/** Makes every output of a release anew, from its frozen values alone: the same bytes, as long as the program is. */
export async function rebuildRelease(folder: string): Promise<OutputFile[]> {
  const { manifest, build, checked } = await readRelease(folder);
  const { document } = build;
  const still: StillBytes = async (hash) => {
    const row = document.stills.find((one) => one.sha256 === hash);
    const place = row && build.files.get(row.id);
    return place ? readInside(build.folder, place, 80_000_000) : null;
  };
  const release = document.releases.find((one) => one.id === manifest.id);
  if (!release) throw noRelease(folder, "its build does not hold the release");
  const { changedSteps, brief } = manifest;
  return (await publishFrozen(document, checked, { release, changedSteps, brief, still })).files;
}

/** What a release on disk lacks of what it was: files that are gone, or hold other bytes. */
export async function lacksOfRelease(folder: string): Promise<{ path: string; why: string }[]> {
  const { files } = await readManifest(folder);
  const lacks = await Promise.all(
    files.map(async (file) => {
      const bytes = await readInside(folder, file.path, 400_000_000).catch(() => null);
      if (bytes === null) return { path: file.path, why: "it is not there" };
      return sha256(bytes) === file.sha256 ? null : { path: file.path, why: "it holds other bytes" };
    }),
  );
  return lacks.filter((one) => one !== null);
}

function publishFrozen(
  document: BuildDocument,
  checked: CheckedProcedure,
  given: { release: Release; changedSteps: string[]; brief: readonly BriefNote[]; still: StillBytes },
) {
  const { changedSteps, brief } = given;
  const { revision, date } = given.release;
  return releaseOutputs(checked, {
    stills: given.still,
    brief,
    printedOn: date,
    release: { revision, date },
    history: historyOf(document, checked.procedure),
    captions: recordingCues(document),
    changedSteps,
  });
}

/** What a release says of itself. @throws FolderError when it is not there, or not of its form */
export async function readManifest(folder: string): Promise<ReleaseManifest> {
  const bytes = await readInside(folder, manifestName, 10_000_000).catch(() => null);
  if (bytes === null) throw noRelease(folder, `there is no ${manifestName}`);
  try {
    return manifestForm.parse(JSON.parse(bytes.toString("utf8")));
  } catch {
    throw noRelease(folder, `${manifestName} is not of its form`);
  }
}

function noRelease(folder: string, why: string): FolderError {
  return new FolderError({
    found: `The release in ${folder} cannot be read: ${why}.`,
    expected: "The folder of a release, as it was written when it was released.",
    todo: "Bring it back from a backup.",
  });
}

async function writeWhole(folder: string, { name, bytes }: OutputFile): Promise<void> {
  const to = path.join(folder, ...name.split("/"));
  await fs.mkdir(path.dirname(to), { recursive: true });
  const handle = await fs.open(to, "wx");
  try {
    await handle.writeFile(bytes);
    await handle.sync();
  } finally {
    await handle.close();
  }
}

function sha256(bytes: Uint8Array): string {
  return createHash("sha256").update(bytes).digest("hex");
}
