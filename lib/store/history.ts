import { isDeepStrictEqual } from "node:util";
import { append, difference, type Entry, findChange, inTransaction, write } from "./apply.ts";
import { type Applied, type HistoryStep, Refused } from "./command.ts";
import type { Prisma, PrismaClient } from "./prisma-client/client.ts";
import { type Row, readRow } from "./tables.ts";

type Client = Prisma.TransactionClient;

interface LogLine {
  seq: number;
  kind: string;
  ofSeq: number | null;
}

/** What can be undone and redone in a build: sequence numbers of changes, the next one last. */
export interface Stacks {
  undo: number[];
  redo: number[];
}

/**
 * Reads the log of a build as two stacks. A change goes on the first; undoing moves it to the second; redoing
 * moves it back; a new change empties the second (its changes stay in the log, where the history shows them).
 */
export function stacksOf(log: readonly LogLine[]): Stacks {
  const stacks: Stacks = { undo: [], redo: [] };
  for (const { seq, kind, ofSeq } of log) {
    if (kind === "do") {
      stacks.undo.push(seq);
      stacks.redo = [];
    } else if (kind === "undo" && ofSeq !== null) {
      stacks.undo = stacks.undo.filter((one) => one !== ofSeq);
      stacks.redo.push(ofSeq);
    } else if (kind === "redo" && ofSeq !== null) {
      stacks.redo = stacks.redo.filter((one) => one !== ofSeq);
      stacks.undo.push(ofSeq);
    }
  }
  return stacks;
}

/** What can be undone and redone in a build now. */
export async function stacks(client: Client, buildId: string): Promise<Stacks> {
  const log = await client.change.findMany({
    where: { buildId },
    select: { seq: true, kind: true, ofSeq: true },
    orderBy: { seq: "asc" },
  });
  return stacksOf(log);
}

/**
 * Undoes the latest change of a build, or redoes the latest undone one, by appending its inverse.
 *
 * @returns null when there is nothing to undo or redo.
 * @throws Refused when a later change has altered the same values from outside this history.
 */
export async function step(
  client: PrismaClient,
  { id, buildId, step }: HistoryStep,
): Promise<Applied | null> {
  return inTransaction(client, async (tx) => {
    const repeated = await findChange(tx, id);
    if (repeated) return repeated;
    if (typeof step === "object") return backTo(tx, id, buildId, step.backTo);
    const seq = (await stacks(tx, buildId))[step].at(-1);
    if (seq === undefined) return null;
    const change = await tx.change.findUniqueOrThrow({ where: { seq } });
    const taken = step === "undo" ? change : await undoingOf(tx, buildId, seq);
    const written: Entry[] = [];
    for (const entry of (JSON.parse(taken.entriesJson) as Entry[]).toReversed()) {
      const done = await retrace(tx, invert(entry));
      if (done) written.push(done);
    }
    const label = `${step}: ${change.label}`.slice(0, 500);
    return append(tx, { id, buildId, label, kind: step, ofSeq: seq, entries: written });
  });
}

/** The change that undid another the last time: redoing takes back what it did, and no more. */
async function undoingOf(tx: Client, buildId: string, seq: number): Promise<{ entriesJson: string }> {
  return tx.change.findFirstOrThrow({
    where: { buildId, kind: "undo", ofSeq: seq },
    orderBy: { seq: "desc" },
    select: { entriesJson: true },
  });
}

/** An entry of a row that is there before and after. */
interface Inverse extends Entry {
  before: Row;
}

/** When something was struck out does not matter to whether it is. */
function isThere(column: string, current: unknown, wanted: unknown): boolean {
  if (column === "gone" && current !== null && wanted !== null) return true;
  return isDeepStrictEqual(current, wanted);
}

/** The entry that takes a row from its later state to its earlier one; a new row is struck out. */
function invert(entry: Entry): Inverse {
  const struckOut = { ...entry.after, gone: new Date().toISOString() };
  return { ...entry, before: entry.after, after: entry.before ?? struckOut };
}

/**
 * Writes the columns that an entry changed, and only those, where they still are what it found; null where nothing is
 * left to write, since something else has brought them there (the program struck out what was brought in twice).
 */
async function retrace(tx: Client, entry: Inverse): Promise<Entry | null> {
  const current = await readRow(tx, entry.table, entry.id);
  const set = difference(entry.before, entry.after);
  for (const [column, value] of Object.entries(set)) {
    if (current && isThere(column, current[column], value)) delete set[column];
  }
  const moved = Object.keys(set).filter(
    (column) => !isDeepStrictEqual(current?.[column], entry.before[column]),
  );
  if (current && Object.keys(set).length === 0) return null;
  if (!current || moved.length > 0) {
    throw new Refused({
      found: `The ${entry.table} has been changed since, in ${moved.join(", ") || "all"}.`,
      expected: "The values that this change left were expected.",
      todo: "Change it by hand, or go back to an earlier point in the history, which shows what it was.",
      stale: { table: entry.table, id: entry.id, current, wanted: set },
    });
  }
  const after = await write(tx, entry.table, entry.id, current, set);
  return { table: entry.table, id: entry.id, before: current, after };
}

/**
 * Takes a build back to how it was after the change `seq`: every column that was changed since by hand gets the value
 * it had, and rows made since are struck out. It is one new change: undoing it brings back all that came after, and
 * what the program noted meanwhile is left alone.
 */
async function backTo(tx: Client, id: string, buildId: string, seq: number): Promise<Applied | null> {
  const since = await tx.change.findMany({
    where: { buildId, seq: { gt: seq }, kind: { not: "noted" } },
    orderBy: { seq: "desc" },
  });
  const entries = since.flatMap((change) => (JSON.parse(change.entriesJson) as Entry[]).toReversed());
  const rows = new Map<string, { entry: Entry; set: Record<string, unknown> }>();
  // Latest first, so that of several values of a column the earliest one stands in the end.
  for (const entry of entries) {
    const row = rows.get(`${entry.table} ${entry.id}`) ?? { entry, set: {} };
    const { before, after } = invert(entry);
    rows.set(`${entry.table} ${entry.id}`, {
      entry,
      set: { ...row.set, ...difference(before, after) },
    });
  }
  const written: Entry[] = [];
  for (const { entry, set } of rows.values()) {
    const before = await readRow(tx, entry.table, entry.id);
    if (!before || isDeepStrictEqual(before, { ...before, ...set })) continue;
    const after = await write(tx, entry.table, entry.id, before, set);
    written.push({ table: entry.table, id: entry.id, before, after });
  }
  if (written.length === 0) return null;
  const point = await tx.change.findUnique({ where: { seq } });
  const label = `Back to: ${point?.label ?? "the beginning"}`.slice(0, 500);
  return append(tx, { id, buildId, label, kind: "do", ofSeq: null, entries: written });
}

/** One line of a build's history. */
export interface HistoryLine {
  seq: number;
  at: string;
  label: string;
  kind: string;
}

/** What changed in a build, latest first. */
export async function history(client: Client, buildId: string, limit = 500): Promise<HistoryLine[]> {
  return client.change.findMany({
    where: { buildId },
    select: { seq: true, at: true, label: true, kind: true },
    orderBy: { seq: "desc" },
    take: limit,
  });
}
