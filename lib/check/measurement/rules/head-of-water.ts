import { near, plain, sayIn, slipWords } from "../figures.ts";
import type { EntryRule } from "../rule.ts";
import { type Fact, readOnce, type Sight } from "../sight.ts";

/** Pressure at the foot of a column of water, and its height. */
export const headOfWater: EntryRule = {
  id: "head-of-water",
  title: "A head of water and its pressure",
  explanation:
    "Water that stands a metre above the gauge presses with 9.8 kPa, a foot with 0.43 pounds on the square inch, whatever the width of the pipe. A pressure that the height does not give was misread, or the height was.",
  source: "p = ρ g h with 1000 kg/m³ and g = 9.80665 m/s² (NIST SP 811)",
  check: (sight) => {
    if (!/head|water|tank|above|standpipe/.test(sight.all)) return [];
    const pressure = only(
      sight.facts.filter((fact) => fact.dimension === "pressure" && fact.from !== "limit"),
    );
    const height =
      only(sight.facts.filter((fact) => fact.dimension === "length" && isHead(fact))) ?? headInName(sight);
    if (!pressure || !height || ![pressure, height].includes(sight.main as Fact)) return [];
    if (pressure.quantity.ucum.includes("H2O") || moving.test(sight.all)) return [];
    const should = height.si * density(sight) * 9.80665;
    if (should <= 0 || near(should, pressure.si, 0.12)) return [];
    const target = sight.main === height ? height.si * (pressure.si / should) : should;
    const like = (sight.main === height ? height : pressure).quantity;
    return [
      {
        severity: "wrong" as const,
        found: `${pressure.raw}, and ${height.name} ${height.raw}.`,
        expected: `${sayIn(should, pressure.quantity, 3)} for ${plain(height.si, 3)} m.`,
        meant: `${sayIn(target, like, 3)}? ${slipWords(pressure.si, should, "pressure") ?? ""}`.trim(),
      },
    ];
  },
  examples: [
    {
      says: "thirty feet are thirteen pounds",
      entry: {
        text: "13 lb/sq in",
        what: "pressure at the foot of the standpipe",
        context: { related: [{ what: "water stands", text: "30 ft above the gauge" }] },
      },
      finds: 0,
    },
    {
      says: "and not a hundred and thirty",
      entry: {
        text: "130 lb/sq in",
        what: "pressure at the foot of the standpipe",
        context: { related: [{ what: "water stands", text: "30 ft above the gauge" }] },
      },
      finds: 1,
    },
    {
      says: "told in the name of what is measured",
      entry: { text: "43.3 psi", what: "pressure under 10 ft of water" },
      finds: 1,
    },
    {
      says: "ten metres of head are one bar",
      entry: {
        text: "0.1 bar",
        what: "static pressure at the turbine",
        context: { related: [{ what: "head of water", text: "10 m" }] },
      },
      finds: 1,
    },
  ],
};

const head =
  /\b(?:head|water (?:stands|level|column|height)|column of (?:water|oil)|height of (?:water|tank)|tank (?:height|stands|above)|standpipe height|above the (?:gauge|tap|valve|pump|nozzle|burner|outlet))\b/;
const moving =
  /\b(?:running|pumping|delivery|flowing|boost\w*|mains|friction|lift pump|steam|air pressure|closed vessel|pressuri[sz]ed)\b|\bcylinder head\b/;

const isHead = ({ label, name }: Fact): boolean =>
  head.test(label) && !/\b(?:diameter|bore|thickness|bolt|cylinder|stud|gasket|screw|width)\b/.test(name);
const only = <T>(all: readonly T[]): T | undefined => (all.length === 1 ? all[0] : undefined);

/** "Pressure under 10 ft of water": the height in the name of what is measured. */
function headInName({ what, facts, decimal }: Sight): Fact | undefined {
  const like = facts[0];
  const said =
    /\b(\d+(?:\.\d+)?) ?(?:ft|feet|foot|m|metres?|in|inches|yards?)\b,? (?:of (?:the )?(?:water|head|oil)|head|below the (?:tank|water|surface)|under water|deep)\b/.exec(
      what,
    );
  const reading = said && readOnce(said[0].replace(/,? (?:of|head|below|under|deep).*$/, ""), decimal);
  const [quantity] = reading?.kind === "quantity" ? reading.quantities : [];
  return like && said && quantity?.dimension === "length"
    ? {
        ...like,
        from: "related",
        name: "head",
        label: "head of water",
        raw: said[0],
        quantity,
        dimension: "length",
        si: quantity.si,
      }
    : undefined;
}

/** In kg/m³: oils swim on water. Common practice, no source. */
const density = ({ all }: Sight): number =>
  /\b(?:oil|paraffin|petrol|fuel|kerosene)\b/.test(all) ? 850 : 1000;
