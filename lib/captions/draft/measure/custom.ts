import { sizeNouns } from "../../lexicon/frames.ts";
import { notAfterHalf } from "../../lexicon/not-measures.ts";
import type { Amount, Memory } from "../amount.ts";
import { type Context, hasWord, sentenceAt } from "../context.ts";
import { mayBeginNumber, numberAt } from "../number.ts";
import { dimensionOf } from "../si.ts";
import type { Token } from "../stream.ts";
import { unitAt } from "../unit.ts";
import { endsWell, framed, placing } from "./frame.ts";
import { isCounting, ofWhat } from "./not-measure.ts";
import { sizeBehind } from "./size-behind.ts";

/** An amount that got its unit, and why, in plain words. */
export interface Carried {
  amount: Amount;
  why: string;
}

const tradeParts = new Set([8, 16, 32, 64]);

const inches = new Set(["[in_i]", "[mil_i]", "[ft_i]"]);

/** "The card's point three", where lengths are in millimetres. */
export function amongMillimetres(context: Context, memory: Memory, amount: Amount): Carried | null {
  const fits =
    amount.form === "decimal" && memory.lastLength === "mm" && amount.value > 0.01 && amount.value < 500;
  const ofLength = hasWord(context.tokens, amount.from - 14, amount.to + 6, lengthWords);
  if (!fits || (memory.electrical && !ofLength) || !framed(context, amount) || !endsWell(context, amount))
    return null;
  return given(amount, "mm", "lengths in this recording are in millimetres");
}

const lengthWords = new Set(
  "bore gauge micrometer caliper calipers thick diameter wear worn clearance".split(" "),
);

/** A capacitor's "point oh one" is in microfarads, "two hundredths" among millimetres are of one. */
export function byTrade(context: Context, memory: Memory, amount: Amount): Carried | null {
  const { tokens } = context;
  const { from, to, form, over, value } = amount;
  if (memory.electrical && form === "decimal" && value < 1 && hasWord(tokens, from - 24, to + 8, capacitors))
    return given(amount, "uF", "a capacitor of less than one is in microfarads");
  if (
    tokens[from - 1]?.word === "at" &&
    memory.last?.to === from - 1 &&
    memory.last.dimension === "capacitance"
  )
    return given(amount, "V", "a capacitor is rated at so many volts");
  if (memory.electrical && tokens[from - 1]?.word === "is" && tokens[from - 2]?.word === "if")
    return given(amount, "kHz", "an intermediate frequency is in kilohertz");
  if (form === "fraction" && over === 100 && memory.lastLength === "mm")
    return given(amount, "mm", "hundredths are of a millimetre where millimetres were said before");
  const ofScrew = memory.last?.designation?.startsWith("M") && from - memory.last.to < 3;
  if (ofScrew && sizeBehind(tokens, to))
    return given(amount, "mm", "a metric screw is so many millimetres long");
  const inThou = memory.last?.dimension !== "length" && memory.lastLength !== "mm" && isGap(context, amount);
  if (inThou) return given(amount, "[mil_i]", "gaps without a unit are in thousandths of an inch");
  const warm = hotter(context, amount);
  if (warm) return warm;
  const before = unitBefore(context, amount);
  if (before) return given(amount, before, "the unit is said before the number");
  if (inProduct(tokens, amount) && memory.lastLength !== null && value <= (mostOf[memory.lastLength] ?? 0))
    return given(amount, memory.lastLength, "so much by so much, in the unit of the last length");
  const goesOn =
    (memory.lastLength === "mm" || memory.lastLength === "[in_i]") &&
    value <= (mostOf[memory.lastLength] ?? 0);
  if (
    form !== "fraction" &&
    goesOn &&
    sizeBehind(tokens, to) &&
    isCounting(context, amount) === null &&
    value > 0.05
  )
    return given(
      amount,
      memory.lastLength as string,
      "a size without a unit is in the unit of the last length",
    );
  return null;
}

/** "Points, I set them at 18", "plug gap, 25". */
function isGap(context: Context, amount: Amount): boolean {
  const { from, form, value } = amount;
  if (form !== "whole" || value < 3 || value > 60 || isCounting(context, amount) !== null) return false;
  const near = hasWord(context.tokens, from - 12, from, gaps);
  return (
    near &&
    endsWell(context, amount) &&
    (framed(context, amount) || gaps.has(context.tokens[from - 1]?.word ?? ""))
  );
}

const gaps = new Set("gap gaps gapped points".split(" "));

/** "62 by 38". */
function inProduct(tokens: readonly Token[], { from, to }: Amount): boolean {
  const by = (place: number) =>
    ["by", "x", "×"].includes(tokens[place]?.word ?? "") && tokens[place - 1]?.stop === "";
  return (by(to) && mayBeginNumber(tokens[to + 1])) || (by(from - 1) && mayBeginNumber(tokens[from - 2]));
}

