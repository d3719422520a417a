import { against, namedValues } from "../relation.ts";
import { bench } from "../relations/bench.ts";
import { electricity } from "../relations/electricity.ts";
import { power } from "../relations/power.ts";
import { surveying } from "../relations/surveying.ts";
import { trades } from "../relations/trades.ts";
import type { EntryRule } from "../rule.ts";

const relations = [...bench, ...surveying, ...power, ...electricity, ...trades];

/** A value that follows from its neighbours by a formula, and does not. */
export const follows: EntryRule = {
  id: "formula-mismatch",
  title: "What follows from the values beside it",
  explanation:
    "A rise is the backsight less the foresight, a net weight the gross less the tare, a wavelength the speed of light by the frequency. Where every value of such a relation stands in an entry, each follows from the others; one that does not was misread, misreckoned or written a place too far.",
  source: "arithmetic, geometry and physics, named with each relation",
  check: (sight) => {
    const values = namedValues(sight);
    if (values.length < 2) return [];
    for (const relation of relations) {
      const remark = against(relation, values, sight);
      if (remark) return [remark];
    }
    return [];
  },
  examples: relations.flatMap(({ says, examples }) =>
    examples.flatMap(({ entry, wrong }) => [
      { says: `${says}: ${entry.text}`, entry, finds: 0 as const },
      { says: `${says}: not ${wrong}`, entry: { ...entry, text: wrong }, finds: 1 as const },
    ]),
  ),
};
