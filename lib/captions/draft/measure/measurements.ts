import { sizeWords } from "../../lexicon/frames.ts";
import { type Amount, amountsAt, newMemory, remember } from "../amount.ts";
import { type Context, hasWord, sentenceAt } from "../context.ts";
import { qualify, toleranceAt } from "../qualifier.ts";
import type { DraftRule } from "../rule.ts";
import { dimensionOf, siOf } from "../si.ts";
import { quoteOf, spanOf } from "../stream.ts";
import type { Draft, MeasurementFields, Sureness } from "../types.ts";
import { unitAt } from "../unit.ts";
import { giveUnit, maySpread } from "./carry.ts";
import { measurementExamples } from "./measurements.examples.ts";
import { whyNot } from "./not-measure.ts";
import { instrumentOf, measuredOf, roleOf, sourceOf } from "./said-of.ts";
import { takenBack } from "./taken-back.ts";
import { typedValueOf } from "./typed.ts";

interface Kept {
  amount: Amount;
  why: string;
}

/** How many amounts back a unit may be carried from. */
const mostRecent = 6;

/** The rule for measurements. */
export const measurements: DraftRule = {
  explains:
    "Stated quantities of the machine, its parts, settings, fluids and the work. Years, ages, prices, counts, part numbers, times that are only told of, and values that are taken back are left out.",
  examples: measurementExamples,
  find: measurementsIn,
};

/** Every measurement that is stated, in order. */
function measurementsIn(context: Context): Draft[] {
  const kept = amountsKept(context);
  const back = takenBack(
    context,
    kept.map((one) => one.amount),
  );
  const drafts = kept.flatMap((one, i) => (back.has(i) ? [] : [draftOf(context, one)]));
  return withoutEchoes(drafts);
}

/** Goes through the words once, and keeps what is a measurement of this work. */
function amountsKept(context: Context): Kept[] {
  const { tokens, parts } = context;
  const memory = newMemory(tokens, context.english);
  const recent: Amount[] = [];
  const kept: Kept[] = [];
  let open: Amount[] = [];
  for (const sentence of parts.sentences) {
    for (let place = sentence.from; place < sentence.to; ) {
      const late = unitSaidLate(context, place, sentence.to);
      if (late)
        kept.push(...open.filter((one) => place - one.to < mostLate).map((one) => withLateUnit(one, late)));
      if (late) open = [];
      const found = amountsAt(memory, place, sentence.to);
      let reached = place + 1;
      for (const amount of found) {
        const one = judged(context, memory, recent, amount);
        if (!one && isOpen(context, amount)) open.push(amount);
        if (!one) continue;
        kept.push(one);
        reached = Math.max(reached, one.amount.to);
        remember(memory, one.amount);
        if (maySpread(one.amount)) keepRecent(recent, one.amount);
      }
      const plus =
        found[0] && kept.at(-1) ? toleranceAt(tokens, (kept.at(-1) as Kept).amount, sentence.to) : null;
      const last = found.at(-1);
      const yearEnds = last?.year && last.unit === null ? (last.paired?.to ?? 0) : 0;
      place = Math.max(reached, last?.to ?? 0, plus?.to ?? 0, yearEnds);
    }
  }
  return kept;
}

/** How many words later a unit may be said: "2.2 wide by 560 long. That's millimetres." */
const mostLate = 16;

function unitSaidLate({ tokens }: Context, place: number, limit: number): string | null {
  const [a, b] = [tokens[place]?.word, tokens[place + 1]?.word];
  const leads = (a === "that" && b === "is") || (a === "all" && b === "in") || (a === "those" && b === "are");
  const unit = leads ? unitAt(tokens, place + 2, limit) : null;
  const code = unit?.name === "mil" ? "mm" : unit?.settled ? unit.name : null;
  return code !== null && dimensionOf(code) === "length" ? code : null;
}

