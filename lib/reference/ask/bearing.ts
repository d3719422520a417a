import { type Bearing, bearingsSized } from "../bearings/index.ts";
import { distinct, type Entry } from "./reply.ts";

/** A bearing's boundary dimensions, and others of the same bore. */
export function bearingEntry(bearing: Bearing): Entry {
  const { bore, outside, width, source, number, kind } = bearing;
  const others = bearingsSized({ bore });
  return {
    title: `Bearing ${number}`,
    about: kind,
    says: `${number} is ${bore} × ${outside} × ${width} mm, bore × outside × ${kind === "thrust ball" ? "height" : "width"}.`,
    figures: [
      { label: "bore", mm: bore, source },
      { label: "outside diameter", mm: outside, source },
      { label: kind === "thrust ball" ? "height" : "width", mm: width, source },
    ],
    beside: {
      caption: `Bearings of ${bore} mm bore`,
      columns: ["bore, mm", "outside, mm", "width, mm", "kind"],
      rows: others.map((one) => ({
        label: one.number,
        cells: [`${one.bore}`, `${one.outside}`, `${one.width}`, one.kind],
      })),
      sources: distinct(others.map((one) => one.source)),
    },
    notes: ["Suffixes tell seals, shields and clearance (2RS, ZZ, C3) and change none of these sizes."],
  };
}

/** Bearings of the dimensions that were typed, in mm. */
export function sizedBearings(sizes: readonly number[]): Entry[] {
  const [bore, outside, width] = [...sizes].slice(0, 3);
  const sorted = [bore, outside, width].filter((one) => one !== undefined).sort((a, b) => a - b);
  const [smallest, middle, largest] = sorted;
  const found =
    largest === undefined
      ? bearingsSized({ bore: smallest, outside: middle })
      : [
          ...bearingsSized({ bore, outside, width }),
          ...bearingsSized({ bore: middle, outside: largest, width: smallest }),
        ];
  return [...new Set(found)].slice(0, 3).map(bearingEntry);
}
