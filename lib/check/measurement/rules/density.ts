import { near, plain } from "../figures.ts";
import type { EntryRule } from "../rule.ts";
import type { Sight } from "../sight.ts";

/** What a piece weighs, how much it displaces, and how dense it is. */
export const densityOf: EntryRule = {
  id: "density",
  title: "Weight, volume and density",
  explanation:
    "A density is the weight by the volume: brass of 840 g pushes 100 cm³ of water aside, and has 8.4 g in each. No metal of the workshop is lighter than magnesium or much heavier than lead.",
  source: "arithmetic; densities of metals from memory",
  check: (sight) => {
    if (!/\bdensity|\bspecific gravity\b|\bs\.?g\.?\b/.test(sight.what)) return [];
    const told = toldDensity(sight);
    if (told === null) return [];
    const should = worked(sight);
    if (should !== null && !near(told, should, 0.06))
      return [
        remark(
          sight,
          "wrong",
          `${plain(should / 1000, 3)} g/cm³ (${plain(should, 3)} kg/m³): weight by volume.`,
        ),
      ];
    const [least, most] = spanOf(sight);
    return told < least || told > most
      ? [remark(sight, "doubtful", `Between ${plain(least / 1000)} and ${plain(most / 1000)} g/cm³.`)]
      : [];
  },
  examples: [
    {
      says: "grams for kilograms",
      entry: {
        text: "8.4 kg/m³",
        what: "density of the casting",
        context: {
          material: "brass",
          related: [
            { what: "scale reads", text: "840 g" },
            { what: "water displaced", text: "100 cm³" },
          ],
        },
      },
      finds: 1,
    },
    {
      says: "8.4 grams each",
      entry: {
        text: "8.4 g/cm³",
        what: "density of the casting",
        context: {
          material: "brass",
          related: [
            { what: "scale reads", text: "840 g" },
            { what: "water displaced", text: "100 cm³" },
          ],
        },
      },
      finds: 0,
    },
  ],
};

const units: [RegExp, number][] = [
  [
    /(\d+(?:\.\d+)?) ?(?:g\/cm³|g\/cm3|g\/cc|g\/ml|kg\/l|kg\/dm³|kg\/dm3|t\/m³|t\/m3|kg per lit\w+|g per cc)/,
    1000,
  ],
  [/(\d+(?:\.\d+)?) ?(?:kg\/m³|kg\/m3|kg per m³|g\/l|kg per cubic met\w+)/, 1],
  [/(\d+(?:\.\d+)?) ?(?:lb\/ft³|lb\/ft3|lb\/cu ft|lbs?\.? per cubic foot|lb per cu ft)/, 16.01846],
  [/(\d+(?:\.\d+)?) ?(?:lb\/in³|lb\/in3|lb\/cu in|lbs?\.? per cubic inch|lb per cu in)/, 27679.9],
];

/** In kg/m³. */
function toldDensity({ entry, what, main }: Sight): number | null {
  const text = entry.text.toLowerCase();
  for (const [pattern, factor] of units) {
    const hit = pattern.exec(text);
    if (hit) return Number(hit[1]) * factor;
  }
  return main?.dimension === "number" && /\bgravity\b|\bs\.?g\.?\b/.test(what) ? main.si * 1000 : null;
}

function worked({ facts }: Sight): number | null {
  const masses = facts.filter((fact) => fact.from === "related" && fact.dimension === "mass" && fact.si > 0);
  const volumes = facts.filter(
    (fact) => fact.from === "related" && fact.dimension === "volume" && fact.si > 0,
  );
  const [mass, volume] = [masses[0], volumes[0]];
  return mass && volume && masses.length === 1 && volumes.length === 1 ? mass.si / volume.si : null;
}

/** Least and most in kg/m³, wide. From memory. */
const spans: [RegExp, number, number][] = [
  [/\balumin/, 2500, 2900],
  [/\b(?:brass|bronze|gunmetal)\b/, 7300, 9000],
  [/\bcast iron|\biron\b|\bsteel\b/, 6800, 8100],
  [/\bcopper\b/, 8600, 9000],
  [/\b(?:zinc|mazak|zamak)\b/, 6000, 7300],
  [/\blead\b/, 10500, 11500],
];

function spanOf({ material, part, what }: Sight): [number, number] {
  const row = spans.find(([name]) => name.test(`${material} ${part} ${what}`));
  if (row) return [row[1], row[2]];
  return /\b(?:metal|casting|alloy)\b/.test(`${material} ${part} ${what}`)
    ? [1700, 20000]
    : [0, Number.POSITIVE_INFINITY];
}

const remark = ({ entry, what }: Sight, severity: "wrong" | "doubtful", expected: string) => ({
  severity,
  found: `${what}: ${entry.text}.`,
  expected,
  ...(severity === "doubtful" ? { source: "densities of metals from memory" } : {}),
});
