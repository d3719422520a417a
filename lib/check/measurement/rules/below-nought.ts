import { sayIn } from "../figures.ts";
import type { EntryRule } from "../rule.ts";
import type { Fact } from "../sight.ts";

/** A magnitude below nought or of nought, and a temperature that cannot be. */
export const belowNought: EntryRule = {
  id: "negative-or-zero",
  title: "Less than nothing",
  explanation:
    "A thickness, a volume, a mass or a torque is more than nought. A minus that belongs to an error, a position, a preload or an interference is in order, and so is a temperature below nought, down to the absolute zero.",
  source: "arithmetic; SI Brochure, 9th edition: nought kelvin is -273.15 °C",
  check: ({ facts, what, all }) => {
    for (const fact of facts.filter(
      (one) => one.from === "text" || one.from === "spec" || one.from === "related",
    )) {
      if (fact.dimension === "temperature" && fact.quantity.role !== "difference" && fact.si < -1e-9)
        return [
          {
            severity: "wrong" as const,
            found: `“${fact.raw}” is colder than the absolute zero.`,
            expected: "A temperature above -273.15 °C.",
          },
        ];
      if (fact.quantity.qualifier === "either way") continue;
      const lowest = Math.min(fact.si, fact.quantity.siHigh ?? fact.si);
      const place = `${fact.label} ${fact.from === "text" ? `${what} ${fact.raw.toLowerCase()}` : ""}`;
      if (lowest < 0 && cannotBeNegative(fact, place, all))
        return [
          {
            severity: "wrong" as const,
            found: `“${fact.raw}” is less than nothing.`,
            expected: `${fact.name || what}: more than nought.`,
            meant: `${sayIn(Math.abs(fact.si), fact.quantity)}?`,
          },
        ];
      if (
        lowest === 0 &&
        fact.quantity.high === undefined &&
        fact.from === "text" &&
        cannotBeNought(fact, place)
      )
        return [
          {
            severity: "wrong" as const,
            found: `“${fact.raw}” is nothing.`,
            expected: `${fact.name || what}: more than nought.`,
          },
        ];
    }
    return [];
  },
  examples: [
    { says: "a gasket", entry: { text: "-0.5 mm", what: "gasket thickness" }, finds: 1 },
    { says: "a frozen pin", entry: { text: "-20 °C", what: "pin temperature before fitting" }, finds: 0 },
    { says: "colder than cold", entry: { text: "-300 °C", what: "liquid nitrogen" }, finds: 1 },
    { says: "an error has a sign", entry: { text: "-0.02 mm", what: "error of the gauge" }, finds: 0 },
    {
      says: "a preload is a negative float",
      entry: { text: "-0.05 mm", what: "end float (preload)" },
      finds: 0,
    },
    {
      says: "a dial set to zero shows both ways",
      entry: {
        text: "-0.02 mm",
        what: "dial reading at the half turn",
        context: { instrument: "dial indicator, set to zero at the keyway" },
      },
      finds: 0,
    },
    { says: "a shaft of nothing", entry: { text: "0 mm", what: "shaft diameter" }, finds: 1 },
    { says: "no run-out", entry: { text: "0.00 mm", what: "flywheel run-out" }, finds: 0 },
  ],
};

const magnitudes = [
  "mass",
  "volume",
  "area",
  "torque",
  "resistance",
  "capacitance",
  "inductance",
  "rotational speed",
  "frequency",
  "spring rate",
  "time",
  "count",
  "thread pitch",
  "speed",
  "power",
  "energy",
];
const signed =
  /\b(?:against|undersize|oversize|compar\w*|nominal|from (?:zero|standard|true)|deviation|offset|error|differ\w*|correction|datum|relative|protru\w*|proud|stand-?(?:out|off)|deck|above|below|under|overlap|level|camber|caster|castor|toe|lead|lag|taper|shift|change|growth|shrink\w*|position|interference|preload\w*|pre-load\w*|nip|crush|deflection|drift|rise|drop|fall|gain|los(?:s|t|es|ing)|regulation|allowance|fundamental|run-?out|rate|slow|fast|advance|retard|timing|bias|reverse|return|zero|slack|undercut|shrinkage|crown|dish|lap|adjust(?:ment|ed)?|trim|compensation|tolerance|backwards?|step|height|vacuum|depression|suction|stop|squish|recess(?:ed|ion)?|before|grid|offset|lost motion|projection|sunk|sinkage|fit|out of|bow|sag|twist)\b/;
