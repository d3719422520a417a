import path from "node:path";
import { describe, expect, test } from "vitest";
import { newGotcha, newScope, newSighting } from "#lib/build/index.ts";
import { readFolder, writeFolder } from "#lib/folder/index.ts";
import { bookHistory, entriesOf } from "#lib/gotcha/index.ts";
import { audit } from "#lib/store/audit/index.ts";
import {
  apply,
  find,
  importBook,
  importBuild,
  loadBook,
  loadBuild,
  type OpenWorkshop,
  type Put,
  step,
  withNewIds,
} from "#lib/store/index.ts";
import { sampleDocument, sampleMark } from "../sample.ts";
import { commandOf, freshWorkshop, writeDocument } from "./fresh.ts";
import { allRows, freshFolder, programRoot } from "./kept.ts";

const noted = "2026-01-01T00:00:00.000Z";

async function workshopWithGotchas() {
  const opened = freshWorkshop();
  const document = sampleDocument();
  document.marks = [sampleMark(4, "gotcha", { words: "The seal leaks with its lip outward" })];
  document.gotchas = ["one", "two", "three"].map((id) =>
    newGotcha({
      id,
      symptom: `The seal leaks, ${id}`,
      noted,
      appliesTo: [newScope({ assembly: "Water pump" })],
    }),
  );
  document.sightings = ["one", "two", "two", "three"].map((gotchaId, index) =>
    newSighting({
      id: `s${index}`,
      gotchaId,
      outcome: "happened",
      at: noted,
      buildId: "build-1",
      markId: "gotcha-4",
    }),
  );
  await writeDocument(opened, document);
  return opened;
}

/** Everything in the workshop but the change log, and the revisions, which count the changes. */
function withoutLog({ workshop }: OpenWorkshop) {
  const { Change: _, ...rows } = allRows(workshop.database);
  return JSON.parse(JSON.stringify(rows, (key, value) => (key === "rev" ? undefined : value)));
}

const column = (id: string, rev: number, set: Record<string, unknown>): Put => ({
  table: "gotcha",
  id,
  rev,
  set,
});

describe("joining", () => {
  test("two into one and split again leaves everything but the change log as it was", async () => {
    const opened = await workshopWithGotchas();
    const before = withoutLog(opened);
    const join = [column("two", 1, { joinedInto: "one" }), column("three", 1, { joinedInto: "one" })];
    await apply(opened.client, commandOf(join, "joined", bookHistory));
    const joined = entriesOf(await loadBook(opened.client));
    expect([...joined.keys()]).toEqual(["one"]);
    expect(joined.get("one")?.sightings.map((one) => one.id)).toEqual(["s0", "s1", "s2", "s3"]);
    const split = [column("two", 2, { joinedInto: null }), column("three", 2, { joinedInto: null })];
    await apply(opened.client, commandOf(split, "split", bookHistory));
    expect(withoutLog(opened)).toEqual(before);
  });

  test("is undone and redone in the book's own history, and the build's is not touched", async () => {
    const opened = await workshopWithGotchas();
    const before = withoutLog(opened);
    await apply(opened.client, commandOf([column("two", 1, { joinedInto: "one" })], "joined", bookHistory));
    const after = withoutLog(opened);
    const turn = (which: "undo" | "redo", buildId: string) =>
      step(opened.client, { id: crypto.randomUUID(), buildId, step: which });
    expect(await turn("undo", "build-1")).toBeNull();
    await turn("undo", bookHistory);
    expect(withoutLog(opened)).toEqual(before);
    await turn("redo", bookHistory);
    expect(withoutLog(opened)).toEqual(after);
  });
});

describe("a build's gotchas", () => {
  test("go with its folder, come into another workshop, and write over nothing there", async () => {
    const here = await workshopWithGotchas();
    const document = await loadBuild(here.client, "build-1");
    if (!document) throw new Error("no build");
    expect(document.gotchas.map((one) => one.id).sort()).toEqual(["one", "three", "two"]);
    const folder = path.join(freshFolder(), "build");
    await writeFolder(document, folder, { still: async () => null, recording: async () => null });
    const read = (await readFolder(folder)).document;
    const there = freshWorkshop();
    const mine = newGotcha({ id: "two", symptom: "My own words", noted });
    await apply(
      there.client,
      commandOf([{ table: "gotcha", id: "two", rev: 0, set: { ...mine } }], "mine", bookHistory),
    );
    await importBuild(there.client, read, null);
    const book = await loadBook(there.client);
    expect(book.gotchas.find((one) => one.id === "two")?.symptom).toBe("My own words");
    expect(book.gotchas).toHaveLength(3);
    expect(book.sightings).toHaveLength(4);
    expect(
      (await audit(there.workshop, { programRoot })).findings.filter((one) => one.severity === "wrong"),
    ).toEqual([]);
  });

  test("stay the same gotchas when a build is kept twice; its sightings are its own", async () => {
    const { client } = await workshopWithGotchas();
    const document = await loadBuild(client, "build-1");
    if (!document) throw new Error("no build");
    const copy = withNewIds(document);
    expect(copy.gotchas).toEqual(document.gotchas);
    expect(
      copy.sightings.every((one) => one.buildId === copy.build.id && one.markId === copy.marks[0]?.id),
    ).toBe(true);
    expect(new Set([...copy.sightings, ...document.sightings].map((one) => one.id)).size).toBe(8);
  });

  test("outlive it: a sighting stays when its build is struck out", async () => {
    const { client } = await workshopWithGotchas();
    await apply(client, commandOf([{ table: "build", id: "build-1", rev: 1, set: { gone: noted } }]));
    expect(entriesOf(await loadBook(client)).get("two")?.sightings).toHaveLength(2);
  });
});

test("somebody else's book is brought in as one change, heard, and found at once", async () => {
  const { client, workshop } = await workshopWithGotchas();
  const theirs = newGotcha({ id: "theirs", symptom: "Magneto taper slips", noted });
  const given = { gotchas: [theirs, newGotcha({ id: "one", symptom: "Theirs", noted })], sightings: [] };
  expect(await importBook(client, given, "Harrow")).toEqual({ gotchas: 1, sightings: 0, known: 1 });
  expect(find(workshop, { text: "magneto" }).found.map((one) => one.row)).toEqual(["theirs"]);
  expect((await loadBook(client)).gotchas.find((one) => one.id === "one")?.symptom).toBe(
    "The seal leaks, one",
  );
  expect(await importBook(client, given, "Harrow")).toEqual({ gotchas: 0, sightings: 0, known: 2 });
  await step(client, { id: crypto.randomUUID(), buildId: bookHistory, step: "undo" });
  expect(find(workshop, { text: "magneto" }).found).toEqual([]);
});
