import fs from "node:fs";
import Database from "better-sqlite3";
import { openWorkshop, projectionsIn } from "../open.ts";
import { rebuildSearch } from "../search.ts";
import type { Workshop } from "../workshop.ts";

/**
 * Makes the projections anew from the rows they follow from. The table itself is made anew too, since a damaged
 * one cannot be emptied.
 *
 * @returns the names of what was made
 */
export async function rebuildProjections(workshop: Workshop, programRoot: string): Promise<string[]> {
  const { client } = openWorkshop(workshop.folder, programRoot);
  try {
    remake(workshop.database, fs.readFileSync(projectionsIn(programRoot), "utf8"));
    await rebuildSearch(client);
  } finally {
    await client.$disconnect();
  }
  return ["mark_words"];
}

function remake(file: string, sql: string): void {
  const database = new Database(file, { timeout: 10_000 });
  try {
    database.transaction(() => database.exec(`DROP TABLE IF EXISTS mark_words;\n${sql}`)).immediate();
  } finally {
    database.close();
  }
}
