import fs from "node:fs";
import os from "node:os";
import path from "node:path";
import { Readable } from "node:stream";
import Database from "better-sqlite3";
import sharp from "sharp";
import { afterEach } from "vitest";
import { newCut, newGotcha, newKit, newScope, newSighting, newStill } from "#lib/build/index.ts";
import { keepStill } from "#lib/cli/doors/stills.ts";
import { type Drawing, plainDrawing } from "#lib/figure/index.ts";
import { bakePicture, receiveFile } from "#lib/media/index.ts";
import { addPlace, apply, type OpenWorkshop, rootFor } from "#lib/store/index.ts";
import { sampleDocument, sampleMark } from "../sample.ts";
import { commandOf, freshWorkshop, writeDocument } from "./fresh.ts";

export const programRoot = process.cwd();

const folders: string[] = [];
afterEach(() => {
  for (const folder of folders.splice(0)) removeFolder(folder);
});

/** Removes a folder into which what a killed process had started (ffmpeg) may still be writing. */
function removeFolder(folder: string): void {
  fs.rmSync(folder, { recursive: true, force: true, maxRetries: 20, retryDelay: 50 });
}

/** An empty folder, removed after the test. */
export function freshFolder(): string {
  const folder = fs.mkdtempSync(path.join(os.tmpdir(), "kept-"));
  folders.push(folder);
  return folder;
}

/** What lies in the workshop that most of these tests begin with. */
export interface KeptWorkshop extends OpenWorkshop {
  sha256: string;
  /** The film that stays where it lies. */
  elsewhere: string;
}

/**
 * A workshop with something of everything: a build with marks, one of them struck out, an edit and an answer whose
 * mark is gone, a book of gotchas that no build has met, captions, an edit list, a still, a film brought in, and one listed where it lies.
 */
export async function workshopWithEverything(): Promise<KeptWorkshop> {
  const opened = freshWorkshop();
  const { client, workshop } = opened;
  const { sha256, jpeg, width, height } = await bakePicture(await somePicture());
  await keepStill(workshop, sha256, jpeg);
  const film = await receiveFile(Readable.from([Buffer.from("the bytes of a film".repeat(5000))]), {
    folder: workshop.recordings,
    name: "first.mp4",
  });
  const document = sampleDocument();
  const [first] = document.recordings;
  if (!first) throw new Error("the sample has a recording");
  Object.assign(first, { sha256: film.sha256 });
  document.recordings.push({ ...first, id: "recording-2", name: "second.mp4", sha256: null });
  const mark = sampleMark(12, "part", { item: "Cover", event: "removed", words: "arrow up" });
  document.marks = [
    mark,
    sampleMark(10, "action", { words: "Take off the cover" }),
    sampleMark(11, "gotcha", { words: "The gasket tears" }, { gone: "2026-05-03T10:00:00.000Z" }),
  ];
  const drawing: Drawing = {
    ...plainDrawing,
    view: "view A",
    straighten: 1.5,
    balloons: [{ id: "balloon-1", item: "item-cover", at: { x: 0.4, y: 0.6 }, seat: { x: 1.1, y: 0.5 } }],
    dimensions: [
      { id: "dimension-1", mark: mark.id, from: { x: 0.1, y: 0.2 }, to: { x: 0.9, y: 0.2 }, stand: 0.1 },
    ],
  };
  document.stills = [
    newStill({ id: "still-1", buildId: "build-1", markId: mark.id, sha256, width, height, at: 12, drawing }),
  ];
  document.edits = [
    {
      id: "edit-1",
      buildId: "build-1",
      markId: "long-gone",
      edit: "title",
      value: "x",
      basis: "",
      gone: null,
      rev: 0,
    },
  ];
  document.answers = [
    { id: "answer-1", buildId: "build-1", key: "k", evidence: "e", reason: "so it was", gone: null, rev: 0 },
  ];
  document.decisions = [
    {
      id: "decision-1",
      buildId: "build-1",
      recordingId: "recording-1",
      kind: "part",
      at: 12,
      until: 14,
      value: "remove cover",
      verdict: "dropped",
      markId: null,
      gone: null,
      rev: 0,
    },
  ];
  document.kits = [
    newKit({
      id: "kit-1",
      buildId: "build-1",
      name: "Seal kit",
      text: "2 x Seal",
      lines: { "2 x Seal": { leftWhy: "a spare" } },
    }),
  ];
  document.captions = [
    {
      id: "captions-1",
      buildId: "build-1",
      recordingId: "recording-1",
      name: "first.vtt",
      clock: "recording",
      text: "WEBVTT\n",
      gone: null,
      rev: 0,
    },
  ];
  document.cuts = [
    newCut({
      id: "cut-1",
      buildId: "build-1",
      form: "cmx3600",
      name: "The film",
      rate: "25",
      text: "001 first V C 00:00:01:00 00:00:05:00 01:00:00:00 01:00:04:00\n",
      reels: [{ reel: "first", recordingId: "recording-1", startsAt: "" }],
    }),
  ];
  document.gotchas = [
    newGotcha({
      id: "gotcha-1",
      symptom: '=Gasket, "paper", tears',
      noted: "2026-05-03T10:00:00.000Z",
      appliesTo: [newScope({ assembly: "Water pump", kit: "Seal kit" }), newScope({ item: "Gasket" })],
    }),
    newGotcha({
      id: "gotcha-2",
      symptom: "The gasket rips",
      noted: "2026-05-04T10:00:00.000Z",
      joinedInto: "gotcha-1",
    }),
    newGotcha({
      id: "gotcha-3",
      symptom: "Taken back",
      noted: "2026-05-04T10:00:00.000Z",
      gone: "2026-05-05T10:00:00.000Z",
    }),
  ];
  document.sightings = [
    newSighting({
      id: "sighting-1",
      gotchaId: "gotcha-2",
      outcome: "avoided",
      at: "2026-05-06T10:00:00.000Z",
    }),
  ];
  await writeDocument(opened, document);
  await apply(
    client,
    commandOf([{ table: "mark", id: mark.id, rev: 1, set: { fields: { ...mark.fields, count: "1" } } }]),
  );
  const { size, mtimeMs } = fs.statSync(film.path);
  await addPlace(client, await rootFor(client, workshop.recordings, true), {
    recordingId: "recording-1",
    path: film.diskName,
    size,
    modifiedAt: mtimeMs,
    role: "original",
  });
  return { ...opened, sha256, elsewhere: await listElsewhere(opened) };
}

