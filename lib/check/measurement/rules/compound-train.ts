import { near, plain, sayIn } from "../figures.ts";
import type { EntryRule } from "../rule.ts";
import { type Fact, relatedFacts, type Sight } from "../sight.ts";
import { isRatio, termsOf } from "../wheels.ts";

/** Two pairs of wheels and more, one behind the other. */
export const compoundTrain: EntryRule = {
  id: "compound-train",
  title: "A train of several pairs",
  explanation:
    "Pairs of wheels one behind the other multiply: three to one and three to one are nine to one. The last shaft turns as the first by the teeth of all drivers over those of all driven wheels.",
  source: "arithmetic",
  check: (sight) => {
    const { main, what } = sight;
    const ratio = trainOf(sight);
    if (ratio === null || !main) return [];
    const first = relatedFacts(sight).find((fact) => fact.dimension === "rotational speed" && fact.si > 0);
    if (main.dimension === "rotational speed" && first && main.si > 0) {
      const backwards = /\b(?:input|motor|first|driver)\b/.test(what) && !/\boutput|last|driven\b/.test(what);
      return speed(main, first, backwards ? 1 / ratio : ratio);
    }
    const said = isRatio(main, what) ? (main.quantity.terms?.length === 2 ? termsOf(main) : main.si) : null;
    if (said === null || near(said, ratio, 0.02) || near(said, 1 / ratio, 0.02)) return [];
    return [
      {
        severity: "wrong" as const,
        found: `${main.raw} for the train.`,
        expected: `${plain(ratio, 4)}:1, all pairs multiplied.`,
        meant: `${plain(ratio, 4)}:1?`,
      },
    ];
  },
  examples: [
    {
      says: "three by three is nine",
      entry: {
        text: "100 rpm",
        what: "output of the gear train",
        context: {
          related: [
            { what: "motor", text: "900 rpm" },
            { what: "first pair, driver to driven", text: "20 to 60 teeth" },
            { what: "second pair, driver to driven", text: "15 to 45 teeth" },
          ],
        },
      },
      finds: 0,
    },
    {
      says: "down, and not up",
      entry: {
        text: "8100 rpm",
        what: "output of the gear train",
        context: {
          related: [
            { what: "motor", text: "900 rpm" },
            { what: "first pair, driver to driven", text: "20 to 60 teeth" },
            { what: "second pair, driver to driven", text: "15 to 45 teeth" },
          ],
        },
      },
      finds: 1,
    },
    {
      says: "added, and not multiplied",
      entry: {
        text: "7:1",
        what: "overall ratio",
        context: {
          related: [
            { what: "first reduction", text: "3:1" },
            { what: "second reduction", text: "4:1" },
          ],
        },
      },
      finds: 1,
    },
  ],
};

function speed(main: Fact, first: Fact, ratio: number) {
  const should = first.si / ratio;
  if (near(main.si, should, 0.05)) return [];
  return [
    {
      severity: "wrong" as const,
      found: `${main.raw}, from ${first.name} ${first.raw} through ${plain(ratio, 4)}:1.`,
      expected: `${sayIn(should, main.quantity, 4)}.`,
      meant: near(main.si, first.si * ratio, 0.05)
        ? "the ratio turned about?"
        : `${sayIn(should, main.quantity, 4)}?`,
    },
  ];
}

const drivers = /\b(?:driver|driving|pinion)\b/;

/** Turns of the first shaft for one of the last; null where there are no two pairs. */
export function trainOf(sight: Sight): number | null {
  const pairs = pairsIn(sight) ?? reductionsIn(sight) ?? wheelsIn(sight);
  return pairs && pairs.length >= 2 ? pairs.reduce((all, one) => all * one, 1) : null;
}

/** "first pair, driver to driven: 20 to 60 teeth". */
function pairsIn({ entry }: Sight): number[] | null {
  const pairs = (entry.context.related ?? []).flatMap(({ what, text }) => {
    const said = `${what} ${text}`.toLowerCase();
    const named = twoNames.exec(what.toLowerCase()) && twoCounts.exec(text.toLowerCase());
    if (named) return [Number(named[2]) / Number(named[1])];
    const teeth =
      /\b(\d{1,3})(?: teeth| ?t)? ?(?:to|:|\/|into|driving|drives|x|on|-) ?(?:a )?(\d{1,3})\b/.exec(
        text.toLowerCase(),
      );
    if (!teeth || !/\b(?:pair|stage|reduction|mesh|gears?|teeth|driver)\b/.test(said)) return [];
    const ratio = Number(teeth[2]) / Number(teeth[1]);
    if (/\bdriven (?:to|by|from|:) ?driver\b/.test(said)) return [1 / ratio];
    return /\bdriver\b|\bdriv(?:es|ing)\b|\binto\b|\bpinion\b|\bteeth\b/.test(said) && Number(teeth[1]) > 6
      ? [ratio]
      : [];
  });
  return pairs.length >= 2 ? pairs : null;
}

/** "back pinion / bull wheel", "25 / 50": the one that drives first. */
const twoNames =
  /^[^/]*\b(?:pinion|gear|wheel|driver)\b[^/]* ?(?:\/|:| to | into ) ?[^/]*\b(?:pinion|gear|wheel|driven)\b[^/]*$/;
const twoCounts = /^(\d{1,3}) ?(?:t|teeth)? ?(?:\/|:|to|into|x) ?(\d{1,3}) ?(?:t|teeth)?$/;

/** "first reduction 3:1, second reduction 4:1". */
function reductionsIn(sight: Sight): number[] | null {
  if (!/\b(?:overall|total|whole|combined|final|output|train)\b/.test(sight.what)) return null;
  const stages = relatedFacts(sight).filter(
    (fact) =>
      fact.quantity.terms?.length === 2 &&
      /\b(?:stage|reduction|pair|first|second|third|primary|gearbox|axle)\b/.test(fact.name),
  );
  const ratios = stages.flatMap((fact) => termsOf(fact) ?? []);
  return ratios.length >= 2 && ratios.every((one) => one > 1) ? ratios : null;
}

/** "first driver 20, first driven 60, second driver 15, second driven 45". */
function wheelsIn(sight: Sight): number[] | null {
  const wheels = relatedFacts(sight).filter(
    (fact) =>
      (fact.dimension === "count" || fact.dimension === "number") &&
      !fact.quantity.high &&
      /\b(?:driver|driving|driven)\b/.test(fact.name) &&
      fact.si > 5,
  );
  const over = wheels.filter((fact) => !drivers.test(fact.name) || /\bdriven\b/.test(fact.name));
  const under = wheels.filter((fact) => !over.includes(fact));
  if (over.length < 2 || over.length !== under.length) return null;
  return over.map((fact, i) => fact.si / (under[i]?.si ?? 1));
}
