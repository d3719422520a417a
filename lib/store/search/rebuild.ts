import fs from "node:fs";
import { type Reading, rowsOf } from "../sqlite/read.ts";
import { refill } from "../sqlite/search.ts";
import { decode, type TableName } from "../tables.ts";
import { entriesOfRow, type SearchEntry, sourceOf } from "./entries.ts";

/** The tables whose rows can be found, and their names in the database. */
export const searched = (Object.keys(sourceOf) as TableName[]).map((table) => ({
  table,
  name: `${table[0]?.toUpperCase()}${table.slice(1)}`,
}));

/**
 * Makes the search tables anew from the rows; the tables themselves too, since a damaged one cannot be emptied.
 *
 * @param projections the file of SQL that makes them
 */
export function rebuildSearch(database: string, projections: string): void {
  refill(database, fs.readFileSync(projections, "utf8"), entriesByThousand);
}

function* entriesByThousand(database: Reading): Generator<SearchEntry[]> {
  let some: SearchEntry[] = [];
  for (const { table, name } of searched) {
    // Read whole first: one connection cannot read a table and write at the same time.
    for (const columns of [...rowsOf(database, name)]) {
      some.push(...entriesOfDisk(table, columns));
      if (some.length >= 1000) {
        yield some;
        some = [];
      }
    }
  }
  yield some;
}

/** The entries of a row as it lies on disk; none of one that cannot be read, which an audit speaks of by itself. */
export function entriesOfDisk(table: TableName, columns: Record<string, unknown>): SearchEntry[] {
  try {
    return entriesOfRow(table, decode(table, columns));
  } catch {
    return [];
  }
}
