import { near, sayIn } from "../figures.ts";
import { type EntryRule, firstOf, type Remark } from "../rule.ts";
import { type Fact, relatedFacts, type Sight } from "../sight.ts";
import { isTeeth } from "../wheels.ts";

/** A gear's size and centres against its teeth and module. */
export const wheelSize: EntryRule = {
  id: "wheel-size",
  title: "Sizes of gears",
  explanation:
    "A gear's pitch diameter is its teeth by its module; outside it is two modules more; two gears that mesh stand half of both pitch diameters apart.",
  source: "ISO 54 and ISO 1122-1 (from memory): pitch diameter is module by teeth",
  check: (sight) => firstOf(sight, centres, pitchCircle, teethOf),
  examples: [
    {
      says: "a centre distance is half the teeth by the module",
      entry: {
        text: "80 mm",
        what: "centre distance",
        context: {
          related: [
            { what: "pinion", text: "20 teeth" },
            { what: "wheel", text: "60 teeth" },
            { what: "module", text: "2 mm" },
          ],
        },
      },
      finds: 0,
    },
    {
      says: "and not all of them",
      entry: {
        text: "160 mm",
        what: "centre distance",
        context: {
          related: [
            { what: "pinion", text: "20 teeth" },
            { what: "wheel", text: "60 teeth" },
            { what: "module", text: "2 mm" },
          ],
        },
      },
      finds: 1,
    },
    {
      says: "32 mm of module 2 have 16 teeth",
      entry: {
        text: "12 teeth",
        what: "teeth on the pinion",
        context: { related: [{ what: "pinion", text: "module 2, pitch diameter 32 mm" }] },
      },
      finds: 1,
    },
    {
      says: "a blank is two modules more than its teeth by the module",
      entry: { text: "100 mm", what: "gear blank outside diameter", context: { spec: "module 2, 48 teeth" } },
      finds: 0,
    },
    {
      says: "the pitch diameter is not the blank's",
      entry: { text: "96 mm", what: "gear blank outside diameter", context: { spec: "module 2, 48 teeth" } },
      finds: 1,
    },
  ],
};

/** Module or diametral pitch, in mm. */
function moduleOf(sight: Sight): number | null {
  const values = [...relatedFacts(sight), ...sight.facts.filter((fact) => fact.from === "spec")];
  const module = values.find(
    (fact) =>
      /\bmodule\b|\bmod\b/.test(fact.label) && (fact.dimension === "number" || fact.dimension === "length"),
  );
  if (module) return module.dimension === "length" ? module.si * 1000 : module.si;
  const dp = values.find(
    (fact) =>
      /\bdiametral pitch\b|\bdp\b|\bd\.p\.?/.test(`${fact.label} ${fact.raw.toLowerCase()}`) &&
      fact.dimension === "number",
  );
  if (dp && dp.si > 0) return 25.4 / dp.si;
  const written = /\b(?:module|mod)\.? ?(\d+(?:\.\d+)?)|\bm ?= ?(\d+(?:\.\d+)?)/.exec(sight.all);
  if (written) return Number(written[1] ?? written[2]);
  const pitch = /\b(\d{1,2}) ?d\.?p\b|\bd\.?p\.? ?(\d{1,2})\b/.exec(sight.all);
  return pitch ? 25.4 / Number(pitch[1] ?? pitch[2]) : null;
}

function centres(sight: Sight): Remark[] {
  const { main, what } = sight;
  if (
    main?.dimension !== "length" ||
    !/\b(?:centre|center|centres|centers) ?(?:distance|to centre|to center|spacing)?\b/.test(what)
  )
    return [];
  const module = moduleOf(sight);
  const teeth = relatedFacts(sight).filter(isTeeth);
  const [a, b] = teeth;
  if (module !== null && a && b && teeth.length === 2)
    return lengthOff(main, (module * (a.si + b.si)) / 2, "half the teeth of both, by the module");
  const circles = relatedFacts(sight).filter(
    (fact) =>
      fact.dimension === "length" &&
      /\bpitch (?:circle )?(?:diameter|dia)|\bpcd\b|\bpitch circle\b/.test(fact.label),
  );
  const [x, y] = circles;
  return x && y && circles.length === 2
    ? lengthOff(main, (x.si + y.si) * 500, "half of both pitch diameters")
    : [];
}

/** Pitch diameter and outside diameter of a spur gear, from teeth and module. */
function pitchCircle(sight: Sight): Remark[] {
  const { main, what } = sight;
  if (main?.dimension !== "length") return [];
  const teeth = relatedFacts(sight).filter(isTeeth);
  const only = teeth.length === 0 ? toothCount(sight) : teeth.length === 1 ? (teeth[0]?.si ?? null) : null;
  if (only === null) return [];
  const module = moduleOf(sight);
  if (
    module === null ||
    /\bhelical|bevel|worm|long addendum|short addendum|stub|corrected|profile[- ]shift|enlarged\b/.test(
      sight.all,
    )
  )
    return [];
  if (/\bpitch (?:circle )?dia|\bpcd\b|\bpitch circle\b/.test(what))
    return lengthOff(main, module * only, "teeth by module");
  if (/\b(?:outside|outer|blank|tip|o\.?d\.?|overall) ?(?:dia)?/.test(what))
    return lengthOff(main, module * (only + 2), "teeth and two, by module");
  return [];
}

/** Teeth from a diameter and the module. */
function teethOf(sight: Sight): Remark[] {
  const { main, all } = sight;
  const module = main && main.from === "text" && isTeeth(main) ? moduleOf(sight) : null;
  if (!main || module === null || !(module > 0) || /\bhelical|bevel|worm|rack\b/.test(all)) return [];
  const lengths = relatedFacts(sight).filter((fact) => fact.dimension === "length");
  const pitch = lengths.find((fact) => /\bpitch (?:circle )?(?:diameter|dia)/.test(fact.label));
  const outer = lengths.find((fact) =>
    /\b(?:outside|blank|tip|over the teeth) ?(?:diameter|dia)?\b/.test(fact.label),
  );
  const from = pitch ?? outer;
  const teeth = pitch ? (pitch.si * 1000) / module : outer ? (outer.si * 1000) / module - 2 : null;
  if (teeth === null || !from || near(teeth, main.si, 0.02)) return [];
  return [
    {
      severity: "wrong",
      found: `${main.raw}, at ${from.raw}.`,
      expected: `${Number(teeth.toPrecision(3))} teeth: the diameter by the module.`,
    },
  ];
}

/** "Module 2, 48 teeth": the one count of teeth in the words of the entry. */
function toothCount({ all }: Sight): number | null {
  const counts = [...all.matchAll(/\b(\d{1,3}) ?(?:teeth|tooth|t)\b|\bz ?= ?(\d{1,3})\b/g)];
  return counts.length === 1 ? Number(counts[0]?.[1] ?? counts[0]?.[2]) : null;
}

function lengthOff(main: Fact, mm: number, how: string): Remark[] {
  const tolerance = main.quantity.value.style.kind === "fraction" ? 0.012 : 0.008;
  if (near(main.si * 1000, mm, tolerance)) return [];
  return [
    {
      severity: "wrong",
      found: `${main.raw}.`,
      expected: `${sayIn(mm / 1000, main.quantity)}: ${how}.`,
      meant: near(main.si * 1000, mm * 2, 0.01)
        ? "the sum, not the half?"
        : `${sayIn(mm / 1000, main.quantity)}?`,
      source: "ISO 54 and ISO 1122-1 (from memory): pitch diameter is module by teeth",
    },
  ];
}
