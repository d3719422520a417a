import fs from "node:fs";
import path from "node:path";
import { Refused } from "./command.ts";
import { PrismaClient } from "./prisma-client/client.ts";
import { rebuildSearch } from "./search/rebuild.ts";
import { SqliteAdapter } from "./sqlite/adapter.ts";
import { MigrationError, migrate } from "./sqlite/migrate.ts";
import { settleOwnRoots } from "./sqlite/own-roots.ts";
import { hasSearchForm } from "./sqlite/search.ts";
import { isOfTheDisk, wordsOf } from "./told.ts";
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
 * @throws Refused or MigrationError, in words, when it cannot be opened. Nothing is changed then.
 */
export function openWorkshop(folder: string, programRoot: string): OpenWorkshop {
  const workshop = workshopAt(path.resolve(folder));
  try {
    return open(workshop, programRoot);
  } catch (error) {
    throw cannotOpen(workshop, error);
  }
}

function open(workshop: Workshop, programRoot: string): OpenWorkshop {
  const own = [workshop.recordings, workshop.stills, workshop.releases, workshop.made];
  for (const dir of own) fs.mkdirSync(dir, { recursive: true });
  refuseWithoutDatabase(workshop);
  const afterwards = fs.readFileSync(projectionsIn(programRoot), "utf8");
  migrate(workshop.database, migrationsIn(programRoot), afterwards);
  if (!hasSearchForm(workshop.database)) rebuildSearch(workshop.database, projectionsIn(programRoot));
  settleOwnRoots(workshop.database, own);
  return { workshop, client: new PrismaClient({ adapter: new SqliteAdapter(workshop.database) }) };
}

/** Films and pictures whose database is gone are no new workshop: one made beside them would look as if all were lost. */
function refuseWithoutDatabase({ folder, database, stills, recordings, releases }: Workshop): void {
  if ((fs.statSync(database, { throwIfNoEntry: false })?.size ?? 0) > 0) return;
  const kept = [stills, recordings, releases].filter((place) =>
    fs.readdirSync(place).some((name) => !name.startsWith(".")),
  );
  if (kept.length === 0) return;
  throw new Refused({
    found: `There are files in ${kept.map((place) => path.basename(place)).join(" and ")} of ${folder}, and the database beside them, workshop.db, is missing or empty.`,
    expected: "The database that names them, or an empty folder.",
    todo: "Put workshop.db back, or restore the latest backup into an empty folder. To begin anew, move what is there to another folder.",
  });
}

function cannotOpen({ folder }: Workshop, error: unknown): unknown {
  const words = isOfTheDisk(error) && !(error instanceof MigrationError) ? wordsOf(error) : null;
  if (!words) return error;
  const { found, expected, todo } = words;
  return new Refused(
    { found: `The workshop in ${folder} cannot be opened. ${found}`, expected, todo },
    { cause: error },
  );
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
