import type { Prisma } from "../prisma-client/client.ts";
import { addEntries, takeEntries } from "../sqlite/search.ts";
import type { Row, TableName } from "../tables.ts";
import { entriesOfRow, type SearchEntry, sourceOf } from "./entries.ts";

/** Brings the search tables up to date with rows that were written, the latest of each last. */
export async function indexRows(
  tx: Prisma.TransactionClient,
  rows: readonly { table: TableName; row: Row }[],
): Promise<void> {
  const latest = new Map<string, { key: [string, string]; entries: SearchEntry[] }>();
  for (const { table, row } of rows) {
    const source = sourceOf[table];
    if (source)
      latest.set(`${source} ${row.id}`, { key: [source, row.id], entries: entriesOfRow(table, row) });
  }
  if (latest.size === 0) return;
  const written = [...latest.values()];
  await tx.$executeRawUnsafe(takeEntries, JSON.stringify(written.map((one) => one.key)));
  const entries = written.flatMap((one) => one.entries);
  if (entries.length > 0) await tx.$executeRawUnsafe(addEntries, JSON.stringify(entries));
}
