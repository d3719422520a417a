import { sayIn } from "../figures.ts";
import { type EntryRule, firstOf, type Remark } from "../rule.ts";
import type { Sight } from "../sight.ts";

/** Pressures of one vessel in an order in which they cannot stand. */
export const pressureOrder: EntryRule = {
  id: "pressure-order",
  title: "Working, test and relief pressures",
  explanation:
    "A boiler is tested above its working pressure, its valve lifts at it, and behind a regulator there is no more than before it. Boilers and vessels fall under local codes and their inspectors.",
  source: "common practice, no source; boilers and vessels fall under local codes and their inspectors",
  check: (sight) => firstOf(sight, vacuum, pressures),
  examples: [
    {
      says: "no vacuum deeper than the atmosphere",
      entry: {
        text: "34 inHg",
        what: "condenser vacuum",
        context: { related: [{ what: "barometer", text: "30.0 inHg" }] },
      },
      finds: 1,
    },
    {
      says: "26 inHg of vacuum",
      entry: {
        text: "26 inHg",
        what: "condenser vacuum",
        context: { related: [{ what: "barometer", text: "30.0 inHg" }] },
      },
      finds: 0,
    },
    {
      says: "a test below the working pressure",
      entry: {
        text: "60 psi",
        what: "hydraulic test pressure",
        context: { part: "boiler", related: [{ what: "working pressure", text: "80 psi" }] },
      },
      finds: 1,
    },
    {
      says: "a test above it",
      entry: {
        text: "160 psi",
        what: "hydraulic test pressure",
        context: { part: "boiler", related: [{ what: "working pressure", text: "80 psi" }] },
      },
      finds: 0,
    },
  ],
};

/** The highest reading of a barometer at sea level that was ever accepted is near 108.5 kPa: WMO archive (from memory). */
const mostAtmosphere = 108_600;

/** A vacuum is told from the atmosphere down, so it is no deeper than the barometer stands. */
function vacuum({ main, what, facts }: Sight): Remark[] {
  if (main?.dimension !== "pressure" || !/\b(?:vacuum|depression)\b/.test(what)) return [];
  if (/\b(?:absolute|abs|residual)\b/.test(`${what} ${main.raw.toLowerCase()}`)) return [];
  const barometer = facts.find(
    (fact) =>
      fact !== main && fact.dimension === "pressure" && /\b(?:barometer|atmospher\w+)\b/.test(fact.name),
  );
  const most = barometer?.si ?? mostAtmosphere;
  if (Math.max(Math.abs(main.si), Math.abs(main.quantity.siHigh ?? 0)) <= most * 1.001) return [];
  return [
    {
      severity: "wrong",
      found: `${what} ${main.raw}${barometer ? `, ${barometer.name} ${barometer.raw}` : ""}.`,
      expected: `At most ${sayIn(most, main.quantity, 3)}.`,
      source: "a vacuum is told from the pressure of the atmosphere down",
    },
  ];
}

/** A boiler's test is above its working pressure, and its valve lifts at it. */
function pressures(sight: Sight): Remark[] {
  const all = sight.facts.filter((fact) => fact.dimension === "pressure" && fact.from !== "fastener");
  const working = all.find(
    (fact) =>
      /\b(?:working|operating|w\.?p\.?|boiler pressure|red line)\b/.test(fact.name) &&
      !/test|valve/.test(fact.name),
  );
  const test = all.find(
    (fact) => /\b(?:test|hydraulic|hydrostatic|proof)\b/.test(fact.name) && fact !== working,
  );
  const valve = all.find(
    (fact) =>
      /\b(?:safety|relief|pop) valve\b|\bcut-?out\b|\b(?:receiver|max(?:imum)?) pressure\b|\blift(?:s|ed|ing)?\b|\bblow(?:s|ing)? off\b/.test(
        fact.name,
      ) && fact !== working,
  );
  const caution =
    "common practice, no source; boilers and vessels fall under local codes and their inspectors";
  if (
    working &&
    test &&
    /\b(?:hydraulic|hydrostatic|proof|shell|boiler|pressure test)\b/.test(
      test.name + sight.part + sight.what,
    ) &&
    test.si < working.si * 1.001 &&
    !/\bsteam test|leak\b/.test(test.name)
  )
    return [
      {
        severity: "doubtful",
        found: `${test.name} ${test.raw}, ${working.name} ${working.raw}.`,
        expected: "A test above the working pressure.",
        meant: "the two changed places?",
        source: caution,
      },
    ];
  if (
    working &&
    valve &&
    /\b(?:boiler|safety|steam|receiver|vessel|relief)\b/.test(sight.all) &&
    valve.si > working.si * 1.11
  )
    return [
      {
        severity: "doubtful",
        found: `${valve.name} ${valve.raw}, ${working.name} ${working.raw}.`,
        expected: "A safety valve that lifts at the working pressure.",
        source: caution,
      },
    ];
  if (working && valve && valve.si < working.si * 0.85 && /\b(?:boiler|safety|steam)\b/.test(sight.all))
    return [
      {
        severity: "doubtful",
        found: `${valve.name} ${valve.raw}, ${working.name} ${working.raw}.`,
        expected: "A safety valve that holds up to the working pressure.",
        source: caution,
      },
    ];
  const shown =
    sight.main?.dimension === "pressure" && sight.main !== valve && sight.main !== test ? sight.main : null;
  if (
    shown &&
    valve &&
    valve.from === "related" &&
    shown.si > valve.si * 1.15 &&
    !/\btest|proof|burst|crack/.test(sight.what)
  )
    return [
      {
        severity: "doubtful",
        found: `${sight.what} ${shown.raw}, ${valve.name} ${valve.raw}.`,
        expected: "A pressure below that at which the valve lifts.",
        source: caution,
      },
    ];
  const [inlet, outlet] = [
    all.find((fact) => /\b(?:inlet|supply|upstream|before)\b/.test(fact.name)),
    all.find((fact) => /\b(?:outlet|delivery|downstream|after)\b/.test(fact.name)),
  ];
  if (
    inlet &&
    outlet &&
    outlet.si > inlet.si * 1.02 &&
    /\b(?:governor|regulator|reducing valve|reducer|filter|strainer)\b/.test(sight.all)
  )
    return [
      {
        severity: "doubtful",
        found: `${inlet.name} ${inlet.raw}, ${outlet.name} ${outlet.raw}.`,
        expected: "No more pressure behind it than before it.",
        meant: "the two changed places?",
      },
    ];
  const [low, high] = [
    all.find((fact) => /\b(?:cut-?in)\b/.test(fact.name)),
    all.find((fact) => /\b(?:cut-?out)\b/.test(fact.name)),
  ];
  return low && high && low.si >= high.si
    ? [
        {
          severity: "wrong",
          found: `${low.name} ${low.raw}, ${high.name} ${high.raw}.`,
          expected: "A cut-in below the cut-out.",
        },
      ]
    : [];
}
