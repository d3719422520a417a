import { number, sheet, source, words } from "../sheet.ts";
import { type Source, sourceNamed } from "../source.ts";

/** Linear expansion near room temperature, in millionths a kelvin. */
const rows = sheet(
  { material: words, perKelvin: number, source },
  `
  material                         perKelvin source
  steel_(general)                  12    openStax
  iron_(general)                   12    openStax
  carbon_steel_1020                11.7  cteMemory
  carbon_steel_1040                11.3  cteMemory
  alloy_steel_4140                 12.3  cteMemory
  stainless_steel_304              17.2  cteMemory
  stainless_steel_316              16.0  cteMemory
  stainless_steel_405              10.8  cteMemory
  stainless_steel_440A             10.2  cteMemory
  grey_cast_iron_G1800             11.4  cte
  grey_cast_iron_G3000             11.4  cte
  grey_cast_iron_G4000             11.4  cte
  ductile_iron_60-40-18            11.2  cte
  ductile_iron_80-55-06            10.6  cte
  aluminium_alloy_1100             23.6  cte
  aluminium_alloy_2011             23.0  cte
  aluminium_alloy_2024             22.9  cte
  aluminium_alloy_5086             23.8  cte
  aluminium_alloy_6061             23.6  cte
  aluminium_alloy_7075             23.4  cte
  aluminium_casting_alloy_356.0    21.5  cte
  aluminium_(general)              25    openStaxMemory
  copper_C11000                    17.0  cte
  copper_(general)                 17    openStaxMemory
  beryllium_copper_C17200          16.7  cte
  commercial_bronze_C22000         18.4  cte
  red_brass_C23000                 18.7  cte
  cartridge_brass_C26000           19.9  cte
  yellow_brass_C27000              20.3  cte
  free-cutting_brass_C36000        20.5  cte
  brass_(general)                  19    openStaxMemory
  phosphor_bronze_C51000           17.8  cte
  aluminium_bronze_C62300          16.2  cte
  copper_nickel_C71500             16.2  cte
  bearing_bronze_C93200            18.0  cte
  magnesium_alloy_AZ31B            26.0  cteMemory
  magnesium_alloy_AZ91D            26.0  cteMemory
  zinc_(general)                   30    zincMemory
  lead_(general)                   29    openStax
  tin                              23.8  cteMemory
  nickel                           13.3  cteMemory
  monel_400                        13.9  cteMemory
  titanium                         8.6   cteMemory
  gold                             14    openStaxMemory
  silver                           18    openStaxMemory
  platinum                         9.1   cteMemory
  tungsten                         4.5   cteMemory
  invar                            0.9   openStaxMemory
  glass_(ordinary)                 9     openStaxMemory
  glass_(pyrex)                    3     openStaxMemory
  quartz                           0.4   openStaxMemory
  concrete_or_brick                12    openStaxMemory
  marble                           2.5   openStaxMemory
  `,
);

/** How much a material grows with heat. */
export interface Expansion {
  material: string;
  /** Linear coefficient per kelvin, near room temperature. */
  perKelvin: number;
  source: Source;
}

export const expansions: readonly Expansion[] = rows.map(({ material, perKelvin, source }) => ({
  material: material.replaceAll("_", " "),
  perKelvin: perKelvin / 1e6,
  source,
}));

const spelling: [RegExp, string][] = [
  [/\bgr[ae]y iron\b/g, "grey cast iron"],
  [/\bgray\b/g, "grey"],
  [/\baluminum\b/g, "aluminium"],
  [/\b(?:mild|plain|low[- ]carbon) steel\b|\biron or steel\b/g, "steel"],
];

/**
 * Materials that a text names, the likeliest first: all its words are looked for, then most of them. "cast iron"
 * gives the grey irons; "brass" the general figure first.
 */
export function expansionOf(text: string): Expansion[] {
  const plain = spelling.reduce((all, [from, to]) => all.replace(from, to), text.toLowerCase());
  const asked = wordsOf(plain);
  const scored = expansions
    .map((row) => {
      const has = wordsOf(row.material);
      const hits = asked.filter((word) => has.includes(word)).length;
      return { row, hits, extra: has.filter((word) => !asked.includes(word) && word !== "general").length };
    })
    .filter(({ hits }) => hits > 0);
  const most = Math.max(0, ...scored.map(({ hits }) => hits));
  return scored
    .filter(({ hits }) => hits === most)
    .sort((a, b) => a.extra - b.extra)
    .map(({ row }) => row);
}

const wordsOf = (text: string): string[] =>
  text.toLowerCase().match(/\p{L}*\d[\p{L}\p{N}.-]*|\p{L}+/gu) ?? [];

/** Volume expansion per kelvin of liquids and of a steel tank (OpenStax College Physics, Table 13.2). */
export const volumeExpansions: readonly Expansion[] = [
  ["petrol", 950, "openStax"],
  ["iron or steel", 35, "openStax"],
  ["aluminium", 75, "openStaxMemory"],
  ["brass", 56, "openStaxMemory"],
  ["copper", 51, "openStaxMemory"],
  ["ethyl alcohol", 1100, "openStaxMemory"],
  ["glycerin", 500, "openStaxMemory"],
  ["mercury", 180, "openStaxMemory"],
  ["water", 210, "openStaxMemory"],
].map(([material, millionths, name]) => ({
  material: `${material}`,
  perKelvin: Number(millionths) / 1e6,
  source: sourceNamed(name as "openStax"),
}));

/** Growth of a length, in its own unit: coefficient × length × rise in kelvin. */
export const growth = (perKelvin: number, length: number, rise: number): number => perKelvin * length * rise;

/** The rise in kelvin that grows a length by an amount; both in the same unit. */
export const riseFor = (perKelvin: number, length: number, amount: number): number =>
  amount / (perKelvin * length);

/** Clearance lost, when the inner part grows more than the outer one; in the unit of the diameter. */
export const clearanceLost = (inner: number, outer: number, diameter: number, rise: number): number =>
  (inner - outer) * diameter * rise;

/** What runs over from a full tank, in the unit of the volume: (liquid - tank) × volume × rise. */
export const spill = (liquid: number, tank: number, volume: number, rise: number): number =>
  (liquid - tank) * volume * rise;

/** A coefficient per kelvin as one per degree Fahrenheit. */
export const perFahrenheit = (perKelvin: number): number => perKelvin / 1.8;
