import { near, sayIn } from "../figures.ts";
import type { EntryRule } from "../rule.ts";
import type { Fact, Sight } from "../sight.ts";
import { decisionIn } from "../words.ts";

/** How fast the outside of a wheel goes: rims, grinding wheels, belts, cutters. */
export const rimSpeed: EntryRule = {
  id: "rim-speed",
  title: "How fast the rim goes",
  explanation:
    "The outside of a wheel travels its circumference in each turn. Above the speed for which a rim or a grinding wheel is made it may burst; what is said on its plate or in the rules of the place decides.",
  source: "arithmetic: π by diameter by turns",
  check: (sight) => {
    const { main, facts } = sight;
    const speed = facts.find((fact) => fact.dimension === "speed" && fact.si > 0);
    const turns = facts.find(
      (fact) => fact.dimension === "rotational speed" && fact.si > 0 && fact.from !== "limit",
    );
    const wheel = speed && turns ? wheelOf(sight) : undefined;
    if (!speed || !turns || !wheel || ![speed, turns, wheel].includes(main as Fact)) return [];
    const rim = Math.PI * wheel.si * turns.si;
    return isLimit(speed) ? overLimit(sight, { rim, speed, turns }) : told(rim, speed, sight);
  },
  examples: [
    {
      says: "118 ft/s where 100 are allowed",
      entry: {
        text: "900 rpm",
        what: "flywheel speed",
        context: {
          verdict: "safe to run",
          related: [
            { what: "wheel", text: "30 in over the rim" },
            { what: "plate says", text: "rim not above 100 ft/s" },
          ],
        },
      },
      finds: 1,
    },
    {
      says: "98 ft/s",
      entry: {
        text: "750 rpm",
        what: "flywheel speed",
        context: {
          verdict: "safe to run",
          related: [
            { what: "wheel", text: "30 in over the rim" },
            { what: "plate says", text: "rim not above 100 ft/s" },
          ],
        },
      },
      finds: 0,
    },
    {
      says: "a belt faster than its pulley",
      entry: {
        text: "24 m/s",
        what: "belt speed",
        context: {
          related: [
            { what: "pulley diameter", text: "300 mm" },
            { what: "pulley speed", text: "750 rpm" },
          ],
        },
      },
      finds: 1,
    },
  ],
};

function wheelOf({ facts }: Sight): Fact | undefined {
  const wheels = facts.filter(
    (fact) =>
      fact.dimension === "length" &&
      fact.si > 0 &&
      /\b(?:wheel|rim|pulley|drum|flywheel|disc|cutter|diameter|dia|over the|blade|work|bar)\b/.test(
        fact.label,
      ) &&
      !/\b(?:bore|width|face|thick\w*|radius|hole|arbor|shaft|feed|depth)\b/.test(fact.label),
  );
  return wheels.length === 1 ? wheels[0] : undefined;
}

const isLimit = ({ from, quantity, label }: Fact): boolean =>
  from === "spec" ||
  from === "limit" ||
  quantity.qualifier === "at most" ||
  /\b(?:max(?:imum)?|limit|plate|marked|not (?:above|over)|safe|allowed|permitted|rated)\b/.test(label);

function overLimit(sight: Sight, { rim, speed, turns }: { rim: number; speed: Fact; turns: Fact }) {
  const most = speed.quantity.siHigh ?? speed.si;
  const decided = decisionIn(`${sight.verdict} ${sight.remarks}`);
  if (speed.quantity.qualifier === "at least" || rim <= most * 1.005 || decided === "rejected") return [];
  return [
    {
      severity: "wrong" as const,
      found: `${turns.raw}: the rim goes ${sayIn(rim, speed.quantity, 3)}.`,
      expected: `${sayIn(most, speed.quantity, 3)} at the most, ${sayIn((turns.si * most) / rim, turns.quantity, 3)}.`,
    },
  ];
}

function told(rim: number, speed: Fact, { all }: Sight) {
  if (
    near(rim, speed.si, 0.08) ||
    !/\b(?:rim|belt|surface|cutting|peripher\w+|circumferential|edge|tip) (?:speed|travel)\b|\bspeed of the (?:rim|belt)\b/.test(
      all,
    )
  )
    return [];
  return [
    {
      severity: "wrong" as const,
      found: `${speed.raw}, where the wheel's outside goes ${sayIn(rim, speed.quantity, 3)}.`,
      expected: `${sayIn(rim, speed.quantity, 3)}.`,
      meant: `${sayIn(rim, speed.quantity, 3)}?`,
    },
  ];
}
