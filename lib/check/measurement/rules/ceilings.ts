import { sayIn } from "../figures.ts";
import type { EntryRule } from "../rule.ts";
import type { Fact } from "../sight.ts";
import { decisionIn } from "../words.ts";

/** More than nature or a standard has. */
export const ceilings: EntryRule = {
  id: "beyond-nature",
  title: "More than there can be",
  explanation:
    "No machine gives out more than it takes in, no current is more in step than altogether, and the air lifts water ten metres and no higher. A figure beyond such a bound was misread, or a place was lost.",
  source: "physics and standards, named with each bound",
  check: (sight) => {
    if (decisionIn(sight.verdict) === "rejected") return [];
    for (const fact of sight.facts.filter((one) => one.from === "text" || one.from === "related")) {
      const name = fact.from === "text" ? `${sight.what} ${fact.label} ` : `${fact.label} `;
      const row = rows.find(
        (one) =>
          one.kind.includes(fact.dimension) &&
          one.name.test(name) &&
          one.not?.test(one.wide ? sight.all : name) !== true &&
          one.only?.test(sight.all) !== false,
      );
      if (row && beyond(fact, row))
        return [
          {
            severity: row.source.startsWith("common practice") ? ("doubtful" as const) : ("wrong" as const),
            found: `${name.trim()}: ${fact.raw}.`,
            expected: `${sayIn(row.low, fact.quantity, 3)} to ${sayIn(row.high, fact.quantity, 3)}.`,
            source: row.source,
          },
        ];
    }
    return [];
  },
  examples: [
    { says: "a power factor above one", entry: { text: "1.08", what: "power factor" }, finds: 1 },
    { says: "one at the most", entry: { text: "0.98", what: "power factor" }, finds: 0 },
    {
      says: "a pump that sucks water from fourteen metres",
      entry: { text: "14 m", what: "suction lift", context: { part: "pump at an open well" } },
      finds: 1,
    },
    {
      says: "from seven",
      entry: { text: "7 m", what: "suction lift", context: { part: "pump at an open well" } },
      finds: 0,
    },
    {
      says: "a record of 78 inches at 10 turns",
      entry: { text: "78 in, 10 rpm (diameter, speed)", what: "test record" },
      finds: 1,
    },
    { says: "a latitude", entry: { text: "96° N", what: "latitude on the sundial" }, finds: 1 },
  ],
};

interface Bound {
  name: RegExp;
  kind: readonly string[];
  /** In SI units. */
  low: number;
  high: number;
  not?: RegExp;
  /** The words of `not` count anywhere in the entry. */
  wide?: true;
  only?: RegExp;
  source: string;
}

const beyond = ({ si, quantity }: Fact, { low, high }: Bound): boolean =>
  Math.max(si, quantity.siHigh ?? si) > high * 1.0005 || si < low * 0.9995;

const degree = Math.PI / 180;
const share = ["number", "ratio"];
const rows: readonly Bound[] = [
  {
    name: /\bpower factor\b|\bcos ?(?:φ|phi)/,
    kind: share,
    low: -1,
    high: 1,
    not: /\bcorrection|capacitor\b/,
    source: "IEC 60050-131: a power factor is one at the most",
  },
  {
    name: /\befficiency\b/,
    kind: ["ratio"],
    low: 0,
    high: 1,
    not: /\bboiler|condensing|heat pump|volumetric|relative|improve\w*/,
    source: "conservation of energy",
  },
  {
    name: /\b(?:relative )?humidity\b|\br\.?h\b/,
    kind: ["ratio"],
    low: 0,
    high: 1,
    not: /\bspecific\b/,
    source: "saturated air has 100 %",
  },
  {
    name: /\b(?:duty cycle|moisture of total|filled|state of charge|pure|purity|transmission)\b/,
    kind: ["ratio"],
    low: 0,
    high: 1,
    source: "a part is no larger than its whole",
  },
  {
    name: /\b(?:suction (?:lift|head)|lift on the suction|suction height|draws? (?:up )?from|lifts? by suction|water to the pump)\b/,
    kind: ["length"],
    low: -100,
    high: 10.33,
    not: /\b(?:submersible|submerged|deep[- ]well|ejector|jet pump|delivery|foot of|pressur\w+|positive|flooded)\b/,
    wide: true,
    source: "101.325 kPa (ISO 2533) hold up 10.33 m of cold water",
  },
  { name: /\blatitude\b/, kind: ["angle"], low: -90 * degree, high: 90 * degree, source: "geometry" },
  { name: /\blongitude\b/, kind: ["angle"], low: -180 * degree, high: 180 * degree, source: "geometry" },
  {
    name: /\b(?:compass bearing|azimuth|whole[- ]circle bearing|horizontal circle|heading)\b/,
    kind: ["angle"],
    low: -360 * degree,
    high: 360 * degree,
    source: "a circle has 360°",
  },
  {
    name: /\b(?:altitude of the|elevation|slope angle|vertical angle|dip)\b/,
    kind: ["angle"],
    low: -180 * degree,
    high: 180 * degree,
    not: /\bzenith\b/,
    source: "geometry",
  },
  {
    name: /\brecord\b|\bspeed\b|\bturntable\b/,
    kind: ["rotational speed"],
    low: 15.9 / 60,
    high: 101 / 60,
    only: /\b(?:shellac|test|gramophone|phonograph|vinyl|microgroove|dance|long[- ]playing) (?:record|disc)s?\b/,
    not: /\b(?:motor|governor|spindle|cutting|lathe|fan)\b/,
    wide: true,
    source: "IEC 60098 (from memory): 16 2/3, 33 1/3, 45 and 78 rpm",
  },
  {
    name: /\brecord\b|\bdiameter\b/,
    kind: ["length"],
    low: 0.1,
    high: 0.52,
    only: /\b(?:shellac|test|gramophone|vinyl|microgroove|dance|long[- ]playing) (?:record|disc)s?\b/,
    not: /\b(?:groove|hole|label|thickness|stylus|needle|run-?out|warp|eccentric\w*|swing)\b/,
    wide: true,
    source: "IEC 60098 (from memory): 7, 10 and 12 in",
  },
  {
    name: /\b(?:water|kettle) (?:boils|boiling)\b|\bboiling water\b|\bboiling point of water\b/,
    kind: ["temperature"],
    low: 273.15 + 68,
    high: 273.15 + 101.5,
    not: /\b(?:pressure|brine|antifreeze|glycol|salt|closed|boiler|psi|bar)\b/,
    wide: true,
    source: "water boils at 100 °C at 1013 hPa: common practice, no source for lower air pressure",
  },
  {
    name: /\b(?:ice water|melting ice|ice point|ice bath)\b/,
    kind: ["temperature"],
    low: 273.15 - 1,
    high: 273.15 + 5,
    not: /\bsalt|brine\b/,
    wide: true,
    source: "ice melts at 0 °C",
  },
  {
    name: /\bcoefficient of friction\b|\bpoisson/,
    kind: ["number"],
    low: 0,
    high: 3,
    source: "common practice, no source",
  },
  { name: /\bdwell\b/, kind: ["angle"], low: 0, high: 360 * degree, source: "a circle has 360°" },
];
