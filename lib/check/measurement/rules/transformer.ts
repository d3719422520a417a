import { near, plain } from "../figures.ts";
import { type EntryRule, firstOf, type Remark } from "../rule.ts";
import type { Fact, Sight } from "../sight.ts";
import { ratioTold } from "../told-ratio.ts";
import { termsOf } from "../wheels.ts";

/** Turns and volts of a transformer. */
export const transformerTurns: EntryRule = {
  id: "transformer-mismatch",
  title: "Turns and volts",
  explanation:
    "The volts of two windings are as their turns, and the impedances that they match as the squares of them. Where they are not, primary and secondary changed places or a turn count was lost.",
  source: "arithmetic: volts in the ratio of the turns, impedances in that of their squares",
  check: (sight) => firstOf(sight, transformer, toldOfBoth),
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
    {
      says: "impedances are as the squares of the turns",
      entry: {
        text: "1:41 (primary : secondary turns)",
        what: "output transformer ratio",
        context: {
          related: [
            { what: "anode load", text: "5 kΩ" },
            { what: "speech coil", text: "3 Ω" },
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

const primary = /\b(?:primary|mains|input|supply|line|anode|plate|source)\b/;
const secondary =
  /\b(?:secondary|output|heater|h\.?t\.?|load|bell|lamp|speaker|speech coil|voice coil|secondar(?:y|ies))\b/;

/** "1:36.5 (primary to secondary)", "the secondary has 20 times the turns": against the volts or ohms of both. */
function toldOfBoth(sight: Sight): Remark[] {
  const { main, entry, all } = sight;
  const said = main && /\btransformer|\bwindings?\b|\bturns ratio\b/.test(all) ? saidIn(sight) : null;
  const pair = said && windingsOf(sight);
  if (!said || !pair) return [];
  const [vp, vs] = pair;
  const should = turnsFor(vp, vs);
  if (near(said.turns, should, 0.15) || (!said.named && near(said.turns, 1 / should, 0.15))) return [];
  const should1 = should >= 1 ? `${plain(should, 3)}:1` : `1:${plain(1 / should, 3)}`;
  return [
    {
      severity: "wrong",
      found: `“${entry.text}”, ${vp.name} ${vp.raw}, ${vs.name} ${vs.raw}.`,
      expected: `${should1}, primary to secondary.`,
      meant: near(said.turns, 1 / should, 0.15) ? "the ratio turned about?" : `${should1}?`,
    },
  ];
}

/** Turns of the primary for one of the secondary, and whether it was said which is which. */
function saidIn({ main, what, entry }: Sight): { turns: number; named: boolean } | null {
  const words = ratioTold(entry.text);
  if (words && primary.test(words.subject) && secondary.test(words.other))
    return { turns: words.times, named: true };
  if (words && secondary.test(words.subject) && primary.test(words.other))
    return { turns: 1 / words.times, named: true };
  const terms = main?.quantity.terms?.length === 2 ? termsOf(main) : null;
  if (!terms) return null;
  const told = `${what} ${entry.text.toLowerCase()}`;
  if (/\bsecondary\b.{0,12}(?:\bto\b|:|\/).{0,6}\bprimary\b/.test(told))
    return { turns: 1 / terms, named: true };
  return { turns: terms, named: /\bprimary\b.{0,12}(?:\bto\b|:|\/).{0,6}\bsecondary\b/.test(told) };
}

/** What is known of the two windings, the primary first: volts of both, or the ohms that they match. */
function windingsOf({ facts }: Sight): [Fact, Fact] | null {
  const known = facts.filter((fact) => fact.from === "related" && fact.si > 0);
  const volts = known.filter((fact) => fact.dimension === "voltage");
  const ohms = known.filter((fact) => fact.dimension === "resistance" && matched.test(fact.name));
  for (const pair of [volts, ohms]) {
    const vp = pair.find((fact) => primary.test(fact.name));
    const vs = pair.find((fact) => fact !== vp && secondary.test(fact.name));
    if (vp && vs) return [vp, vs];
  }
  return null;
}

/** Ohms of what is joined to a winding, and not of its wire. */
const matched = /\b(?:anode|plate|load|impedance|speaker|speech coil|voice coil|line)\b/;

/** Volts are as the turns, impedances as their squares. */
const turnsFor = (vp: Fact, vs: Fact): number =>
  vp.dimension === "voltage" ? vp.si / vs.si : Math.sqrt(vp.si / vs.si);
