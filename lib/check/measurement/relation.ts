import { boundsOf, type Dimension, type Quantity, type Reading } from "#lib/quantity/index.ts";
import { near, sayIn, scaleOf } from "./figures.ts";
import type { EntryExample, Remark } from "./rule.ts";
import { type Fact, readOnce, type Sight } from "./sight.ts";

/** One of the values of a relation: what it is called, and of what kind it is. */
export interface Role {
  name: RegExp;
  kind: readonly Dimension[];
  /** Names that look like it, and are another thing. */
  not?: RegExp;
}

/** A value that follows from others by a formula. Every value is in SI units. */
export interface Relation {
  /** What it says, as a sentence. */
  says: string;
  result: Role;
  given: readonly Role[];
  /** What the given values give, in their order; several where either may be meant, NaN where they give nothing. */
  of: (...given: number[]) => number | number[];
  /** A result written without a sign is compared without one. */
  unsigned?: true;
  /** How far the result may lie off, as a share of it; beside the last places of the figures. */
  room?: number;
  /** Words without which the relation is not meant, and words with which it does not hold. */
  only?: RegExp;
  not?: RegExp;
  /** Where there is a source other than arithmetic. */
  source?: string;
  examples: readonly RelationExample[];
}

/** An entry of a relation: right with its text, and wrong with the other one. */
export interface RelationExample {
  entry: EntryExample["entry"];
  wrong: string;
}

/** A value that has a name of its own. */
export interface NamedValue {
  name: string;
  fact: Fact;
}

/**
 * The values of an entry by their own names: those of the text by the words beside them, a value alone in its text
 * by the label, and what stands in the label, the part and the specification ("4 poles, 50 Hz").
 */
export function namedValues(sight: Sight): NamedValue[] {
  const { facts, what, entry } = sight;
  const alone = facts.filter((fact) => fact.from === "text").length === 1;
  const own = facts
    .filter((fact) => fact.from !== "fastener" && fact.from !== "limit" && !fact.quantity.high)
    .map((fact): NamedValue => {
      const words = fact.label.slice(fact.name.length).trim();
      if (fact.from === "spec") return { fact, name: words };
      return {
        fact,
        name: fact.from === "text" && !alone && words !== "" ? words : `${fact.name} ${words}`.trim(),
      };
    });
  return [...own, ...aside(entry.what, sight, what), ...aside(entry.context.part ?? "", sight, sight.part)];
}

/** Values that stand in a label or in the name of a part. */
function aside(text: string, { decimal }: Sight, name: string): NamedValue[] {
  if (!/\d/.test(text)) return [];
  return quantities(readOnce(text, decimal)).map(({ quantity, words }) => ({
    name: words || name,
    fact: asFact(quantity, name, text),
  }));
}

function quantities(reading: Reading): { quantity: Quantity; words: string }[] {
  if (reading.kind === "list") return reading.parts.flatMap(quantities);
  if (reading.kind !== "quantity" && reading.kind !== "bare") return [];
  return reading.quantities
    .slice(0, 1)
    .map((quantity) => ({ quantity, words: (reading.words ?? "").toLowerCase() }));
}

function asFact(quantity: Quantity, name: string, raw: string): Fact {
  const { low, high } = boundsOf(quantity);
  return {
    from: "related",
    index: -1,
    label: name,
    name,
    raw,
    quantity,
    dimension: quantity.dimension,
    si: quantity.si,
    low,
    high,
  };
}

