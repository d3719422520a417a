import { number, sheet, source, words } from "../sheet.ts";
import { type Source, sourceNamed } from "../source.ts";

/** What a class of strength promises: least values in MPa, over a range of diameters in mm (upper end included). */
export interface StrengthClass {
  scheme: "ISO 898-1" | "SAE J429" | "ISO 3506";
  name: string;
  /** Diameter in mm above which the row holds, and up to which. */
  over: number;
  upTo: number;
  /** Proof stress in MPa. */
  proof: number;
  /** Least yield stress in MPa. */
  yield: number;
  /** Least tensile strength in MPa. */
  tensile: number;
  /** The same in ksi, for the inch grades. */
  ksi?: { proof: number; yield: number; tensile: number };
  source: Source;
}

/** ISO 898-1, steel bolts and screws: stresses in MPa. */
const metric = sheet(
  { name: words, over: number, upTo: number, tensile: number, yield: number, proof: number, source },
  `
  name over upTo tensile yield proof source
  3.6  0    39   330     190   180   iso898memory
  4.6  0    39   400     240   225   iso898
  4.8  0    39   420     340   310   iso898memory
  5.6  0    39   500     300   280   iso898memory
  5.8  0    39   520     420   380   iso898
  6.8  0    39   600     480   440   iso898memory
  8.8  0    16   800     640   580   iso898
  8.8  16   39   830     660   600   iso898
  9.8  0    16   900     720   650   iso898memory
  10.9 0    39   1040    940   830   iso898
  12.9 0    39   1220    1100  970   iso898memory
  `,
);

/** SAE J429, inch bolts: stresses in ksi, diameters in inches (lower end excluded), radial lines on the head. */
const inchGrades = sheet(
  {
    name: words,
    over: number,
    upTo: number,
    proof: number,
    yield: number,
    tensile: number,
    lines: number,
    source,
  },
  `
  name over upTo proof yield tensile lines source
  2    0    0.75 55    57    74      0     j429
  2    0.75 1.5  33    36    60      0     j429memory
  1    0    1.5  33    36    60      0     j429memory
  4    0    1.5  65    100   115     0     j429memory
  5    0    1    85    92    120     3     j429
  5    1    1.5  74    81    105     3     j429memory
  5.2  0    1    85    92    120     3     j429memory
  7    0    1.5  105   115   133     5     j429memory
  8    0    1.5  120   130   150     6     j429
  8.2  0    1    120   130   150     6     j429memory
  `,
);

/** One thousand pounds-force to the square inch, in MPa. */
export const ksi = 6.894757293;

/** Every class, metric then inch. */
export const strengthClasses: readonly StrengthClass[] = [
  ...metric.map((row): StrengthClass => ({ scheme: "ISO 898-1", ...row })),
  ...inchGrades.map(
    (row): StrengthClass => ({
      scheme: "SAE J429",
      name: row.name,
      over: row.over * 25.4,
      upTo: row.upTo * 25.4,
      proof: row.proof * ksi,
      yield: row.yield * ksi,
      tensile: row.tensile * ksi,
      ksi: { proof: row.proof, yield: row.yield, tensile: row.tensile },
      source: row.source,
    }),
  ),
];

/** The class by its name, for a diameter in mm; the first range where no diameter is given. */
export function strengthClass(name: string, diameter?: number): StrengthClass | undefined {
  return strengthClasses.find(
    (row) =>
      row.name === name && (diameter === undefined || (diameter > row.over && diameter <= row.upTo + 1e-9)),
  );
}

/** Nominal stresses in MPa from the mark itself: the first number × 100, and both numbers × 10 (ISO 898-1, clause 5). */
export function nominalStrength(
  mark: string,
): { tensile: number; yield: number; source: Source } | undefined {
  const [, first, second] = /^(\d{1,2})\.(\d)$/.exec(mark) ?? [];
  if (first === undefined || second === undefined) return undefined;
  return {
    tensile: Number(first) * 100,
    yield: Number(first) * Number(second) * 10,
    source: sourceNamed("iso898mark"),
  };
}

/** Grades by the radial lines on an inch bolt's head, each with the metric class of like strength. */
const nearMetric: Record<string, string> = { "2": "5.8", "5": "8.8", "7": "9.8", "8": "10.9" };

/** What radial lines on the head of an inch bolt mean (SAE J429), the common grade first. */
export function gradesByLines(lines: number): { grade: string; metricNear?: string; source: Source }[] {
  return [
    ...new Map(inchGrades.filter((row) => row.lines === lines).map((row) => [row.name, row])).values(),
  ].map((row) => ({ grade: row.name, metricNear: nearMetric[row.name], source: row.source }));
}

/** Whether the mark belongs on the thread: classes with a point mark metric bolts, grades mark inch bolts. */
export function markSuitsThread(
  scheme: "ISO 898-1" | "SAE J429" | "ISO 3506",
  native: "mm" | "in",
): { suits: boolean; why: string; source: Source } {
  if (scheme === "ISO 3506")
    return { suits: true, why: "stainless marks stand on either", source: sourceNamed("iso3506memory") };
  const suits = (scheme === "ISO 898-1") === (native === "mm");
  return {
    suits,
    why: suits
      ? "the mark belongs to this system of threads"
      : "property classes mark metric fasteners; inch bolts normally carry radial lines (SAE J429)",
    source: sourceNamed(scheme === "ISO 898-1" ? "iso898" : "j429"),
  };
}
