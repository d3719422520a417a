import { finding } from "#lib/finding/index.ts";
import type { Rule } from "../rule.ts";
import { assembly, atMoment, off, on, pieces } from "./words.ts";

/** A part that came off, and of which nobody says what became of it. */
export const partNotBack: Rule = {
  id: "part-not-back",
  title: "Off, and not back",
  explanation:
    "What came off a machine goes back on, is replaced, is scrapped, or is left out on purpose. A washer found on the bench after the case is closed means that the case is opened again. It is asked once assembly has begun.",
  source: "common practice, no source",
  check: ({ ledger }) =>
    !ledger.assembling
      ? []
      : ledger.accounts
          .filter((account) => account.now.cameOff > 0)
          .map(({ name, now, lines, item }) => {
            const last = lines.findLast((line) => line.act === "off");
            return finding({
              rule: "part-not-back",
              severity: "wrong",
              place: { mark: (last ?? lines.at(-1))?.event.mark, field: "count" },
              evidence: `${item}\n${now.cameOff}`,
              found: `${name}: ${pieces(now.cameOff)} came off${atMoment(last?.event)}, and no mark says what became of ${now.cameOff === 1 ? "it" : "them"}.`,
              expected: "Fitted, replaced, scrapped, or left out on purpose.",
              todo: "Mark the moment when it went back on, or say what became of it. If it is still on the bench, stop here.",
              source: partNotBack.source,
            });
          }),
  examples: [
    {
      says: "three of four",
      sketch: { marks: [off(1, "Nut", { count: "4" }), assembly(5), on(6, "Nut", { count: "3" })] },
      finds: 1,
    },
    {
      says: "all of them",
      sketch: { marks: [off(1, "Nut", { count: "4" }), assembly(5), on(6, "Nut", { count: "4" })] },
      finds: 0,
    },
    {
      says: "everything is off while it is being stripped",
      sketch: { marks: [off(1, "Nut", { count: "4" })] },
      finds: 0,
    },
    {
      says: "replaced",
      sketch: {
        marks: [
          off(1, "Seal"),
          assembly(5),
          [6, "part", { item: "Seal", event: "replaced", source: "the supplier" }],
        ],
      },
      finds: 0,
    },
    {
      says: "left out on purpose",
      sketch: {
        marks: [
          off(1, "Shield"),
          off(2, "Nut"),
          assembly(5),
          on(6, "Nut"),
          [7, "part", { item: "Shield", event: "left out" }],
        ],
      },
      finds: 0,
    },
    {
      says: "tried, taken off again, and forgotten",
      sketch: {
        marks: [
          off(1, "Shim"),
          off(2, "Nut"),
          [3, "action", { words: "Try it", stage: "trial fit" }],
          on(4, "Shim"),
          off(5, "Shim"),
          assembly(6),
          on(7, "Nut"),
        ],
      },
      finds: 1,
    },
  ],
};
