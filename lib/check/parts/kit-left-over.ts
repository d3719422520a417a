import { finding } from "#lib/finding/index.ts";
import { reconcileKits } from "#lib/procedure/index.ts";
import type { Rule } from "../rule.ts";
import { assembly, off, on } from "./words.ts";

/** Something in a kit that was not used, and nobody says why. */
export const kitLeftOver: Rule = {
  id: "kit-left-over",
  title: "Left over from a kit",
  explanation:
    "What is left in the bag when the machine is together is a spare, belongs to another version, or should have gone in. The next person with that kit wants to know which. It is asked once assembly has begun.",
  source: "common practice, no source",
  check: ({ ledger }) =>
    !ledger.assembling
      ? []
      : reconcileKits(ledger)
          .filter((line) => line.left > 0 && line.leftWhy.trim() === "")
          .map((line) =>
            finding({
              rule: "kit-left-over",
              severity: "doubtful",
              place: { field: `${line.kit.id}/${line.typed}` },
              evidence: `${line.typed}\n${line.received}\n${line.left}`,
              found: `${line.kit.name}: ${line.left} of ${line.received} “${line.name}” left over, and nobody says why.`,
              expected: "Fitted, or a reason.",
              todo: "Write on the parts sheet why it is left over; or which part it belongs to, if the kit calls it otherwise.",
              source: kitLeftOver.source,
            }),
          ),
  examples: [
    {
      says: "two came, one went in",
      sketch: {
        marks: [off(1, "Nut"), assembly(5), on(6, "Nut"), on(7, "Seal")],
        kits: [{ text: "2 x Seal" }],
      },
      finds: 1,
    },
    {
      says: "the second is said to be a spare",
      sketch: {
        marks: [off(1, "Nut"), assembly(5), on(6, "Nut"), on(7, "Seal")],
        kits: [{ text: "2 x Seal", lines: { "2 x Seal": { leftWhy: "a spare" } } }],
      },
      finds: 0,
    },
    {
      says: "all used",
      sketch: {
        marks: [off(1, "Nut"), assembly(5), on(6, "Seal", { count: "2" })],
        kits: [{ text: "2 x Seal" }],
      },
      finds: 0,
    },
  ],
};
