import { type Finding, worstFirst } from "#lib/finding/index.ts";
import { migrationsIn } from "../open.ts";
import { openToRead } from "../sqlite/read.ts";
import type { Workshop } from "../workshop.ts";
import { checkForm, checkReferences, checkWhole } from "./database.ts";
import { checkOrphans, checkUnknown } from "./files.ts";
import type { Look, Looked, OnProgress } from "./look.ts";
import { rebuildProjections } from "./rebuild.ts";
import { checkPlaces } from "./recordings.ts";
import { checkReleases } from "./releases.ts";
import { checkLog, checkRows } from "./rows.ts";
import { checkPictures, checkStills } from "./stills.ts";
import { checkWords } from "./words.ts";

export type { Looked, OnProgress, Progress } from "./look.ts";

/** What an audit came to. */
export interface Audit {
  workshop: string;
  /** When it was made, ISO 8601 in UTC. */
  at: string;
  /** Worst first. */
  findings: Finding[];
  looked: Looked;
  /** Projections that were made anew because that was asked for. */
  rebuilt: string[];
}

export interface AuditOptions {
  /** The folder of this program, where the migrations lie. */
  programRoot: string;
  /** Make the projections anew first. Nothing else is ever mended. */
  rebuild?: boolean;
  /** Read films that are listed where they lie to their end too; that may take hours. */
  films?: boolean;
  onProgress?: OnProgress;
  signal?: AbortSignal;
}

/** Of files alone: they are looked at even where the database is damaged. */
const checksOfFiles = [checkPictures, checkUnknown];

/** Of rows alone, all as they are at one moment. */
const checksOfRows = [checkReferences, checkRows, checkLog, checkWords];

/** Of the files that rows name, and of those that none names. */
const checksOfBoth = [checkStills, checkReleases, checkPlaces, checkOrphans];

/**
 * Looks through a workshop for anything that is damaged, lost or left over. It reads only, in its own connection,
 * and may run while the program does; it holds its own process up, so the program runs it as another.
 *
 * @throws Refused when there is no workshop there
 */
export async function audit(workshop: Workshop, options: AuditOptions): Promise<Audit> {
  const { programRoot, rebuild = false, films = false, signal } = options;
  const onProgress: OnProgress = (progress) => {
    signal?.throwIfAborted();
    options.onProgress?.(progress);
  };
  const rebuilt = rebuild && !isDamaged(workshop) ? await rebuildProjections(workshop, programRoot) : [];
  const database = openToRead(workshop.database);
  const looked = { rows: 0, stills: 0, recordings: 0, elsewhere: 0, bytes: 0 };
  const look: Look = { workshop, database, migrations: migrationsIn(programRoot), films, looked, onProgress };
  try {
    const findings = worstFirst(await run(look));
    return { workshop: workshop.folder, at: new Date().toISOString(), findings, looked, rebuilt };
  } finally {
    database.close();
  }
}

/** Whether more than the search table is damaged. */
function isDamaged({ database: file }: Workshop): boolean {
  const database = openToRead(file);
  try {
    return checkWhole(database).some((one) => one.rule === "database-damaged");
  } finally {
    database.close();
  }
}

async function run(look: Look): Promise<Finding[]> {
  look.onProgress({ words: "Reading the database through", done: 0, of: 0 });
  const whole = checkWhole(look.database);
  const damaged = whole.some((one) => one.rule === "database-damaged");
  const form = damaged ? [] : checkForm(look);
  const findings = [...whole, ...form];
  for (const check of checksOfFiles) findings.push(...(await check(look)));
  if (damaged || form.length > 0) return findings;
  look.database.exec("BEGIN");
  for (const check of checksOfRows) {
    if (check !== checkWords || whole.length === 0) findings.push(...check(look));
  }
  look.database.exec("COMMIT");
  for (const check of checksOfBoth) findings.push(...(await check(look)));
  return findings;
}
