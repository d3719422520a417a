import { afterAll, expect, test } from "vitest";
import { audit } from "#lib/store/audit/index.ts";
import { history, loadBuild, openWorkshop, projectionsIn, rebuildSearch } from "#lib/store/index.ts";
import { sampleDocument } from "../sample.ts";
import { freshWorkshop, writeDocument } from "./fresh.ts";
import { foundEntries, programRoot } from "./kept.ts";
import { bundleChild, runChild, startChild } from "./kill/kill.ts";
import type { Wrote } from "./kill/works/many.ts";

const bundle = await bundleChild();
afterAll(bundle.remove);

test("two processes write to one workshop: every command is there, and what was refused was shown and written again", {
  timeout: 3_600_000,
}, async () => {
  const commands = process.env.LONG ? 10_000 : 1000;
  const { client, workshop } = freshWorkshop();
  await writeDocument({ client, workshop }, sampleDocument());
  await client.$disconnect();

  const names = ["left", "right"];
  const ended = await Promise.all(
    names.map((name) =>
      runChild<Wrote>(
        startChild("many", bundle.file),
        { folder: workshop.folder, name, count: commands / names.length },
        null,
      ),
    ),
  );
  const wrote = ended.flatMap((one) => one.acknowledged);
  const marks = wrote.flatMap((one) => one.marks);
  const titles = wrote.reduce((sum, one) => sum + one.titles, 0);
  expect(wrote).toHaveLength(2);
  expect(marks.length + titles).toBe(commands);

  const reopened = openWorkshop(workshop.folder, programRoot);
  const document = await loadBuild(reopened.client, "build-1");
  expect(new Set(document?.marks.map((mark) => mark.id))).toEqual(new Set(marks));
  // Each title was written on top of the one before it: none was lost, and none twice.
  expect(document?.build.rev).toBe(1 + titles);
  const log = await history(reopened.client, "build-1", commands + 10);
  expect(log).toHaveLength(commands);
  expect(new Set(log.map((line) => line.seq)).size).toBe(commands);

  const words = () => foundEntries(workshop.database);
  const before = words();
  rebuildSearch(workshop.database, projectionsIn(programRoot));
  expect(words()).toEqual(before);
  expect(before.filter((one) => "source" in one && one.source === "mark")).toHaveLength(marks.length);
  await reopened.client.$disconnect();
  expect(
    (await audit(workshop, { programRoot })).findings.filter((one) => one.severity !== "advice"),
  ).toEqual([]);
  const refused = wrote.reduce((sum, one) => sum + one.refused, 0);
  console.log(
    `Two processes: ${commands} commands, all there; ${refused} refused as stale and written again`,
  );
});
