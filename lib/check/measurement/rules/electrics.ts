import { colourBands } from "#lib/reference/index.ts";
import { near, sayIn } from "../figures.ts";
import type { EntryRule, Remark } from "../rule.ts";
import { type Fact, relatedFacts, type Sight } from "../sight.ts";
import { decisionIn } from "../words.ts";

/** Volts, amperes, ohms and watts that do not belong together, ratings, and colour bands. */
export const electrics: EntryRule = {
  id: "electrical-mismatch",
  title: "Ohm's law, ratings and colour bands",
  explanation:
    "Two of volts, amperes, ohms and watts give the others. A resistor gets as hot as the power in it, a condenser stands the volts written on it and no more. Colour bands say one value. Work on mains and high tension is for those who are trained for it, by the rules of the place.",
  source: "Ohm's law (IEC 60050-131); IEC 60062 for colour bands",
  check: (sight) =>
    !sight.facts.some((fact) => electric.includes(fact.dimension))
      ? []
      : [
          ...bands(sight),
          ...law(sight),
          ...ratings(sight),
          ...aboveSupply(sight),
          ...cells(sight),
          ...transformer(sight),
          ...series(sight),
        ].slice(0, 1),
  examples: [
    {
      says: "brown, black, orange is 10 kΩ",
      entry: { text: "1 kΩ", what: "bias resistor", context: { spec: "bands brown, black, orange" } },
      finds: 1,
    },
    {
      says: "brown, black, green is 1 MΩ",
      entry: { text: "1 MΩ", what: "grid leak", context: { spec: "bands brown, black, green" } },
      finds: 0,
    },
    {
      says: "a lamp of 12 V and 21 W takes 1.75 A",
      entry: {
        text: "17.5 A",
        what: "lamp current",
        context: {
          related: [
            { what: "supply", text: "12 V" },
            { what: "lamp", text: "21 W" },
          ],
        },
      },
      finds: 1,
    },
    {
      says: "measured, and near enough",
      entry: {
        text: "1.7 A",
        what: "lamp current",
        context: {
          related: [
            { what: "supply", text: "12 V" },
            { what: "lamp", text: "21 W" },
          ],
        },
      },
      finds: 0,
    },
    {
      says: "a cold lamp has a tenth of its resistance",
      entry: {
        text: "0.6 Ω",
        what: "lamp resistance, cold",
        context: {
          related: [
            { what: "supply", text: "12 V" },
            { what: "lamp", text: "21 W" },
          ],
        },
      },
      finds: 0,
    },
    {
      says: "250 V on a condenser for 160 V",
      entry: {
        text: "250 V",
        what: "voltage across the condenser",
        context: { related: [{ what: "condenser rating", text: "160 V" }] },
      },
      finds: 1,
    },
  ],
};

const electric = ["voltage", "current", "resistance", "power", "capacitance"];
const allBands =
  /\b(?:black|brown|red|orange|yellow|green|blue|violet|purple|gr[ae]y|white)\b[\s,/-]+(?:and )?\b(?:black|brown|red|orange|yellow|green|blue|violet|purple|gr[ae]y|white)\b[\s,/-]+(?:and )?\b(?:black|brown|red|orange|yellow|green|blue|violet|purple|gr[ae]y|white|gold|silver)\b/;

function bands({ main, entry }: Sight): Remark[] {
  const { spec, related = [], part } = entry.context;
  const told = [spec, part, entry.what, ...related.flatMap((one) => [one.text, one.what]), entry.text].find(
    (text) => text !== undefined && allBands.test(text.toLowerCase()),
  );
  if (!told || main?.dimension !== "resistance") return [];
  const own =
    told === entry.text && /[(=]/.test(entry.text)
      ? entry.text.slice(
          entry.text.search(/[a-z]*(?:black|brown|red|orange|yellow|green|blue|violet|gr[ae]y|white)/i),
        )
      : told;
  const code = colourBands(own.replace(/\([^)]*\d[^)]*\)/g, ""));
  if (!code) return [];
  const nominal = !/\b(?:measured|meter|reads|reading|tested|actual|found)\b/.test(
    `${entry.what} ${entry.context.instrument ?? ""}`.toLowerCase(),
  );
  const room = nominal ? 0.01 : Math.max(code.tolerance / 100, 0.2) * 1.6;
  if (near(main.si, code.ohms, room)) return [];
  const decided = decisionIn((entry.context.verdict ?? "").toLowerCase());
  if (!nominal && decided === "rejected") return [];
  const should = sayOhms(code.ohms);
  return [
    {
      severity: nominal || main.si / code.ohms > 5 || main.si / code.ohms < 0.2 ? "wrong" : "doubtful",
      found: `${main.raw}; the bands are ${own.trim()}.`,
      expected: should,
      meant: `${should}?`,
      source: "IEC 60062",
    },
  ];
}

const sayOhms = (ohms: number): string =>
  ohms >= 1e6 ? `${ohms / 1e6} MΩ` : ohms >= 1e3 ? `${ohms / 1e3} kΩ` : `${ohms} Ω`;

