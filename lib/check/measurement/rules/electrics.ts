import { near, sayIn } from "../figures.ts";
import { type EntryRule, firstOf, type Remark } from "../rule.ts";
import { type Fact, relatedFacts, type Sight } from "../sight.ts";
import { isOwnRating } from "./electrical-ratings.ts";

/** Volts, amperes, ohms and watts that do not belong together. */
export const electrics: EntryRule = {
  id: "electrical-mismatch",
  title: "Ohm's law",
  explanation:
    "Two of volts, amperes, ohms and watts give the others. Resistors in a row add up. Work on mains and high tension is for those who are trained for it, by the rules of the place.",
  source: "Ohm's law (IEC 60050-131)",
  check: (sight) =>
    !sight.facts.some((fact) => electric.includes(fact.dimension)) ? [] : firstOf(sight, law, series),
  examples: [
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
      says: "hot, it follows the law",
      entry: {
        text: "0.5 A",
        what: "lamp circuit current",
        context: {
          related: [
            { what: "battery", text: "12 V" },
            { what: "resistance, hot", text: "6 Ω" },
          ],
        },
      },
      finds: 1,
    },
    {
      says: "a cathode's current by the volts across its resistor",
      entry: {
        text: "10.8 mA",
        what: "cathode current",
        context: {
          part: "output valve",
          related: [
            { what: "cathode resistor", text: "100 Ω" },
            { what: "voltage across it", text: "10.8 V" },
          ],
        },
      },
      finds: 1,
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
  ],
};

const electric = ["voltage", "current", "resistance", "power", "capacitance"];

const notOfTheLoad =
  /\b(?:limit|rating|rated|max(?:imum)?|fuse|working|insulation|cold|leak\w*|no[- ]load|test|megger|spec|peak|breakdown|tolerance|capacity|charger|open circuit|ripple|wattage of)\b/;

/** The volts, amperes, ohms and watts of one load. */
function law(sight: Sight): Remark[] {
  const values = sight.facts.filter(
    (fact) =>
      fact.from !== "limit" &&
      fact.from !== "spec" &&
      !isOwnRating(fact, sight) &&
      !notOfTheLoad.test(fact.label.replace(/\brated (?=current|voltage|output|power|load)/, "")) &&
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
  const hot = r !== undefined && /\b(?:hot|lit|working|running|glowing)\b/.test(r.label);
  const fixed = r !== undefined && /\b(?:resistor|shunt|dropper|ballast)\b/.test(r.label);
  const ohmsApart = alternating && !fixed ? 6 : lamp && !hot && !fixed ? 0 : 1.35;
  const wattsUp = /\b(?:three|3)[- ]phase\b|\ba line\b/.test(sight.all) ? 1.3 * Math.sqrt(3) : 1.3;
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

/** Resistors in series add up; a resistor's nominal value is of a series. */
function series(sight: Sight): Remark[] {
  const { main, what } = sight;
  if (/\b(?:one|each|first|second) of\b/.test(what)) return [];
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
