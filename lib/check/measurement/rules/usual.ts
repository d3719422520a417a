import { type Source, saySource, sourceNamed } from "#lib/reference/index.ts";
import { sayIn } from "../figures.ts";
import type { EntryRule } from "../rule.ts";
import type { Sight } from "../sight.ts";

/** A figure far from anything that is usual for what it is called. */
export const usual: EntryRule = {
  id: "far-from-usual",
  title: "Far from what is usual",
  explanation:
    "Some things have a size that hardly ever varies by a factor of three: a points gap, a valve clearance, the pressure in a tyre. The spans here are wide, and no standard stands behind them: outside them a figure is asked about, and never called wrong.",
  source: "common practice, no source",
  check: (sight) => {
    const { main, what } = sight;
    if (!main || (main.quantity.role === "difference" && main.dimension === "temperature")) return [];
    const [own, withPart] = [`${what} `, `${what} ${sight.part}`];
    for (const row of rows) {
      if (
        row.dimension !== main.dimension ||
        !row.name.test(row.part ? withPart : own) ||
        row.not?.test(sight.all)
      )
        continue;
      const [low, high] = [row.low, row.high];
      const value = main.quantity.siHigh ?? main.si;
      if ((value <= high && main.si >= low) || isAsSpecified(sight)) return [];
      const meant =
        main.si > 0
          ? [10, 0.1, 100, 0.01, 1 / 25.4, 25.4, 1000, 0.001].find(
              (factor) => main.si * factor >= low && main.si * factor <= high,
            )
          : undefined;
      return [
        {
          severity: "doubtful" as const,
          found: `${what}: ${main.raw}.`,
          expected: `Usually ${sayIn(low, main.quantity, 2)} to ${sayIn(high, main.quantity, 2)}.`,
          ...(meant ? { meant: `${sayIn(main.si * meant, main.quantity, 3)}?` } : {}),
          source: row.source ?? "common practice, no source",
        },
      ];
    }
    return [];
  },
  examples: [
    { says: "a tappet of 8 mm", entry: { text: "8 mm", what: "inlet tappet clearance" }, finds: 1 },
    { says: "a tappet of 8 thou", entry: { text: "8 thou", what: "inlet tappet clearance" }, finds: 0 },
    {
      says: "no small pin weighs as much as eight men",
      entry: { text: "650 kg", what: "weight of the gudgeon pin", context: { part: "small engine" } },
      finds: 1,
    },
    {
      says: "a zinc casting lies in a cold dip two and a half hours at the most",
      entry: { text: "6 h", what: "cold dip", context: { material: "zinc casting" } },
      finds: 1,
    },
    {
      says: "two and a half hours are within it",
      entry: { text: "2.5 h", what: "cold dip", context: { material: "zinc casting" } },
      finds: 0,
    },
    {
      says: "steel may lie longer",
      entry: { text: "24 h", what: "cold dip", context: { material: "steel" } },
      finds: 0,
    },
  ],
};

/** What the maker asks for is not asked about, however rare. */
const isAsSpecified = ({ main, facts }: Sight): boolean =>
  facts.some(
    ({ from, dimension, low, high }) =>
      from === "spec" &&
      dimension === main?.dimension &&
      low !== null &&
      high !== null &&
      high > low &&
      main.si >= low * 0.999 &&
      main.si <= high * 1.001,
  );

interface Usual {
  name: RegExp;
  /** Look for the name in the part as well. */
  part?: true;
  dimension: string;
  /** In SI units. */
  low: number;
  high: number;
  not?: RegExp;
  source?: string;
}

const mm = 1e-3;
const psi = 6894.757293;
const celsius = (degrees: number): number => degrees + 273.15;
const zinc: Source = sourceNamed("guidance");

