import {
  againstLimits,
  type Fit,
  fit as fitNamed,
  fitOf,
  holeDeviation,
  shaftDeviation,
  toleranceGrade,
} from "#lib/reference/index.ts";
import { designations, first } from "../read/figures.ts";
import type { Adapter, Answer } from "../row.ts";

const sizes = (limits: Fit["hole"]): number[] | undefined => limits && [limits.least, limits.most];
const numberAfter = (text: string, word: string): number =>
  Number(new RegExp(`${word}\\D*?(\\d+\\.?\\d*)`).exec(text)?.[1]);

function deviation(text: string, size: number, letter: string): Answer {
  const grade = Number(/IT(\d+)/.exec(text)?.[1] ?? 7);
  const hole = letter === letter.toUpperCase() && letter !== letter.toLowerCase();
  const found = (hole ? holeDeviation : shaftDeviation)(letter, size, grade);
  const sign = hole ? { upper: "ES", lower: "EI" } : { upper: "es", lower: "ei" };
  return { um: found?.um, which: found && `${found.which} (${sign[found.which]})` };
}

function measuredPair(text: string): Answer {
  const found = designations(text).find((one) => one.type === "fit");
  const pair = found?.type === "fit" ? fitOf(found) : undefined;
  const [hole, shaft] = [numberAfter(text, "hole"), numberAfter(text, "shaft")];
  const inside =
    pair?.hole &&
    pair.shaft &&
    againstLimits(hole, pair.hole).inside &&
    againstLimits(shaft, pair.shaft).inside;
  return { in_limits: inside, clearance_um: (hole - shaft) * 1000 };
}

function measuredOne(text: string): Answer {
  const found = designations(text).find((one) => one.type === "fit");
  const limits = found?.type === "fit" ? fitOf(found) : undefined;
  const one = first(
    [limits?.hole ?? limits?.shaft].flatMap((each) => each ?? []),
    "the limits",
  );
  const { inside, over, under } = againstLimits(numberAfter(text, "measured"), one);
  return { in_limits: inside, below_min_by_um: under, above_max_by_um: over };
}

function worn(text: string): Answer {
  const [limit, measured] = [numberAfter(text, "limit"), numberAfter(text, "measured")];
  const bore = /bore|hole|bush/.test(text);
  const { over, under } = againstLimits(measured, { most: bore ? limit : Infinity, least: bore ? 0 : limit });
  const past = bore ? over : under;
  return { worn: past > 0, past_limit_um: past };
}

export const adapter: Adapter = ({ input }) => {
  const { text } = input;
  const nominal = Number(input.nominal_mm);
  if (/^IT\d/.test(text)) {
    const it = toleranceGrade(nominal, Number(input.grade));
    return { um: it?.um, range: it && `over ${it.over} up to and including ${it.upTo} mm` };
  }
  if (/fundamental deviation/.test(text)) return deviation(text, nominal, `${input.letter}`);
  if (/service limit/.test(text)) return worn(text);
  if (/hole .* shaft .* for/.test(text)) return measuredPair(text);
  if (/measured/.test(text)) return measuredOne(text);
  const found = fitNamed(text);
  return {
    hole_mm: sizes(found?.hole),
    shaft_mm: sizes(found?.shaft),
    fit: found?.kind,
    max_clearance_um: found?.maxClearance,
    min_clearance_um: found?.minClearance,
  };
};
