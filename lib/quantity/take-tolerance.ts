import { type Draft, unitAfter } from "./draft.ts";
import { after } from "./text.ts";
import { percentAt, toleranceAt } from "./tolerance.ts";
import type { ReadOptions } from "./types.ts";
import type { UnitAt } from "./unit-at.ts";
import { unitByCode } from "./units.ts";

/** "6 mm (+0.00/-0.03)": deviations in a bracket, and no conversion with its sign. */
const bracket = /\s?\((?=\s?(?:±|\+\s?\/\s?-|\+\s?[\d.,]+\s?[/,]\s?[-+]))/y;
const closing = /\s?\)/y;

/** "25 ±0.02 mm", "25 mm ± 2 thou", "25 mm H7": the unit, and the tolerance before or behind it. */
export function takeToleranceAndUnit(draft: Draft, text: string, options: ReadOptions): void {
  const value = draft.first.values[0];
  const unit = unitAfter(text, draft.second ?? draft.first, draft.end, options);
  if (unit) {
    draft.unit = unit;
    draft.end = unit.end;
  }
  const place = draft.end;
  const start = after(bracket, text, place);
  const found = value && toleranceAt(text, start, value, options);
  if (!found || (draft.second && found.tolerance.kind === "class")) return;
  const own =
    found.tolerance.kind === "limits"
      ? unitAfter(text, draft.first, found.end, options)
      : unit
        ? null
        : unitAfter(text, draft.first, found.end, options);
  if (!unit && !own && found.tolerance.kind === "class") return;
  if (unit && own && !sameDimension(unit, own)) return;
  draft.unit = unit ?? own ?? undefined;
  draft.end = own?.end ?? found.end;
  if (start > place) draft.end = after(closing, text, draft.end);
  draft.tolerance =
    found.tolerance.kind === "limits" ? { ...found.tolerance, ucum: own?.codes[0] ?? "" } : found.tolerance;
}

const ofComponents = new Set(["resistance", "capacitance", "inductance"]);

/** "100 Ω 10%": a share behind the value of a component is its tolerance. */
export function takePercent(draft: Draft, text: string): void {
  const dimension = unitByCode(draft.unit?.codes[0] ?? "")?.dimension ?? "";
  if (draft.tolerance || !ofComponents.has(dimension)) return;
  const found = percentAt(text, draft.end);
  if (!found) return;
  draft.tolerance = found.tolerance;
  draft.end = found.end;
}

function sameDimension(one: UnitAt, other: UnitAt): boolean {
  return unitByCode(one.codes[0] ?? "")?.dimension === unitByCode(other.codes[0] ?? "")?.dimension;
}
