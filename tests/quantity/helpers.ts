import { type Quantity, type Reading, type ReadOptions, read } from "#lib/quantity/index.ts";

/** The only quantity of a text that holds one; fails where it was read as anything else. */
export function quantity(text: string, options?: ReadOptions): Quantity {
  const reading = read(text, options);
  if (reading.kind !== "quantity" && reading.kind !== "bare") {
    throw new Error(`“${text}” was read as ${reading.kind}: ${JSON.stringify(reading).slice(0, 200)}`);
  }
  const [first] = reading.quantities;
  if (!first) throw new Error(`“${text}” has no quantity`);
  return first;
}

/** UCUM codes of what a question offers. */
export function offered(reading: Reading): string[] {
  if (reading.kind !== "question") return [];
  return reading.candidates.map((one) => ("quantities" in one ? (one.quantities[0]?.ucum ?? "") : one.kind));
}
