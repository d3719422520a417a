import { type Source, sourceNamed } from "../source.ts";

/** Oil for petrol at parts:1, in the unit of the petrol. */
export const oilFor = (parts: number, petrol: number): number => petrol / parts;

/** A parts:1 mixture as per cent of the petrol, and of the whole. */
export const mixPercent = (parts: number): { ofPetrol: number; ofMixture: number } => ({
  ofPetrol: 100 / parts,
  ofMixture: 100 / (parts + 1),
});

/** Parts of petrol to one of oil. */
export const mixRatio = (petrol: number, oil: number): number => petrol / oil;

/** Stock needed for a dilution, C1 V1 = C2 V2, both strengths by volume; in the unit of the wanted volume. */
export const stockFor = (wanted: number, strength: number, stockStrength: number): number =>
  (wanted * strength) / stockStrength;

/** Grams in a volume in litres at a strength in per cent weight by volume. */
export const gramsFor = (percent: number, litres: number): number => percent * 10 * litres;

/** "1:10" can mean one and ten, or one in ten: both strengths in per cent. To be asked, not guessed. */
export const dilutionReadings = (part: number, of: number): { onePlus: number; oneIn: number } => ({
  onePlus: (100 * part) / (part + of),
  oneIn: (100 * part) / of,
});

/** A recipe or strength that somebody published. */
export interface Recipe {
  name: string;
  /** Each with its unit: "tannic acid", 100, "g". */
  parts: { what: string; low: number; high: number; unit: string; optional?: true }[];
  note: string;
  source: Source;
}

const one = (what: string, amount: number, unit: string) => ({ what, low: amount, high: amount, unit });

/** Published baths. Acid goes into water, not water into acid; gloves and goggles; heed the label and local rules. */
export const recipes: readonly Recipe[] = [
  {
    name: "citric acid, passivating stainless steel",
    parts: [{ what: "citric acid", low: 4, high: 10, unit: "% by weight" }],
    note: "For passivation; not a derusting recipe.",
    source: sourceNamed("a967"),
  },
  {
    name: "tannic acid coating for rusted iron",
    parts: [
      one("tannic acid", 100, "g"),
      one("water", 900, "mL"),
      one("ethanol", 50, "mL"),
      { ...one("phosphoric acid", 2, "mL"), optional: true },
    ],
    note: "For iron that is not meant to be bright or painted.",
    source: sourceNamed("cciNotes"),
  },
];

/** A recipe by the words in its name, or nothing. */
export function recipeNamed(text: string): Recipe | undefined {
  const asked: string[] = text.toLowerCase().match(/\p{L}+/gu) ?? [];
  const hits = (recipe: Recipe): number =>
    (recipe.name.toLowerCase().match(/\p{L}+/gu) ?? []).filter((word) => asked.includes(word)).length;
  const [best] = [...recipes].sort((a, b) => hits(b) - hits(a));
  return best && hits(best) >= 2 ? best : undefined;
}