async function listElsewhere({ client }: OpenWorkshop): Promise<string> {
  const folder = freshFolder();
  const file = path.join(folder, "second.mp4");
  fs.writeFileSync(file, "another film");
  const { size, mtimeMs } = fs.statSync(file);
  const place = {
    recordingId: "recording-2",
    path: "second.mp4",
    size,
    modifiedAt: mtimeMs,
    role: "original" as const,
  };
  await addPlace(client, await rootFor(client, folder, false), place);
  return file;
}

async function somePicture(): Promise<Buffer> {
  const noise = { type: "gaussian" as const, mean: 128, sigma: 40 };
  return sharp({ create: { width: 64, height: 48, channels: 3, background: "white", noise } })
    .png()
    .toBuffer();
}

/** Every row of every table of a database, or of those that are named, in an order that depends on the rows alone. */
export function allRows(file: string, only?: readonly string[]): Record<string, unknown[]> {
  const database = new Database(file, { readonly: true });
  try {
    const tables = database
      .prepare(
        "SELECT name FROM sqlite_master WHERE type = 'table' AND name NOT LIKE 'sqlite_%' AND name NOT LIKE 'mark_words%' AND name NOT LIKE 'search_words%' AND name <> 'search_term' ORDER BY name",
      )
      .pluck()
      .all() as string[];
    return Object.fromEntries(
      tables
        .filter((table) => !only || only.includes(table))
        .map((table) => [
          table,
          (database.prepare(`SELECT * FROM "${table}"`).all() as object[]).map(withoutNumber).sort(byText),
        ]),
    );
  } finally {
    database.close();
  }
}

/** The search tables number their entries as they come; a rebuild numbers them anew. */
function withoutNumber(row: object): object {
  const { number: _, ...rest } = row as { number?: number };
  return rest;
}

/** What can be found. */
export function foundEntries(file: string): object[] {
  return (allRows(file, ["search_entry"]).search_entry ?? []) as object[];
}

function byText(a: object, b: object): number {
  return JSON.stringify(a) < JSON.stringify(b) ? -1 : 1;
}

/** Every file below a folder by its path, with its bytes. */
export function allFiles(folder: string): Map<string, Buffer> {
  const names = fs.readdirSync(folder, { recursive: true, encoding: "utf8" }).sort();
  return new Map(
    names
      .filter((name) => fs.statSync(path.join(folder, name)).isFile())
      .map((name) => [name.split(path.sep).join("/"), fs.readFileSync(path.join(folder, name))]),
  );
}

/** Changes a database past the program, as a fault or another program would. */
export function tamper(file: string, sql: string): void {
  const database = new Database(file);
  database.pragma("foreign_keys = OFF");
  database.exec(sql);
  database.close();
}
