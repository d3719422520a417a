import { sayIn } from "../figures.ts";
import type { EntryRule, Remark } from "../rule.ts";
import type { Fact, Sight } from "../sight.ts";
import { decisionIn } from "../words.ts";

/** A capacitor on more volts than it is made for. */
export const workingVoltage: EntryRule = {
  id: "working-voltage",
  title: "A capacitor on more than its working voltage",
  explanation:
    "The voltage written on a capacitor is the most it stands for long. It must be above what it gets, and while the valves are cold that is the full voltage off load; on alternating current it gets the peak, 1.41 times what a meter shows.",
  source:
    "arithmetic: the rating against the voltage given with it; the peak of a sine is √2 times its r.m.s. value",
  check: (sight) => {
    if (!/\b(?:capacitor|condenser|electrolytic|smoothing|reservoir)s?\b/.test(`${sight.what} ${sight.part}`))
      return [];
    if (decisionIn(sight.verdict) === "rejected") return [];
    const volts = sight.facts.filter((fact) => fact.dimension === "voltage" && fact.from !== "limit");
    const rated = volts.find((fact) => isRating(fact, sight));
    const applied = volts.find((fact) => fact !== rated && onIt.test(fact.name) && !isRating(fact, sight));
    return rated && applied ? tooLow(rated, applied) : [];
  },
  examples: [
    {
      says: "350 V on 420 V",
      entry: {
        text: "16 µF, 350 V",
        what: "smoothing capacitor fitted",
        context: { related: [{ what: "HT voltage off load", text: "420 V" }] },
      },
      finds: 1,
    },
    {
      says: "450 V on 330 V",
      entry: {
        text: "16 µF, 450 V",
        what: "smoothing capacitor fitted",
        context: { related: [{ what: "HT voltage off load", text: "330 V" }] },
      },
      finds: 0,
    },
    {
      says: "the peak of the mains",
      entry: {
        text: "300 V",
        what: "working voltage of the mains capacitor",
        context: { part: "capacitor", related: [{ what: "supply, a.c.", text: "240 V" }] },
      },
      finds: 1,
    },
  ],
};

const onIt =
  /\b(?:h\.?t\.?|supply|rail|across|applied|mains|line|off load|no load|peak|anode|plate|working at|in use|circuit|bus|b\+|secondary|charged to)\b/;

const isRating = (fact: Fact, { facts }: Sight): boolean =>
  /\b(?:rating|rated|working voltage|wkg|w\.?v|printed|marked|stamped)\b/.test(fact.label) ||
  (fact.from === "text" && facts.some((one) => one.from === "text" && one.dimension === "capacitance"));

function tooLow(rated: Fact, applied: Fact): Remark[] {
  const said = `${applied.name} ${applied.raw}`.toLowerCase();
  const alternating = /\ba\.?c\b|\bmains\b|\br\.?m\.?s\b/.test(said) && !/\bpeak\b/.test(said);
  const forAlternating = /\ba\.?c\b/i.test(rated.raw);
  const peak = alternating && !forAlternating ? Math.SQRT2 : 1;
  if (rated.si >= applied.si * peak * 0.999) return [];
  return [
    {
      severity: peak > 1 && rated.si >= applied.si ? "doubtful" : "wrong",
      found: `Rated ${rated.raw}, ${applied.name} ${applied.raw}.`,
      expected: `${sayIn(applied.si * peak, applied.quantity, 3)} or more${peak > 1 ? ", the peak" : ""}.`,
    },
  ];
}
