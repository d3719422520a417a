import { gradesByLines, nominalStrength, strengthClasses } from "../fasteners/index.ts";
import { distinct, type Entry, short } from "./reply.ts";

/** A class or grade of strength. */
export function strengthEntry(name: string): Entry | undefined {
  const rows = strengthClasses.filter((row) => row.name === name);
  if (rows.length === 0) return undefined;
  const nominal = nominalStrength(name);
  const lines = [0, 3, 5, 6].filter((count) => gradesByLines(count).some(({ grade }) => grade === name));
  const ranges = (over: number, upTo: number, metric: boolean): string => {
    const say = (mm: number): string => (metric ? `${mm} mm` : `${short(mm / 25.4, 3)} in`);
    return over === 0 ? `to ${say(upTo)}` : `over ${say(over)} to ${say(upTo)}`;
  };
  return {
    title: rows[0]?.scheme === "SAE J429" ? `SAE grade ${name}` : `Class ${name}`,
    about: `strength of bolts, ${rows[0]?.scheme}`,
    figures: [
      ...(nominal
        ? [
            {
              label: "the mark itself says (nominal)",
              value: `${nominal.tensile} MPa tensile, ${nominal.yield} MPa yield`,
              source: nominal.source,
            },
          ]
        : []),
      ...lines.map((count) => ({
        label: "mark on the head",
        value: count === 0 ? "no radial lines" : `${count} radial lines`,
        source: rows[0]?.source as NonNullable<(typeof rows)[0]>["source"],
      })),
    ],
    beside: {
      caption: `Least values of ${name}`,
      columns: ["proof", "yield", "tensile"],
      rows: rows.map((row) => ({
        label: ranges(row.over, row.upTo, row.scheme === "ISO 898-1"),
        cells: [row.proof, row.yield, row.tensile].map(
          (mpa) => `${short(mpa, 0)} MPa (${short(mpa / 6.894757, 0)} ksi)`,
        ),
      })),
      sources: distinct(rows.map(({ source }) => source)),
    },
    notes: [],
  };
}
