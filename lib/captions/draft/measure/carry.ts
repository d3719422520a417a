import { hintWords, sizeNouns } from "../../lexicon/frames.ts";
import { type Amount, amountsAt, type Memory } from "../amount.ts";
import { type Context, sentenceAt } from "../context.ts";
import { isPartWord } from "../nouns.ts";
import { dimensionOf } from "../si.ts";
import { amongMillimetres, byCustom, byTrade, type Carried, given, mostOf } from "./custom.ts";
import { endsWell, framed, isOne } from "./frame.ts";
import { isCounting } from "./not-measure.ts";

/** Gives a bare number the unit it has by custom or from what was said before; null where it is no measurement. */
export function giveUnit(
  context: Context,
  memory: Memory,
  recent: readonly Amount[],
  amount: Amount,
): Carried | null {
  return (
    byCustom(context, memory, amount) ??
    byTrade(context, memory, amount) ??
    fromBehind(context, memory, amount) ??
    fromBefore(context, recent, amount) ??
    amongMillimetres(context, memory, amount)
  );
}

/** "50 and 30 mics", "88, 90, okay, 92 volts": figures in a row have the unit of the last. */
function fromBehind(context: Context, memory: Memory, amount: Amount): Carried | null {
  const { tokens } = context;
  const limit = sentenceAt(context, amount.from).to;
  if (isCounting(context, amount) !== null || isOne(context, amount) || amount.lone) return null;
  let place = amount.to;
  for (let figures = 0; figures < 3; figures++) {
    const start = place;
    while (place < limit && place - start < 2 && rowWords.has(tokens[place]?.word ?? "")) place++;
    if (place === start && tokens[place - 1]?.stop !== ",") return null;
    const [next] = amountsAt(memory, place, limit);
    if (!next || next.designation !== undefined) return null;
    if (next.unit !== null)
      return maySpread(next) && isLikeIn(amount, next) ? rowUnit(amount, next.unit) : null;
    place = next.to;
  }
  return null;
}

const rowWords = new Set("and or okay maybe then now a".split(" "));

const isLikeIn = (one: Amount, other: Amount) =>
  one.value > 0 && one.value < 3.2 * other.value && other.value < 3.2 * one.value;

const rowUnit = (amount: Amount, unit: string) => given(amount, unit, "figures in a row have one unit");

/** Dimensions of which a unit goes on into the next sentences. */
const going = new Set([
  "length",
  "torque",
  "pressure",
  "mass",
  "force",
  "volume",
  "voltage",
  "current",
  "resistance",
  "capacitance",
  "temperature",
  "frequency",
  "rotational speed",
  "angle",
  "flow",
  "count",
]);

/** How many words back, how unlike in size, and how both weigh against each other. */
const mostWords = 45;

/** Lengths go on for longer, since most of what is measured is one. */
const mostWordsOfLength = 90;

const perWord = 0.025;

const perOther = 0.6;

const mostUnlike = 3.2;

const unhinted = 0.8;

const sameBreath = 1.2;

const turnsSeldomGoOn = 0.7;

const sizesSeldomGoOn = 1;

/** "a two inch shaft": the size of a thing that is only named. */
function isSizeOf({ tokens }: Context, { to }: Amount): boolean {
  const next = tokens[to]?.word ?? "";
  return tokens[to - 1]?.stop === "" && (sizeNouns.has(next) || isPartWord(next));
}

/** "149 mics at 125 volts": what is measured next is the capacitance. */
function isRating({ tokens }: Context, { from, dimension }: Amount): boolean {
  return dimension === "voltage" && tokens[from - 1]?.word === "at";
}

const hints = new Map(
  hintWords.flatMap(([dimension, words]) => words.split(" ").map((word) => [word, dimension])),
);

/** What the words just before a number tell that it measures. */
function hintOf({ tokens }: Context, amount: Amount, last: Amount | undefined): string | null {
  for (let i = amount.from - 1; i >= Math.max(0, amount.from - 9); i--) {
    if (tokens[i]?.stop === "." && amount.from - i > 3) break;
    if (last && i >= last.from && i < last.to) continue;
    if (tokens[i]?.word === "turns" && i === amount.from - 1 && amount.value >= 40) return "rotational speed";
    const hint = hints.get(tokens[i]?.word ?? "");
    if (hint !== undefined) return hint;
  }
  return null;
}

/** Whether the unit of an amount may be carried to a later one. */
export function maySpread(amount: Amount): boolean {
  return amount.designation === undefined && amount.dimension !== null && going.has(amount.dimension);
}

