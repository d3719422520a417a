import { finding } from "#lib/finding/index.ts";
import { type Stack, type StackDifference, sayMillimetres, stacksOf } from "#lib/procedure/index.ts";
import type { Rule } from "../rule.ts";
import { assembly, off, on } from "./words.ts";

/** A stack that did not go back as it came off. */
export const stackDiffers: Rule = {
  id: "stack-differs",
  title: "A stack in another order",
  explanation:
    "Shims, washers and seals work by their order. A stack that goes back in another order, the other way round or with a layer missing moves what it carries, and shows itself when the machine runs.",
  source: "common practice, no source",
  check: ({ ledger, document }) =>
    stacksOf(ledger).flatMap((stack) => {
      if (stack.difference === null || stack.off.some((layer) => layer.event.says.foundWrong !== ""))
        return [];
      return finding({
        rule: "stack-differs",
        severity: "wrong",
        place: { mark: stack.on[0]?.event.mark, field: "stack" },
        evidence: [...stack.off, ...stack.on].map((layer) => layer.key).join("\n"),
        found: `“${stack.name}” ${said[stack.difference]}. Off, from the bottom: ${layersOf(stack, "off")}. On: ${layersOf(stack, "on")}.${shift(stack, document.build.decimal)}`,
        expected: "The layers as they came off, from the bottom up, or a word that they were wrong.",
        todo: "Look at both moments. Put the stack right, or write in “Wrong as found” what was wrong with it.",
        source: stackDiffers.source,
      });
    }),
  examples: [
    {
      says: "two layers changed places",
      sketch: {
        marks: [
          off(1, "Shim", { stack: "Thrust", stackPlace: "2" }),
          off(2, "Washer", { stack: "Thrust", stackPlace: "1" }),
          assembly(5),
          on(6, "Washer", { stack: "Thrust", stackPlace: "2" }),
          on(7, "Shim", { stack: "Thrust", stackPlace: "1" }),
        ],
      },
      finds: 1,
    },
    {
      says: "by the order of the marks, where no places are given",
      sketch: {
        marks: [
          off(1, "Shim", { stack: "Thrust" }),
          off(2, "Washer", { stack: "Thrust" }),
          off(3, "Seal", { stack: "Thrust" }),
          assembly(5),
          on(6, "Seal", { stack: "Thrust" }),
          on(7, "Shim", { stack: "Thrust" }),
          on(8, "Washer", { stack: "Thrust" }),
        ],
      },
      finds: 1,
    },
    {
      says: "as it was: the last off goes on first",
      sketch: {
        marks: [
          off(1, "Shim", { stack: "Thrust" }),
          off(2, "Washer", { stack: "Thrust" }),
          assembly(5),
          on(6, "Washer", { stack: "thrust" }),
          on(7, "Shim", { stack: "thrust" }),
        ],
      },
      finds: 0,
    },
    {
      says: "it was wrong as found",
      sketch: {
        marks: [
          off(1, "Shim", { stack: "Thrust", foundWrong: "shim under the washer" }),
          off(2, "Washer", { stack: "Thrust" }),
          assembly(5),
          on(6, "Shim", { stack: "Thrust" }),
          on(7, "Washer", { stack: "Thrust" }),
        ],
      },
      finds: 0,
    },
    {
      says: "a layer is missing",
      sketch: {
        marks: [
          off(1, "Shim", { stack: "Thrust", count: "2" }),
          off(2, "Washer", { stack: "Thrust" }),
          assembly(5),
          on(6, "Washer", { stack: "Thrust" }),
          on(7, "Shim", { stack: "Thrust" }),
        ],
      },
      finds: 1,
    },
  ],
};

const said: Record<StackDifference, string> = {
  missing: "went back with something missing",
  more: "went back with more in it than came off",
  "the other way round": "went back the other way round",
  "another order": "went back in another order",
};

function layersOf(stack: Stack, side: "off" | "on"): string {
  return stack[side].map((layer) => layer.words).join("; ");
}

function shift({ before, after }: Stack, decimal: "." | ","): string {
  if (before === null || after === null || Math.abs(after - before) < 5e-7) return "";
  return ` Together ${sayMillimetres(before, decimal)} before and ${sayMillimetres(after, decimal)} now.`;
}
