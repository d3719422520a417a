import {
  audienceBehind,
  betWords,
  countBefore,
  gradeBehind,
  labelBefore,
  moneyBehind,
  sayings,
  travelWords,
} from "../../lexicon/not-measures.ts";
import { anecdoteWords, processWords } from "../../lexicon/process.ts";
import { priceWords, pullWords, weightWords } from "../../lexicon/unit-contexts.ts";
import type { Amount } from "../amount.ts";
import { type Context, hasWord, sentenceAt } from "../context.ts";
import { PhraseBook } from "../phrase.ts";
import type { Token } from "../stream.ts";
import { unitAt } from "../unit.ts";
import { sizeBehind } from "./size-behind.ts";

const sayingBook = new PhraseBook(sayings.map((text) => [text, true] as const));

/** Why an amount is no measurement of this work, in plain words; null where it may be one. */
export function whyNot(context: Context, amount: Amount): string | null {
  return (
    labelled(context, amount) ??
    money(context, amount) ??
    year(context, amount) ??
    audience(context, amount) ??
    saying(context, amount) ??
    byUnit(context, amount) ??
    warnedAgainst(context, amount)
  );
}

function labelled({ tokens }: Context, { from, to, unit, high, typed }: Amount): string | null {
  const before = tokens[from - 1];
  const bearing = unit === null && /^\d{4}$/.test(typed) && hasWord(tokens, from - 9, from, bearingWords);
  if (bearing) return "a bearing's number";
  // "Ten mil sheet, twenty five across."
  if (before?.word === "sheet" && sizeBehind(tokens, to)) return null;
  if (
    before &&
    (before.stop === "" || before.word === "no") &&
    labelBefore.has(before.word) &&
    unit === null &&
    tokens[from]?.stop !== "%"
  ) {
    if (before.word === "no" && (before.stop !== "" || followsAmount(tokens, from - 1))) return null;
    if (before.word === "hole" || before.word === "pin" || before.word === "bearing") {
      return tokens[from]?.word.includes(".") ? null : "a name and not an amount";
    }
    return "a name and not an amount";
  }
  if (
    unit === null &&
    high === undefined &&
    gradeBehind.has(tokens[to]?.word ?? "") &&
    tokens[to - 1]?.stop === ""
  )
    return "a grade";
  return null;
}

const bearingWords = new Set("bearing bearings".split(" "));

/** "twelve thou no fourteen": the no takes back an amount. */
function followsAmount(tokens: readonly Token[], no: number): boolean {
  return tokens[no - 1]?.figure === true || unitAt(tokens, no - 1, no, true) !== null;
}

function money({ tokens, english }: Context, { from, to, unit }: Amount): string | null {
  if (["$", "£", "€"].includes(tokens[from - 1]?.word ?? "")) return "a price";
  const behind = tokens[to]?.word ?? "";
  const cents = behind === "p" ? tokens[to]?.joint === "" : moneyBehind.has(behind);
  if (cents && tokens[to - 1]?.stop === "") return "a price";
  if (unit !== "[lb_av]" || english !== "GB") return null;
  if (hasWord(tokens, from - 5, from, priceWords)) return "a price";
  if (hasWord(tokens, from - 8, to + 3, weightWords) || hasWord(tokens, from - 8, to + 5, pullWords))
    return null;
  return hasWord(tokens, from - 8, to + 6, priceWords) ? "a price" : null;
}

function year({ tokens }: Context, amount: Amount): string | null {
  const { value, unit, typed, form, year: paired, designation, from } = amount;
  if (designation !== undefined) return null;
  if (unit === "a" || unit === "mo") return "a time of years or months";
  if (unit !== null) return null;
  if (paired) return "a year";
  if (tokens[from]?.word.includes(",")) return null;
  if (tokens[from - 1]?.word === "at" && hasWord(tokens, from - 8, from, turning)) return null;
  return form === "whole" && /^\d{4}$/.test(typed) && value >= 1700 && value <= 2039 ? "a year" : null;
}

