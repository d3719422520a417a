import path from "node:path";
import { toCsv, toJson } from "#lib/gotcha/index.ts";
import { loadBook } from "../book.ts";
import { writeWhole } from "../disk.ts";
import type { PrismaClient } from "../prisma-client/client.ts";

/** Writes the gotcha book, which belongs to no build: whole as JSON, and as a table to read in any spreadsheet. */
export async function writeGotchas(backup: string, client: PrismaClient): Promise<void> {
  const book = await loadBook(client);
  await writeWhole(path.join(backup, "gotchas", "book.json"), toJson(book));
  await writeWhole(path.join(backup, "gotchas", "book.csv"), toCsv(book));
}
