import { read } from "#lib/quantity/index.ts";
import type { EntryRule } from "../rule.ts";
import type { Fact, Sight } from "../sight.ts";

/** A reading in another unit than the scale is marked in. */
export const markedUnit: EntryRule = {
  id: "not-the-marked-unit",
  title: "Another unit than the dial has",
  explanation:
    "What is read from a dial is in the unit on the dial. A reading written in another one, without the first beside it, was given the wrong unit or converted on the way.",
  source: "common practice, no source",
  check: (sight) => {
    const { main, what } = sight;
    const marked = main && markedIn(sight, main);
    if (
      !main ||
      !marked ||
      marked.ucum === main.quantity.ucum ||
      /\bconver|\bequals|\bequivalent/.test(sight.all)
    )
      return [];
    if (twice(sight, marked.ucum)) return [];
    return [
      {
        severity: "doubtful" as const,
        found: `${what}: ${main.raw}, on a scale marked in ${marked.unit}.`,
        expected: `A figure in ${marked.unit}.`,
        meant: `${main.quantity.value.number} ${marked.unit}?`,
      },
    ];
  },
  examples: [
    {
      says: "pounds from a dial of inches of mercury",
      entry: {
        text: "29.9 lb/sq in",
        what: "barometer reading",
        context: { related: [{ what: "dial marked in", text: "inHg" }] },
      },
      finds: 1,
    },
    {
      says: "inches of mercury",
      entry: {
        text: "29.9 inHg",
        what: "barometer reading",
        context: { related: [{ what: "dial marked in", text: "inHg" }] },
      },
      finds: 0,
    },
    {
      says: "converted beside it",
      entry: {
        text: "40 psi (2.8 bar)",
        what: "oil pressure",
        context: { instrument: "gauge marked in bar" },
      },
      finds: 0,
    },
  ],
};

const marks =
  /\b(?:marked|graduated|calibrated|scaled|divided|reads?|scale|dial|engraved|figured) (?:is )?(?:only )?in ([^\s,;()]{1,12}(?: of (?:mercury|water))?)/;
const marksName =
  /\b(?:marked|graduated|calibrated|scaled|divided|reads?|scale|dial|engraved|figured)\b.{0,14}\b(?:in|unit|units)$|\bunits? (?:on|of) (?:the )?(?:dial|scale|gauge)/;

const twoScales = /\bin \S+ ?(?:and|or|\/|&|,) ?\S+/;

/** The unit that the instrument is said to have, if it is of the value's own kind. */
function markedIn({ instrument, entry, decimal }: Sight, main: Fact): { ucum: string; unit: string } | null {
  const related = (entry.context.related ?? []).find(
    ({ what, text }) => marksName.test(what.toLowerCase()) && text.length < 24,
  );
  const said = related?.text ?? marks.exec(instrument)?.[1];
  if (!said || /\d/.test(said) || twoScales.test(instrument)) return null;
  const reading = read(`1 ${said.trim()}`, { decimal });
  const [one] = reading.kind === "quantity" ? reading.quantities : [];
  return one && one.dimension === main.dimension ? { ucum: one.ucum, unit: said.trim() } : null;
}

/** Whether the value stands there in the marked unit as well. */
const twice = ({ reading }: Sight, ucum: string): boolean =>
  reading.kind === "quantity" && reading.quantities.some((one) => one.ucum === ucum);
