import Database from "better-sqlite3";
import { expect, test } from "vitest";
import { apply, loadBuild } from "#lib/store/index.ts";
import { sampleDocument, sampleMark } from "../sample.ts";
import { commandOf, freshWorkshop, writeDocument } from "./fresh.ts";

test("a mark made while another process holds the workshop for longer than one wait is kept, once", async () => {
  const { client, workshop } = freshWorkshop();
  await writeDocument({ client, workshop }, sampleDocument());
  const other = new Database(workshop.database);
  other.exec("BEGIN IMMEDIATE");
  const mark = sampleMark(1, "tool", { words: "spanner" });
  const written = apply(client, commandOf([{ table: "mark", id: mark.id, rev: 0, set: { ...mark } }]));
  // SQLite's own wait holds this process up, so that this comes after the first refusal.
  await new Promise((resolve) => setTimeout(resolve, 100));
  other.exec("COMMIT");
  other.close();
  await written;
  expect((await loadBuild(client, "build-1"))?.marks.map((one) => one.id)).toEqual([mark.id]);
});
