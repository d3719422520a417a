import type { ZodType } from "zod";
import {
  answerRow,
  assemblyRow,
  buildRow,
  captionTrackRow,
  cutRow,
  draftDecisionRow,
  editRow,
  erratumRow,
  gotchaRow,
  itemRow,
  kitRow,
  machineRow,
  recordingRow,
  releaseRow,
  sightingRow,
  sittingRow,
  stillRow,
} from "#lib/build/index.ts";
import { markRow } from "#lib/mark/index.ts";
import type { Prisma } from "./prisma-client/client.ts";

/** A row of any table that commands may write. */
export interface Row {
  id: string;
  rev: number;
  gone: string | null;
  [column: string]: unknown;
}

interface Table {
  /** The name of Prisma's delegate. */
  delegate: keyof Prisma.TransactionClient;
  row: ZodType;
  /** Columns that hold a JSON value: `fields` lies in `fieldsJson`. */
  json: readonly string[];
}

/** The tables that commands write, in an order in which rows can be written: what is named stands before. */
export const tables = {
  machine: { delegate: "machine", row: machineRow, json: [] },
  assembly: { delegate: "assembly", row: assemblyRow, json: [] },
  item: { delegate: "item", row: itemRow, json: [] },
  build: { delegate: "build", row: buildRow, json: [] },
  sitting: { delegate: "sitting", row: sittingRow, json: [] },
  recording: { delegate: "recording", row: recordingRow, json: ["probe", "trouble"] },
  captionTrack: { delegate: "captionTrack", row: captionTrackRow, json: [] },
  cut: { delegate: "cut", row: cutRow, json: ["reels", "segments"] },
  mark: { delegate: "mark", row: markRow, json: ["fields"] },
  still: { delegate: "still", row: stillRow, json: ["drawing"] },
  edit: { delegate: "edit", row: editRow, json: [] },
  answer: { delegate: "answer", row: answerRow, json: [] },
  release: { delegate: "release", row: releaseRow, json: [] },
  erratum: { delegate: "erratum", row: erratumRow, json: [] },
  draftDecision: { delegate: "draftDecision", row: draftDecisionRow, json: [] },
  gotcha: { delegate: "gotcha", row: gotchaRow, json: ["appliesTo", "notTo", "supersedes", "notSame"] },
  sighting: { delegate: "sighting", row: sightingRow, json: [] },
  kit: { delegate: "kit", row: kitRow, json: ["lines"] },
} as const satisfies Record<string, Table>;
export type TableName = keyof typeof tables;

export const tableNames = Object.keys(tables) as TableName[];

/** A row as the database keeps it: JSON columns as text. */
export function encode(table: TableName, row: Row): Record<string, unknown> {
  const columns: Record<string, unknown> = { ...row };
  for (const column of tables[table].json) {
    columns[`${column}Json`] = JSON.stringify(columns[column] ?? null);
    delete columns[column];
  }
  return columns;
}

/** A row as the domain knows it. */
export function decode(table: TableName, columns: Record<string, unknown>): Row {
  const row: Record<string, unknown> = { ...columns };
  for (const column of tables[table].json) {
    row[column] = JSON.parse(String(row[`${column}Json`]));
    delete row[`${column}Json`];
  }
  return row as Row;
}

/** What commands need of a Prisma delegate, whichever table it is of. */
interface Delegate {
  findUnique(query: { where: { id: string } }): Promise<Record<string, unknown> | null>;
  findMany(query: { where: Record<string, unknown> }): Promise<Record<string, unknown>[]>;
  upsert(query: {
    where: { id: string };
    create: Record<string, unknown>;
    update: Record<string, unknown>;
  }): Promise<unknown>;
}

export function delegate(client: Prisma.TransactionClient, table: TableName): Delegate {
  return client[tables[table].delegate] as unknown as Delegate;
}

/** The row of that id, or null. */
export async function readRow(
  client: Prisma.TransactionClient,
  table: TableName,
  id: string,
): Promise<Row | null> {
  const columns = await delegate(client, table).findUnique({ where: { id } });
  return columns && decode(table, columns);
}

/** All rows that agree with `where`, in no promised order. */
export async function readRows<T>(
  client: Prisma.TransactionClient,
  table: TableName,
  where: Record<string, unknown>,
): Promise<T[]> {
  const found = await delegate(client, table).findMany({ where });
  return found.map((columns) => decode(table, columns) as T);
}

/** Writes a row, new or known. */
export async function writeRow(client: Prisma.TransactionClient, table: TableName, row: Row): Promise<void> {
  const columns = encode(table, row);
  await delegate(client, table).upsert({ where: { id: row.id }, create: columns, update: columns });
}
