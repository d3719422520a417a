import { measureAt } from "../measure.ts";
import type { Part } from "../part.ts";
import { withUnit } from "../product.ts";
import { at } from "../text.ts";
import type { Designation, Quantity, Reading, ReadOptions, ThreadDesignation } from "../types.ts";
import { strengthMarkAt } from "./strength-marks.ts";

/** A designation as a part of the text. */
export function designationPart(designation: Designation, start: number, end: number): Part {
  return { reading: reading(designation), start, end };
}

export function reading(designation: Designation): Reading {
  return { kind: "designation", designation, quantities: [] };
}

/** A question between designations, likeliest first. */
export function designationQuestion(
  ask: string,
  designations: Designation[],
  start: number,
  end: number,
): Part {
  return { reading: { kind: "question", ask, candidates: designations.map(reading) }, start, end };
}

const times = /\s?(?:[x×X]|\bby\b)\s?/iy;
const hand = /[\s,-]{0,2}(LH|L\.H\.|left[- ]hand|RH|right[- ]hand)(?![\p{L}\p{N}])/iuy;

/** What may stand behind any thread: its hand, the screw's length, its class of strength. */
export function threadPart(
  thread: ThreadDesignation,
  start: number,
  end: number,
  text: string,
  options: ReadOptions,
): Part {
  const full = { ...thread };
  let last = end;
  const side = at(hand, text, last);
  if (side) {
    full.hand = /^l/i.test(side.groups[1] ?? "") ? "left" : "right";
    last = side.end;
  }
  const length = full.length ? null : lengthAt(text, last, options, thread.ucum ?? "[in_i]");
  if (length) {
    full.length = length.quantity;
    last = length.end;
  }
  const strength = strengthMarkAt(text, last);
  if (strength) {
    full.strength = strength.mark;
    last = strength.end;
  }
  return designationPart(full, start, last);
}

/** "x 20", "x 3/4 in": the length behind a thread, in the thread's own unit where it has none. */
function lengthAt(
  text: string,
  place: number,
  options: ReadOptions,
  ucum: string,
): { quantity: Quantity; end: number } | null {
  const sign = at(times, text, place);
  const found = sign && measureAt(text, sign.end, options);
  const [quantity] = found?.quantities ?? [];
  if (!found || !quantity || found.quantities.length !== 1) return null;
  if (quantity.dimension === "length") return { quantity, end: found.end };
  if (quantity.ucum !== "1") return null;
  const model = { ...quantity, ucum, unit: ucum === "mm" ? "mm" : "in" };
  return { quantity: withUnit(quantity, model), end: found.end };
}
