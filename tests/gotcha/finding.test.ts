import { describe, expect, test } from "vitest";
import { newGotcha, newItem } from "#lib/build/index.ts";
import { apply, find, type Put } from "#lib/store/index.ts";
import { sampleDocument, sampleMark } from "../sample.ts";
import { commandOf, freshWorkshop, writeDocument } from "../store/fresh.ts";
import { wanted } from "./finding-truth.ts";
import { measureFinding } from "./measure.ts";
import { random } from "./random.ts";

/** The wanted entries as gotchas, marks and parts in turn, among two thousand others made of the same words. */
async function workshopToSearch() {
  const opened = freshWorkshop();
  const dice = random(7);
  const words = wanted.flatMap((one) => one.words.split(" "));
  const marks = Array.from({ length: 2000 }, (_, index) =>
    sampleMark(index, "action", { words: dice.some(words, 6).join(" ") }, { id: `other-${index}` }),
  );
  const document = sampleDocument();
  document.marks = marks;
  for (const [index, { id, words: said, number }] of wanted.entries()) {
    if (index % 3 === 0) {
      const about = { sourceNote: number, noted: "2026-01-01T00:00:00.000Z" };
      document.gotchas.push(newGotcha({ id, symptom: said, ...about }));
    } else if (index % 3 === 1) {
      document.marks.push(sampleMark(5000 + index, "part", { item: said, partNumber: number }, { id }));
    } else {
      document.items.push(newItem({ id, machineId: "machine-1", name: said, partNumber: number }));
    }
  }
  await writeDocument(opened, document);
  return opened;
}

describe("two hundred questions with a written truth", () => {
  test("the right entry is first in 80 % and among five in 95 %", async () => {
    const { workshop } = await workshopToSearch();
    const questions = wanted.flatMap(({ id, questions: asked }) =>
      asked.map(([kind, text]) => ({ kind, text, id })),
    );
    const { count, all, missed } = measureFinding(workshop, questions);
    console.log(count, missed.join("; "));
    expect(all.of).toBe(200);
    expect(all.first).toBeGreaterThanOrEqual(160);
    expect(all.five).toBeGreaterThanOrEqual(190);
  });
});

test("filters combine with words, and struck-out rows are not found", async () => {
  const opened = freshWorkshop();
  const document = sampleDocument();
  document.marks = [
    sampleMark(1, "part", { item: "Spring", container: "tin 3" }),
    sampleMark(2, "measurement", { words: "Spring, free length" }),
    sampleMark(3, "action", { words: "Spring clean" }, { gone: "2026-05-03T10:00:00.000Z" }),
  ];
  await writeDocument(opened, document);
  const ids = (ask: Parameters<typeof find>[1]) => find(opened.workshop, ask).found.map((one) => one.row);
  expect(ids({ text: "spring" }).sort()).toEqual(["measurement-2", "part-1"]);
  expect(ids({ text: "spring", kinds: ["measurement"] })).toEqual(["measurement-2"]);
  expect(ids({ text: "spring", kinds: ["measurement", "part"], builds: ["build-1"] })).toHaveLength(2);
  expect(ids({ text: "spring", builds: ["another"] })).toEqual([]);
  // "Where did that spring go?" is answered by the moment at which it was put away.
  const [first] = find(opened.workshop, { text: "Where did that spring go?" }).found;
  expect(first).toMatchObject({ row: "part-1", at: 1, recording: "recording-1", sitting: "sitting-1" });
  const gone: Put = { table: "build", id: "build-1", rev: 1, set: { gone: "2026-05-03T10:00:00.000Z" } };
  await apply(opened.client, commandOf([gone]));
  expect(ids({ text: "spring" })).toEqual([]);
});

test("what was said is found at its second, in WebVTT and in SRT", async () => {
  const opened = freshWorkshop();
  const document = sampleDocument();
  const track = {
    buildId: "build-1",
    recordingId: "recording-1",
    name: "a",
    clock: "recording" as const,
    gone: null,
    rev: 0,
  };
  document.captions = [
    {
      ...track,
      id: "vtt",
      text: "WEBVTT\n\n00:01:05.500 --> 00:01:09.000\n<v Ann>mind the collar\n\nNOTE collar\n",
    },
    { ...track, id: "srt", text: "1\r\n00:00:07,250 --> 00:00:09,000\r\nthe flange is thin\r\n" },
  ];
  await writeDocument(opened, document);
  const at = (text: string) =>
    find(opened.workshop, { text, kinds: ["cue"] }).found.map((one) => [one.row, one.at]);
  expect(at("collar")).toEqual([["vtt", 65.5]]);
  expect(at("flange")).toEqual([["srt", 7.25]]);
});
