import {
  againstGuide,
  compressionRatio,
  type Guidance,
  likelySlips,
  meanPistonSpeed,
  plainBearingGuide,
  plugGapGuide,
  plugGapMagnetoGuide,
  ringGapGrowth,
  ringGapGuide,
  ringGapLimits,
  ringGaps,
  skirtClearanceGuide,
  sweptVolume,
  valveClearanceGuide,
} from "#lib/reference/index.ts";
import { after, first, of } from "../read/figures.ts";
import type { Adapter, Answer } from "../row.ts";

const counts = ["", "one", "two", "three", "four", "five", "six", "seven", "eight"];
const cylindersIn = (text: string): number => {
  const [, word = "one"] = /(\w+)[ -]cylinder/.exec(text) ?? [];
  return Math.max(1, counts.indexOf(word), Number(word) || 0);
};

const span = ({ low, high }: Guidance): Answer => ({
  guidance: true,
  mm: [low, high],
  in: [low / 25.4, high / 25.4],
});

function volumes(text: string): Answer {
  const [bore = Number.NaN, stroke = Number.NaN] = of(text, "length", "mm");
  const cc = (sweptVolume(bore, stroke) / 1000) * cylindersIn(text);
  return { cc, in3: cc / 16.387064 };
}

/** Swept over everything else that is named: head, deck, gasket, clearance. */
function ratio(text: string): Answer {
  const swept = after(text, "swept") ?? Number.NaN;
  const rest = ["head", "deck", "gasket", "clearance", "chamber", "dish"].map(
    (word) => after(text, word) ?? 0,
  );
  return {
    ratio: compressionRatio(
      swept,
      rest.reduce((sum, one) => sum + one, 0),
    ),
  };
}

function statedGap(text: string): Answer {
  const [gap = Number.NaN, bore = Number.NaN] = of(text, "length", "[in_i]");
  const limits = ringGapLimits(bore, "in");
  return {
    plausible: againstGuide(gap, limits) === "usual",
    rule_in: [limits.low, limits.high],
    likely_slip: likelySlips(gap, limits)
      .map(({ value, slip }) => `${slip} (${value})`)
      .join("; "),
  };
}

export const adapter: Adapter = ({ input }) => {
  const { text } = input;
  const [size = Number.NaN] = of(text, "length", "mm");
  if (/^compression ratio/.test(text)) return ratio(text);
  if (/ring end gap rule/.test(text)) {
    const [bore = Number.NaN] = of(
      text.replace(/.*bore,? bore/, "bore").replace(/.* bore, /, ""),
      "length",
      "mm",
    );
    return span(ringGapGuide(bore, "mm"));
  }
  if (/maker factor/.test(text)) {
    const [bore = Number.NaN] = of(text, "length", "[in_i]");
    const { top, second } = ringGaps(bore, after(text, "factor"));
    return { top_in: top, second_in: second, top_mm: top * 25.4, second_mm: second * 25.4 };
  }
  if (/ring gap stated/.test(text)) return statedGap(text);
  if (/growth of ring gap/.test(text)) return { mm: ringGapGrowth(size), in: ringGapGrowth(size) / 25.4 };
  if (/skirt/.test(text)) return span(skirtClearanceGuide(size, "mm"));
  if (/valve clearance/.test(text)) return span(valveClearanceGuide);
  if (/plug gap/.test(text)) return span(/magneto/.test(text) ? plugGapMagnetoGuide : plugGapGuide);
  if (/plain-bearing/.test(text)) return span(plainBearingGuide(size, "mm"));
  if (/piston speed/.test(text)) {
    const turns = first(of(text, "rotational speed", "{rev}/min"), "the speed");
    return { m_per_s: meanPistonSpeed(size, turns) };
  }
  return volumes(text);
};
