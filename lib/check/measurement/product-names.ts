import type { Sight } from "./sight.ts";

const bracketed = /\(([a-z][a-z ./]*(?: [x×] [a-z][a-z ./]*)+)\)/;

/** What the measures of a product are called: beside them, else in the label: "seal (ID x OD x width)". */
export function productNames({ reading, what }: Sight): string[] | undefined {
  if (reading.kind !== "product") return undefined;
  if (reading.names) return reading.names;
  const names = bracketed
    .exec(what)?.[1]
    ?.split(/ [x×] /)
    .map((name) => name.trim());
  return names?.length === reading.quantities.length ? names : undefined;
}
