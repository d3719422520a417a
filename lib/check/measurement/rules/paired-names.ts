import { productNames } from "../product-names.ts";
import type { EntryRule, Remark } from "../rule.ts";
import type { Fact, Sight } from "../sight.ts";

/** Two values of which the name of the one says that it is the smaller. */
export const pairedNames: EntryRule = {
  id: "paired-names-swapped",
  title: "Two names, and the smaller figure at the wrong one",
  explanation:
    "A pressure switch starts its motor at the lower pressure and stops it at the higher; a valve closes again below where it lifted; the small end of a taper is smaller than the large one. Where the figures stand the other way about, they changed places.",
  source: "arithmetic: what the two names mean",
  check: (sight) => {
    const named = namesOf(sight);
    if (named.length < 2) return [];
    for (const row of rows) {
      const remark = swapped(row.together ? named.filter(({ fact }) => fact.from === "text") : named, row);
      if (remark && !row.not?.test(sight.all) && row.only?.test(sight.all) !== false) return [remark];
    }
    return [];
  },
  examples: [
    {
      says: "a motor that starts above where it stops",
      entry: { text: "cut in 90 psi, cut out 70 psi", what: "pressure switch" },
      finds: 1,
    },
    { says: "and below it", entry: { text: "cut in 70 psi, cut out 90 psi", what: "switch" }, finds: 0 },
    {
      says: "a small end that is the larger",
      entry: { text: "5/16 x 1/4 in (small end x large end)", what: "taper pin ends" },
      finds: 1,
    },
    {
      says: "a small end that is the smaller",
      entry: { text: "1/4 x 5/16 in (small end x large end)", what: "taper pin ends" },
      finds: 0,
    },
    {
      says: "a valve that closes above where it lifts",
      entry: {
        text: "104 psi",
        what: "safety valve reseats",
        context: { related: [{ what: "safety valve lifts", text: "100 psi" }] },
      },
      finds: 1,
    },
    {
      says: "a motor that takes less when it works",
      entry: { text: "full load 0.8 A, no load 2.4 A", what: "motor current" },
      finds: 1,
    },
    {
      says: "a blade as thick as it should be wide",
      entry: { text: "3,300 x 0.6 x 16 mm (length x width x thickness)", what: "saw band" },
      finds: 1,
    },
    {
      says: "a blade",
      entry: { text: "3,300 x 16 x 0.6 mm (length x width x thickness)", what: "saw band" },
      finds: 0,
    },
    {
      says: "steam fills a larger cylinder when it has expanded",
      entry: {
        text: "12 in",
        what: "high-pressure cylinder bore",
        context: { related: [{ what: "low-pressure cylinder bore", text: "7 in" }] },
      },
      finds: 1,
    },
    {
      says: "a relay holds at less than it needs to pull in",
      entry: { text: "pulls in 9.0 V, drops out 3.5 V", what: "relay" },
      finds: 0,
    },
  ],
};

interface Pair {
  small: RegExp;
  large: RegExp;
  dimensions: readonly string[];
  not?: RegExp;
  /** Only where this is said. */
  only?: RegExp;
  /** Only of values that stand in one text, as the sizes of one thing. */
  together?: true;
}

