import {
  angleWords,
  currentWords,
  electricalWords,
  fillingWords,
  heatWords,
  liquids,
  liquidWords,
  pressureWords,
  pullWords,
  sizedWords,
  torqueWords,
  weightWords,
} from "../lexicon/unit-contexts.ts";
import type { English } from "./english.ts";
import type { Token } from "./stream.ts";
import { rates, type SaidUnit } from "./unit.ts";

/** What is known when a unit with several meanings is met. */
export interface UnitContext {
  tokens: readonly Token[];
  english: English;
  /** Whether the recording is about something electrical. */
  electrical: boolean;
  /** Dimension of the amount said just before, if it is near. */
  lastDimension: string | null;
  /** Unit of the last length that was said. */
  lastLength: string | null;
  value: number;
  /** Where the number begins. */
  from: number;
}

/** The UCUM code that is meant, or null where the word is no unit here. */
export function chooseUnit(unit: SaidUnit, context: UnitContext): string | null {
  if (unit.settled) {
    const asks = needsElectrics.has(context.tokens[unit.from]?.word ?? "");
    return asks && !context.electrical && !near(context, unit, 25, electricalWords) ? null : unit.name;
  }
  return choices[unit.name]?.(unit, context) ?? null;
}

/** Words that are units only among volts and ohms: "470 k", "two meg", "fifty mics". */
const needsElectrics = new Set(
  "k kay meg megs mic mics mike mikes nano nanos micros puff puffs ma".split(" "),
);

type Choice = (unit: SaidUnit, context: UnitContext) => string | null;

const choices: Record<string, Choice> = {
  mil: (unit, context) => {
    const { english, electrical } = context;
    if (
      electrical &&
      near(context, unit, 8, currentWords) &&
      !sizedWords.has(context.tokens[unit.to]?.word ?? "")
    )
      return "mA";
    if (english === "US") return "[mil_i]";
    return isVolume(unit, context) ? "mL" : "mm";
  },
  pint: (_, { english }) => (english === "US" ? "[pt_us]" : "[pt_br]"),
  quart: (_, { english }) => (english === "US" ? "[qt_us]" : "[qt_br]"),
  gallon: (_, { english }) => (english === "US" ? "[gal_us]" : "[gal_br]"),
  gill: (_, { english }) => (english === "US" ? "[gil_us]" : "[gil_br]"),
  ton: (_, { english }) => (english === "US" ? "[ston_av]" : "[lton_av]"),
  ounce: (unit, context) => {
    if (near(context, unit, 14, liquidWords)) return context.english === "US" ? "[foz_us]" : "[foz_br]";
    return "[oz_av]";
  },
  pound: (unit, context) => {
    if (near(context, unit, 6, weightWords)) return "[lb_av]";
    if (near(context, unit, 8, torqueWords)) return "[lbf_av].[ft_i]";
    if (near(context, unit, 14, pressureWords)) return "[psi]";
    return near(context, unit, 5, pullWords) ? "[lbf_av]" : "[lb_av]";
  },
  degree: (unit, context) => {
    if (!isHeat(unit, context)) return "deg";
    return context.english === "US" ? "[degF]" : "Cel";
  },
  tenth: (_, { lastLength }) => {
    if (lastLength === "mm") return "10*-1.mm";
    return lastLength === null ? null : "10*-4.[in_i]";
  },
  each: (unit, { tokens }) => rates.get(tokens[unit.to - 1]?.word ?? "") ?? null,
  though: (unit, { tokens, lastLength, english }) => {
    const behind = tokens[unit.to]?.word ?? "";
    const measured = new Set("of on in at thick end play under over clearance feeler".split(" "));
    if (tokens[unit.to - 1]?.stop !== "" && lastLength === null) return null;
    return measured.has(behind) || lastLength !== null || english === "GB" ? "[mil_i]" : null;
  },
  thousand: () => null,
};

function isVolume(unit: SaidUnit, { tokens, lastDimension, from }: UnitContext): boolean {
  const [behind, next, after] = [0, 1, 2].map((i) => tokens[unit.to + i]?.word ?? "");
  if (sizedWords.has(behind ?? "")) return false;
  if (["a", "an", "per"].includes(behind ?? "") && rates.has(next ?? "")) return true;
  if (behind === "of") return liquids.has(next ?? "") || liquids.has(after ?? "");
  if (lastDimension === "volume") return true;
  for (let i = Math.max(0, from - 7); i < from; i++) {
    if (fillingWords.has(tokens[i]?.word ?? "")) return true;
  }
  return false;
}

function isHeat(unit: SaidUnit, context: UnitContext): boolean {
  if (context.lastDimension === "temperature") return true;
  const angle = near(context, unit, 9, angleWords);
  const heat = near(context, unit, 12, heatWords);
  if (angle !== heat) return heat;
  return !turnedTo.has(context.value) && context.value >= (angle ? 60 : 25);
}

/** Angles that things are cut, turned and tilted to. */
const turnedTo = new Set([30, 45, 60, 90, 180, 360]);

function near(
  { tokens, from }: UnitContext,
  unit: SaidUnit,
  reach: number,
  words: ReadonlySet<string>,
): boolean {
  const end = Math.min(tokens.length, unit.to + reach);
  for (let i = Math.max(0, from - reach); i < end; i++) {
    if (words.has(tokens[i]?.word ?? "")) return true;
  }
  return false;
}