const notOfTheLoad =
  /\b(?:limit|rating|rated|max(?:imum)?|fuse|working|insulation|cold|leak\w*|no[- ]load|test|megger|spec|peak|breakdown|tolerance|capacity|charger|open circuit|ripple|wattage of)\b/;

/** The volts, amperes, ohms and watts of one load. */
function law(sight: Sight): Remark[] {
  const values = sight.facts.filter(
    (fact) =>
      fact.from !== "limit" &&
      fact.from !== "spec" &&
      !isOwnRating(fact, sight) &&
      !notOfTheLoad.test(fact.label) &&
      !fact.quantity.high,
  );
  const only = (dimension: string): Fact | undefined => {
    const found = values.filter((fact) => fact.dimension === dimension);
    return found.length === 1 ? found[0] : undefined;
  };
  const [v, i, r, p] = [only("voltage"), only("current"), only("resistance"), only("power")];
  if (sight.main && ![v, i, r, p].includes(sight.main)) return [];
  const turning =
    /\b(?:motor|armature|rotor|starter|transformer|choke|solenoid|relay|contactor|pump|fan|generator|dynamo|alternator|horsepower)\b/.test(
      sight.all,
    );
  const alternating =
    turning ||
    /\b(?:ac|a\.c\.|hz|coil|winding|primary|secondary|reactance|impedance|loudspeaker|speaker)\b/.test(
      sight.all,
    );
  const lamp = /\b(?:lamp|bulb|filament|heater|valve)\b/.test(sight.all);
  const ohmsApart = alternating ? 6 : lamp ? 0 : 1.35;
  const wattsUp = 1.3;
  const wattsDown = turning || alternating ? 0.25 : 0.72;
  if (v && i && p && i.si > 0 && p.si > 0 && v.si > 0) {
    const ratio = p.si / (v.si * i.si);
    if (ratio > wattsUp || ratio < wattsDown)
      return [
        lawRemark(sight, [v, i, p], { voltage: p.si / i.si, current: p.si / v.si, power: v.si * i.si }),
      ];
  }
  if (ohmsApart === 0) return [];
  if (
    v &&
    i &&
    r &&
    i.si > 0 &&
    r.si > 0 &&
    v.si > 0 &&
    apart(v.si / (i.si * r.si), ohmsApart) &&
    !(turning && v.si > i.si * r.si)
  )
    return [
      lawRemark(sight, [v, i, r], { voltage: i.si * r.si, current: v.si / r.si, resistance: v.si / i.si }),
    ];
  if (
    v &&
    r &&
    p &&
    !i &&
    r.si > 0 &&
    p.si > 0 &&
    apart((v.si * v.si) / (r.si * p.si), ohmsApart) &&
    !turning
  )
    return [
      lawRemark(sight, [v, r, p], {
        voltage: Math.sqrt(p.si * r.si),
        resistance: (v.si * v.si) / p.si,
        power: (v.si * v.si) / r.si,
      }),
    ];
  if (
    i &&
    r &&
    p &&
    !v &&
    r.si > 0 &&
    p.si > 0 &&
    i.si > 0 &&
    apart((i.si * i.si * r.si) / p.si, ohmsApart) &&
    !turning
  )
    return [
      lawRemark(sight, [i, r, p], {
        current: Math.sqrt(p.si / r.si),
        resistance: p.si / i.si ** 2,
        power: i.si ** 2 * r.si,
      }),
    ];
  return [];
}

/** "10 kΩ, 2 W": what a resistor is made for, not what it turns to heat. */
const isOwnRating = (fact: Fact, { main, facts }: Sight): boolean =>
  fact.from === "text" &&
  fact.dimension === "power" &&
  main?.dimension === "resistance" &&
  facts.some((one) => one.from === "text" && one.dimension === "resistance");

const apart = (ratio: number, most: number): boolean => ratio > most || ratio < 1 / most;

function lawRemark({ main }: Sight, values: Fact[], should: Partial<Record<string, number>>): Remark {
  const target = values.find((fact) => fact === main) ?? values[0];
  const expected = target ? (should[target.dimension] ?? 0) : 0;
  return {
    severity: "wrong",
    found: values.map((fact) => `${fact.name} ${fact.raw}`).join(", "),
    expected: target ? `${target.name}: ${sayIn(expected, target.quantity, 3)}.` : "",
    ...(target ? { meant: `${sayIn(expected, target.quantity, 3)}?` } : {}),
    source: "Ohm's law (IEC 60050-131)",
  };
}

