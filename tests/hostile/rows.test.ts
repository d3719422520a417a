import { describe, expect, test } from "vitest";
import { newRecording } from "#lib/build/index.ts";
import {
  apply,
  foldRecording,
  importBuild,
  listRecordings,
  loadBuild,
  type OpenWorkshop,
  type Put,
  Refused,
  rootFor,
  step,
} from "#lib/store/index.ts";
import { sampleDocument, sampleMark } from "../sample.ts";
import { commandOf, freshWorkshop } from "../store/fresh.ts";

/*
 * Values that come back from the database other than they went in, and rows of one build in the history of another.
 * What cannot be kept as it is, is refused in words, and everything stands as before.
 */
async function withSample(): Promise<OpenWorkshop> {
  const opened = freshWorkshop();
  await importBuild(
    opened.client,
    sampleDocument({ marks: [sampleMark(10, "action", { words: "Undo" })] }),
    null,
  );
  return opened;
}

const send = ({ client }: OpenWorkshop, puts: Put[], build = "build-1") =>
  apply(client, commandOf(puts, "test", build));
const undo = ({ client }: OpenWorkshop, what: "undo" | "redo" = "undo") =>
  step(client, { id: crypto.randomUUID(), buildId: "build-1", step: what });

describe("a number that the database would give back as another", () => {
  // 1.797…e308 went in and Infinity came out, after which its row could neither be shown, changed nor undone.
  test.each([
    [Number.MAX_VALUE, /rank: Too big/],
    [123_456_789_012_345_680_000, /rank: Too big/],
    [-1e13, /rank: Too small/],
  ])("%d is refused", async (rank, words) => {
    const opened = await withSample();
    await expect(
      send(opened, [{ table: "sitting", id: "sitting-1", rev: 1, set: { rank } }]),
    ).rejects.toThrow(words);
    expect((await loadBuild(opened.client, "build-1"))?.sittings[0]).toMatchObject({ rank: 0, rev: 1 });
  });

  test("what a film says of its length is held to the same bounds", async () => {
    const probe = { duration: 1e300, frameCount: 1e15, width: 1, height: 1, rotation: 0 };
    const set = { probe: { ...probe, videoCodec: null, audioCodec: null, playable: true } };
    const opened = await withSample();
    await expect(send(opened, [{ table: "recording", id: "recording-1", rev: 1, set }])).rejects.toThrow(
      /Too big/,
    );
  });
});

describe("half a letter (a lone surrogate), which UTF-8 cannot hold", () => {
  test("in words is kept as the sign for one that cannot be read, and the change can be undone", async () => {
    const opened = await withSample();
    const written = await send(opened, [
      { table: "build", id: "build-1", rev: 1, set: { title: "Pump \ud800" } },
    ]);
    expect(written.rows[0]?.row.title).toBe("Pump \ufffd");
    await undo(opened);
    expect((await loadBuild(opened.client, "build-1"))?.build.title).toBe("Water pump");
    await undo(opened, "redo");
    expect((await loadBuild(opened.client, "build-1"))?.build.title).toBe("Pump \ufffd");
  });

  test.each(["\ud800", "a\0b", "line\nbreak"])(
    "or a control character in an id is refused: %j",
    async (id) => {
      const opened = await withSample();
      const { rev: _, ...set } = { ...sampleMark(20, "action"), id };
      await expect(send(opened, [{ table: "mark", id, rev: 0, set }])).rejects.toThrow(
        /no control characters/,
      );
    },
  );
});

test("a nest that the database could not read is refused, however deep", async () => {
  const opened = await withSample();
  for (const deep of [30, 3000, 100_000]) {
    let nest: unknown = 1;
    for (let at = 0; at < deep; at++) nest = [nest];
    const set = { fields: { v: 1, words: "Undo", later: nest } };
    await expect(send(opened, [{ table: "mark", id: "action-10", rev: 1, set }])).rejects.toThrow(
      /nested more than/,
    );
  }
});

