import { sayIn } from "../figures.ts";
import { type EntryRule, firstOf, type Remark } from "../rule.ts";
import type { Fact, Sight } from "../sight.ts";
import { decisionIn } from "../words.ts";

/** What a part is made for against what it gets. */
export const electricalRatings: EntryRule = {
  id: "rating-exceeded",
  title: "Electrical ratings",
  explanation:
    "A part stands the volts, amperes and watts written on it and no more; nothing behind a resistor gets more than the supply before it. Work on mains and high tension is for those who are trained for it, by the rules of the place.",
  source: "Ohm's law (IEC 60050-131)",
  check: (sight) => firstOf(sight, ratings, aboveSupply),
  examples: [
    {
      says: "250 V on a condenser for 160 V",
      entry: {
        text: "250 V",
        what: "voltage across the condenser",
        context: { related: [{ what: "condenser rating", text: "160 V" }] },
      },
      finds: 1,
    },
    {
      says: "on one for 400 V",
      entry: {
        text: "250 V",
        what: "voltage across the condenser",
        context: { related: [{ what: "condenser rating", text: "400 V" }] },
      },
      finds: 0,
    },
  ],
};

/** "10 kΩ, 2 W": what a resistor is made for, not what it turns to heat. */
export const isOwnRating = (fact: Fact, { main, facts }: Sight): boolean =>
  fact.from === "text" &&
  fact.dimension === "power" &&
  main?.dimension === "resistance" &&
  facts.some((one) => one.from === "text" && one.dimension === "resistance");

const rateable = new Set(["voltage", "current", "power"]);

/** What a part is rated for against what it gets. */
function ratings(sight: Sight): Remark[] {
  const values = sight.facts.filter((fact) => fact.from !== "fastener");
  const allRated = values.filter((fact) => rateable.has(fact.dimension) && isRating(fact, sight));
  if (allRated.length === 0 || decisionIn(`${sight.verdict} ${sight.remarks}`) === "rejected") return [];
  for (const rated of allRated) {
    const real = values.find(
      (fact) =>
        fact !== rated &&
        fact.dimension === rated.dimension &&
        !isRating(fact, sight) &&
        !/\b(?:test(?:ed)?|proof|flash|megger|insulation)\b/.test(fact.name) &&
        (fact.from === "text" || rated.from === "text"),
    );
    if (real && real.si > rated.si * 1.02) {
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
