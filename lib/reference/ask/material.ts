import { expansionOf, growth, perFahrenheit } from "../thermal/index.ts";
import { distinct, type Entry, inInches, inMillimetres } from "./reply.ts";

/** How much the named metals grow with heat; with a length in mm and a rise in kelvin also how much that is. */
export function materialEntry(text: string, length?: number, rise?: number): Entry | undefined {
  const found = expansionOf(text).slice(0, 6);
  const [first] = found;
  if (!first) return undefined;
  const grows =
    length !== undefined && rise !== undefined ? growth(first.perKelvin, length, rise) : undefined;
  return {
    title: `Expansion of ${first.material}`,
    about: "linear expansion near room temperature",
    ...(grows !== undefined &&
      length !== undefined && {
        says: `${inMillimetres(length)} of ${first.material}, ${rise} K warmer, grows by ${inMillimetres(grows)} (${inInches(grows)}).`,
      }),
    figures: [],
    beside: {
      caption: "Linear expansion",
      columns: ["per kelvin", "per °F", "100 mm grow in 100 K by"],
      rows: found.map(({ material, perKelvin }) => ({
        label: material,
        cells: [
          `${(perKelvin * 1e6).toFixed(1)} × 10⁻⁶`,
          `${(perFahrenheit(perKelvin) * 1e6).toFixed(1)} × 10⁻⁶`,
          inMillimetres(growth(perKelvin, 100, 100)),
        ],
      })),
      sources: distinct(found.map(({ source }) => source)),
    },
    notes: [],
  };
}
