import { near } from "../figures.ts";
import type { EntryRule, Remark } from "../rule.ts";
import type { Fact, Sight } from "../sight.ts";

/** Turns and volts of a transformer. */
export const transformerTurns: EntryRule = {
  id: "transformer-mismatch",
  title: "Turns and volts",
  explanation:
    "The volts of two windings are as their turns. Where they are not, primary and secondary changed places or a turn count was lost.",
  source: "arithmetic: volts in the ratio of the turns",
  check: (sight) => transformer(sight),
  examples: [
    {
      says: "ten to one",
      entry: {
        text: "24 V",
        what: "secondary voltage",
        context: {
          part: "transformer",
          related: [
            { what: "primary voltage", text: "240 V" },
            { what: "primary turns", text: "1000 turns" },
            { what: "secondary turns", text: "100 turns" },
          ],
        },
      },
      finds: 0,
    },
    {
      says: "turned about",
      entry: {
        text: "2400 V",
        what: "secondary voltage",
        context: {
          part: "transformer",
          related: [
            { what: "primary voltage", text: "240 V" },
            { what: "primary turns", text: "1000 turns" },
            { what: "secondary turns", text: "100 turns" },
          ],
        },
      },
      finds: 1,
    },
  ],
};

/** Turns and volts of a transformer go together. */
function transformer(sight: Sight): Remark[] {
  if (
    !/\btransformer|\bprimary\b|\bsecondary\b/.test(sight.all) ||
    /\bignition|magneto|coil\b/.test(sight.what)
  )
    return [];
  const find = (side: RegExp, kind: (fact: Fact) => boolean) =>
    sight.facts.find((fact) => side.test(fact.name) && kind(fact));
  const turns = (fact: Fact) =>
    (fact.dimension === "count" || fact.dimension === "number" || fact.dimension === "angle") &&
    /\bturns?\b/.test(`${fact.label} ${fact.quantity.unit} ${fact.raw}`);
  const volts = (fact: Fact) => fact.dimension === "voltage";
  const [np, ns, vp, vs] = [
    find(/primary|mains|input/, turns),
    find(/secondary|output|heater|ht/, turns),
    find(/primary|mains|input|supply/, volts),
    find(/secondary|output|heater|ht/, volts),
  ];
  if (!np || !ns || !vp || !vs) return [];
  const [a, b] = [np.quantity.value.number / ns.quantity.value.number, vp.si / vs.si];
  if (near(a, b, 0.15)) return [];
  return [
    {
      severity: near(a, 1 / b, 0.15) || a / b > 3 || b / a > 3 ? "wrong" : "doubtful",
      found: `${np.raw} to ${ns.raw}, ${vp.raw} to ${vs.raw}.`,
      expected: "Volts in the ratio of the turns.",
      meant: near(a, 1 / b, 0.15) ? "the ratio turned about?" : "",
    },
  ];
}