const rows: Usual[] = [
  {
    name: /\b(?:tappet|valve|rocker)\b.{0,14}\b(?:clearance|gap|lash)\b|\btappets?\b/,
    dimension: "length",
    low: -1,
    high: 1.3 * mm,
    not: /\b(?:thickness|diameter|length|shim size|adjuster thread|stem|guide|piston[- ]to|lift|seat|screw|locknut|a\/f|height|head)\b/,
  },
  {
    name: /\b(?:points?|contact[- ]?breaker|contact|breaker)\b.{0,12}\bgap\b/,
    dimension: "length",
    low: 0.1 * mm,
    high: 1.3 * mm,
    not: /\b(?:relay|switch|contactor|controller|knife|hook|needle)\b/,
  },
  {
    name: /\b(?:plug|spark|electrode)\b.{0,12}\bgap\b/,
    dimension: "length",
    low: 0.2 * mm,
    high: 2 * mm,
    not: /\b(?:test|tester|safety|ball|coil|jump|pick)/,
  },
  {
    name: /\bring\b.{0,18}\b(?:end )?gap\b/,
    dimension: "length",
    low: 0.04 * mm,
    high: 3 * mm,
    not: /\b(?:steam|marine|locomotive|ring gear|snap)\b/,
  },
  {
    name: /\bring\b.{0,12}\b(?:side|groove) clearance\b/,
    dimension: "length",
    low: 0.005 * mm,
    high: 0.5 * mm,
  },
  {
    name: /\b(?:bearing|hub|king ?pin|axle)s? (?:end )?(?:play|float|shake)\b/,
    dimension: "length",
    low: -0.2 * mm,
    high: 12 * mm,
    not: /\brim|tyre|tread|lever\b/,
  },
  {
    name: /\b(?:end[- ]?(?:float|play)|backlash|crank(?:shaft)? float)\b/,
    dimension: "length",
    low: -0.2 * mm,
    high: 3 * mm,
    not: /\b(?:leadscrew|screw|feed|steering|handwheel|plough|rim|at the rim|wheel|lever|pedal)\b/,
  },
  {
    name: /\b(?:bearing|big[- ]end|main|journal|bush|guide|gudgeon pin|piston|skirt|spindle|small[- ]end)\b.{0,14}\bclearance\b/,
    dimension: "length",
    low: 0,
    high: 1.6 * mm,
    not: /\b(?:side|(?<!big[- ])(?<!small[- ])end clearance|end float|housing|head|deck|valve to|piston to|cab|ground|bump|pedal|loom)\b/,
  },
  {
    name: /\b(?:run-?out)\b/,
    dimension: "length",
    low: 0,
    high: 6 * mm,
    not: /\b(?:wooden|belt|rim of the cart|cart|flywheel rim|thread)\b/,
  },
  {
    name: /\b(?:air gap|pole gap|armature gap|magneto gap)\b/,
    dimension: "length",
    low: 0.03 * mm,
    high: 6 * mm,
    not: /\bspark|arc\b/,
  },
  {
    name: /\b(?:screw|bolt|nut|washer|pin|key|pivot|valve|spring|shim|gasket|piston|bush|rivet|ring|spoke|jet|needle|collar|gudgeon pin|con(?:necting)?[- ]rod)(?:'s)? (?:weight|mass)\b|\b(?:weight|mass) of (?:the |a |one |each )?(?:[a-z]+ )?(?:screw|bolt|nut|washer|pin|key|pivot|valve|spring|shim|gasket|piston|bush|rivet|ring|spoke|jet|needle|collar)\b/,
    dimension: "mass",
    low: 0,
    high: 60,
    not: /\b(?:marine|ship|steam|locomotive|mill engine|beam engine|press|crane|steam hammer|sluice|main)\b/,
  },
  {
    name: /\b(?:screw|bolt|nut|washer|taper pin|split pin|cotter|key|pivot|valve stem|shim|circlip|rivet|spoke|jet|needle|collar|ball|tooth|brush|o-?ring|seal)s? (?:length|diameter|width|thickness|height|o\.?d\.?)\b/,
    dimension: "length",
    low: 0,
    high: 2,
    not: /\b(?:marine|ship|locomotive|mill engine|lead ?screw|archimed\w*|tie|water screw)\b/,
  },
  {
    name: /\b(?:cylinder head|big[- ]end|main bearing|flywheel|wheel|hub|crank(?:shaft)? pulley|con(?:necting)?[- ]rod)\b.{0,10}\b(?:nut|bolt|stud)s?\b/,
    dimension: "torque",
    low: 4,
    high: 3000,
    not: /\b(?:model|clock|watch|sewing|toy|m[2345]\b|\d ba|pinch|finger|first (?:pass|round|stage)|hand ?wheel|balance wheel|pre-?load|turning|drag)\b/,
  },
  {
    name: /\bthickness\b/,
    dimension: "length",
    low: 0,
    high: 0.6,
    not: /\b(?:foundation|concrete|brickwork|masonry|bed of|stack|pile|dam)\b/,
  },
  {
    name: /\bdwell\b|\b(?:included|cone|taper|seat) angle\b/,
    dimension: "angle",
    low: 0,
    high: 2 * Math.PI,
  },
  {
    name: /\b(?:barometer|barometric|atmospheric pressure)\b/,
    part: true,
    dimension: "pressure",
    low: 6.5e4,
    high: 1.09e5,
    not: /\b(?:correction|altitude|difference|change)\b/,
  },
  { name: /\b(?:tyre|tire)s?\b/, dimension: "pressure", low: 5 * psi, high: 160 * psi },
  {
    name: /\bcompression\b/,
    dimension: "pressure",
    low: 15 * psi,
    high: 900 * psi,
    not: /\bspring|strength|stress|tester rating|packing\b/,
  },
  {
    name: /\boil pressure\b/,
    dimension: "pressure",
    low: 0.3 * psi,
    high: 160 * psi,
    not: /\bhydraulic|press|jack|injector|pump test|burner\b/,
  },
  {
    name: /\b(?:ignition|spark|magneto)\b.{0,14}\b(?:timing|advance|lead)\b/,
    dimension: "angle",
    low: -0.6,
    high: 1.1,
  },
  {
    name: /\bcrank angle\b|\bangle of (?:the )?crank\b|\btiming disc\b/,
    part: true,
    dimension: "angle",
    low: -2 * Math.PI,
    high: 2 * Math.PI * 1.001,
    not: /\b(?:720|cycle|duration|total|turns?)\b/,
  },
  {
    name: /\b(?:idle|idling|tick-?over|slow running)\b.{0,10}(?:\bspeed\b|\brpm\b|$)/,
    dimension: "rotational speed",
    low: 60 / 60,
    high: 3500 / 60,
    not: /\bscrew|jet|turns\b/,
  },
  {
    name: /\b(?:idle|mixture|air|pilot|slow[- ]running|volume|needle|jet|main jet|tick-?over)\b.{0,14}(?:screw|needle|turns)/,
    dimension: "angle",
    low: 0.05,
    high: 2 * Math.PI * 8.1,
    not: /\b(?:thread|included|taper|cone)\b/,
  },
  {
    name: /\bbearing\b.{0,34}\b(?:heat\w*|oven|oil bath|warm\w*|before fitting|for fitting)\b|\b(?:heat\w*|oven|warm\w*)\b.{0,24}\bbearing\b/,
    dimension: "temperature",
    low: celsius(-60),
    high: celsius(135),
    not: /\b(?:remov|scrap|white metal|babbitt|melt|pour|housing|destroy|sleeve|bush|plain|torch)\w*/,
  },
  {
    name: /\b(?:freezer|deep freeze|frozen)\b/,
    dimension: "temperature",
    low: celsius(-45),
    high: celsius(2),
    not: /\b(?:nitrogen|dry ice|lab|co2|laboratory)\b/,
  },
  {
    name: /\b(?:coolant|cooling water|radiator|jacket|thermostat)\b/,
    dimension: "temperature",
    low: celsius(-40),
    high: celsius(131),
  },
  {
    name: /\b(?:dip|soak|bath|immers|steep|pickle|stripp|derust|clean)/,
    dimension: "time",
    low: 0,
    high: 2.5 * 3600.5,
    not: /^(?!.*\b(?:zinc|mazak|zamak|pot metal|die-?cast|monkey metal)\b)|alumin/,
    source: saySource(zinc),
  },
  {
    name: /\bsoft solder|\btinning\b|\bsoldering iron\b/,
    dimension: "temperature",
    low: celsius(150),
    high: celsius(500),
  },
  {
    name: /\b(?:silver solder|brazing|braze|hard solder)/,
    dimension: "temperature",
    low: celsius(550),
    high: celsius(1150),
  },
  { name: /\b(?:end[- ]?shake|side ?shake|shake)\b/, dimension: "length", low: 0, high: 1.5 * mm },
  { name: /\bmainspring thickness\b/, dimension: "length", low: 0.03 * mm, high: 1.2 * mm },
  { name: /\b(?:chain|belt) (?:slack|sag)\b/, dimension: "length", low: 1 * mm, high: 150 * mm },
  {
    name: /\bspecific gravity\b|\bhydrometer\b/,
    dimension: "number",
    low: 0.6,
    high: 1.9,
    not: /\bdegrees|oechsle|1[0-9]{3}\b/,
  },
  {
    name: /\bharden(?:ing)? (?:temperature|heat)\b|\bquench(?:ed)? from\b/,
    dimension: "temperature",
    low: celsius(650),
    high: celsius(1300),
    not: /\boil|bath\b/,
  },
  { name: /\btemper(?:ed|ing)?\b/, dimension: "temperature", low: celsius(95), high: celsius(750) },
  {
    name: /\b(?:engine|motor|spindle|crank(?:shaft)?|governed|flywheel|lineshaft|line shaft|countershaft) speed\b/,
    dimension: "rotational speed",
    low: 1 / 60,
    high: 40000 / 60,
  },
  { name: /\bcylinder head\b.{0,20}\b(?:warp|bow|flat)/, dimension: "length", low: 0, high: 3 * mm },
  { name: /\bstitch length\b/, dimension: "length", low: 0, high: 13 * mm },
  { name: /\b(?:hand|finger) (?:screw|tight)/, dimension: "torque", low: 0, high: 12 },
  {
    name: /\b(?:ambient|workshop|room|bench)\b.{0,12}temperature\b|\b(?:workshop|room|ambient)\b/,
    dimension: "temperature",
    low: celsius(-30),
    high: celsius(50),
  },
  {
    name: /\b(?:mains|supply) voltage\b/,
    dimension: "voltage",
    low: 1,
    high: 700,
    not: /\b(?:overhead|traction|transmission|kv|substation)\b/,
  },
];
