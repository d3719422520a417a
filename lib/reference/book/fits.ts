import { across, shaftsAbove, shaftsBelow } from "../fits/deviations.ts";
import { gradeRows } from "../fits/index.ts";
import type { Source } from "../source.ts";
import { type BookChapter, type BookTable, orDash } from "./table.ts";

type SizeRow = { over: number; upTo: number; source: Source } & Record<string, unknown>;

const bySize = (id: string, title: string, rows: readonly SizeRow[]): BookTable => {
  const names = Object.keys(rows[0] ?? {}).filter((name) => !["over", "upTo", "source"].includes(name));
  return {
    id,
    title,
    standard: "ISO 286-1",
    columns: ["over, mm", "to, mm", ...names],
    rows: () =>
      rows.map((row) => ({
        cells: [
          `${row.over}`,
          `${row.upTo}`,
          ...names.map((name) => orDash(row[name] as number | undefined)),
        ],
        sources: [row.source],
      })),
  };
};

/** Limits and fits, µm. */
export const fitChapter: BookChapter = {
  title: "Limits and fits, µm",
  tables: [
    bySize("it-grades", "Tolerance grades", gradeRows),
    bySize("shafts-a-g", "Shafts a to g, upper deviation", shaftsBelow),
    bySize("shafts-m-zc", "Shafts m to zc, lower deviation", shaftsAbove),
    bySize("shafts-j-k", "Shafts j and k, lower; holes J, upper deviation", across),
  ],
};