function audience({ tokens }: Context, { to, unit, form }: Amount): string | null {
  if (unit !== null || tokens[to - 1]?.stop !== "") return null;
  const behind = tokens[to]?.word ?? "";
  if (behind === "of" && form === "whole") return ofWhat(tokens, to);
  return behind !== "of" && audienceBehind.has(behind) ? "a count of people" : null;
}

function saying({ tokens }: Context, { from, to }: Amount): string | null {
  const start = Math.max(0, from - 3);
  const found = sayingBook.all(tokens, start, Math.min(tokens.length, to + 4));
  return found.some((one) => one.from < to && one.to > from) ? "a figure of speech" : null;
}

function byUnit(context: Context, amount: Amount): string | null {
  const { tokens } = context;
  const { from, to, unit, dimension, value } = amount;
  if (dimension === "time")
    return amount.per || unit === "ms" || unit === "us" ? null : notProcess(context, amount);
  if (unit === "%" && (value === 100 || !isShare(context, amount))) return "a figure of speech";
  const load = dimension === "mass" || dimension === "force";
  if (load && toolHeads.has(tokens[to]?.word ?? "") && tokens[to - 1]?.stop === "")
    return "the size of a tool";
  if (unit === "{tooth}" && value < 6) return "a count";
  if (unit === "[mi_i]" || unit === "km")
    return hasWord(tokens, from - 6, to + 4, travelWords) ? null : "a distance told of";
  if (unit === "1" && hasWord(tokens, from - 6, to + 6, betWords)) return "a bet";
  if (unit === "circ" && hasWord(tokens, from - 6, from, packingWords)) return "a count";
  const lone = amount.typed === "1" && to - from === 2 && ["a", "an"].includes(tokens[from]?.word ?? "");
  if (lone && unit === "circ") return "no number of turns";
  if (unit === "circ" && tokens[from - 1]?.word === "in" && value === 1) return "no number of turns";
  if (lone && (unit === "V" || unit === "A" || unit === "Ohm" || unit === "deg")) return "no amount";
  return null;
}

/** Turns of a packing are counted. */
const packingWords = new Set("packing yarn graphited braid".split(" "));

/** A share of something measured: "twenty percent high", "0.6 percent slow". */
function isShare({ tokens }: Context, { from, to, form }: Amount): boolean {
  return (
    form === "decimal" || hasWord(tokens, from - 5, from, drifting) || hasWord(tokens, to, to + 3, shares)
  );
}

const drifting = new Set(
  "more less over under tolerance drifted drift within about duty slip loss".split(" "),
);
const shares = new Set(
  "high low over under out tolerance slow fast solution alcohol mix off up down wear worn load duty strong concentration acid loss".split(
    " ",
  ),
);

/** How far the words that show a time to be worked to may stand from it. */
const timeReach = 9;

function notProcess(context: Context, { from, to, unit }: Amount): string | null {
  const { tokens } = context;
  const sentence = sentenceAt(context, from);
  const start = Math.max(sentence.from, from - timeReach);
  const end = Math.min(sentence.to, to + timeReach);
  if (unit === "s" && tokens[to]?.word === "to" && tokens[from - 1]?.word === "takes") return null;
  const before = tokens[to]?.word === "before" && tokens[to + 1]?.word === "i";
  if (before || hasWord(tokens, start, end, anecdoteWords)) return "a time told of";
  const process =
    hasWord(tokens, start, end, processWords) || within(context, from) || goesWith(context, from);
  if (!process) return "a time told of";
  if (unit === "d" && hasWord(tokens, start, end, going)) return null;
  return (unit === "wk" || unit === "d") && !hasWord(tokens, start, end, soaking) ? "a time told of" : null;
}

/** "Eight days it goes." */
const going = new Set("go goes runs lasts wind winding".split(" "));

