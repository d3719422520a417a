import { convertRational } from "./convert.ts";
import { glyphOf } from "./numbers.ts";
import {
  absolute,
  type Exact,
  exact,
  multiply,
  over,
  type Rational,
  rational,
  subtract,
} from "./rational.ts";
import { toPlaces } from "./round.ts";
import type { Designation, NumberStyle, Quantity, Reading, Tolerance, Value } from "./types.ts";
import { unitByCode } from "./units.ts";

/** The space at which no line is broken. */
export const hardSpace = "\u00a0";

/** `own`: the unit as its writer spells it. `symbol`: the table's symbol for it. */
export type FormatStyle = "own" | "symbol";

/** A number written in a given style: 11/8 as "1-3/8", "1⅜", "1.375". */
export function formatNumber(number: Rational, style: NumberStyle): string {
  const sign = number.n < 0n ? "-" : style.plus ? "+" : "";
  const size = absolute(number);
  return `${sign}${style.kind === "decimal" ? decimalText(size, style) : fractionText(size, style)}`;
}

function decimalText(size: Rational, style: NumberStyle & { kind: "decimal" }): string {
  const tens = style.tens ?? 0;
  const scaled =
    tens === 0
      ? size
      : multiply(size, tens < 0 ? over(10n ** BigInt(-tens), 1n) : over(1n, 10n ** BigInt(tens)));
  const [whole = "0", places = ""] = toPlaces(scaled, style.places).split(".");
  const grouped = style.group ? whole.replace(/\B(?=(?:\d{3})+$)/g, style.group) : whole;
  const head = style.bare && whole === "0" ? "" : grouped;
  if (style.letter) return `${head}${style.letter}${places}`;
  return `${head}${places ? (style.sign ?? ".") + places : ""}${tens ? `e${tens}` : ""}`;
}

function fractionText(size: Rational, style: NumberStyle & { kind: "fraction" }): string {
  const { n, d } = size;
  const whole = style.improper ? 0n : n / d;
  const part = multiply(subtract(size, over(whole, 1n)), over(BigInt(style.over), 1n));
  if (part.d !== 1n) return decimalText(size, { kind: "decimal", places: 6 });
  if (part.n === 0n && !style.improper) return `${whole}`;
  const fraction = `${part.n}/${style.over}`;
  const shown = (style.glyph && glyphOf(fraction)) || fraction;
  const join = style.join === "" && shown === fraction ? "-" : style.join.replaceAll(" ", hardSpace);
  return whole === 0n ? shown : `${whole}${join}${shown}`;
}

const numberOf = (value: Value): string => formatNumber(rational(value.exact), value.style);