const lengths = ["length", "number"];
const rows: readonly Pair[] = [
  {
    small:
      /\bcuts?[- ]?in\b|\b(?:motor |pump |compressor )?(?:starts?|kicks in|comes on|loads) at\b|\bloads\b/,
    large:
      /\bcuts?[- ]?out\b|\b(?:motor |pump |compressor )?(?:stops?|kicks out|goes off|unloads) at\b|\bunloads\b/,
    dimensions: ["pressure"],
    not: /\bvacuum|depression\b/,
  },
  {
    small:
      /\b(?:re-?seats?|re-?closes?|shuts again|closes again|blow-?down to|seats again|shuts at|closes at)\b/,
    large: /\b(?:lifts?|pops?|opens?|blows? off)\b/,
    dimensions: ["pressure"],
    not: /\b(?:vacuum|check|non-?return|switch|contacts?|thermostat)\b/,
    only: /\bvalve|boiler|relief|safety|receiver\b/,
  },
  {
    small: /\b(?:(?:starts?|begins?) (?:to open|opening)|cracks open|first opens)\b/,
    large: /\b(?:fully open|wide open|full open|full lift)\b/,
    dimensions: ["temperature", "pressure"],
  },
  {
    small: /\b(?:drops? out|releases?|lets go|drop-?out|falls? off)\b/,
    large: /\b(?:pulls? in|operates?|picks? up|pull-?in|pick-?up)\b/,
    dimensions: ["voltage", "current"],
    not: /\bovervoltage|undervoltage\b/,
  },
  {
    small: /\b(?:cuts?[- ]?out|opens|drops? off)\b/,
    large: /\b(?:cuts?[- ]?in|closes)\b/,
    dimensions: ["voltage"],
    not: /\b(?:charger|thermostat|protection|contactor|breaker)\b/,
  },
  {
    small: /\b(?:no[- ]load|unloaded|running light|idling)\b/,
    large: /\b(?:full[- ]load|on load|loaded|under load|stalled|starting)\b/,
    dimensions: ["current", "power"],
  },
  {
    small: /\b(?:full[- ]load|on load|(?<!un)loaded|under load)\b/,
    large: /\b(?:no[- ]load|off load|unloaded|running light|open[- ]circuit)\b/,
    dimensions: ["voltage", "rotational speed"],
    not: /\b(?:regulat\w*|compound|governor|governed)\b/,
  },
  {
    small: /\bsecondary\b|\boutput\b/,
    large: /\bprimary\b|\binput\b/,
    dimensions: ["voltage"],
    only: /\bstep[- ]?down\b|\b(?:bell|heater|filament) transformer\b/,
  },
  {
    small: /\bprimary\b|\binput\b/,
    large: /\bsecondary\b|\boutput\b/,
    dimensions: ["voltage"],
    only: /\bstep[- ]?up\b|\bignition coil\b|\bneon transformer\b/,
  },
  {
    small: /\b(?:idl(?:e|es|ing)|tick-?over|slow(?:est)?(?: running)?)\b/,
    large: /\b(?:full (?:speed|throttle)|max(?:imum)?|governed|flat out|fast(?:est)?|top speed)\b/,
    dimensions: ["rotational speed"],
  },
  {
    small: /\b(?:fully retarded|full retard|retarded|static)\b/,
    large: /\b(?:fully advanced|full advance|advanced)\b/,
    dimensions: ["angle"],
    not: /\b(?:after|atdc)\b/,
  },
  {
    small: /\b(?:tare|empty|dry|unladen|dry weight|net)\b/,
    large: /\b(?:gross|full|laden|loaded|filled|wet weight)\b/,
    dimensions: ["mass"],
  },
  {
    small:
      /\b(?:small(?:er)?|thin(?:ner)?|narrow(?:er)?|little|lesser|min(?:or)?)(?:[- ](?:end|bore|dia\w*|side|flange|step|tip))?\b/,
    large:
      /\b(?:large(?:r)?|thick(?:er)?|wide(?:r)?|big(?:ger)?|great(?:er)?|maj(?:or)?)(?:[- ](?:end|bore|dia\w*|side|flange|step|tip))?\b/,
    dimensions: lengths,
    not: /\b(?:connecting|con)[- ]?rod|\bbearing|clearance|\bplay\b|\bgap\b|wear|\bbrush\b|\baperture\b/,
  },
  {
    small: /\b(?:thick(?:ness)?|gauge)\b/,
    large: /\b(?:width|wide|height|high|length|long|face|diameter|dia|o\.?d)\b/,
    dimensions: lengths,
    together: true,
    not: /\b(?:wall|tooth|gear|nut|coin)\b/,
  },
  {
    small: /\b(?:width|wide|breadth)\b/,
    large: /\b(?:length|long)\b/,
    dimensions: lengths,
    together: true,
    only: /\b(?:belt|blade|band|mainspring|strap|tape|strip|chain|ribbon|film|bar|strop|lath|slat)\b/,
  },
  {
    small: /\b(?:diameter|dia|thick(?:ness)?)\b/,
    large: /\b(?:length|long)\b/,
    dimensions: lengths,
    together: true,
    only: /\b(?:spoke|bar|rod|tube|pipe|needle|shaft|lead ?screw|wire|drill|reamer|rope|cable|spindle|mandrel|stud|push ?rod)\b/,
  },
  {
    small: /^(?:shaft|spindle|journal|axle|i\.?d|bore|inside|inner)(?: dia\w*)?$/,
    large: /^(?:housing|case|recess|o\.?d|outside|outer)(?: (?:bore|dia\w*))?$/,
    dimensions: lengths,
    together: true,
  },
  {
    small: /\bwall\b/,
    large: /\b(?:o\.?d|outside|outer|dia\w*)\b/,
    dimensions: lengths,
    together: true,
  },
  {
    small: /\b(?:section|cord|cross[- ]section)\b/,
    large: /\b(?:inside|inner|i\.?d|bore|outside|o\.?d)\b/,
    dimensions: lengths,
    only: /\bo-?ring|seal ring|cord ring|tyre\b/,
  },
  {
    small: /\b(?:power|magnification)\b/,
    large: /\b(?:objective|object glass|aperture|o\.?g)\b/,
    dimensions: lengths,
    only: /\b(?:telescope|finder|binoculars?|field glass(?:es)?|spyglass|monocular|sight)\b/,
  },
  {
    small: /\bpitch\b/,
    large: /\b(?:diameter|dia|major)\b/,
    dimensions: lengths,
    together: true,
    only: /\b(?:thread|screw|bolt|stud|nut|tap)\b/,
    not: /\bpitch (?:circle|dia\w*)\b|\bspring\b|\btpi\b|\blead\b/,
  },
  {
    small: /\b(?:width|wide)\b/,
    large: /\bpitch\b/,
    dimensions: lengths,
    together: true,
    only: /\bchain\b/,
  },
  {
    small: /\b(?:height|high|depth|thick(?:ness)?)\b/,
    large: /\b(?:width|wide)\b/,
    dimensions: lengths,
    together: true,
    only: /\b(?:parallel|feather|sunk|gib|taper|flywheel|pulley|hub) key\b|\bkey steel\b/,
  },
  {
    small: /\b(?:swing|centre height|height of centres)\b/,
    large: /\bbetween centres\b/,
    dimensions: lengths,
  },
  {
    small: /\b(?:h\.?p|high[- ]pressure)\b/,
    large: /\b(?:l\.?p|low[- ]pressure)\b/,
    dimensions: ["length"],
    only: /\b(?:cylinder|bore|piston)\b/,
    not: /\b(?:clearance|gap|wear|stroke|rod|length|thick\w*|wall|pipe|turbine)\b/,
  },
  {
    small: /\b(?:suction|inlet|intake)\b/,
    large: /\b(?:delivery|discharge|outlet)\b/,
    dimensions: ["pressure"],
    only: /\b(?:pump|compressor)\b/,
  },
  {
    small: /\b(?:first|1st|low[- ]pressure) stage\b/,
    large: /\b(?:second|2nd|high[- ]pressure) stage\b/,
    dimensions: ["pressure"],
    only: /\bcompressor\b/,
  },
  {
    small: /\bcold\b/,
    large: /\bhot\b/,
    dimensions: ["resistance"],
    only: /\b(?:winding|field|coil|armature|lamp|filament|bulb|heater|element)\b/,
    not: /\b(?:insulation|carbon|thermistor|ntc)\b/,
  },
  {
    small: /\bwet[- ]bulb\b|\bdew point\b/,
    large: /\bdry[- ]bulb\b|\bair\b/,
    dimensions: ["temperature"],
  },
  {
    small: /\bflash[- ]?point\b/,
    large: /\bfire[- ]?point\b/,
    dimensions: ["temperature"],
  },
  {
    small: /\b(?:solidus|melts?|melting)\b/,
    large: /\b(?:liquidus|flows?|boils?|boiling)\b/,
    dimensions: ["temperature"],
  },
  {
    small: /\btemper(?:ed|ing)?\b/,
    large: /\b(?:harden(?:ed|ing)?|quench(?:ed|ing)?)\b/,
    dimensions: ["temperature"],
    not: /\bquench(?:ing)? (?:oil|bath|water)\b/,
  },
  {
    small: /\b(?:max(?:imum)? aperture|wide open|full aperture|largest (?:stop|aperture))\b/,
    large: /\b(?:min(?:imum)? aperture|stopped down|smallest (?:stop|aperture))\b/,
    dimensions: ["number"],
  },
  {
    small: /\bpinion\b/,
    large: /\b(?:wheel|bull gear|crown(?: ?wheel)?|rack gear)\b/,
    dimensions: ["count", "number"],
    not: /\b(?:turns?|rpm|speed|ratio|train|each|equal)\b/,
  },
  {
    small: /\b(?:core|root|throat|shank|neck|waist|minor|pilot|journal|spigot|stem)(?: dia\w*)?$/,
    large: /\b(?:crest|tip|mouth|head|flange|collar|major|outside|overall|rim)(?: dia\w*)?$/,
    dimensions: lengths,
    not: /\b(?:length|thick\w*|width|height|depth|clearance|radius|countersunk|radii)\b/,
  },
  {
    small: /\byield(?: (?:stress|strength|point|load))?\b|\bworking load\b|\bproof (?:load|stress)\b/,
    large: /\b(?:ultimate|tensile|breaking)(?: (?:stress|strength|load))?\b/,
    dimensions: ["pressure", "force", "mass"],
  },
  {
    small: /\b(?:inner (?:ring|race|cone)|bore)\b/,
    large: /\b(?:outer (?:ring|race|cup))\b/,
    dimensions: lengths,
    not: /\b(?:thick\w*|width|height|clearance|runout|run-out|wear|fit|land)\b/,
  },
];