/** What a relation has to say of an entry's values: nothing where one is missing or stands there twice. */
export function against(relation: Relation, values: readonly NamedValue[], sight: Sight): Remark | null {
  if (relation.only?.test(sight.all) === false || relation.not?.test(sight.all)) return null;
  const result = filled(relation.result, values, values);
  if (!result) return null;
  const given: Filled[] = [];
  for (const role of relation.given) {
    const one = filled(
      role,
      values.filter(({ fact }) => fact !== result.fact && !given.some((other) => other.fact === fact)),
      values,
    );
    if (!one) return null;
    given.push(one);
  }
  if (![result, ...given].some((one) => one.fact.from === "text")) return null;
  const all = [relation.of(...given.map((one) => one.si))].flat();
  if (all.some((should) => !Number.isFinite(should) || agrees(result, should, given, relation))) return null;
  const said = sayIn(all[0] ?? 0, { ...result.fact.quantity, ucum: result.ucum, unit: result.unit }, 4);
  return {
    severity: "wrong",
    found: [result, ...given]
      .map((one) => `${one.name} ${one.fact.raw}`)
      .filter((one, i, all) => all.indexOf(one) === i)
      .join("; "),
    expected: `${relation.says}: ${said}.`,
    meant: result.fact.from === "text" ? `${said}?` : "one of the others?",
    source: relation.source ?? "arithmetic",
  };
}

/** A value in its role: a bare number has the unit of those beside it. */
interface Filled extends NamedValue {
  si: number;
  ucum: string;
  unit: string;
  /** Half of the last place written, in SI units. */
  half: number;
}

function filled(
  { name, kind, not }: Role,
  free: readonly NamedValue[],
  all: readonly NamedValue[],
): Filled | null {
  const fitting = free
    .filter((one) => name.test(one.name) && !not?.test(one.name))
    .flatMap((one) => inKind(one, kind, all));
  const first = fitting.find((one) => one.fact.from === "text") ?? fitting[0];
  return first && fitting.every((one) => near(one.si, first.si, 1e-3)) ? first : null;
}

const pure: readonly Dimension[] = ["number", "count"];

function inKind(value: NamedValue, kind: readonly Dimension[], all: readonly NamedValue[]): Filled[] {
  const { fact } = value;
  const { quantity } = fact;
  const [over = "0", under = "1"] = quantity.value.step.split("/");
  const half = quantity.value.style.kind === "fraction" ? 0 : Number(over) / Number(under) / 2;
  const of = (si: number, like: Quantity): Filled => ({
    ...value,
    si,
    ucum: like.ucum,
    unit: like.unit,
    half: half * scaleOf(like.ucum),
  });
  if (kind.includes(fact.dimension)) return [of(fact.si, quantity)];
  if (pure.includes(fact.dimension) && kind.some((one) => pure.includes(one))) return [of(fact.si, quantity)];
  if (fact.dimension !== "number") return [];
  const like = all.find(
    (one) =>
      one.fact.from === fact.from &&
      one.fact.index === fact.index &&
      one.fact !== fact &&
      kind.includes(one.fact.dimension),
  );
  return like ? [of(quantity.value.number * scaleOf(like.fact.quantity.ucum), like.fact.quantity)] : [];
}

/** A size of whole units is meant as it stands more often than it is rounded. */
const roomIn = (one: Filled | undefined): number =>
  one ? (one.fact.quantity.value.step === "1" ? one.half / 10 : one.half) : 0;

/** Half of the result's last place, and what those of the given ones can do to it. */
function agrees(
  result: Filled,
  should: number,
  given: readonly Filled[],
  { of, room = 0.006, unsigned }: Relation,
): boolean {
  const values = given.map((one) => one.si);
  const shift = (i: number) =>
    [of(...values.map((value, k) => (k === i ? value + roomIn(given[i]) : value)))].flat();
  const spread = given.reduce(
    (so, _, i) => so + Math.min(...shift(i).map((other) => Math.abs(other - should))),
    0,
  );
  const about = [result, ...given].some((one) => one.fact.quantity.qualifier === "about") ? 0.05 : 0;
  const bare = unsigned && !/[-+−]\s?\d/.test(result.fact.raw);
  const off = bare ? Math.abs(Math.abs(result.si) - Math.abs(should)) : Math.abs(result.si - should);
  return off <= result.half * 1.02 + spread + Math.max(room, about) * Math.abs(should);
}

/** A role by its words and kinds. */
export const role = (name: RegExp, ...kind: Dimension[]): Role => ({ name, kind });

export const roleBut = (name: RegExp, not: RegExp, ...kind: Dimension[]): Role => ({ name, not, kind });
