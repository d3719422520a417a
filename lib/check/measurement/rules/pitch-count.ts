import { near, plain, sayIn } from "../figures.ts";
import type { EntryRule } from "../rule.ts";

/** So many links, holes or threads at a pitch come to a length. */
export const pitchCount: EntryRule = {
  id: "pitch-times-count",
  title: "Links, holes or teeth in a row",
  explanation:
    "A chain is as long as its links by their pitch, a row of holes or the teeth of a rack likewise. A count that the length does not give was lost on the way.",
  source: "arithmetic",
  check: (sight) => {
    const { facts, all } = sight;
    const count = facts.find(
      (fact) =>
        (fact.dimension === "count" || fact.dimension === "number") &&
        /\b(?:links?|holes?|rack|pitches|rivets?|rollers?)\b/.test(`${fact.label} ${fact.quantity.unit}`),
    );
    if (!count) return [];
    const pitch = facts.find(
      (fact) =>
        fact.dimension === "length" && /\bpitch\b/.test(fact.label) && !/circle|diameter/.test(fact.label),
    );
    const length = facts.find(
      (fact) =>
        fact !== pitch &&
        fact.dimension === "length" &&
        /\b(?:length|long|overall|total|row)\b/.test(fact.label),
    );
    if (!pitch || !length || pitch.from === "fastener" || /\bcircle|gear wheel\b/.test(all)) return [];
    const should = length.si / pitch.si;
    if (near(should, count.si, 0.03) || Math.abs(should - count.si) <= 1.05) return [];
    return [
      {
        severity: "wrong" as const,
        found: `${count.raw} at ${pitch.raw}, and ${length.raw}.`,
        expected: `${plain(should, 3)} at that pitch, or ${sayIn(count.si * pitch.si, length.quantity, 4)}.`,
        meant: `${plain(Math.round(should))}?`,
      },
    ];
  },
  examples: [
    {
      says: "48 links of half an inch",
      entry: {
        text: "48 links",
        what: "chain links",
        context: {
          related: [
            { what: "pitch", text: "12.7 mm" },
            { what: "length", text: "609.6 mm" },
          ],
        },
      },
      finds: 0,
    },
    {
      says: "and not 24",
      entry: {
        text: "24 links",
        what: "chain links",
        context: {
          related: [
            { what: "pitch", text: "12.7 mm" },
            { what: "length", text: "609.6 mm" },
          ],
        },
      },
      finds: 1,
    },
  ],
};
