import { isDeepStrictEqual } from "node:util";
import { type Applied, type Command, type Put, Refused, type Written } from "./command.ts";
import type { Prisma, PrismaClient } from "./prisma-client/client.ts";
import { indexRows } from "./search/index.ts";
import { type Row, readRow, type TableName, tables, writeRow } from "./tables.ts";

type Client = Prisma.TransactionClient;

/** One row in the change log: null before for a new row. */
export interface Entry {
  table: TableName;
  id: string;
  before: Row | null;
  after: Row;
}

export type ChangeKind = "do" | "undo" | "redo" | "noted";

/** How long one command may take, and wait for its turn, in milliseconds. */
const PATIENCE = { timeout: 60_000, maxWait: 30_000 };

/**
 * Carries out a command in one transaction and appends it to the change log. When this returns, it is on disk.
 * `noted` is for what the program itself finds out (a recording's length): it is in the log, but not undone.
 *
 * @throws Refused when a row has changed since it was seen, or does not fit its form. Nothing is written then.
 */
export async function apply(
  client: PrismaClient,
  command: Command,
  kind: "do" | "noted" = "do",
): Promise<Applied> {
  return inTransaction(client, async (tx) => {
    const repeated = await findChange(tx, command.id);
    if (repeated) return repeated;
    const entries: Entry[] = [];
    for (const put of command.puts) {
      const entry = await applyPut(tx, put);
      refuseForeign(entry, command.buildId);
      entries.push(entry);
    }
    return append(tx, { ...command, kind, ofSeq: null, entries });
  });
}

/** Runs work in one transaction that owns the connection. */
export function inTransaction<T>(client: PrismaClient, work: (tx: Client) => Promise<T>): Promise<T> {
  return client.$transaction(work, PATIENCE).catch((error: unknown) => {
    if ((error as { code?: string }).code === "P2003") {
      throw new Refused({
        found: "The change speaks of a record that is not in this workshop.",
        expected: "A build, sitting or recording that exists was expected.",
        todo: "Load the page again; if it was open in two places, look at the other one.",
      });
    }
    throw error;
  });
}

/** What a command came to when it was first carried out; null if it was not. */
export async function findChange(tx: Client, id: string): Promise<Applied | null> {
  const change = await tx.change.findUnique({ where: { id } });
  if (!change) return null;
  const entries = JSON.parse(change.entriesJson) as Entry[];
  return {
    seq: change.seq,
    label: change.label,
    rows: entries.map(({ table, after }) => ({ table, row: after })),
  };
}

async function applyPut(tx: Client, put: Put): Promise<Entry> {
  const before = await readRow(tx, put.table, put.id);
  if ((before?.rev ?? 0) !== put.rev) {
    throw new Refused({
      found: `This ${put.table} has been changed somewhere else since it was shown here.`,
      expected: `Revision ${put.rev} was expected, revision ${before?.rev ?? 0} was found.`,
      todo: "Look at both versions and choose; neither has been thrown away.",
      stale: { table: put.table, id: put.id, current: before, wanted: put.set },
    });
  }
  return { table: put.table, id: put.id, before, after: await write(tx, put.table, put.id, before, put.set) };
}

/**
 * A row stays in its build, and is changed in the history of that build alone: else undoing there would leave it as it
 * is, and undoing here would change what is open elsewhere. A sighting and a machine belong to no build.
 */
function refuseForeign({ table, before, after }: Entry, buildId: string | null): void {
  if (table === "sighting" || after.buildId === undefined) return;
  const owner = before?.buildId ?? buildId ?? after.buildId;
  if (owner === after.buildId && (buildId === null || buildId === owner)) return;
  throw new Refused({
    found: `The ${table} ${after.id} belongs to another build of this workshop.`,
    expected: "Records of the one build that is being changed.",
    todo: "If a folder was brought in that is a changed copy of a build here, give its build the id that the first one has: you are then asked whether to replace it or to keep both.",
  });
}

/** Writes a row with some columns changed, checked against its form, its revision counted up. */
export async function write(
  tx: Client,
  table: TableName,
  id: string,
  before: Row | null,
  set: Record<string, unknown>,
): Promise<Row> {
  const wanted = { gone: null, ...before, ...set, id, rev: (before?.rev ?? 0) + 1 };
  const checked = tables[table].row.safeParse(wanted);
  if (!checked.success) {
    const issue = checked.error.issues[0];
    throw new Refused({
      found: `The ${table} was not kept: ${issue?.path.join(".") || "the row"}: ${issue?.message}.`,
      expected: "A value of the form described in docs/build-folder.md was expected.",
      todo: "Mend that value and try again.",
    });
  }
  const after = asKept(checked.data as Row);
  await writeRow(tx, table, after);
  return after;
}

/** A row as the database gives it back: half a letter (a lone surrogate) is none in UTF-8. */
function asKept(row: Row): Row {
  const columns = Object.entries(row).map(([column, value]) => [
    column,
    typeof value === "string" ? value.replace(/\p{Cs}/gu, "\ufffd") : value,
  ]);
  return Object.fromEntries(columns) as Row;
}

export interface ChangeToAppend {
  id: string;
  buildId: string | null;
  label: string;
  kind: ChangeKind;
  ofSeq: number | null;
  entries: Entry[];
}

/** Appends a change to the log and brings the projections up to date, in the same transaction. */
export async function append(tx: Client, change: ChangeToAppend): Promise<Applied> {
  const { entries, ...rest } = change;
  const data = {
    id: rest.id,
    buildId: rest.buildId,
    label: rest.label,
    kind: rest.kind,
    ofSeq: rest.ofSeq,
    at: new Date().toISOString(),
    entriesJson: JSON.stringify(entries),
  };
  const { seq } = await tx.change.create({ data });
  const rows: Written[] = entries.map(({ table, after }) => ({ table, row: after }));
  await indexRows(tx, rows);
  return { seq, label: rest.label, rows };
}

/** The columns in which two versions of a row differ, revision apart, with the values of the second. */
export function difference(from: Row, to: Row): Record<string, unknown> {
  const columns = new Set([...Object.keys(from), ...Object.keys(to)]);
  columns.delete("rev");
  return Object.fromEntries(
    [...columns]
      .filter((column) => !isDeepStrictEqual(from[column], to[column]))
      .map((column) => [column, to[column]]),
  );
}