interface Named {
  name: string;
  fact: Fact;
}

/** The values of the text by their own names; where there is one alone, it and the related ones by their labels. */
function namesOf(sight: Sight): Named[] {
  const { facts, what, main } = sight;
  const own = facts.filter((fact) => fact.from === "text");
  const names = productNames(sight);
  if (names) return own.map((fact, i) => ({ fact, name: (names[i] ?? "").toLowerCase() }));
  if (own.length > 1) return own.map((fact) => ({ fact, name: fact.label.slice(fact.name.length).trim() }));
  if (!main) return [];
  const others = facts.filter((fact) => fact.from === "related" && fact.dimension === main.dimension);
  return others.length === 0
    ? []
    : [{ fact: main, name: what }, ...others.map((fact) => ({ fact, name: fact.name }))];
}

function swapped(named: readonly Named[], pair: Pair): Remark | null {
  for (const less of named)
    for (const more of named)
      if (apart(less, more, pair) && less.fact.si > more.fact.si * 1.0001) return remark(less, more);
  return null;
}

/** Whether the one is named as the smaller and the other as the larger of the same thing. */
const apart = (less: Named, more: Named, { small, large, dimensions }: Pair): boolean =>
  fits(less.fact, dimensions) &&
  alike(more.fact, less.fact) &&
  small.test(less.name) &&
  !large.test(less.name) &&
  large.test(more.name) &&
  !small.test(more.name) &&
  alikeNamed(less.name.replace(small, ""), more.name.replace(large, ""));

const remark = (less: Named, more: Named): Remark => ({
  severity: "wrong",
  found: `${less.name}: ${less.fact.raw}${more.fact.raw === less.fact.raw ? "" : `, ${more.name}: ${more.fact.raw}`}: the first is the larger.`,
  expected: `${less.name} below ${more.name}.`,
  meant: "the two changed places?",
});

const fits = ({ dimension, quantity, si }: Fact, dimensions: readonly string[]): boolean =>
  dimensions.includes(dimension) && !quantity.terms && si > 0;
const alike = (one: Fact, other: Fact): boolean =>
  one !== other && one.dimension === other.dimension && !one.quantity.terms;

/** What is left of two names tells of one thing, or of nothing. */
function alikeNamed(one: string, other: string): boolean {
  const words = (name: string) => name.match(/[a-z]{3,}/g)?.filter((word) => !plainWord.test(word)) ?? [];
  const [a, b] = [words(one), words(other)];
  return a.length === 0 || b.length === 0 || a.some((word) => b.includes(word));
}
const plainWord =
  /^(?:the|and|for|diameter|dia|size|pressure|voltage|current|temperature|speed|weight|end|with|from|motor)$/;