describe("rows of another build", () => {
  async function withTwo(): Promise<OpenWorkshop> {
    const opened = await withSample();
    const other = JSON.parse(JSON.stringify(sampleDocument()).replaceAll("-1", "-2"));
    await importBuild(opened.client, other, null);
    return opened;
  }

  test.each([
    ["changed", { table: "sitting", id: "sitting-2", rev: 1, set: { title: "Taken" } }],
    ["taken over", { table: "sitting", id: "sitting-2", rev: 1, set: { buildId: "build-1" } }],
    ["given away", { table: "mark", id: "action-10", rev: 1, set: { buildId: "build-2" } }],
  ] as [string, Put][])("cannot be %s in this one's history", async (_, put) => {
    const opened = await withTwo();
    const before = [await loadBuild(opened.client, "build-1"), await loadBuild(opened.client, "build-2")];
    await expect(send(opened, [put])).rejects.toThrow(/belongs to another build/);
    expect([await loadBuild(opened.client, "build-1"), await loadBuild(opened.client, "build-2")]).toEqual(
      before,
    );
  });

  test("a changed copy of a build here, under another id, takes none of its marks", async () => {
    const opened = await withSample();
    const before = await loadBuild(opened.client, "build-1");
    const copy = JSON.parse(JSON.stringify(before).replaceAll('"build-1"', '"build-9"'));
    await expect(importBuild(opened.client, copy, null)).rejects.toThrow(
      /belongs to another build.*keep both/s,
    );
    expect(await loadBuild(opened.client, "build-1")).toEqual(before);
    expect(await loadBuild(opened.client, "build-9")).toBeNull();
  });
});

describe("a build whose records do not belong together", () => {
  const mark = sampleMark(10, "action");
  const assembly = { gone: null, rev: 0, machineId: "machine-1", name: "Head", rank: 0 };
  test.each([
    ["an id twice", { marks: [mark, mark] }, /marks\.1\.id: stands there twice/],
    ["a sitting of nowhere", { marks: [{ ...mark, sittingId: "x" }] }, /marks\.0\.sittingId: names none/],
    ["a mark of another build", { marks: [{ ...mark, buildId: "x" }] }, /marks\.0\.buildId: names another/],
    [
      "an assembly within itself",
      {
        assemblies: [
          { ...assembly, id: "a", parentId: "b" },
          { ...assembly, id: "b", parentId: "a" },
        ],
      },
      /assemblies\.0\.parentId: the assembly lies in itself/,
    ],
  ])("%s is told with its place, and nothing comes in", async (_, given, words) => {
    const { client } = freshWorkshop();
    await expect(importBuild(client, sampleDocument(given), null)).rejects.toThrow(words);
    expect(await client.machine.count()).toBe(0);
  });
});

test("undo passes over what the program struck out meanwhile, and redo does not bring it back", async () => {
  const opened = await withSample();
  const { client } = opened;
  const root = await rootFor(client, "/nowhere", false);
  for (const id of ["first", "again"]) {
    const recording = newRecording({ id, buildId: "build-1", sittingId: "sitting-1", name: id });
    await listRecordings(client, root, [{ recording, place: { path: id, size: 5, modifiedAt: 1 } }], id);
  }
  await foldRecording(client, "again", "first");
  expect((await undo(opened))?.label).toBe("undo: again");
  expect((await undo(opened))?.label).toBe("undo: first");
  await undo(opened, "redo");
  await undo(opened, "redo");
  const rows = (await loadBuild(client, "build-1"))?.recordings;
  expect(rows?.find((row) => row.id === "first")?.gone).toBeNull();
  expect(rows?.find((row) => row.id === "again")?.gone).not.toBeNull();
});

test("undo is still refused where somebody has written other words since", async () => {
  const opened = await withSample();
  await send(opened, [{ table: "machine", id: "machine-1", rev: 1, set: { name: "Mine" } }]);
  await apply(
    opened.client,
    commandOf([{ table: "machine", id: "machine-1", rev: 2, set: { name: "Theirs" } }], "elsewhere", null),
  );
  await expect(undo(opened)).rejects.toThrow(Refused);
  expect((await loadBuild(opened.client, "build-1"))?.machine.name).toBe("Theirs");
});
