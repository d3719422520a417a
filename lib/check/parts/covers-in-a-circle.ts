import { finding } from "#lib/finding/index.ts";
import { coveringsOf, legalOrder } from "#lib/procedure/index.ts";
import type { Rule } from "../rule.ts";
import { off } from "./words.ts";

/** Parts of which each goes on over the next, all the way round. */
export const coversInACircle: Rule = {
  id: "covers-in-a-circle",
  title: "No order satisfies this",
  explanation:
    "If the cover goes on over the gear, and the gear over the shaft, the shaft cannot go on over the cover. One of the marks has it the wrong way round.",
  source: "arithmetic: what comes after itself has no place in an order",
  check: ({ ledger }) => {
    const coverings = coveringsOf(ledger);
    const items = [...new Set(coverings.flatMap(({ over, under }) => [over, under]))];
    return legalOrder(items, coverings).circles.map((circle) =>
      finding({
        rule: "covers-in-a-circle",
        severity: "wrong",
        place: { mark: circle[0]?.mark, field: "covers" },
        evidence: circle.map(({ over, under }) => `${over} ${under}`).join("\n"),
        found: `${circle.map(({ overName }) => `${overName} goes on over `).join("")}${circle.at(-1)?.underName}.`,
        expected: "An order in which they can go on.",
        todo: "Look at each of these marks, and correct “Goes on over” in the one that is wrong.",
        source: coversInACircle.source,
      }),
    );
  },
  examples: [
    {
      says: "round and round",
      sketch: {
        marks: [
          off(1, "Cover", { covers: "Gear" }),
          off(2, "Gear", { covers: "Shaft" }),
          off(3, "Shaft", { covers: "Cover" }),
        ],
      },
      finds: 1,
    },
    {
      says: "a line of them",
      sketch: {
        marks: [off(1, "Cover", { covers: "Gear" }), off(2, "Gear", { covers: "Shaft" }), off(3, "Shaft")],
      },
      finds: 0,
    },
    { says: "over itself", sketch: { marks: [off(1, "Cover", { covers: "Cover" })] }, finds: 1 },
  ],
};
