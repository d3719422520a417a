import { stepsOf } from "#lib/procedure/index.ts";
import { passages } from "../passages.ts";
import type { Rule } from "../rule.ts";
import { about, below, quoted } from "./say.ts";

const toStep = /\bsteps?\s+(\d{1,4})(?:\s*(?:,|and|or|to|–|-)\s*(\d{1,4}))*/gi;
/** Steps of something else: "step 2 of the cone pulley", "step 9 in the manual". */
const elsewhere = /^\s*(?:of|in|on|from) (?:the|its|his|her|a)\b/i;

/** "See step 14", in a procedure of twelve. */
export const missingStep: Rule = {
  id: "missing-step",
  title: "A step that is not there",
  explanation:
    "Numbers of steps change whenever a step is added, split or moved. One that is higher than the last step is certainly wrong; the others should be looked at when the order has changed.",
  source: "the procedure itself",
  check: (view) => {
    const last = stepsOf(view.procedure).length;
    return passages(view).flatMap((passage) => {
      const missing = numbersIn(passage.text).filter((number) => number < 1 || number > last);
      if (missing.length === 0) return [];
      return about(passage, {
        rule: "missing-step",
        severity: "wrong",
        evidence: `${missing.join(" ")}\n${last}`,
        found: `${quoted(passage, passage.text)} speaks of step ${missing.join(", ")}. The last one is step ${last}.`,
        expected: `A number from 1 to ${last}.`,
        todo: "Name the step by what is done in it, or correct the number.",
        source: missingStep.source,
      });
    });
  },
  examples: [
    ...below(1, "As in step 4.", "Repeat steps 1 to 3.", "Use the bolts from step 12.", "Go back to step 0."),
    ...below(
      0,
      "Repeat step 1.",
      "Put the belt on step 3 of the cone pulley.",
      "See step 9 in the manual.",
      "Turn it one step back.",
      "Tighten in 3 steps.",
    ),
  ],
};

function numbersIn(text: string): number[] {
  return [...text.matchAll(toStep)]
    .filter((match) => !elsewhere.test(text.slice(match.index + match[0].length)))
    .flatMap((match) => (match[0].match(/\d+/g) ?? []).map(Number));
}