/** What a part is rated for against what it gets. */
function ratings(sight: Sight): Remark[] {
  if (decisionIn(`${sight.verdict} ${sight.remarks}`) === "rejected") return [];
  const values = sight.facts.filter((fact) => fact.from !== "fastener");
  for (const rated of values.filter((fact) => isRating(fact, sight))) {
    const real = values.find(
      (fact) =>
        fact !== rated &&
        fact.dimension === rated.dimension &&
        !isRating(fact, sight) &&
        (fact.from === "text" || rated.from === "text"),
    );
    if (real && real.si > rated.si * 1.02 && ["voltage", "current", "power"].includes(rated.dimension)) {
      const fuse = /\bfuse\b/.test(`${rated.name} ${rated.label}`);
      return [
        {
          severity: fuse ? "doubtful" : "wrong",
          found: `${real.name} ${real.raw}, ${rated.name} ${rated.raw}.`,
          expected: `A rating above ${real.raw}.`,
        },
      ];
    }
    if (rated.dimension === "power") {
      const [v, i, r] = ["voltage", "current", "resistance"].map((one) =>
        values.find((fact) => fact.dimension === one && !/rating|rated/.test(fact.name)),
      );
      const heat = i && r ? i.si ** 2 * r.si : v && r && r.si > 0 ? v.si ** 2 / r.si : null;
      if (
        heat !== null &&
        heat > rated.si * 1.05 &&
        /\bresist|dropper|ballast|cathode|anode|bias|bleeder|load\b/.test(sight.all)
      )
        return [
          {
            severity: "wrong",
            found: `${rated.raw}, and ${sayIn(heat, rated.quantity, 3)} are turned to heat in it.`,
            expected: `More than ${sayIn(heat, rated.quantity, 3)}.`,
            source: "Ohm's law (IEC 60050-131)",
          },
        ];
    }
  }
  return [];
}

const isRating = (fact: Fact, sight: Sight): boolean =>
  isOwnRating(fact, sight) ||
  (/\b(?:rating|rated|max(?:imum)?|working voltage|wkg|fuse|breaker|wattage|limit|capacity of (?:cable|flex|switch)|withstand)\b/.test(
    fact.label,
  ) &&
    !/\b(?:blow|speed|output|supply)\b/.test(fact.name)) ||
  (fact.from === "limit" && fact.dimension !== "length") ||
  (fact.from === "text" && /\b(?:rating|wattage|working voltage|fuse)\b/.test(sight.what));

/** What a valve's electrode or a lamp gets is no more than the supply it hangs on. */
function aboveSupply({ main, what, all, facts }: Sight): Remark[] {
  if (
    main?.dimension !== "voltage" ||
    !/\b(?:anode|plate|screen|across (?:the )?(?:lamp|resistor)|lamp|dropp(?:ed|er))\b/.test(what)
  )
    return [];
  if (/\b(?:transformer|coil|choke|peak|ac|inductive|charging|generator|doubler|line output)\b/.test(all))
    return [];
  const supply = facts.find(
    (fact) =>
      fact.from === "related" &&
      fact.dimension === "voltage" &&
      /\b(?:supply|ht|h\.t\.|battery|rail|b\+)/.test(fact.name),
  );
  if (!supply || main.si <= supply.si * 1.03) return [];
  return [
    {
      severity: "doubtful",
      found: `${what} ${main.raw}, ${supply.name} ${supply.raw}.`,
      expected: `${supply.raw} at the most.`,
    },
  ];
}

/** A lead-acid battery has two volts a cell. */
function cells(sight: Sight): Remark[] {
  if (
    !/\b(?:lead[- ]acid|battery|accumulator)\b/.test(sight.all) ||
    /\b(?:nickel|nife|dry|lithium|zinc|alkaline|leclanch)/.test(sight.all)
  )
    return [];
  const count =
    sight.facts.find(
      (fact) => /\bcells?\b/.test(fact.label) && (fact.dimension === "count" || fact.dimension === "number"),
    ) ?? sight.facts.find((fact) => fact.dimension === "count" && /cell/.test(fact.quantity.unit));
  const volts = sight.facts.filter((fact) => fact.dimension === "voltage");
  const [v] = volts;
  if (!count || !v || volts.length !== 1 || /\bper cell|each|a cell\b/.test(sight.all)) return [];
  const each = v.si / count.si;
  if (each > 1.5 && each < 2.8) return [];
  return [
    {
      severity: "doubtful",
      found: `${v.raw} from ${count.si} cells.`,
      expected: `About ${sayIn(count.si * 2, v.quantity, 3)}: two volts a cell.`,
      source: "common practice, no source: nominal voltage of a lead-acid cell",
    },
  ];
}

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

/** Resistors in series add up; a resistor's nominal value is of a series. */
function series(sight: Sight): Remark[] {
  const { main, what } = sight;
  if (main?.dimension !== "resistance" || !/\bseries\b/.test(sight.all) || /\bE\d+ series\b/i.test(sight.all))
    return [];
  const parts = relatedFacts(sight).filter((fact) => fact.dimension === "resistance");
  const sum = parts.reduce((all, fact) => all + fact.si, 0);
  if (
    parts.length < 2 ||
    near(sum, main.si, 0.06) ||
    !/\b(?:total|series|combined|chain|string|overall)\b/.test(what)
  )
    return [];
  return [
    {
      severity: "wrong",
      found: `${main.raw} for ${parts.map((fact) => fact.raw).join(" and ")} in series.`,
      expected: sayIn(sum, main.quantity),
      meant: `${sayIn(sum, main.quantity)}?`,
      source: "Kirchhoff's laws",
    },
  ];
}
