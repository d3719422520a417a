import { siNumber } from "./convert.ts";
import type { Draft } from "./draft.ts";
import { numberAt } from "./numbers.ts";
import { type Lead, leadAt, tailAt } from "./qualifiers.ts";
import { rational } from "./rational.ts";
import { roleAfter } from "./roles.ts";
import { takeFarEnd, takeRange } from "./take-range.ts";
import { takeHalf, takeSmallerUnits } from "./take-smaller-units.ts";
import { takePercent, takeToleranceAndUnit } from "./take-tolerance.ts";
import { after, at, isAt } from "./text.ts";
import type { Quantity, ReadOptions, Value } from "./types.ts";
import { unitAt } from "./unit-at.ts";
import { unitByCode } from "./units.ts";
import { type NumberAt, wholeValue } from "./value.ts";

/** A measured amount found at a place: what it may be, and the question if that is more than one thing. */
export interface MeasureAt {
  quantities: Quantity[];
  asks: string[];
  end: number;
  /** A whole number in words without a unit: often no number at all ("one of them"). */
  loose: boolean;
}

const inchAnd = /inch(?=\sand\s(?:an?|one|three|five|seven)\b)/iy;
/** Diameter or radius before the figure. */
const sizeMark = /⌀\s?|R(?=[\d.]{1,6}\s?(?:mm|in\b|"|thou))/y;
const oneOf = /(?:an?)\s(?=[a-z])/iy;

/** The amount at a place, with its qualifier, range, tolerance and unit, or null. */
export function measureAt(text: string, place: number, options: ReadOptions): MeasureAt | null {
  const lead = leadAt(text, place);
  const start = after(sizeMark, text, lead.end);
  const first = numberAt(text, start, options, true) ?? single(text, start, options);
  if (!first) return null;
  const draft: Draft = { first, qualifier: "exact", roughly: false, larger: [], end: first.end };
  takeRange(draft, text, lead, options);
  takeToleranceAndUnit(draft, text, options);
  takePercent(draft, text);
  takeFarEnd(draft, text, lead, options);
  takeSmallerUnits(draft, text, options);
  takeHalf(draft, text);
  takeTail(draft, text, lead);
  return finish(draft);
}

/** "an inch", "a thou", "inch and a half": one, if a unit follows. */
function single(text: string, place: number, options: ReadOptions): NumberAt | null {
  if (isAt(inchAnd, text, place)) return { values: [wholeValue(1)], end: place, spoken: "loosely" };
  const article = at(oneOf, text, place);
  if (!article || !unitAt(text, article.end, options)) return null;
  return { values: [wholeValue(1)], end: article.end - 1, spoken: "loosely" };
}

const minutes = /\s?min/iy;

/** Roles and qualifiers behind the unit, joined with those before the figure. */
function takeTail(draft: Draft, text: string, lead: Lead): void {
  const role = roleAfter(text, draft);
  if (role) {
    draft.role = role.role;
    draft.end = role.end;
  }
  const tail = draft.unit || !isAt(minutes, text, draft.end) ? tailAt(text, draft.end) : null;
  if (tail) draft.end = tail.end;
  const limit = [lead.qualifier, tail?.qualifier].find((one) => one && one !== "about");
  const rough = lead.roughly === true || tail?.qualifier === "about";
  draft.qualifier = draft.second ? "range" : (limit ?? (rough ? "about" : "exact"));
  draft.roughly = rough && draft.qualifier !== "about";
}

function finish(draft: Draft): MeasureAt {
  const codes = draft.unit?.codes ?? ["1"];
  settleGroups(draft, codes);
  const ends = pairs(draft.first.values, draft.second?.values ?? [undefined]);
  const quantities = codes.flatMap((ucum) =>
    ends.map(([value, high]) => quantityOf(draft, ucum, value, high)),
  );
  const asks = [draft.first.ask ?? draft.second?.ask, draft.unit?.ask].filter((ask) => ask !== undefined);
  return { quantities, asks, end: draft.end, loose: draft.first.spoken === "loosely" && !draft.unit };
}

/** Both ends of a range are written in one way; where only one of them is not plain, each reading of it counts. */
function pairs(firsts: Value[], seconds: (Value | undefined)[]): [Value, Value | undefined][] {
  if (firsts.length === seconds.length) return firsts.map((value, i) => [value, seconds[i]]);
  return firsts.flatMap((value) => seconds.map((high): [Value, Value | undefined] => [value, high]));
}

const countedWhole = new Set(["rotational speed", "frequency", "count"]);

/** A comma in so many revolutions or beats groups thousands: nobody measures them to a thousandth. */
function settleGroups(draft: Draft, codes: string[]): void {
  const dimension = unitByCode(codes[0] ?? "")?.dimension ?? "";
  if (!countedWhole.has(dimension)) return;
  for (const number of [draft.first, draft.second]) {
    if (!number || number.values.length < 2) continue;
    number.values = number.values.filter((value) => rational(value.exact).d === 1n).slice(0, 1);
    delete number.ask;
  }
}

function quantityOf(draft: Draft, ucum: string, value: Value, high: Value | undefined): Quantity {
  const dimension = unitByCode(ucum)?.dimension ?? "number";
  const role = dimension === "pressure" || dimension === "temperature" ? draft.role : undefined;
  const { tolerance } = draft;
  return {
    dimension,
    role,
    ucum,
    unit: draft.unit?.spelling ?? "",
    value,
    high,
    qualifier: draft.qualifier,
    roughly: draft.roughly || undefined,
    tolerance: tolerance?.kind === "limits" ? { ...tolerance, ucum: tolerance.ucum || ucum } : tolerance,
    larger: draft.larger.length > 0 ? draft.larger : undefined,
    si: siNumber(value.exact, ucum, role),
    siHigh: high && siNumber(high.exact, ucum, role),
  };
}
