import { clearanceLost, expansionOf, growth, perFahrenheit, riseFor, spill } from "#lib/reference/index.ts";
import { figures, first, inUnit, of } from "../read/figures.ts";
import type { Adapter } from "../row.ts";

/** Coefficients as written: "21.5e-6 and 11.4e-6", else those of the metals that are named. */
function coefficients(text: string): number[] {
  const written = [...text.matchAll(/[\d.]+e-\d+/g)].map(([one]) => Number(one));
  return written.length > 0 ? written : expansionOf(text).map(({ perKelvin }) => perKelvin);
}

/** A rise: a difference as written, or from the one temperature to the other. */
function riseIn(text: string): number {
  const range = figures(text).find(({ dimension, high }) => dimension === "temperature" && high);
  if (range?.high) return inUnit({ ...range, value: range.high }, "Cel") - inUnit(range, "Cel");
  const [one, other] = figures(text).filter(({ dimension }) => dimension === "temperature");
  if (one && other) return Math.abs(inUnit(other, "Cel") - inUnit(one, "Cel"));
  return inUnit(first(one ? [one] : [], "a rise"), "K", "difference");
}

export const adapter: Adapter = ({ input }) => {
  const { text } = input;
  const [alpha = Number.NaN, beta = Number.NaN] = coefficients(text);
  if (/coefficient/.test(text)) return { per_K: alpha };
  if (/per degF/.test(text)) return { value: perFahrenheit(alpha), unit: "per degF" };
  if (/spill/.test(text)) {
    const volume = first(of(text, "volume", "L"), "the volume");
    return { value: spill(alpha, beta, volume, riseIn(text)), unit: "L" };
  }
  const span = first(
    figures(text).filter(({ dimension }) => dimension === "length"),
    "the length",
  );
  if (/heat needed|to open/.test(text)) {
    const [size = 0, amount = 0] = of(text, "length", "mm");
    return { value: riseFor(alpha, size, amount), unit: "K" };
  }
  const length = inUnit(span, span.ucum);
  const value = /clearance/.test(text)
    ? clearanceLost(alpha, beta, length, riseIn(text))
    : growth(alpha, length, riseIn(text));
  return { value, unit: span.unit };
};
