import { z } from "zod";
import { ToldError, type Words } from "#lib/finding/index.ts";
import { type TableName, tableNames } from "./tables.ts";

/**
 * A command: the one way in which anything is changed. It writes rows, each new (`rev` 0) or as seen at a
 * revision, all or none. Its id is made where the change is made; sending it again is harmless.
 */
export const command = z.object({
  id: z.string().min(8).max(100),
  /** The build in whose history it stands; null for what belongs to none. */
  buildId: z.string().max(100).nullable(),
  /** What was done, in words for the history: "mark at 14:08". */
  label: z.string().min(1).max(500),
  puts: z
    .array(
      z.object({
        table: z.enum(tableNames as [TableName, ...TableName[]]),
        id: z.string().min(1).max(100),
        /** The revision that the writer saw; 0 for a new row. */
        rev: z.number().int().min(0),
        /** The columns to change; for a new row all of them. */
        set: z.record(z.string(), z.unknown()),
      }),
    )
    .min(1)
    .max(20_000),
});
export type Command = z.infer<typeof command>;
export type Put = Command["puts"][number];

/** Undo or redo of the latest change of a build, or going back to how it was after the change `seq`. */
export const historyStep = z.object({
  id: z.string().min(8).max(100),
  buildId: z.string().min(1).max(100),
  step: z.union([z.enum(["undo", "redo"]), z.object({ backTo: z.number().int().min(0) })]),
});
export type HistoryStep = z.infer<typeof historyStep>;

/** A row that was written, as it now is. */
export interface Written {
  table: TableName;
  row: import("./tables.ts").Row;
}

/** What came of a command. */
export interface Applied {
  seq: number;
  label: string;
  rows: Written[];
}

/** A write made on a row that has changed since: both versions, neither thrown away. */
export interface Stale {
  table: TableName;
  id: string;
  /** The row as it is. */
  current: import("./tables.ts").Row | null;
  /** What the writer wanted to set. */
  wanted: Record<string, unknown>;
}

/** Why a command was not carried out. `found`, `expected` and `todo` are for the person. */
export class Refused extends ToldError {
  readonly stale: Stale | null;

  constructor(words: Words & { stale?: Stale }, options?: ErrorOptions) {
    super(words, options);
    this.stale = words.stale ?? null;
  }
}
