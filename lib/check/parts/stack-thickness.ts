import { finding } from "#lib/finding/index.ts";
import { sayMillimetres, stacksOf } from "#lib/procedure/index.ts";
import type { Rule } from "../rule.ts";
import { assembly, off, on } from "./words.ts";

/** A stack that is thicker or thinner than it was. */
export const stackThickness: Rule = {
  id: "stack-thickness",
  title: "A stack of another thickness",
  explanation:
    "A stack sets where something sits: end float, mesh, valve lift. One that is thicker by a tenth moves all that lies above it by a tenth, whether that was wanted or not.",
  source: "sums of the thicknesses as typed",
  check: ({ ledger, document }) =>
    stacksOf(ledger).flatMap((stack) => {
      const { before, after, name } = stack;
      // Below half a thousandth of a millimetre it is the rounding of a conversion.
      if (stack.difference !== null || before === null || after === null || Math.abs(after - before) < 5e-7)
        return [];
      const mm = (metres: number) => sayMillimetres(metres, document.build.decimal);
      return finding({
        rule: "stack-thickness",
        severity: "doubtful",
        place: { mark: stack.on.at(-1)?.event.mark, field: "thickness" },
        evidence: `${name}\n${mm(before)}\n${mm(after)}`,
        found: `“${name}” was ${mm(before)} together and is ${mm(after)}: what it carries sits ${mm(Math.abs(after - before))} ${after > before ? "higher" : "lower"}.`,
        expected: "The thickness that came off, or a reason.",
        todo: "Measure what the stack sets (end float, mesh, lift), and answer with the value.",
        source: stackThickness.source,
      });
    }),
  examples: [
    {
      says: "a thicker shim",
      sketch: {
        marks: [
          off(1, "Shim", { stack: "Thrust", thickness: { typed: "0.5 mm" } }),
          assembly(5),
          on(6, "Shim", { stack: "Thrust", thickness: { typed: "0.6 mm" } }),
        ],
      },
      finds: 1,
    },
    {
      says: "the same in another unit: 1/64 in is 0.396875 mm",
      sketch: {
        marks: [
          off(1, "Shim", { stack: "Thrust", thickness: { typed: "1/64 in" } }),
          assembly(5),
          on(6, "Shim", { stack: "Thrust", thickness: { typed: "0.396875 mm" } }),
        ],
      },
      finds: 0,
    },
  ],
};
