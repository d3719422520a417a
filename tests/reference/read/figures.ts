import {
  convert,
  type Designation,
  type Dimension,
  find,
  type Quantity,
  quantitiesOf,
  type Reading,
  type Role,
  rational,
  read,
  toNumber,
} from "#lib/quantity/index.ts";
import { type Thread, threadOf } from "#lib/reference/index.ts";

/** Every quantity in a sentence, in order. */
export const figures = (text: string): Quantity[] =>
  find(text).flatMap(({ reading }) => quantitiesOf(reading));

/** A quantity in a unit, as a double. */
export function inUnit(quantity: Quantity, ucum: string, role?: Role): number {
  return toNumber(rational(convert(quantity.value.exact, quantity.ucum, ucum, role ?? quantity.role)));
}

/** Both ends of a range, or the one value twice. */
export function ends(quantity: Quantity, ucum: string): [number, number] {
  const { high } = quantity;
  const last = high ? toNumber(rational(convert(high.exact, quantity.ucum, ucum, quantity.role))) : undefined;
  const first = inUnit(quantity, ucum);
  return [first, last ?? first];
}

/** The quantities of a dimension, in a unit. */
export const of = (text: string, dimension: Dimension, ucum: string): number[] =>
  figures(text)
    .filter((one) => one.dimension === dimension)
    .flatMap((one) => (one.high ? ends(one, ucum) : [inUnit(one, ucum)]));

/** All designations in a sentence. */
export function designations(text: string): Designation[] {
  const inside = (reading: Reading): Designation[] =>
    reading.kind === "designation"
      ? [reading.designation]
      : reading.kind === "list"
        ? reading.parts.flatMap(inside)
        : [];
  return inside(read(text));
}

/** The threads that a sentence names, each as the tables have it; the likeliest row of each. */
export function threads(text: string, wanted?: (thread: Thread) => boolean): Thread[] {
  return designations(text).flatMap((one) => {
    if (one.type !== "thread") return [];
    const rows = threadOf(one);
    return (wanted ? rows.filter(wanted) : rows).slice(0, 1);
  });
}

/** The first of a list, or an error that says what was looked for. */
export function first<T>(list: readonly T[], what: string): T {
  const [one] = list;
  if (one === undefined) throw new Error(`${what} was not found`);
  return one;
}

/** A plain number behind a word: ("swept 410.25, head 50", "swept") is 410.25. */
export function after(text: string, word: string): number | undefined {
  const found = new RegExp(`\\b${word}\\b\\D{0,3}(-?[\\d.]+)`, "i").exec(text)?.[1];
  return found === undefined ? undefined : Number(found);
}