/** "Preheat it to two fifty": degrees are meant. */
function hotter(context: Context, amount: Amount): Carried | null {
  const { from, form, value, paired } = amount;
  const number = paired?.value ?? value;
  const start = Math.max(sentenceAt(context, from).from, from - 6);
  if (
    number < 40 ||
    form !== "whole" ||
    !hasWord(context.tokens, start, from, heat) ||
    !endsWell(context, amount)
  )
    return null;
  const read = paired ? { ...amount, value: number, typed: `${number}`, to: paired.to } : amount;
  return given(read, context.english === "US" ? "[degF]" : "Cel", "a figure for heat is in degrees");
}

const heat = new Set("hot oven temperature simmer preheat preheated heat heated warm".split(" "));

/** "Amps, eleven point two." */
function unitBefore({ tokens }: Context, amount: Amount): string | null {
  const unit = unitAt(tokens, amount.from - 1, amount.from, true);
  const counted = mayBeginNumber(tokens[amount.from - 2]) && tokens[amount.from - 2]?.stop === "";
  const said = unit?.to === amount.from && unit.settled && spokenBefore.has(unit.name) && !counted;
  return said ? unit.name : null;
}

const spokenBefore = new Set(["A", "V", "Ohm", "{rev}/min", "[psi]", "mA", "W"]);

const capacitors = new Set("capacitor capacitors cap caps condenser condensers coupling".split(" "));

/** The amount with a unit that was not said. */
export function given(amount: Amount, unit: string, why: string): Carried {
  return { amount: { ...amount, unit, dimension: dimensionOf(unit), unitFrom: "custom" }, why };
}

/** Fractions of 8 to 64, thousandths written out, and quarters with the word for a size are inches. */
export function byCustom(context: Context, memory: Memory, amount: Amount): Carried | null {
  const { tokens } = context;
  const { to, form, over, typed, value } = amount;
  const behind = tokens[to - 1]?.stop === "" ? (tokens[to]?.word ?? "") : "";
  if (
    (behind === "of" && ofWhat(tokens, to) !== null) ||
    ((amount.lone || (over !== undefined && over <= 4 && value < 0.8)) && notAfterHalf.has(behind))
  )
    return null;
  const sized = tokens[to - 1]?.stop !== "." && (sizeBehind(tokens, to) || sizeNouns.has(behind));
  if (over !== undefined && tradeParts.has(over) && value < 100) {
    if (value < 1 && memory.lastLength === "mm" && over === 8 && !sized && !framed(context, amount))
      return null;
    return inch(amount, "fractions of this kind are inches in the trade");
  }
  const metric = memory.lastLength !== null && !inches.has(memory.lastLength);
  if (over !== undefined && over <= 4 && sized && !metric)
    return inch(amount, "a quarter or half that is the size of something is of an inch");
  if (over !== undefined && over <= 4 && !metric && goesWithInches(context, memory, amount))
    return inch(amount, "a part of an inch stands before it");
  if (over === 4 && value < 1 && !amount.lone && sized)
    return inch(amount, "quarters are inches in the trade");
  const places = form === "decimal" ? typed.length - typed.indexOf(".") - 1 : 0;
  if (byInches(tokens, amount)) return inch(amount, "its other side is a fraction of an inch");
  if (places < 3 || value <= 0 || value >= 24) return null;
  if (metric && memory.last?.unit === "mm" && near(value, memory.last.value)) return null;
  return inch(amount, "thousandths written out are inches");
}

/** "An eighth on the rest and a quarter on the guard." */
function goesWithInches({ tokens, parts }: Context, { last }: Memory, { from, to }: Amount): boolean {
  const near = last?.unit === "[in_i]" && last.form === "fraction" && from - last.to < 14;
  const same = near && parts.sentenceOf[last.from] === parts.sentenceOf[from];
  return same && tokens[from - 1]?.word === "and" && placing.has(tokens[to]?.word ?? "");
}

/** "26 by 1 and 3/8". */
function byInches(tokens: readonly Token[], { to }: Amount): boolean {
  if (!["by", "x", "×"].includes(tokens[to]?.word ?? "") || tokens[to - 1]?.stop !== "") return false;
  const other = numberAt(tokens, to + 1, tokens.length);
  return other?.over !== undefined && tradeParts.has(other.over);
}

/** Whether two values are of like size. */
export function near(a: number, b: number): boolean {
  return Math.abs(a - b) < 0.3 * Math.max(a, b);
}

function inch(amount: Amount, why: string): Carried {
  return given(amount, "[in_i]", why);
}

/** Values beyond these are not carried: nothing on a bench is 3,200 inches long. */
export const mostOf: Readonly<Record<string, number>> = {
  "[in_i]": 400,
  "[mil_i]": 999,
  mm: 5000,
  "{tooth}": 400,
  circ: 200,
  deg: 360,
};
