import { near, plain, sayIn } from "../figures.ts";
import { type EntryRule, firstOf, type Remark } from "../rule.ts";
import type { Sight } from "../sight.ts";
import { isTeeth } from "../wheels.ts";

/** The cam of a four-stroke at half the speed of its crank. */
export const camSpeed: EntryRule = {
  id: "cam-speed",
  title: "Cam and crank",
  explanation:
    "The cam of a four-stroke turns once for two turns of the crank, so that its wheel has twice the teeth.",
  source: "arithmetic: one working stroke in two turns",
  check: (sight) => firstOf(sight, halfSpeed, camTeeth),
  examples: [
    {
      says: "twice the teeth",
      entry: {
        text: "40 teeth",
        what: "camshaft wheel",
        context: { part: "four-stroke engine", related: [{ what: "crank pinion", text: "20 teeth" }] },
      },
      finds: 0,
    },
    {
      says: "and not the same",
      entry: {
        text: "20 teeth",
        what: "camshaft wheel",
        context: { part: "four-stroke engine", related: [{ what: "crank pinion", text: "20 teeth" }] },
      },
      finds: 1,
    },
  ],
};

/** A four-stroke's cam turns at half the speed of its crank. */
function halfSpeed(sight: Sight): Remark[] {
  const speeds = sight.facts.filter((fact) => fact.dimension === "rotational speed");
  const cam = speeds.find((fact) => /\bcam ?shaft|\bcam\b|\bdistributor\b/.test(fact.name));
  const crank = speeds.find((fact) => fact !== cam && /\bcrank ?(?:shaft)?|\bengine\b/.test(fact.name));
  if (
    !cam ||
    !crank ||
    /\btwo[- ]stroke|2-stroke|two cycle\b/.test(sight.all) ||
    near(cam.si * 2, crank.si, 0.05)
  )
    return [];
  return [
    {
      severity: "wrong",
      found: `${cam.name} ${cam.raw}, ${crank.name} ${crank.raw}.`,
      expected: `Half of the crank's: ${sayIn(crank.si / 2, cam.quantity)} (four-stroke).`,
      meant: near(cam.si, crank.si * 2, 0.05)
        ? "the ratio turned about?"
        : `${sayIn(crank.si / 2, cam.quantity)}?`,
    },
  ];
}

/** A four-stroke's cam wheel has twice the teeth of the crank's. */
function camTeeth(sight: Sight): Remark[] {
  const wheels = sight.facts.filter(isTeeth);
  const cam = wheels.find((fact) => /\bcam(?:shaft)?\b/.test(fact.name));
  const crank = wheels.find((fact) => fact !== cam && /\bcrank(?:shaft)?\b/.test(fact.name));
  const twoStroke = /\btwo[- ]stroke|2-stroke|two cycle|steam|idler|intermediate|half[- ]time\b/.test(
    sight.all,
  );
  if (!cam || !crank || twoStroke || near(cam.si, crank.si * 2, 0.001)) return [];
  return [
    {
      severity: /\bfour[- ]stroke|4-stroke/.test(sight.all) ? "wrong" : "doubtful",
      found: `${cam.name} ${cam.raw}, ${crank.name} ${crank.raw}.`,
      expected: `${plain(crank.si * 2)} teeth: a four-stroke's cam turns at half the speed of its crank.`,
      meant: `${plain(crank.si * 2)}?`,
    },
  ];
}
