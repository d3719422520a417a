import { clearanceFor, tapDrillFor } from "../drills/index.ts";
import type { Source } from "../source.ts";
import { hexagonsOf } from "../spanners/index.ts";
import { type Thread, threadTables } from "../threads/index.ts";
import { type BookChapter, inches, mm, orDash } from "./table.ts";

const slug = (title: string): string =>
  title
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, "-")
    .replace(/^-|-$/g, "");

/** The sources of a whole row: the thread, its diameters, its drills and its head. */
function sourcesOf(thread: Thread): Source[] {
  const others = [tapDrillFor(thread)?.source, clearanceFor(thread)?.source, hexagonsOf(thread)[0]?.source];
  return [...new Set([thread.source, thread.formSource, ...others.filter((one) => one !== undefined)])];
}

/** All threads, a table a standard. */
export const threadChapter: BookChapter = {
  title: "Threads",
  tables: threadTables.map(({ title, standard, threads }) => ({
    id: slug(title),
    title,
    standard,
    columns: [
      "thread",
      "outside, mm",
      "outside, in",
      "threads an inch",
      "pitch, mm",
      "effective, mm",
      "core, mm",
      "core, in",
      "tapping drill",
      "clearance",
      "across flats, mm",
    ],
    rows: () =>
      threads.map((thread) => ({
        cells: [
          thread.name,
          mm(thread.major),
          inches(thread.major),
          orDash(thread.tpi ?? `${Number((25.4 / thread.pitch).toFixed(2))}`),
          mm(thread.pitch),
          mm(thread.effective),
          mm(thread.minor),
          inches(thread.minor),
          orDash(tapDrillFor(thread)?.drill.name),
          orDash(clearanceFor(thread)?.fits.at(-1)?.drill.name),
          mm(hexagonsOf(thread)[0]?.mm),
        ],
        sources: sourcesOf(thread),
      })),
  })),
};
