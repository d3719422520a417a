import { describe, expect, test } from "vitest";
import type { Mark } from "#lib/mark/index.ts";
import {
  apply,
  find,
  history,
  loadBuild,
  type Put,
  projectionsIn,
  Refused,
  rebuildSearch,
  step,
} from "#lib/store/index.ts";
import { sampleDocument, sampleMark } from "../sample.ts";
import { commandOf, freshWorkshop, writeDocument } from "./fresh.ts";

function putMark(mark: Mark, rev = 0): Put {
  return { table: "mark", id: mark.id, rev, set: { ...mark } };
}

async function workshopWithSample() {
  const workshop = freshWorkshop();
  await writeDocument(workshop, sampleDocument());
  const marks = async () => (await loadBuild(workshop.client, "build-1"))?.marks ?? [];
  return { ...workshop, marks };
}

describe("a command", () => {
  test("writes all its rows, and gives them back as they were typed", async () => {
    const { client, marks } = await workshopWithSample();
    const mark = sampleMark(12.34, "part", { item: "Wäscher ½ in", words: "  kept\nto the letter " });
    const applied = await apply(client, commandOf([putMark(mark)]));
    expect(applied.rows).toEqual([{ table: "mark", row: { ...mark, rev: 1 } }]);
    expect(await marks()).toEqual([{ ...mark, rev: 1 }]);
  });

  test("sent twice is carried out once and answers the same", async () => {
    const { client, marks } = await workshopWithSample();
    const command = commandOf([putMark(sampleMark(1, "action", { words: "Undo the nuts" }))]);
    const first = await apply(client, command);
    expect(await apply(client, command)).toEqual(first);
    expect(await marks()).toHaveLength(1);
    expect(await history(client, "build-1")).toHaveLength(1);
  });

  test("made on an older revision is refused, shows both versions and changes nothing", async () => {
    const { client, marks } = await workshopWithSample();
    const mark = sampleMark(1, "action", { words: "first" });
    await apply(client, commandOf([putMark(mark)]));
    await apply(
      client,
      commandOf([{ table: "mark", id: mark.id, rev: 1, set: { fields: { v: 1, words: "second" } } }]),
    );
    const other = sampleMark(2, "tool", { words: "spanner" });
    const late = commandOf([
      putMark(other),
      { table: "mark", id: mark.id, rev: 1, set: { fields: { v: 1, words: "third" } } },
    ]);
    const refusal = await apply(client, late).catch((error: unknown) => error);
    expect(refusal).toBeInstanceOf(Refused);
    const { stale } = refusal as Refused;
    expect(stale?.current).toMatchObject({ rev: 2, fields: { words: "second" } });
    expect(stale?.wanted).toEqual({ fields: { v: 1, words: "third" } });
    expect((await marks()).map((one) => one.fields.words)).toEqual(["second"]);
  });

  test("that does not fit its form is refused and says where", async () => {
    const { client, marks } = await workshopWithSample();
    const bad = putMark({ ...sampleMark(1, "measurement"), fields: { v: 1, asFound: "12 mm" } });
    await expect(apply(client, commandOf([bad]))).rejects.toThrow(/fields\.asFound/);
    await expect(
      apply(client, commandOf([putMark({ ...sampleMark(1, "part"), sittingId: "elsewhere" })])),
    ).rejects.toThrow(/not in this workshop/);
    expect(await marks()).toEqual([]);
  });
});

