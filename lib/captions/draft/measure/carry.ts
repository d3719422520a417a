import { asides } from "../../lexicon/asides.ts";
import {
  fillers,
  followingWords,
  hintWords,
  leadingWords,
  sizeNouns,
  sizeWords,
} from "../../lexicon/frames.ts";
import { notAfterHalf } from "../../lexicon/not-measures.ts";
import { type Amount, amountsAt, type Memory } from "../amount.ts";
import { type Context, hasWord, sentenceAt } from "../context.ts";
import { isPartWord } from "../nouns.ts";
import { mayBeginNumber, numberAt } from "../number.ts";
import { isLimitBehind } from "../qualifier.ts";
import { dimensionOf } from "../si.ts";
import type { Token } from "../stream.ts";
import { unitAt } from "../unit.ts";
import { isCounting, ofWhat } from "./not-measure.ts";

/** An amount that got its unit, and why, in plain words. */
export interface Carried {
  amount: Amount;
  why: string;
}

const tradeParts = new Set([8, 16, 32, 64]);
const inches = new Set(["[in_i]", "[mil_i]", "[ft_i]"]);

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

/** "The card's point three", where lengths are in millimetres. */
function amongMillimetres(context: Context, memory: Memory, amount: Amount): Carried | null {
  const fits =
    amount.form === "decimal" && memory.lastLength === "mm" && amount.value > 0.01 && amount.value < 500;
  if (!fits || memory.electrical || !framed(context, amount) || !endsWell(context, amount)) return null;
  return given(amount, "mm", "lengths in this recording are in millimetres");
}

