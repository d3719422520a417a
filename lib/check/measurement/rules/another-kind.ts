import { near } from "../figures.ts";
import type { EntryRule } from "../rule.ts";
import type { Fact, Sight } from "../sight.ts";
import { capacitorCodeIn } from "./capacitor-code.ts";

/** The figure of the specification, with a unit of another kind. */
export const anotherKind: EntryRule = {
  id: "another-kind-of-unit",
  title: "The right figure in another kind of unit",
  explanation:
    "100 F where 100 µF was asked for, ounces of weight where fluid ounces were: the figure was copied and the unit was not. Shares, ratios and counts beside a size are no slip.",
  source: "arithmetic: the value against the specification given with it",
  check: (sight) => {
    const { main } = sight;
    const spec = sight.facts.filter((fact) => fact.from === "spec");
    const [only] = spec;
    if (!main || !only || spec.some((fact) => fact.dimension === main.dimension)) return [];
    if (only.quantity.ucum === "%" || only.quantity.terms || inColours(sight)) return [];
    if (ounces(main, only)) return remark(main, only);
    return !mayStandFor(main, only) && sameFigure(main, only) ? remark(main, only) : [];
  },
  examples: [
    {
      says: "newtons for newton metres",
      entry: { text: "22 N", what: "tightening", context: { spec: "22 N·m" } },
      finds: 1,
    },
    {
      says: "a loss in per cent is no size",
      entry: {
        text: "11.4 mm",
        what: "rope diameter",
        context: { spec: "discard at 10 % loss of diameter" },
      },
      finds: 0,
    },
    {
      says: "nor is a ratio",
      entry: { text: "2 m", what: "rope for 1 m of travel", context: { spec: "roped 2:1" } },
      finds: 0,
    },
  ],
};

/** Colours of a resistor are another rule's matter. */
const inColours = ({ main, entry }: Sight): boolean =>
  main?.dimension === "resistance" &&
  /\b(?:black|brown|red|orange|yellow|violet|gr[ae]y)\b/i.test(entry.context.spec ?? "");

/** Ounces of weight for fluid ounces. */
const ounces = (main: Fact, only: Fact): boolean =>
  main.dimension === "mass" &&
  only.dimension === "volume" &&
  main.quantity.unit.startsWith("o") &&
  main.si / (only.si * 1000) > 3;

/** Kinds that people give for one another. */
const joined = [
  ["mass", "force", "volume"],
  ["thread pitch", "length"],
  ["angle", "length"],
  ["number", "count", "ratio"],
  ["rotational speed", "frequency"],
  ["length", "number", "count"],
];

function mayStandFor(main: Fact, only: Fact): boolean {
  // Three figures on a capacitor are its code, and another rule's matter.
  if (capacitorCodeIn(only.raw)) return true;
  if (only.dimension === "pressure" && /^lbs?\.?$/.test(main.quantity.unit)) return true;
  return joined.some((pair) => pair.includes(main.dimension) && pair.includes(only.dimension));
}

function sameFigure(main: Fact, { quantity }: Fact): boolean {
  const figure = main.quantity.value.number;
  return (
    near(figure, quantity.value.number, 0.15) ||
    (quantity.high !== undefined && figure >= quantity.value.number && figure <= quantity.high.number)
  );
}

const remark = ({ raw, quantity }: Fact, only: Fact) => [
  {
    severity: "doubtful" as const,
    found: `${raw}, where the specification is ${only.raw}: another kind of unit.`,
    expected: `A figure in ${only.quantity.unit}.`,
    meant: `${quantity.value.number} ${only.quantity.unit}?`,
  },
];
