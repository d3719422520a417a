import { type Recording, recordingRow } from "#lib/build/index.ts";
import { append, type Entry, inTransaction } from "./apply.ts";
import type { Written } from "./command.ts";
import type { Prisma, PrismaClient } from "./prisma-client/client.ts";
import { type Row, readRow, readRows, writeRow } from "./tables.ts";

/** Recordings that have a file, and have not been looked at or not been read whole yet; by path. */
export interface Waiting {
  look: string[];
  hash: string[];
}

/** The recording of that id, struck out or not; null when there is none. */
export async function readRecording(client: PrismaClient, id: string): Promise<Recording | null> {
  return (await readRow(client, "recording", id)) as unknown as Recording | null;
}

/**
 * Writes what the program itself found out about a recording. It is in the log, and is not undone. The revision stays:
 * it counts what people change, and what somebody writes at the same time in other columns is not stale for it.
 *
 * @param what says what is to be noted, of the row as it now is; nothing is written for nothing
 */
export async function noteRecording(
  client: PrismaClient,
  id: string,
  what: (row: Recording) => { label: string; set: Partial<Omit<Recording, "id" | "rev">> },
): Promise<Written[]> {
  return inTransaction(client, async (tx) => {
    const before = await readRow(tx, "recording", id);
    if (!before) return [];
    const { label, set } = what(before as unknown as Recording);
    if (Object.keys(set).length === 0) return [];
    const after = recordingRow.parse({ ...before, ...set, id, rev: before.rev }) as unknown as Row;
    await writeRow(tx, "recording", after);
    const entries: Entry[] = [{ table: "recording", id, before, after }];
    const change = {
      id: crypto.randomUUID(),
      label: label.slice(0, 500),
      kind: "noted" as const,
      ofSeq: null,
    };
    return (await append(tx, { ...change, buildId: String(before.buildId), entries })).rows;
  });
}

const NOTHING = "null";
const withFile = { gone: null, places: { some: { role: "original" } } } satisfies Prisma.RecordingWhereInput;
const notLookedAt = {
  OR: [
    { probeJson: NOTHING, troubleJson: NOTHING },
    { places: { some: { role: "original", fingerprint: "", size: { gt: 0 } } } },
  ],
} satisfies Prisma.RecordingWhereInput;

export async function waiting(client: PrismaClient): Promise<Waiting> {
  const idsOf = async (where: Prisma.RecordingWhereInput) => {
    const query = {
      where: { ...withFile, ...where },
      orderBy: [{ name: "asc" as const }, { id: "asc" as const }],
    };
    return (await client.recording.findMany({ ...query, select: { id: true } })).map((row) => row.id);
  };
  return { look: await idsOf(notLookedAt), hash: await idsOf({ sha256: null }) };
}

/** How many recordings of a build have a file, and how many of those have been looked at and read whole. */
export interface IndexCounts {
  of: number;
  looked: number;
  hashed: number;
}

export async function indexCounts(client: PrismaClient, buildId: string): Promise<IndexCounts> {
  const count = (where: Prisma.RecordingWhereInput) =>
    client.recording.count({ where: { buildId, ...withFile, ...where } });
  const [of, looked, hashed] = [
    await count({}),
    await count({ NOT: notLookedAt }),
    await count({ sha256: { not: null } }),
  ];
  return { of, looked, hashed };
}

/** The recordings of a build as they are now. */
export interface RecordingsNow {
  recordings: Recording[];
  /** The latest change they are told of. */
  seq: number;
}

/** Recordings of a build that a change later than `since` has written; all of them when `since` is null. */
export async function recordingsSince(
  client: PrismaClient,
  buildId: string,
  since: number | null,
): Promise<RecordingsNow> {
  return client.$transaction(async (tx) => {
    const last = await tx.change.findFirst({
      where: { buildId },
      orderBy: { seq: "desc" },
      select: { seq: true },
    });
    const seq = last?.seq ?? 0;
    if (since !== null && since >= seq) return { recordings: [], seq };
    const ids = since === null ? undefined : await writtenSince(tx, buildId, since);
    const where = { buildId, ...(ids ? { id: { in: ids } } : {}) };
    return { recordings: await readRows<Recording>(tx, "recording", where), seq };
  });
}

async function writtenSince(tx: Prisma.TransactionClient, buildId: string, since: number): Promise<string[]> {
  const changes = await tx.change.findMany({
    where: { buildId, seq: { gt: since }, entriesJson: { contains: '"table":"recording"' } },
    select: { entriesJson: true },
  });
  const entries = changes.flatMap((change) => JSON.parse(change.entriesJson) as Entry[]);
  return [...new Set(entries.filter((entry) => entry.table === "recording").map((entry) => entry.id))];
}

/** Recordings of a build, struck-out and empty ones aside, that hold the same bytes as another: ids by hash. */
export async function sameBytes(client: PrismaClient, buildId: string): Promise<string[][]> {
  const rows = await client.recording.findMany({
    where: {
      buildId,
      gone: null,
      sha256: { not: null },
      places: { some: { role: "original", size: { gt: 0 } } },
    },
    select: { id: true, sha256: true },
    orderBy: { id: "asc" },
  });
  const groups = new Map<string, string[]>();
  for (const { id, sha256 } of rows) {
    groups.set(String(sha256), [...(groups.get(String(sha256)) ?? []), id]);
  }
  return [...groups.values()].filter((ids) => ids.length > 1);
}
