import { type Quantity, toSI, unitByCode } from "#lib/quantity/index.ts";

/**
 * Units that are said but not in the table of units, with their factors: flows in cubic metres a second, and spoons in
 * cubic metres (NIST Handbook 44, appendix C: 1 gal = 256 tablespoons = 768 teaspoons).
 */
const others: Readonly<Record<string, [string, number]>> = {
  "L/min": ["flow", 0.001 / 60],
  "[gal_us]/min": ["flow", 0.003785411784 / 60],
  "[gal_br]/min": ["flow", 0.00454609 / 60],
  "mL/min": ["flow", 0.000001 / 60],
  "[tbs_us]": ["volume", 0.003785411784 / 256],
  "[tsp_us]": ["volume", 0.003785411784 / 768],
};

const scales = new Map<string, { nought: number; factor: number }>();

/** What a unit measures: "length"; for the few that the table of units has not, "flow" or "volume". */
export function dimensionOf(code: string): string {
  if (code === "1") return "ratio";
  return (
    unitByCode(code)?.dimension ?? (Object.hasOwn(others, code) ? (others[code]?.[0] ?? "number") : "number")
  );
}

/** A value in SI units as a double. */
export function siOf(value: number, code: string): number {
  let scale = scales.get(code);
  if (!scale) {
    const other = Object.hasOwn(others, code) ? others[code]?.[1] : undefined;
    const known = unitByCode(code) !== null;
    const nought = known ? toSI(quantityOf(0, code)) : 0;
    scale = { nought, factor: other ?? (known ? toSI(quantityOf(1, code)) - nought : 1) };
    scales.set(code, scale);
  }
  return scale.nought + value * scale.factor;
}

function quantityOf(number: number, ucum: string): Quantity {
  const value = { exact: `${number}`, number, step: "1", style: { kind: "decimal", places: 0 } } as const;
  return { dimension: "number", ucum, unit: "", value, qualifier: "exact", si: 0 };
}
