import { sayIn } from "../figures.ts";
import type { EntryRule } from "../rule.ts";
import { type Fact, relatedFacts } from "../sight.ts";

/** What lies within a wheel is shorter than the wheel. */
export const spokes: EntryRule = {
  id: "longer-than-its-wheel",
  title: "Longer than the wheel it is in",
  explanation:
    "A spoke reaches from hub to rim, and so is about half of the wheel's diameter; a valve, an arm or a crank throw likewise. One longer than the whole wheel has the wrong unit or decimal point.",
  source: "geometry",
  check: (sight) => {
    const { main } = sight;
    if (main?.dimension !== "length" || !/\b(?:spoke|arm)s?\b/.test(sight.all)) return [];
    const lengths = [main, ...relatedFacts(sight)];
    const [spoke, wheel] = [lengths.find(isSpoke), lengths.find(isWheel)];
    if (!spoke || !wheel || ![spoke, wheel].includes(main)) return [];
    const share = spoke.si / wheel.si;
    if (share < 0.62 && share > 0.2) return [];
    const expected = main === spoke ? wheel.si * 0.45 : spoke.si / 0.45;
    return [
      {
        severity: share > 1 ? ("wrong" as const) : ("doubtful" as const),
        found: `${spoke.name} ${spoke.raw}, ${wheel.name} ${wheel.raw}.`,
        expected: `A spoke of about half of the wheel; ${main.name} near ${sayIn(expected, main.quantity, 2)}.`,
        meant: "a unit or a decimal point?",
        ...(share > 1 ? {} : { source: "common practice, no source" }),
      },
    ];
  },
  examples: [
    {
      says: "285 cm in a wheel of 26 in",
      entry: {
        text: "285 cm",
        what: "rear spoke length",
        context: { related: [{ what: "rim", text: "26 in" }] },
      },
      finds: 1,
    },
    {
      says: "285 mm",
      entry: {
        text: "285 mm",
        what: "rear spoke length",
        context: { related: [{ what: "rim", text: "26 in" }] },
      },
      finds: 0,
    },
  ],
};

const isSpoke = ({ dimension, label, si }: Fact): boolean =>
  dimension === "length" && si > 0 && /\b(?:spoke|arm)s?\b/.test(label) && /\b(?:length|long)\b/.test(label);
const isWheel = ({ dimension, label, si }: Fact): boolean =>
  dimension === "length" &&
  si > 0 &&
  /\b(?:rim|wheel|tyre|tire)\b/.test(label) &&
  !/\b(?:spoke|arm|crank|bore|axle|boss)s?\b/.test(label) &&
  !/\b(?:width|base|depth|thick\w*|section|hub)\b/.test(label);
