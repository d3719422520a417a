import { expect, test } from "vitest";
import { newBuild, newSitting } from "#lib/build/index.ts";
import { check } from "#lib/check/index.ts";
import type { Mark } from "#lib/mark/index.ts";
import { compile } from "#lib/procedure/index.ts";
import { apply, loadBuild, openItems, step } from "#lib/store/index.ts";
import { sampleDocument, sampleMark } from "../sample.ts";
import { commandOf, freshWorkshop, writeDocument } from "./fresh.ts";

const left = sampleMark(10, "deferred", { words: "Old belt on", waitsFor: "the new belt" });

/** A workshop in which one build left something, and a later build of the machine has begun. */
async function twoBuilds() {
  const opened = freshWorkshop();
  await writeDocument(opened, sampleDocument({ marks: [left] }));
  const later = newBuild({ id: "build-2", machineId: "machine-1", title: "Two years on" });
  const sitting = newSitting({ id: "sitting-2", buildId: "build-2", title: "Again" });
  const rows = [
    { table: "build" as const, id: later.id, rev: 0, set: { ...later } },
    { table: "sitting" as const, id: sitting.id, rev: 0, set: { ...sitting } },
  ];
  await apply(opened.client, commandOf(rows, "a later build", "build-2"));
  return opened;
}

const closer: Mark = {
  ...sampleMark(null, "action", { words: "Fit the new belt", closes: [left.id] }),
  id: "closer",
  buildId: "build-2",
  sittingId: "sitting-2",
};

test("what one build left provisional is offered in a later one of the machine, and closed there", async () => {
  const { client } = await twoBuilds();
  expect((await openItems(client)).map((one) => [one.buildId, one.words, one.waitsFor])).toEqual([
    ["build-1", "Old belt on", "the new belt"],
  ]);
  expect(await openItems(client, "another machine")).toEqual([]);
  expect((await loadBuild(client, "build-2"))?.foreign.map((one) => one.words)).toEqual(["Old belt on"]);

  const findings = async () => {
    const document = await loadBuild(client, "build-1");
    return document
      ? check(compile(document), document).findings.filter((one) => one.rule === "open-deferred")
      : [];
  };
  const before = await findings();
  expect(before).toHaveLength(1);
  const puts = [{ table: "mark" as const, id: closer.id, rev: 0, set: { ...closer } }];
  await apply(client, commandOf(puts, "the belt", "build-2"));
  expect(await openItems(client)).toEqual([]);
  expect(await findings()).toEqual([]);

  await step(client, { id: "undo-the-belt", buildId: "build-2", step: "undo" });
  expect(await findings()).toEqual(before);
  expect(await openItems(client)).toHaveLength(1);
});
