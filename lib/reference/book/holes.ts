import {
  type Drill,
  inchClearanceRows,
  letterDrills,
  metricClearanceRows,
  numberDrills,
  tapDrillFor,
} from "../drills/index.ts";
import { allThreads } from "../threads/index.ts";
import { type BookChapter, inches, mm } from "./table.ts";

const drillRows = (drills: readonly Drill[]) => () =>
  drills.map(({ name, mm: size, source }) => ({ cells: [name, mm(size), inches(size)], sources: [source] }));

/** Drills and the holes they make. */
export const holeChapter: BookChapter = {
  title: "Drills and holes",
  tables: [
    {
      id: "number-drills",
      title: "Number drills",
      standard: "ASME B94.11M",
      columns: ["drill", "mm", "in"],
      rows: drillRows(numberDrills),
    },
    {
      id: "letter-drills",
      title: "Letter drills",
      standard: "ASME B94.11M",
      columns: ["drill", "mm", "in"],
      rows: drillRows(letterDrills),
    },
    {
      id: "tapping-drills",
      title: "Tapping drills",
      standard: "ISO 2306, BS 1157 and usual charts",
      columns: ["thread", "drill", "mm", "in", "of full thread"],
      rows: () =>
        allThreads.flatMap((thread) => {
          const tapping = tapDrillFor(thread);
          return tapping
            ? {
                cells: [
                  thread.name,
                  tapping.drill.name,
                  mm(tapping.drill.mm),
                  inches(tapping.drill.mm),
                  tapping.percent === undefined ? "taper" : `${Math.round(tapping.percent)} %`,
                ],
                sources: [tapping.source],
              }
            : [];
        }),
    },
    {
      id: "clearance-metric",
      title: "Clearance holes, metric",
      standard: "ISO 273",
      columns: ["screw", "fine, mm", "medium, mm", "coarse, mm"],
      rows: () =>
        metricClearanceRows.map(({ size, fine, medium, coarse, source }) => ({
          cells: [`M${size}`, `${fine}`, `${medium}`, `${coarse}`],
          sources: [source],
        })),
    },
    {
      id: "clearance-inch",
      title: "Clearance drills, inch",
      standard: "usual chart",
      columns: ["screw", "close", "free"],
      rows: () =>
        inchClearanceRows.map(({ size, close, free, source }) => ({
          cells: [size, close.replace("_", " "), free.replace("_", " ")],
          sources: [source],
        })),
    },
  ],
};
