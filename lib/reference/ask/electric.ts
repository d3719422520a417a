import {
  type BandedResistor,
  bandsFor,
  colourRows,
  isPreferred,
  nearestPreferred,
  preferredSource,
  seriesNames,
} from "../electrical/index.ts";
import { sourceNamed } from "../source.ts";
import { type Entry, short } from "./reply.ts";

/** Ohms or farads with the prefix that leaves one to three digits. */
export function withPrefix(value: number, unit: string): string {
  const steps: [number, string][] = [
    [1e6, "M"],
    [1e3, "k"],
    [1, ""],
    [1e-3, "m"],
    [1e-6, "µ"],
    [1e-9, "n"],
    [1e-12, "p"],
  ];
  const [scale, prefix] = steps.find(([step]) => value >= step * 0.9999999) ?? [1, ""];
  return `${Number((value / scale).toPrecision(6))}\u00a0${prefix}${unit}`;
}

/** A resistance or capacitance: its bands, the series it is in, and the nearest where it is in none. */
export function valueEntry(value: number, unit: "Ω" | "F", bands?: BandedResistor): Entry {
  const inSeries = seriesNames.filter((series) => isPreferred(value, series));
  const near = (["E6", "E12", "E24", "E96"] as const).map((series) => ({
    label: `nearest in ${series}`,
    value: withPrefix(nearestPreferred(value, series) ?? value, unit),
    source: preferredSource,
  }));
  const colours =
    unit === "Ω" ? bandsFor(value, bands && bands.tolerance < 20 ? bands.tolerance : undefined) : undefined;
  return {
    title: withPrefix(value, unit),
    about: unit === "Ω" ? "resistor" : "capacitor",
    says: bands
      ? `The bands say ${withPrefix(bands.ohms, unit)} ± ${short(bands.tolerance)} %: ${withPrefix(bands.least, unit)} to ${withPrefix(bands.most, unit)}.${bands.tolerance === 20 ? " No fourth band stands for 20 %." : ""}`
      : inSeries.length > 0
        ? `A preferred value of ${inSeries.join(", ")}.`
        : "Not a preferred value; old sets were made to 20 % and to values such as 5, 25 and 50.",
    figures: [
      ...(colours
        ? [{ label: "colour bands", value: colours.join(", "), source: sourceNamed("iec60062") }]
        : []),
      { label: "preferred in", value: inSeries.join(", ") || "none", source: preferredSource },
      ...near,
    ],
    ...(unit === "Ω" && {
      beside: {
        caption: "Colour code",
        columns: ["digit", "multiplier", "tolerance"],
        rows: colourRows.map(({ colour, digit, power, tolerance }) => ({
          label: colour,
          cells: [
            digit === undefined ? "" : `${digit}`,
            `× ${short(10 ** power, 2)}`,
            tolerance === undefined ? "" : `± ${tolerance} %`,
          ],
        })),
        sources: [sourceNamed("iec60062")],
      },
    }),
    notes: [],
  };
}
