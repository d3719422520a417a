import { formatDesignation, formatQuantity, hardSpace, sumText, symbolFor } from "./format.ts";
import { otherSystem, type SayOptions } from "./other-system.ts";
import { compare, rational } from "./rational.ts";
import type { Quantity, Reading } from "./types.ts";

/**
 * How a text was read, in plain words: the unit by its symbol, the same in the other system, how exact it was
 * written, and what is to be asked. For the line under a field while somebody types.
 */
export function say(reading: Reading, options: SayOptions = {}): string {
  switch (reading.kind) {
    case "empty":
      return "";
    case "unread":
      return `not read: ${reading.why}`;
    case "question":
      return `${reading.ask}: ${reading.candidates.map((one) => say(one, options)).join("; or ")}?`;
    case "bare":
      return `${reading.quantities.map((one) => formatQuantity(one, "symbol")).join(", ")}, a number without a unit`;
    case "quantity":
      return reading.quantities
        .map((one) => sayQuantity(one, options, reading.quantities.length === 1))
        .join(" = ");
    case "product":
      return sayProduct(reading.quantities, reading.names);
    case "sum":
      return sumText(reading, "symbol");
    case "designation":
      return [
        formatDesignation(reading.designation, "symbol"),
        ...reading.quantities.map((one) => sayQuantity(one, options, false)),
      ].join(", ");
    case "list":
      return reading.parts.map((part) => say(part, options)).join("; ");
  }
}

function sayQuantity(quantity: Quantity, options: SayOptions, full: boolean): string {
  const other = full ? otherSystem(quantity, options) : null;
  const same = other ? ` = ${other}` : "";
  return `${formatQuantity(quantity, "symbol")}${same}${full ? exactness(quantity) : ""}${meant(quantity)}`;
}

/** How exact the figure was written, where that is not plain from the digits. */
function exactness({ value, ucum }: Quantity): string {
  if (value.style.kind !== "fraction" || compare(rational(value.step), rational("1")) === 0) return "";
  return `, written to ${value.step}${hardSpace}${symbolFor(ucum, 1)}`.trimEnd();
}

function meant({ dimension, terms }: Quantity): string {
  if (dimension === "torque") return " (torque)";
  return terms ? " (ratio)" : "";
}

function sayProduct(quantities: Quantity[], names: string[] | undefined): string {
  return quantities
    .map((one, i) => `${names?.[i] ? `${names[i]} ` : ""}${formatQuantity(one, "symbol")}`)
    .join(" × ");
}
