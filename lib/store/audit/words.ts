import type { Finding } from "#lib/finding/index.ts";
import type { SearchEntry } from "../search/index.ts";
import { entriesOfDisk, searched } from "../search/rebuild.ts";
import { type Reading, rowsOf } from "../sqlite/read.ts";
import { indexedEntries, unmatchedNumbers } from "../sqlite/search.ts";
import { few, type Look, said } from "./look.ts";

/** The search tables against what they would be if they were made anew. */
export function checkWords({ database }: Look): Finding[] {
  const differing = differingWords(database);
  if (differing.length === 0) return [];
  return [
    said({
      rule: "search-differs",
      severity: "wrong",
      where: "search_entry",
      evidence: differing.join("\n").slice(0, 20_000),
      found: `The tables that find words differ from what was written in ${differing.length}: ${few(differing)}.`,
      expected: "The words of everything that is not struck out, once.",
      todo: "Run audit with --rebuild: they are made anew from the marks and the other records, which are whole.",
    }),
  ];
}

/** Entries that the search tables hold otherwise than a rebuild would, with how they differ. */
export function differingWords(database: Reading): string[] {
  const expected = new Map<string, string>();
  for (const { table, name } of searched) {
    for (const columns of rowsOf(database, name)) {
      for (const entry of entriesOfDisk(table, columns)) expected.set(nameOf(entry), contentOf(entry));
    }
  }
  const differing: string[] = [];
  for (const entry of indexedEntries(database)) {
    const content = expected.get(nameOf(entry));
    expected.delete(nameOf(entry));
    if (content === undefined) differing.push(`${nameOf(entry)} (too much)`);
    else if (content !== contentOf(entry)) differing.push(`${nameOf(entry)} (other words)`);
  }
  const missing = [...expected.keys()].map((name) => `${name} (missing)`);
  const unmatched = unmatchedNumbers(database).map((number) => `entry ${number} (cannot be found)`);
  return [...differing, ...missing, ...unmatched];
}

function nameOf({ source, row, part }: SearchEntry): string {
  return part === 0 ? `${source} ${row}` : `${source} ${row} ${part}`;
}

function contentOf(entry: SearchEntry): string {
  const { source, row, part, build, machine, sitting, recording, at, kind, text, head, body, facets } = entry;
  return JSON.stringify([
    source,
    row,
    part,
    build,
    machine,
    sitting,
    recording,
    at,
    kind,
    text,
    head,
    body,
    facets,
  ]);
}
