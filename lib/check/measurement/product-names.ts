import type { Sight } from "./sight.ts";

const bracketed = /\(([^()]{3,80})\)/;
const between = / ?[x×,/] ?/;

/** What several measures are called: beside them, else in brackets behind them or in the label: "seal (ID x OD x width)". */
export function productNames({ reading, what, entry, facts }: Sight): string[] | undefined {
  if (reading.kind !== "product" && reading.kind !== "list") return undefined;
  if (reading.kind === "product" && reading.names) return reading.names;
  const count = facts.filter((fact) => fact.from === "text").length;
  const behind = reading.kind === "list" ? bracketed.exec(entry.text)?.[1]?.toLowerCase() : undefined;
  return namesIn(behind, count) ?? namesIn(bracketed.exec(what)?.[1], count);
}

function namesIn(text: string | undefined, count: number): string[] | undefined {
  const names = text?.split(between).map((name) => name.trim());
  const named = count > 1 && names?.length === count && names.every((name) => /^[a-z][a-z. -]*$/.test(name));
  return named ? names : undefined;
}
