import type { Finding } from "#lib/finding/index.ts";
import { loggedRevisions, rowsOf, unreadableChanges } from "../sqlite/read.ts";
import { decode, type Row, type TableName, tableNames, tables } from "../tables.ts";
import { few, type Look, said } from "./look.ts";

/** The name of a table in the database: CaptionTrack for captionTrack. */
export function databaseName(table: TableName): string {
  const { delegate } = tables[table];
  return `${delegate[0]?.toUpperCase()}${delegate.slice(1)}`;
}

/** Rows that do not have the form that commands write: they could not be shown. */
export function checkRows({ database, looked }: Look): Finding[] {
  const findings: Finding[] = [];
  for (const table of tableNames) {
    for (const columns of rowsOf(database, databaseName(table))) {
      looked.rows += 1;
      const trouble = formTrouble(table, columns);
      if (trouble !== null) findings.push(badRow(table, String(columns.id), trouble));
    }
  }
  return findings;
}

function formTrouble(table: TableName, columns: Record<string, unknown>): string | null {
  let row: Row;
  try {
    row = decode(table, columns);
  } catch (error) {
    return (error as Error).message;
  }
  const issue = tables[table].row.safeParse(row).error?.issues[0];
  return issue ? `${issue.path.join(".") || "the row"}: ${issue.message}` : null;
}

function badRow(table: TableName, id: string, trouble: string): Finding {
  return said({
    rule: "row-form",
    severity: "wrong",
    where: `${table} ${id}`,
    place: table === "mark" ? { mark: id } : {},
    found: `The ${table} ${id} does not have its form: ${trouble}.`,
    expected: "A row as the program writes it.",
    todo: "It was changed by something else. Keep the workshop as it is, and look for that record in the latest backup.",
  });
}

/**
 * Rows against the change log: each was last written by a change that the log has, and each that the log has is
 * there. A difference means that something was lost, or written past the program.
 */
export function checkLog({ database }: Look): Finding[] {
  const logged = new Map<string, number>();
  for (const { table, id, rev } of loggedRevisions(database)) logged.set(`${table} ${id}`, rev);
  const differing: string[] = [];
  for (const table of tableNames) {
    for (const { id, rev } of rowsOf(database, databaseName(table))) {
      const name = `${table} ${id}`;
      const last = logged.get(name);
      logged.delete(name);
      if (last !== rev) differing.push(`${name} (revision ${rev}, in the log ${last ?? "none"})`);
    }
  }
  const unread = unreadableChanges(database).map((seq) => `change ${seq} (its rows cannot be read)`);
  const lost = [...logged].map(([name, rev]) => `${name} (revision ${rev} in the log, not there)`);
  const all = [...unread, ...differing, ...lost];
  if (all.length === 0) return [];
  return [
    said({
      rule: "log-differs",
      severity: "wrong",
      where: "Change",
      evidence: all.join("\n").slice(0, 20_000),
      found: `${all.length} rows and the change log do not agree: ${few(all)}.`,
      expected: "Every row at the revision of the last change that wrote it.",
      todo: "Something was lost, or written past the program. Keep the workshop as it is, and compare with the latest backup.",
    }),
  ];
}
