import type { Sight } from "./sight.ts";

const bracketed = /\(([^()]{3,80})\)/;

/** What the measures of a product are called: beside them, else in the label: "seal (ID x OD x width)". */
export function productNames({ reading, what }: Sight): string[] | undefined {
  if (reading.kind !== "product") return undefined;
  if (reading.names) return reading.names;
  const names = bracketed
    .exec(what)?.[1]
    ?.split(/ [x×] /)
    .map((name) => name.trim());
  const named = names?.length === reading.quantities.length && names.every((name) => /^[a-z]/.test(name));
  return named ? names : undefined;
}