function isOpen(context: Context, amount: Amount): boolean {
  return (
    amount.unit === null &&
    whyNot(context, amount) === null &&
    hasWord(context.tokens, amount.to, amount.to + 1, sizeWords)
  );
}

function withLateUnit(amount: Amount, unit: string): Kept {
  return {
    amount: { ...amount, unit, dimension: "length", unitFrom: "carried" },
    why: "the unit is said just after",
  };
}

/** Keeps the latest amounts, and the last of every dimension however old. */
function keepRecent(recent: Amount[], amount: Amount): void {
  recent.unshift(amount);
  const old = recent.slice(mostRecent);
  recent.length = Math.min(recent.length, mostRecent);
  for (const one of old) {
    if (!recent.some((other) => other.dimension === one.dimension)) recent.push(one);
  }
}

function judged(
  context: Context,
  memory: ReturnType<typeof newMemory>,
  recent: readonly Amount[],
  amount: Amount,
): Kept | null {
  if (whyNot(context, amount) !== null) return null;
  if (amount.unit !== null) return { amount, why: "a number with its unit" };
  const given = giveUnit(context, memory, recent, amount);
  return given && { amount: given.amount, why: given.why };
}

function draftOf(context: Context, { amount, why }: Kept): Draft {
  const { stream, tokens } = context;
  const sentence = sentenceAt(context, amount.from);
  const meant = qualify(tokens, amount, sentence.from, sentence.to);
  const limited = meant.qualifier === "max" || meant.qualifier === "min";
  const { start, end } = spanOf(stream, meant.from, meant.to);
  const unit = amount.unit ?? "1";
  const source = sourceOf(context, amount);
  const instrument = instrumentOf(context, amount);
  const fields: MeasurementFields = {
    quantity: quantityOf(amount),
    value: amount.value,
    unit,
    valueSi: siOf(amount.value, unit),
    ...(amount.high === undefined ? {} : { high: amount.high, highSi: siOf(amount.high, unit) }),
    qualifier: meant.qualifier,
    ...(meant.approx ? { approx: true as const } : {}),
    ...(meant.tolerance ? { tolerance: meant.tolerance.value } : {}),
    ...(amount.designation === undefined ? {} : { designation: amount.designation }),
    of: measuredOf(context, amount),
    role: roleOf(context, amount, limited),
    ...(source ? { source } : {}),
    ...(instrument ? { instrument } : {}),
    typed: typedValueOf(amount, meant),
  };
  return {
    kind: "measurement",
    start,
    end,
    quote: quoteOf(stream, meant.from, meant.to),
    fields,
    reason: `${capital(why)}: ${fields.typed}.`,
    sureness: surenessOf(amount),
    from: meant.from,
    to: meant.to,
  };
}

function quantityOf({ designation, dimension }: Amount): string {
  if (designation !== undefined) return "thread";
  return dimension === "thread pitch" ? "pitch" : (dimension ?? "number");
}

function surenessOf({ unitFrom, dimension, roughly }: Amount): Sureness {
  if (dimension === "time" || dimension === "count" || roughly) return "unsure";
  return unitFrom === "said" ? "certain" : "likely";
}

/** A value that is said again at once is one measurement. */
function withoutEchoes(drafts: Draft[]): Draft[] {
  const kept: Draft[] = [];
  for (const draft of drafts) {
    const echo = kept.slice(-4).some((one) => isEcho(one, draft));
    if (!echo) kept.push(draft);
  }
  return kept;
}

/** How many words lie between a value and its echo at most: "Three. Three thou." */
const echoWords = 8;

function isEcho(one: Draft, next: Draft): boolean {
  if (one.kind !== "measurement" || next.kind !== "measurement") return false;
  const same = one.fields.valueSi === next.fields.valueSi && one.fields.highSi === next.fields.highSi;
  return same && one.fields.quantity === next.fields.quantity && next.from - one.to < echoWords;
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
