import fs from "node:fs";
import path from "node:path";
import { PrismaClient } from "./prisma-client/client.ts";
import { rebuildSearch } from "./search/rebuild.ts";
import { SqliteAdapter } from "./sqlite/adapter.ts";
import { migrate } from "./sqlite/migrate.ts";
import { settleOwnRoots } from "./sqlite/own-roots.ts";
import { hasSearchForm } from "./sqlite/search.ts";
import { type Workshop, workshopAt, workshopFolder } from "./workshop.ts";

/** A workshop that has been opened: its folders and its database. */
export interface OpenWorkshop {
  workshop: Workshop;
  client: PrismaClient;
}

/**
 * Opens a workshop: makes its folders, brings its database to the form of this version, and connects.
 *
 * @param programRoot the folder of this program, where the migrations lie.
 */
export function openWorkshop(folder: string, programRoot: string): OpenWorkshop {
  const workshop = workshopAt(path.resolve(folder));
  const own = [workshop.recordings, workshop.stills, workshop.releases, workshop.made];
  for (const dir of own) fs.mkdirSync(dir, { recursive: true });
  const afterwards = fs.readFileSync(projectionsIn(programRoot), "utf8");
  migrate(workshop.database, migrationsIn(programRoot), afterwards);
  if (!hasSearchForm(workshop.database)) rebuildSearch(workshop.database, projectionsIn(programRoot));
  settleOwnRoots(workshop.database, own);
  return { workshop, client: new PrismaClient({ adapter: new SqliteAdapter(workshop.database) }) };
}

/** Where the migrations lie in the program's folder. */
export function migrationsIn(programRoot: string): string {
  return path.join(programRoot, "prisma/migrations");
}

/** The SQL that makes the projections' tables; it may be repeated. */
export function projectionsIn(programRoot: string): string {
  return path.join(programRoot, "lib/store/sqlite/projections.sql");
}

const shared = globalThis as { witnessMarkWorkshop?: OpenWorkshop };

/** The one workshop of this process, opened at the first call: one client, however the code was bundled. */
export function theWorkshop(): OpenWorkshop {
  shared.witnessMarkWorkshop ??= openWorkshop(workshopFolder(), process.cwd());
  return shared.witnessMarkWorkshop;
}