const sizes =
  /\b(?:thick(?:ness)?|diameter|dia|width|wide|length|long|bore|o\.?d|i\.?d|gap|clearance|play|float|backlash|wall|pitch|depth|gauge|tread|size|travel|stroke|radius|circumference|face|lift|freedom|hole)\b/;

/** A dial set to zero somewhere shows which way from there. */
const comparative =
  /\b(?:dial|d\.?t\.?i\.?|indicator|clock gauge|comparator|test indicator|set to (?:zero|nought)|zeroed)\b/;
const ofItself =
  /\b(?:thick(?:ness)?|diameter|dia|width|length|long|bore|o\.?d|i\.?d|clearance|depth|height|stroke|travel|gap|backlash|float|play)\b/;

function cannotBeNegative(fact: Fact, place: string, all: string): boolean {
  if (fact.dimension === "length" && comparative.test(all) && !ofItself.test(place)) return false;
  if (signed.test(place))
    return (
      /\b(?:thickness|diameter|mass|weight)\b/.test(fact.label) &&
      !/\b(?:error|deviation|change|offset|differ\w*|correction|allowance|tolerance|loss|shrink\w*|growth|relative|below|under)\b/.test(
        place,
      )
    );
  if (magnitudes.includes(fact.dimension)) return true;
  if (["voltage", "current"].includes(fact.dimension) && /\b(?:rating|rated|fuse)\b/.test(place)) return true;
  if (fact.dimension === "length")
    return (
      (sizes.test(place) && !/\b(?:press|preload\w*|interference|shrink)\b/.test(all)) ||
      (fact.from === "text" && !/\b(?:press|preload|interference|shrink)\b/.test(all))
    );
  if (fact.dimension === "pressure")
    return (
      !/vacuum|depression|suction|manifold|intake|draught|draft|inlet|pump/.test(all) &&
      fact.quantity.role !== "vacuum"
    );
  return (
    fact.dimension === "angle" &&
    /\b(?:included|taper|cone|seat|angle)\b/.test(place) &&
    !/\b(?:advance|timing|btdc|atdc|rake)\b/.test(all)
  );
}

function cannotBeNought(fact: Fact, place: string): boolean {
  if (fact.quantity.ucum === "{tooth}")
    return !/\b(?:missing|broken|chipped|damaged|worn|bent|lost|stripped|sound|bad)\b/.test(place);
  if (
    /\b(?:run-?out|error|deviation|offset|differ\w*|wear|play|float|leak\w*|loss|drop|reading|change|residual|continuity|bond|earth|balance|idle|stopped|rest|closed|open|off|lost|ovality|taper|nil|none|backlash|no |contact|short\w*|speed|rpm|setting|datum|zero|shake|link|consum\w*|misalign\w*|lash|toe|deflection|bow|twist|proud|protrusion|count)\b/.test(
      place,
    )
  )
    return false;
  if (fact.dimension === "angle")
    return (
      /\bturns?\b/.test(fact.quantity.unit) &&
      /\bnumber of turns|primary|secondary|winding|wound\b/.test(place)
    );
  if (fact.dimension === "count")
    return (
      /\b(?:teeth|poles|cylinders|leaves|spokes)\b/.test(place) &&
      !/\b(?:missing|broken|chipped|damaged|worn|bent)\b/.test(place)
    );
  if (["mass", "volume", "torque", "capacitance", "spring rate", "thread pitch"].includes(fact.dimension))
    return true;
  if (fact.dimension === "length")
    return /\b(?:thick(?:ness)?|diameter|dia|width|length|bore|o\.?d|i\.?d|wall|pitch|stroke|depth|radius|gap|tread|height|face|travel|lift)\b/.test(
      place,
    );
  if (fact.dimension === "resistance")
    return /\b(?:winding|coil|insulation|resistor|element|primary|secondary|field|heater)\b/.test(place);
  if (fact.dimension === "pressure") return /\b(?:compression|tyre|tire|working|test|oil)\b/.test(place);
  return false;
}