/** A capacitor's "point oh one" is in microfarads, "two hundredths" among millimetres are of one. */
function byTrade(context: Context, memory: Memory, amount: Amount): Carried | null {
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

function given(amount: Amount, unit: string, why: string): Carried {
  return { amount: { ...amount, unit, dimension: dimensionOf(unit), unitFrom: "custom" }, why };
}

/** Fractions of 8 to 64, thousandths written out, and quarters with the word for a size are inches. */
function byCustom(context: Context, memory: Memory, amount: Amount): Carried | null {
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

function near(a: number, b: number): boolean {
  return Math.abs(a - b) < 0.3 * Math.max(a, b);
}

function sizeBehind(tokens: readonly Token[], place: number): boolean {
  const [a, b] = [tokens[place]?.word ?? "", tokens[place + 1]?.word ?? ""];
  if (a === "flat" && b === "out") return false;
  // "Three flat springs" are three.
  const goesOn = tokens[place]?.stop === "" && (tokens[place + 1]?.pause ?? 0) < 0.5;
  if (goesOn && isPartWord(b)) return false;
  return sizeWords.has(a) || ((a === "i" || a === "o") && b === "d");
}

function inch(amount: Amount, why: string): Carried {
  return given(amount, "[in_i]", why);
}

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

/** Values beyond these are not carried: nothing on a bench is 3,200 inches long. */
const mostOf: Readonly<Record<string, number>> = {
  "[in_i]": 400,
  "[mil_i]": 999,
  mm: 5000,
  "{tooth}": 400,
  circ: 200,
  deg: 360,
};

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

/** "One" is a pronoun more often than a figure; not so in "within two thou, and it runs true to one". */
function isOne(context: Context, amount: Amount): boolean {
  const { tokens } = context;
  const { from, to, form } = amount;
  if (form !== "whole" || to !== from + 1 || tokens[from]?.word !== "one") return false;
  const toOne = tokens[from - 1]?.word === "to" && tokens[from]?.stop !== "";
  return !toOne || !recentIn(context, amount, sentenceAt(context, from).from);
}

/** Whether words that lead up to a value stand before the number. */
function framed(context: Context, amount: Amount): boolean {
  const { tokens } = context;
  const sentence = sentenceAt(context, amount.from);
  let at = amount.from - 1;
  for (let skipped = 0; at >= sentence.from && skipped < 4; skipped++) {
    if (fillers.has(tokens[at]?.word ?? "")) at--;
    else at -= asideEnding(tokens, at + 1);
  }
  if (at < sentence.from)
    return amount.form !== "whole" || amount.high !== undefined || onlyFigure(context, amount);
  if (
    amount.form === "whole" &&
    at === amount.from - 1 &&
    makings.has(tokens[at]?.word ?? "") &&
    amount.value <= 12
  )
    return false;
  if (amount.form === "decimal" || leadingWords.has(tokens[at]?.word ?? "")) return true;
  if (tokens[at]?.word === "in" && puttingIn.has(tokens[at - 1]?.word ?? "")) return true;
  if (tokens[at]?.word === "for" && callingFor.has(tokens[at - 1]?.word ?? "")) return true;
  const listed =
    tokens[at]?.stop === "," && amount.form !== "whole" && recentIn(context, amount, sentence.from);
  if (tokens[amount.to]?.word === "of") return true;
  if (takesBack.has(tokens[at]?.word ?? "") && recentIn(context, amount, Math.max(sentence.from, at - 4)))
    return true;
  if (isOther(context, amount, at, sentence.from) || isEnough(tokens, amount.to)) return true;
  if (isLimitBehind(tokens, amount.to, sentence.to)) return true;
  if (listed || amount.high !== undefined) return true;
  return sizeBehind(tokens, amount.to) && amount.value > 0;
}

const asideWords = asides.map((text) => text.split(" "));

/** How many words of an aside end at a place. */
function asideEnding(tokens: readonly Token[], end: number): number {
  const fits = asideWords.filter((words) =>
    words.every((word, i) => tokens[end - words.length + i]?.word === word),
  );
  return Math.max(0, ...fits.map((words) => words.length));
}

/** "Thirty is about right." */
function isEnough(tokens: readonly Token[], place: number): boolean {
  if (tokens[place]?.word !== "is") return false;
  return hasWord(
    tokens,
    place + 1,
    place + 4,
    new Set(["right", "plenty", "enough", "fine", "good", "ideal"]),
  );
}

/** "eight thou on one and four on the other". */
function isOther(context: Context, amount: Amount, at: number, start: number): boolean {
  const { tokens } = context;
  if (tokens[at]?.word !== "and" || !recentIn(context, amount, Math.max(start, at - 9))) return false;
  return (
    hasWord(tokens, amount.to, amount.to + 1, placing) && hasWord(tokens, amount.to, amount.to + 4, others)
  );
}

const takesBack = new Set("no sorry wait".split(" "));
/** "Two had split, so I've made two" are two. */
const makings = new Set("made make cut turned".split(" "));
const puttingIn = new Set("put putting fit fitted stuck soldered".split(" "));
const callingFor = new Set("calls call set good rated asks asking made".split(" "));
const placing = new Set("on at in for".split(" "));
const others = new Set("other that this bottom top back front end one".split(" "));

/** Whether another figure stands in the sentence before the number. */
function recentIn({ tokens }: Context, { from }: Amount, start: number): boolean {
  for (let place = start; place < from - 1; place++) {
    if (tokens[place]?.figure || numberAt(tokens, place, from)) return true;
  }
  return false;
}

/** "What's yours?" "Twelve." in figures. */
function onlyFigure({ tokens }: Context, { from, to }: Amount): boolean {
  return tokens[from]?.figure === true && [".", ","].includes(tokens[to - 1]?.stop ?? "");
}

/** Whether the number stands for itself, and does not count what follows. */
function endsWell({ tokens, parts }: Context, amount: Amount): boolean {
  const to = amount.paired?.to ?? amount.to;
  const last = tokens[to - 1];
  const next = tokens[to];
  // Nobody counts in decimals: "a one point two bush".
  if (last?.stop !== "" || !next || amount.form === "decimal") return true;
  if (parts.sentenceOf[to] !== parts.sentenceOf[to - 1]) return true;
  return followingWords.has(next.word) || sizeBehind(tokens, to) || next.word === "say";
}