/** The unit of the nearest amount of like size: "…18 thou. Book says anything over 12". */
function fromBefore(context: Context, recent: readonly Amount[], amount: Amount): Carried | null {
  if (isCounting(context, amount) !== null || isOne(context, amount) || amount.value <= 0 || amount.lone)
    return null;
  const hint = hintOf(context, amount, recent[0]);
  if (!standsForAValue(context, recent, amount, hint)) return null;
  const found = likeliest(context, recent, amount, hint);
  const isSpeed = hint === "rotational speed" && (amount.paired?.value ?? amount.value) >= 50;
  if (isSpeed && found?.unit === "circ") return speedOf(amount);
  const best = found && found.value <= (mostOf[found.unit] ?? Number.POSITIVE_INFINITY) ? found : null;
  if (!best) return isSpeed ? speedOf(amount) : null;
  const { paired } = amount;
  const long = paired !== undefined && best.value === paired.value;
  if (best.hundredths) {
    const value = amount.value / 100;
    const read: Amount = { ...amount, value, typed: value.toFixed(2), form: "decimal" };
    return given(read, best.unit, "hundredths go on from what was said before");
  }
  const read: Amount = {
    ...amount,
    ...(long ? { value: paired.value, typed: `${paired.value}`, to: paired.to } : {}),
    unit: best.unit,
    dimension: dimensionOf(best.unit),
    unitFrom: "carried",
  };
  return { amount: read, why: "the unit goes on from what was said before" };
}

/** Whether the words about a bare number are those about a value. */
function standsForAValue(
  context: Context,
  recent: readonly Amount[],
  amount: Amount,
  hint: string | null,
): boolean {
  const last = recent[0];
  const { sentenceOf } = context.parts;
  const close =
    last !== undefined && amount.from - last.to <= 1 && sentenceOf[last.from] === sentenceOf[amount.from];
  const follows = close && amount.form !== "whole";
  const told = hint !== null && hint !== "length";
  return (follows || told || framed(context, amount)) && endsWell(context, amount);
}

interface Candidate {
  unit: string;
  /** The last value was said in hundredths: "two hundredths … it was five". */
  hundredths: boolean;
  cost: number;
  value: number;
}

/** The amount that a bare number goes on from: of like size, near, in the same breath, of the kind that is hinted at. */
function likeliest(
  context: Context,
  recent: readonly Amount[],
  amount: Amount,
  hint: string | null,
): Candidate | null {
  const numbers = amount.paired && !amount.year ? [amount.value, amount.paired.value] : [amount.value];
  let best: Candidate | null = null;
  const passed = new Set<string>();
  for (const one of recent) {
    const words = hint !== null && hint !== "length" && one.dimension === hint ? 0 : amount.from - one.to;
    const reach = one.dimension === "length" ? mostWordsOfLength : mostWords;
    if (words > reach || one.unit === null || one.value <= 0) continue;
    for (const value of numbers) {
      const thou = isThouBeside(one, amount);
      const hundredths = one.over === 100 && one.form === "fraction" && amount.form === "whole";
      const spread = one.dimension === "resistance" ? 0.5 : 1;
      const unlike = thou ? 1 : spread * unlikeness(one, hundredths ? value / 100 : value, amount.high);
      const cost = costOf(context, one, amount, { words, hint, unlike }) + passed.size * perOther;
      if (cost <= mostUnlike && (best === null || cost < best.cost))
        best = { unit: thou ? "[mil_i]" : one.unit, hundredths, cost, value };
    }
    passed.add(one.unit);
  }
  return best;
}

function costOf(
  context: Context,
  one: Amount,
  amount: Amount,
  { words, hint, unlike }: { words: number; hint: string | null; unlike: number },
): number {
  const { sentenceOf } = context.parts;
  const near = words < 14 && sentenceOf[one.from] === sentenceOf[amount.from];
  const otherKind = hint !== null && one.dimension !== hint;
  return (
    unlike +
    words * perWord +
    (otherKind ? unhinted : 0) -
    (near ? sameBreath : 0) +
    (one.unit === "circ" ? turnsSeldomGoOn : 0) +
    (isSizeOf(context, one) || isRating(context, one) ? sizesSeldomGoOn : 0)
  );
}

/** How many times the one is the other, as a logarithm. */
function unlikeness(one: Amount, value: number, high = value): number {
  const far = (a: number, b: number) => Math.abs(Math.log(a / b));
  const ends = [one.value, one.high ?? one.value];
  return Math.min(...ends.flatMap((end) => [far(value, end), far(high, end)]));
}

/** Beside 1.003 and .996 a whole number is in thousandths: "so it's 7 loose". */
function isThouBeside(one: Amount, amount: Amount): boolean {
  const places = one.form === "decimal" ? one.typed.length - one.typed.indexOf(".") - 1 : 0;
  return one.unit === "[in_i]" && places >= 3 && amount.form === "whole" && amount.value < 100;
}

function speedOf(amount: Amount): Carried {
  const { paired } = amount;
  const read = paired ? { ...amount, value: paired.value, typed: `${paired.value}`, to: paired.to } : amount;
  return given(read, "{rev}/min", "a speed without a unit is in turns a minute");
}
