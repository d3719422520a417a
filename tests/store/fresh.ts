import fs from "node:fs";
import os from "node:os";
import path from "node:path";
import { afterEach } from "vitest";
import type { BuildDocument } from "#lib/build/index.ts";
import { apply, type Command, type OpenWorkshop, openWorkshop, type Put } from "#lib/store/index.ts";

const opened: OpenWorkshop[] = [];

/** An empty workshop in a folder of its own, removed after the test. */
export function freshWorkshop(): OpenWorkshop {
  const folder = fs.mkdtempSync(path.join(os.tmpdir(), "workshop-"));
  const workshop = openWorkshop(folder, process.cwd());
  opened.push(workshop);
  return workshop;
}

afterEach(async () => {
  for (const { client, workshop } of opened.splice(0)) {
    await client.$disconnect();
    fs.rmSync(workshop.folder, { recursive: true, force: true });
  }
});

let commands = 0;

/** A command of these puts in the history of the sample build. */
export function commandOf(puts: Put[], label = "test", buildId: string | null = "build-1"): Command {
  commands += 1;
  return { id: `command-${String(commands).padStart(6, "0")}`, buildId, label, puts };
}

/** Writes a document's rows as one command without a history. */
export async function writeDocument({ client }: OpenWorkshop, document: BuildDocument): Promise<void> {
  const put = (table: Put["table"]) => (row: { id: string }) => ({
    table,
    id: row.id,
    rev: 0,
    set: { ...row },
  });
  const puts: Put[] = [
    put("machine")(document.machine),
    ...document.assemblies.map(put("assembly")),
    ...document.items.map(put("item")),
    put("build")(document.build),
    ...document.sittings.map(put("sitting")),
    ...document.recordings.map(put("recording")),
    ...document.captions.map(put("captionTrack")),
    ...document.cuts.map(put("cut")),
    ...document.marks.map(put("mark")),
    ...document.stills.map(put("still")),
    ...document.edits.map(put("edit")),
    ...document.answers.map(put("answer")),
    ...document.releases.map(put("release")),
    ...document.errata.map(put("erratum")),
    ...document.decisions.map(put("draftDecision")),
    ...document.gotchas.map(put("gotcha")),
    ...document.sightings.map(put("sighting")),
    ...document.kits.map(put("kit")),
  ];
  await apply(client, commandOf(puts, "write the sample", null));
}
