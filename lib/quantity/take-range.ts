import { type Draft, unitAfter } from "./draft.ts";
import { numberAt } from "./numbers.ts";
import type { Lead } from "./qualifiers.ts";
import { at } from "./text.ts";
import { toleranceAt } from "./tolerance.ts";
import type { ReadOptions } from "./types.ts";
import type { NumberAt } from "./value.ts";

const dash = /\s?(?:-|\.{2,3}|…)\s?|\s?\/\s?(?=[+-])|\s(?:to|until|through|thru)\s{1,2}(?:about\s)?/iy;
const either = /\s(?:or|to|-)\s{1,2}|\s?-\s?/iy;
const between = /\s(?:and|to|-)\s{1,2}|\s?-\s?/iy;

/** "0.35-0.45", "10 to 12", "six or seven": the far end, before the unit. */
export function takeRange(draft: Draft, text: string, lead: Lead, options: ReadOptions): void {
  const join = at(lead.between ? between : dash, text, draft.end) ?? at(either, text, draft.end);
  if (!join || isDeviation(text, draft.end, draft.first, options)) return;
  const signed = !/-/.test(join.groups[0]) || /\s$/.test(join.groups[0]);
  const second = numberAt(text, join.end, options, signed);
  if (!second || /^-\d/.test(text.slice(second.end, second.end + 2))) return;
  if (/\b(?:or|and)\b/i.test(join.groups[0]) && !unitAfter(text, second, second.end, options)) return;
  draft.second = second;
  draft.end = second.end;
}

/** "25 -0.02 mm" is no range: a small figure with a sign close to it is what may be taken off. */
function isDeviation(text: string, place: number, first: NumberAt, options: ReadOptions): boolean {
  const value = first.values[0];
  return (
    /^\s-[\d.,]/.test(text.slice(place, place + 3)) &&
    value !== undefined &&
    toleranceAt(text, place, value, options) !== null
  );
}

/** "0.35 mm to 0.45 mm": the far end with a unit of its own. */
export function takeFarEnd(draft: Draft, text: string, lead: Lead, options: ReadOptions): void {
  if (!draft.unit || draft.second || draft.tolerance) return;
  const join = at(lead.between ? between : dash, text, draft.end) ?? at(either, text, draft.end);
  const far = join && numberAt(text, join.end, options, !/-$/.test(join.groups[0]));
  const unit = far && unitAfter(text, far, far.end, options);
  if (!far || !unit || unit.codes.join() !== draft.unit.codes.join()) return;
  draft.second = far;
  draft.end = unit.end;
}
