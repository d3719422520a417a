import { quantitiesOf, read } from "#lib/quantity/index.ts";
import {
  dilutionReadings,
  gramsFor,
  recipeNamed,
  soakGuide,
  stockFor,
  zincDipGuide,
} from "#lib/reference/index.ts";
import { figures, inUnit, of } from "../read/figures.ts";
import type { Adapter, Answer } from "../row.ts";

function published(text: string): Answer {
  const recipe = recipeNamed(text);
  const amounts = (recipe?.parts ?? []).map(({ what, low, unit, optional }) => [
    `${what.replaceAll(" ", "_")}_${unit}${optional ? "_optional" : ""}`,
    low,
  ]);
  const [strength] = recipe?.parts ?? [];
  return {
    ...Object.fromEntries(amounts),
    percent_by_weight: strength && [strength.low, strength.high],
  };
}

const percents = (text: string): number[] =>
  [...text.matchAll(/([\d.]+) ?%/g)].map(([, percent]) => Number(percent));

function dilution(text: string): Answer {
  const ratio = /(\d+):(\d+)/.exec(text);
  const reading = read(text);
  const { onePlus, oneIn } = dilutionReadings(Number(ratio?.[1]), Number(ratio?.[2]));
  return {
    ...(reading.kind === "question" && { question: reading.ask }),
    ambiguous: reading.kind === "question",
    one_plus_ten_pct: onePlus,
    one_in_ten_pct: oneIn,
  };
}

export const adapter: Adapter = ({ input }) => {
  const { text } = input;
  const [volume = Number.NaN] = of(text, "volume", "L");
  const [first = Number.NaN, second = Number.NaN] = percents(text);
  if (/dilution/.test(text)) return dilution(text);
  if (/stock/.test(text)) return { stock_mL: stockFor(volume, first, second) * 1000 };
  if (/w\/v/.test(text)) return { g: gramsFor(first, volume) };
  if (/zinc/.test(text)) return { guidance: true, hours: [zincDipGuide.low, zincDipGuide.high] };
  if (/soak/.test(text)) return { guidance: true, hours: [soakGuide.low, soakGuide.high] };
  if (/^P/.test(text)) return { seconds: quantitiesOf(read(text))[0]?.si };
  if (/written as/.test(text)) {
    const [one, other] = figures(text).filter(({ dimension }) => dimension === "time");
    const same = one && other && Math.abs(one.si - other.si) < 0.005 * one.si;
    return { consistent: same === true, hours: one && inUnit(one, "h"), minutes: one && inUnit(one, "min") };
  }
  return published(text);
};
