import type { Finding } from "#lib/finding/index.ts";
import type { Mark } from "#lib/mark/index.ts";
import { searchWords } from "../search.ts";
import { indexedWords, type Reading, rowsOf } from "../sqlite/read.ts";
import { decode } from "../tables.ts";
import { few, type Look, said } from "./look.ts";

/** The search table against what it would be if it were made anew from the marks. */
export function checkWords({ database }: Look): Finding[] {
  const differing = differingWords(database);
  if (differing.length === 0) return [];
  return [
    said({
      rule: "search-differs",
      severity: "wrong",
      where: "mark_words",
      evidence: differing.join("\n").slice(0, 20_000),
      found: `The table that finds words differs from the marks in ${differing.length}: ${few(differing)}.`,
      expected: "The words of every mark that is not struck out, once.",
      todo: "Run audit with --rebuild: it is made anew from the marks, which are whole.",
    }),
  ];
}

/** Marks of which the search table holds other words than a rebuild would, with how it differs. */
export function differingWords(database: Reading): string[] {
  const expected = new Map<string, string>();
  for (const columns of rowsOf(database, "Mark")) {
    const line = wordsToFind(columns);
    if (line !== null) expected.set(String(columns.id), line);
  }
  const differing: string[] = [];
  for (const { mark_id, build_id, words } of indexedWords(database)) {
    const line = expected.get(mark_id);
    expected.delete(mark_id);
    if (line === undefined) differing.push(`${mark_id} (too much)`);
    else if (line !== `${build_id}\n${words}`) differing.push(`${mark_id} (other words)`);
  }
  return [...differing, ...[...expected.keys()].map((id) => `${id} (missing)`)];
}

function wordsToFind(columns: Record<string, unknown>): string | null {
  try {
    const mark = decode("mark", columns) as unknown as Mark;
    const words = searchWords(mark);
    return mark.gone === null && words !== "" ? `${mark.buildId}\n${words}` : null;
  } catch {
    // A row that cannot be read is spoken of by itself.
    return null;
  }
}