const soaking = new Set(
  "electrolysis tank soak soaked soaking leave left dry cure cured paraffin vinegar derust oil stood sit sat bath hold held charge".split(
    " ",
  ),
);

/** "28 mil in 30 seconds": the time belongs to the amount before it. */
function goesWith({ tokens }: Context, from: number): boolean {
  if (!["in", "for", "after"].includes(tokens[from - 1]?.word ?? "")) return false;
  for (let place = Math.max(0, from - 4); place < from - 1; place++) {
    if (unitAt(tokens, place, from - 1, true)) return true;
  }
  return false;
}

function within({ tokens }: Context, from: number): boolean {
  return ["within", "least", "every"].includes(tokens[from - 1]?.word ?? "");
}

/** "you put 60 foot pounds on that and you're going to be shopping": a value warned against. */
function warnedAgainst(context: Context, { from, to }: Amount): string | null {
  const { tokens } = context;
  if (tokens[from - 1]?.word === "not" && tokens[from - 1]?.stop === "") return "a value that is ruled out";
  const sentence = sentenceAt(context, from);
  if (
    hasWord(tokens, Math.max(sentence.from, from - 8), from, tried) &&
    hasWord(tokens, to, sentence.to, failed)
  )
    return "a value that was tried and did not serve";
  for (let i = Math.max(sentence.from, from - 5); i < from; i++) {
    const [a, b] = [tokens[i]?.word, tokens[i + 1]?.word ?? ""];
    if (a !== "you" || !supposing.has(b)) continue;
    const opens =
      i === sentence.from ||
      ["if", "and", "so"].includes(tokens[i - 1]?.word ?? "") ||
      tokens[i - 1]?.stop !== "";
    if (opens && hasWord(tokens, to, to + 14, threatens)) return "a value that is warned against";
  }
  return null;
}

const turning = new Set("motor runs running rpm speed turns spins".split(" "));
const toolHeads = new Set("puller jack press hammer sledge crane hoist vice vise clamp mallet".split(" "));
const persons = new Set(
  "who he she i brother sister dad mum mom wife husband son daughter grandad grandpa uncle neighbour neighbor".split(
    " ",
  ),
);
const looseness = new Set(
  "backlash clearance play slop slack runout out float shake wear taper lift travel preload interference endfloat crush".split(
    " ",
  ),
);
const tried = new Set("tried try trying".split(" "));
const failed = new Set("not too wrong useless rubbish never snapped failed".split(" "));
const supposing = new Set("put do use give go set run try fit torque".split(" "));
const threatens = new Set("will going it you strip snap crack".split(" "));

/** Whether a bare number counts things rather than goes on with a measurement. */
export function isCounting({ tokens }: Context, { from, to }: Amount): string | null {
  const before = tokens[from - 1];
  const takesBack = before?.word === "no" && followsAmount(tokens, from - 1);
  if (before && before.stop === "" && countBefore.has(before.word) && !takesBack) return "a count";
  for (let place = from - 1; place >= Math.max(0, from - 5) && tokens[place]?.stop === ""; place--) {
    if (tokens[place]?.word === "there") return "a count";
  }
  const [be, who] = [before?.word ?? "", tokens[from - 2]?.word ?? ""];
  if (["is", "am", "was", "are"].includes(be) && persons.has(who)) return "an age";
  return tokens[to]?.word === "of" ? ofWhat(tokens, to) : null;
}

/** "Within a sixteenth of each other", "two thou of true". */
const closeTo = new Set("each true flat square level".split(" "));

/** "twelve of backlash" is a measurement, "twelve of you" is not. */
export function ofWhat(tokens: readonly Token[], of: number): string | null {
  const [a, b] = [tokens[of + 1]?.word ?? "", tokens[of + 2]?.word ?? ""];
  if (closeTo.has(a)) return null;
  return looseness.has(a) || (looseness.has(b) && (a === "end" || a === "side" || a === "run"))
    ? null
    : "a count";
}
