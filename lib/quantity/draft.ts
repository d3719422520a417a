import { after, isAt } from "./text.ts";
import type { LargerPart, Qualifier, ReadOptions, Role, Tolerance } from "./types.ts";
import { type UnitAt, unitAt } from "./unit-at.ts";
import type { NumberAt } from "./value.ts";

/** What was gathered of one amount while walking along the text. */
export interface Draft {
  first: NumberAt;
  second?: NumberAt;
  unit?: UnitAt;
  tolerance?: Tolerance;
  qualifier: Qualifier;
  roughly: boolean;
  larger: LargerPart[];
  role?: Role;
  end: number;
}

const gap = /\s?-\s?|\s{0,2}/y;
const partOf = /\s(?:of\s)?(?:an?|the)\s/y;

/** The unit behind a figure; behind a part of one, "of a" may stand between: "half an inch". */
export function unitAfter(
  text: string,
  number: NumberAt,
  place: number,
  options: ReadOptions,
): UnitAt | null {
  const value = number.values[0];
  const isPart = value?.style.kind === "fraction" && value.number < 1;
  const between = isPart && isAt(partOf, text, place) ? partOf : gap;
  return unitAt(text, after(between, text, place), options);
}
