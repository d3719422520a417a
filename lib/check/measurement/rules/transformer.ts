import { near, plain } from "../figures.ts";
import { type EntryRule, firstOf, type Remark } from "../rule.ts";
import type { Fact, Sight } from "../sight.ts";
import { termsOf } from "../wheels.ts";

/** Turns and volts of a transformer. */
export const transformerTurns: EntryRule = {
  id: "transformer-mismatch",
  title: "Turns and volts",
  explanation:
    "The volts of two windings are as their turns. Where they are not, primary and secondary changed places or a turn count was lost.",
  source: "arithmetic: volts in the ratio of the turns",
  check: (sight) => firstOf(sight, transformer, ratioTold),
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
    {
      says: "a ratio called primary to secondary",
      entry: {
        text: "1:36.5 (primary to secondary turns)",
        what: "heater transformer ratio",
        context: {
          related: [
            { what: "primary", text: "230 V" },
            { what: "secondary, no load", text: "6.3 V" },
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

const primary = /\b(?:primary|mains|input|supply|line)\b/;
const secondary = /\b(?:secondary|output|heater|h\.?t\.?|load|bell|lamp)\b/;

/** "1:36.5 (primary to secondary)", against the volts of both. */
function ratioTold({ main, facts, what, entry, all }: Sight): Remark[] {
  const said = main?.quantity.terms?.length === 2 ? termsOf(main) : null;
  if (!main || !said || !/\btransformer|\bwindings?\b|\bturns ratio\b/.test(all)) return [];
  const volts = facts.filter(
    (fact) => fact.from === "related" && fact.dimension === "voltage" && fact.si > 0,
  );
  const [vp, vs] = [
    volts.find((fact) => primary.test(fact.name) && !secondary.test(fact.name)),
    volts.find((fact) => secondary.test(fact.name)),
  ];
  if (!vp || !vs) return [];
  const should = vp.si / vs.si;
  const told = `${what} ${entry.text.toLowerCase()}`;
  const turned = /\bsecondary\b.{0,12}(?:\bto\b|:|\/).{0,6}\bprimary\b/.test(told);
  const named = turned || /\bprimary\b.{0,12}(?:\bto\b|:|\/).{0,6}\bsecondary\b/.test(told);
  const expected = turned ? 1 / should : should;
  if (near(said, expected, 0.15) || (!named && near(said, 1 / expected, 0.15))) return [];
  return [
    {
      severity: "wrong",
      found: `${main.raw}, ${vp.name} ${vp.raw}, ${vs.name} ${vs.raw}.`,
      expected: expected >= 1 ? `${plain(expected, 3)}:1.` : `1:${plain(1 / expected, 3)}.`,
      meant: near(said, 1 / expected, 0.15) ? "the ratio turned about?" : `${plain(expected, 3)}:1?`,
    },
  ];
}
