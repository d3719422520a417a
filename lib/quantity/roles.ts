import { siNumber } from "./convert.ts";
import { at } from "./text.ts";
import type { Quantity, Role } from "./types.ts";
import type { UnitAt } from "./unit-at.ts";

const pressureRoles: [RegExp, Role][] = [
  [/\s?\(?(?:gauge|gage|g)\b\)?/iy, "gauge"],
  [/\s?\(?(?:absolute|abs|a)\b\)?/iy, "absolute"],
  [/\s?(?:of\s)?(?:vacuum|vac|depression)\b/iy, "vacuum"],
];
/** Words that make a temperature a difference of temperatures. */
export const riseWords =
  /\b(?:rise|risen|drop|fall|difference|differential|diff|delta|above ambient|below ambient|over ambient|hotter|warmer|cooler|colder|increase|increased by|higher|lower than)\b|[Δ∆]/i;

/** "30 psi gauge", "15 inHg vacuum": the role named after a unit. */
export function roleAfter(
  text: string,
  draft: { unit?: UnitAt | undefined; end: number },
): { role: Role; end: number } | null {
  if (!draft.unit?.codes.some((code) => /psi|bar|Pa|Hg|H2O|kgf\/cm2|att/.test(code))) return null;
  const letter = /^(?:psi|bar)([ag])$/i.exec(draft.unit.spelling)?.[1];
  if (letter) return { role: letter.toLowerCase() === "g" ? "gauge" : "absolute", end: draft.end };
  for (const [pattern, role] of pressureRoles) {
    const found = at(pattern, text, draft.end);
    if (found) return { role, end: found.end };
  }
  return null;
}

/** A temperature in a text that speaks of a rise or a drop is a difference. */
export function withRise(quantity: Quantity, text: string): Quantity {
  if (quantity.dimension !== "temperature" || !riseWords.test(text)) return quantity;
  const si = (exact: string) => siNumber(exact, quantity.ucum, "difference");
  return {
    ...quantity,
    role: "difference",
    si: si(quantity.value.exact),
    ...(quantity.high ? { siHigh: si(quantity.high.exact) } : {}),
  };
}