describe("undo and redo", () => {
  test("go back to the first state and forward to the last, deletions included", async () => {
    const { client, marks } = await workshopWithSample();
    const mark = sampleMark(3, "deferred", { words: "nuts finger-tight" });
    const states: unknown[] = [];
    const look = async () =>
      states.push((await marks()).filter((one) => one.gone === null).map((one) => one.fields.words));
    await look();
    await apply(client, commandOf([putMark(mark)]));
    await look();
    await apply(
      client,
      commandOf([{ table: "mark", id: mark.id, rev: 1, set: { fields: { v: 1, words: "mended" } } }]),
    );
    await look();
    await apply(
      client,
      commandOf([{ table: "mark", id: mark.id, rev: 2, set: { gone: "2026-05-03T10:00:00Z" } }]),
    );
    await look();

    const now = async () => (await marks()).filter((one) => one.gone === null).map((one) => one.fields.words);
    for (const expected of [states[2], states[1], states[0]]) {
      await step(client, { id: crypto.randomUUID(), buildId: "build-1", step: "undo" });
      expect(await now()).toEqual(expected);
    }
    expect(await step(client, { id: crypto.randomUUID(), buildId: "build-1", step: "undo" })).toBeNull();
    for (const expected of [states[1], states[2], states[3]]) {
      await step(client, { id: crypto.randomUUID(), buildId: "build-1", step: "redo" });
      expect(await now()).toEqual(expected);
    }
    expect(await step(client, { id: crypto.randomUUID(), buildId: "build-1", step: "redo" })).toBeNull();
  });

  test("going back to a point gives the state of that point, and undoing it gives back what came after", async () => {
    const { client, marks } = await workshopWithSample();
    const [one, two] = [sampleMark(1, "tool", { words: "one" }), sampleMark(2, "tool", { words: "two" })];
    const say = (id: string, rev: number, words: string): Put => ({
      table: "mark",
      id,
      rev,
      set: { fields: { v: 1, words } },
    });
    await apply(client, commandOf([putMark(one)]));
    const point = await apply(client, commandOf([say(one.id, 1, "one mended")]));
    const there = await state();
    await apply(client, commandOf([putMark(two), say(one.id, 2, "one again")]));
    await apply(
      client,
      commandOf([{ table: "mark", id: one.id, rev: 3, set: { gone: "2026-05-03T10:00:00Z" } }]),
    );
    await step(client, { id: crypto.randomUUID(), buildId: "build-1", step: "undo" });
    const last = await state();
    expect(last).toEqual(["one again", "two"]);
    await step(client, { id: crypto.randomUUID(), buildId: "build-1", step: { backTo: point.seq } });
    expect(await state()).toEqual(there);
    await step(client, { id: crypto.randomUUID(), buildId: "build-1", step: "undo" });
    expect(await state()).toEqual(last);

    async function state() {
      return (await marks()).filter((mark) => mark.gone === null).map((mark) => mark.fields.words);
    }
  });

  test("leave alone what the program noted meanwhile", async () => {
    const { client } = await workshopWithSample();
    const rename = { table: "recording" as const, id: "recording-1", rev: 1, set: { name: "evening.mp4" } };
    await apply(client, commandOf([rename]));
    const sha256 = "a".repeat(64);
    await apply(client, commandOf([{ ...rename, rev: 2, set: { sha256 } }]), "noted");
    await step(client, { id: crypto.randomUUID(), buildId: "build-1", step: "undo" });
    const document = await loadBuild(client, "build-1");
    expect(document?.recordings[0]).toMatchObject({ name: "first.mp4", sha256 });
  });
});

test("words of marks are found, follow every change, and a rebuild finds the same", async () => {
  const { client, workshop } = await workshopWithSample();
  const mark = sampleMark(3, "gotcha", { words: "The arrow is on the hidden face" });
  await apply(client, commandOf([putMark(mark)]));
  const ids = (text: string) => find(workshop, { text }).found.map((one) => one.row);
  expect(ids("hidden")).toEqual([mark.id]);
  await apply(
    client,
    commandOf([{ table: "mark", id: mark.id, rev: 1, set: { fields: { v: 1, words: "visible" } } }]),
  );
  expect(ids("hidden")).toEqual([]);
  rebuildSearch(workshop.database, projectionsIn(process.cwd()));
  expect(ids("visib")).toEqual([mark.id]);
  expect(ids('"; DROP TABLE Mark; --')).toEqual([]);
});