/** Marks that stand against the figure: 13/16", 5', 30°. */
const closeMarks = /^(?:"|''|'|°|′|″)$/;

function joined(number: string, unit: string): string {
  if (unit === "") return number;
  return closeMarks.test(unit)
    ? `${number}${unit}`
    : `${number}${hardSpace}${unit.replaceAll(" ", hardSpace)}`;
}

const unitOf = (unit: string, ucum: string, style: FormatStyle, number = 2): string =>
  style === "own" && unit !== "" ? unit : symbolFor(ucum, number);

/** The table's symbol of a unit; words for things counted and turned have a singular: "1 tooth". */
export function symbolFor(ucum: string, number: number): string {
  const unit = unitByCode(ucum);
  const counted = unit?.dimension === "count" || ucum === "circ" || ucum === "60.deg";
  return (counted && Math.abs(number) <= 1 ? unit?.spellings[1] : unit?.symbol) ?? "";
}

/** Figures in plain form: no letter for the point (4k7), no grouping, no bare point. */
function unadorned(style: NumberStyle): NumberStyle {
  return style.kind === "decimal"
    ? { kind: "decimal", places: style.places, ...(style.tens ? { tens: style.tens } : {}) }
    : style;
}

/** Codes such as 4k7 carry their unit in themselves; where the symbol is wanted, the point comes back. */
function plainStyle(quantity: Quantity, style: FormatStyle): Quantity {
  const own = quantity.value.style;
  if (own.kind !== "decimal" || style === "own") return quantity;
  const plain = (value: Value): Value => ({ ...value, style: unadorned(value.style) });
  return {
    ...quantity,
    value: plain(quantity.value),
    ...(quantity.high ? { high: plain(quantity.high) } : {}),
  };
}

const isCode = ({ value }: Quantity): boolean =>
  value.style.kind === "decimal" && value.style.letter !== undefined;

/** Writes a quantity as its writer does: own kind of number, own spelling, nothing parted at a line's end. */
export function formatQuantity(given: Quantity, style: FormatStyle = "own"): string {
  if (given.terms) return `${lead(given)}${given.terms.map(termText).join(":")}`;
  const quantity = plainStyle(given, style);
  const unit = isCode(quantity)
    ? ""
    : unitOf(quantity.unit, quantity.ucum, style, quantity.high?.number ?? quantity.value.number);
  const amount = `${larger(quantity, style)}${amountOf(quantity, unit)}`;
  return `${lead(quantity)}${amount}${role(quantity)}`;
}

function termText(term: Exact): string {
  const { n, d } = rational(term);
  return [1n, 2n, 4n, 5n, 8n, 10n, 20n, 25n, 50n, 100n, 1000n].includes(d)
    ? `${Number(n) / Number(d)}`
    : term;
}

function larger(quantity: Quantity, style: FormatStyle): string {
  const parts = quantity.larger ?? [];
  return parts
    .map((part) => `${joined(part.count, unitOf(part.unit, part.ucum, style))}${hardSpace}`)
    .join("");
}

function amountOf(quantity: Quantity, unit: string): string {
  const value = { ...quantity.value, exact: remainder(quantity) };
  if (quantity.high)
    return joined(`${numberOf(value)}${rangeSign(quantity)}${numberOf(quantity.high)}`, unit);
  const amount = joined(numberOf(value), unit);
  return quantity.tolerance
    ? withTolerance(numberOf(value), unit, quantity.ucum, quantity.tolerance)
    : amount;
}

/** What is left for the last unit when the larger ones are taken off. */
function remainder(quantity: Quantity): Exact {
  const taken = (quantity.larger ?? []).map((part) =>
    convertRational(rational(part.count), part.ucum, quantity.ucum),
  );
  return exact(taken.reduce((left, one) => subtract(left, one), rational(quantity.value.exact)));
}

/** A dash between plain figures, "to" where a dash could be mistaken for a minus or part of a fraction. */
function rangeSign({ value, high }: Quantity): string {
  const plain = [value, high].every(
    (one) => one?.style.kind === "decimal" && !one.style.plus && !one.exact.startsWith("-"),
  );
  return plain ? "–" : `${hardSpace}to${hardSpace}`;
}

function withTolerance(number: string, unit: string, ucum: string, tolerance: Tolerance): string {
  if (tolerance.kind === "class") return `${joined(number, unit)}${hardSpace}${tolerance.name}`;
  const { plus, minus, even } = tolerance;
  const signed = (value: Value) => numberOf({ ...value, style: { ...value.style, plus: true } });
  const both = even
    ? `±${numberOf(plus)}`
    : `${signed(plus)}/${minus.exact === "0" ? `-${numberOf(minus)}` : signed(minus)}`;
  if (tolerance.kind === "percent") return `${joined(number, unit)}${hardSpace}${both}${hardSpace}%`;
  if (tolerance.ucum === ucum) return joined(`${number}${hardSpace}${both}`, unit);
  return `${joined(number, unit)}${hardSpace}${joined(both, unitByCode(tolerance.ucum)?.symbol ?? "")}`;
}

function lead({ qualifier, roughly }: Quantity): string {
  const about = roughly || qualifier === "about" ? `about${hardSpace}` : "";
  if (qualifier === "either way") return `${about}±`;
  return `${qualifier === "at least" || qualifier === "at most" ? `${qualifier}${hardSpace}` : ""}${about}`;
}

function role({ role }: Quantity): string {
  return role ? `${hardSpace}${role}` : "";
}

/** Writes a quantity, or all of a reading, in its writer's own style. Empty for what was not read. */
export function format(thing: Quantity | Reading, style: FormatStyle = "own"): string {
  if (!("kind" in thing)) return formatQuantity(thing, style);
  const each = (quantities: Quantity[]) => quantities.map((one) => formatQuantity(one, style));
  switch (thing.kind) {
    case "bare":
    case "quantity": {
      const [first = "", ...others] = each(thing.quantities);
      return [first, ...others.map((other) => `(${other})`)].join(hardSpace);
    }
    case "product":
      return productText(thing.quantities, style);
    case "sum":
      return sumText(thing, style);
    case "designation":
      return formatDesignation(thing.designation, style);
    case "list":
      return thing.parts.map((part) => format(part, style)).join(", ");
    default:
      return "";
  }
}

/** A designation by its name, with what was written beside it: "M6x1 LH × 20 mm 8.8". */
export function formatDesignation(designation: Designation, style: FormatStyle = "own"): string {
  if (designation.type !== "thread") return designation.name.replaceAll(" ", hardSpace);
  const { name, fitClass, hand, length, strength } = designation;
  const words = [`${name}${fitClass ? `-${fitClass}` : ""}`];
  if (hand) words.push(hand === "left" ? "LH" : "RH");
  if (length) words.push(`× ${formatQuantity(length, style)}`);
  if (strength) words.push(strength);
  return words.join(" ").replaceAll(" ", hardSpace);
}

function productText(quantities: Quantity[], style: FormatStyle): string {
  const [first] = quantities;
  const same = quantities.every(
    (one) => one.ucum === first?.ucum && one.unit === first?.unit && !one.tolerance && !one.high,
  );
  const times = `${hardSpace}×${hardSpace}`;
  if (!same || !first) return quantities.map((one) => formatQuantity(one, style)).join(times);
  return joined(
    quantities.map((one) => numberOf(one.value)).join(times),
    unitOf(first.unit, first.ucum, style),
  );
}

export function sumText({ quantities, total }: Reading & { kind: "sum" }, style: FormatStyle): string {
  const terms = quantities.map((one, i) => {
    const text = formatQuantity(
      { ...one, value: { ...one.value, exact: exact(absolute(rational(one.value.exact))) } },
      style,
    );
    return i === 0 ? text : `${one.value.exact.startsWith("-") ? "-" : "+"} ${text}`;
  });
  return `${terms.join(" ")}${total ? ` = ${formatQuantity(total, style)}` : ""}`;
}
