import fs from "node:fs";
import path from "node:path";
import { PrismaClient } from "./prisma-client/client.ts";
import { SqliteAdapter } from "./sqlite/adapter.ts";
import { migrate } from "./sqlite/migrate.ts";
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
  const workshop = workshopAt(folder);
  for (const dir of [workshop.recordings, workshop.stills, workshop.releases, workshop.made]) {
    fs.mkdirSync(dir, { recursive: true });
  }
  const afterwards = fs.readFileSync(path.join(programRoot, "lib/store/sqlite/projections.sql"), "utf8");
  migrate(workshop.database, path.join(programRoot, "prisma/migrations"), afterwards);
  return { workshop, client: new PrismaClient({ adapter: new SqliteAdapter(workshop.database) }) };
}

const shared = globalThis as { witnessMarkWorkshop?: OpenWorkshop };

/** The one workshop of this process, opened at the first call: one client, however the code was bundled. */
export function theWorkshop(): OpenWorkshop {
  shared.witnessMarkWorkshop ??= openWorkshop(workshopFolder(), process.cwd());
  return shared.witnessMarkWorkshop;
}
