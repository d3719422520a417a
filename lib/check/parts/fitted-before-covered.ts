import { finding } from "#lib/finding/index.ts";
import { tooEarly } from "#lib/procedure/index.ts";
import type { Rule } from "../rule.ts";
import { assembly, atMoment, off, on } from "./words.ts";

/** A part that went on before what it covers. */
export const fittedBeforeCovered: Rule = {
  id: "fitted-before-covered",
  title: "On before what it covers",
  explanation:
    "A cover goes on after what lies under it. Where it went on first, a stranger who follows the steps takes it off again, and a gasket with it.",
  source: "the restorer's own word of what goes on over what",
  check: ({ ledger }) =>
    tooEarly(ledger).map(({ covering, over, under }) =>
      finding({
        rule: "fitted-before-covered",
        severity: "wrong",
        place: { mark: over.mark, field: `covers ${covering.under}` },
        evidence: `${covering.over}\n${covering.under}`,
        found: `${covering.overName} went on${atMoment(over)}, before ${covering.underName}${atMoment(under)}, which lies under it.`,
        expected: `${covering.underName} first.`,
        todo: "Move the step, or mark that it came off again in between. The parts sheet proposes an order.",
        source: fittedBeforeCovered.source,
      }),
    ),
  examples: [
    {
      says: "the cover first",
      sketch: {
        marks: [
          off(1, "Cover", { covers: "Gear" }),
          off(2, "Gear"),
          assembly(5),
          on(6, "Cover"),
          on(7, "Gear"),
        ],
      },
      finds: 1,
    },
    {
      says: "the gear first",
      sketch: {
        marks: [
          off(1, "Cover", { covers: "the gear" }),
          off(2, "Gear"),
          assembly(5),
          on(6, "Gear"),
          on(7, "Cover"),
        ],
      },
      finds: 0,
    },
    {
      says: "the cover went on too early, came off and went on again",
      sketch: {
        marks: [
          off(1, "Cover", { covers: "Gear" }),
          off(2, "Gear"),
          assembly(5),
          on(6, "Cover"),
          off(7, "Cover"),
          on(8, "Gear"),
          on(9, "Cover"),
        ],
      },
      finds: 0,
    },
  ],
};
