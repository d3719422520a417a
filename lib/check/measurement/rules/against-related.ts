import { near, sayIn, slipWords } from "../figures.ts";
import type { EntryRule, Remark } from "../rule.ts";
import { type Fact, relatedFacts, type Sight } from "../sight.ts";

/** A value that is ten or 25.4 times its fellows. */
export const againstRelated: EntryRule = {
  id: "slip-against-related",
  title: "A slip beside its fellows",
  explanation:
    "The same thing measured on the next cylinder, on the other side or last time is rarely ten times as much. Where the factor is that of a known slip, a decimal point or a unit, the slip is likelier than the finding.",
  source: "common practice, no source",
  check: (sight) => {
    const { main } = sight;
    if (!main || main.si <= 0) return [];
    const fellows = relatedFacts(sight).filter((fact) => isFellow(fact, main, sight) && fact.si > 0);
    for (const fellow of fellows) {
      const remark = slip(main, fellow);
      if (remark) return [remark];
    }
    return [];
  },
  examples: [
    {
      says: "ten times the other cylinder",
      entry: {
        text: "0.12 in",
        what: "ring gap, No. 1",
        context: { related: [{ what: "ring gap, No. 2", text: "0.013 in" }] },
      },
      finds: 1,
    },
    {
      says: "a little more than the other",
      entry: {
        text: "0.015 in",
        what: "ring gap, No. 1",
        context: { related: [{ what: "ring gap, No. 2", text: "0.013 in" }] },
      },
      finds: 0,
    },
    {
      says: "a hundred times the other corner",
      entry: {
        text: "0.150 in",
        what: "feeler under the straight edge",
        context: { related: [{ what: "feeler at the other corner", text: "0.0015 in" }] },
      },
      finds: 1,
    },
    {
      says: "another thing altogether",
      entry: {
        text: "0.002 in",
        what: "clearance",
        context: { related: [{ what: "journal", text: "1.250 in" }] },
      },
      finds: 0,
    },
  ],
};

const peer =
  /\b(?:other|opposite|left|right|no\.? ?\d|number \d|second|first|third|front|rear|adjacent|next|previous|earlier|last (?:time|year|build|overhaul)|same|remaining|cyl(?:inder)? ?\d|near ?side|off ?side|average|others|neighbou?r(?:ing)?|fellow|sister|twin|again|repeat|as taken off|removed|old|original|new|replacement|spare|matching|before|after|re-?check|second reading|caliper|micrometer|measured|checked|as drawn|drawing|catalogue|listed|known|pattern|sample|mate)\b/;

/** The same quantity of a like place: it shares a word with what is measured, and differs by a word of place. */
function isFellow(fact: Fact, main: Fact, { what, part }: Sight): boolean {
  if (fact.dimension !== main.dimension || (fact.quantity.role ?? "") !== (main.quantity.role ?? ""))
    return false;
  const words = wordsOf(fact.name);
  const essence = wordsOf(what).filter((word) => quantityWords.test(word));
  if (words.some((word) => quantityWords.test(word) && !essence.includes(word))) return false;
  if (essence.some((word) => words.includes(word))) return true;
  return peer.test(fact.name) && words.every((word) => peerOrPart(word, `${what} ${part}`));
}

const quantityWords =
  /^(?:clearances?|gaps?|play|float|backlash|lash|diameters?|bore|stroke|thickness|width|length|height|depth|lift|pressure|speed|voltage|current|resistance|capacity|torque|weight|pitch|travel|run-?out|wear|compression|temperature|limit|tolerance|journal|shaft|hole|housing|pin|radius|circumference|volume|rate|teeth|load|level|interference|wall|pulley|motor|cc|stack|total|ratio|od|id|dose|time)$/;
const wordsOf = (text: string): string[] => text.match(/[a-z]{2,}/g) ?? [];
const peerOrPart = (word: string, about: string): boolean =>
  peer.test(word) ||
  about.includes(word.replace(/s$/, "")) ||
  /^(?:the|of|on|in|side|cylinder|cyl|end|one|no|number|time|year|reading|taken|off|figure|value|set|bank|row|pair|pairs|corner|edge|top|bottom|middle|centre|spot|place|post|station|leg|foot|face|half|turn|quarter|again|under|over|across|along|above|below|and|at|last|with|by|from|as|for)$/.test(
    word,
  );

function slip(main: Fact, fellow: Fact): Remark | null {
  const ratio = main.si / fellow.si;
  if (ratio > 0.34 && ratio < 2.95) return null;
  const named = slipWords(main.si, fellow.si, main.dimension);
  const sameFigure =
    main.quantity.ucum !== fellow.quantity.ucum &&
    near(main.quantity.value.number, fellow.quantity.value.number, 0.3);
  const power = Math.abs(Math.log10(ratio));
  if (!named && !sameFigure && Math.abs(power - Math.round(power)) > 0.2) return null;
  return {
    severity: "doubtful",
    found: `${main.raw}, beside ${fellow.name} ${fellow.raw}.`,
    expected: `Near ${sayIn(fellow.si, main.quantity, 3)}.`,
    meant: sameFigure
      ? `${main.quantity.value.number} ${fellow.quantity.unit}?`
      : `${sayIn(main.si / 10 ** Math.round(Math.log10(ratio)), main.quantity, 3)}? ${named ?? ""}`.trim(),
  };
}
