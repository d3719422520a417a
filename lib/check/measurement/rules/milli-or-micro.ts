import { near } from "../figures.ts";
import type { EntryRule } from "../rule.ts";

/** "8 mF" beside "8 µF". */
export const milliOrMicro: EntryRule = {
  id: "milli-or-micro",
  title: "Millifarads or microfarads",
  explanation:
    "On old parts mF and mfd stand for microfarads; today mF is a thousand of them. Where the specification writes µF and the value mF, one of the two is a slip or a copy of an old mark, and the next reader cannot tell.",
  source: "SI Brochure, 9th edition: m is a thousandth, µ a millionth",
  check: (sight) => {
    const { main, entry } = sight;
    const spec = sight.facts.find((fact) => fact.from === "spec" && fact.dimension === "capacitance");
    if (main?.dimension !== "capacitance" || !spec || !/\d ?m\.?F\b/.test(entry.text)) return [];
    if (!/[µμu]F\b|microfarad/i.test(spec.raw) || marked.test(sight.all)) return [];
    if (!near(main.quantity.value.number, spec.quantity.value.number, 0.4)) return [];
    return [
      {
        severity: "doubtful" as const,
        found: `${main.raw}, where the specification is ${spec.raw}.`,
        expected: "A figure in µF.",
        meant: `${main.quantity.value.number} µF?`,
      },
    ];
  },
  examples: [
    {
      says: "one of the two is a slip",
      entry: { text: "8 mF", what: "smoothing capacitor", context: { spec: "8 µF, 450 V" } },
      finds: 1,
    },
    {
      says: "as it is marked on an old can",
      entry: { text: "8 mF", what: "value marked on the old can", context: { spec: "8 µF, 450 V" } },
      finds: 0,
    },
    {
      says: "the same unit",
      entry: { text: "8.2 µF", what: "capacitor", context: { spec: "8 µF" } },
      finds: 0,
    },
  ],
};

const marked = /\b(?:marked|stamped|printed|label(?:led)?|marking|old mark)\b/;
