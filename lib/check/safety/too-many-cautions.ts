import { finding } from "#lib/finding/index.ts";
import { type CautionNote, stepsOf } from "#lib/procedure/index.ts";
import type { Rule } from "../rule.ts";
import { cautions } from "./of-steps.ts";

const most = 3;

/** More messages before one step than are read, or one twice. */
export const tooManyCautions: Rule = {
  id: "too-many-cautions",
  title: "Cautions nobody reads to the end",
  explanation:
    "More than three messages in a row, or one message twice, and the eye goes on to the step. What holds for the whole job belongs to its beginning.",
  source: "common practice, no source: at most three in a row, from memory",
  check: ({ procedure }) =>
    stepsOf(procedure).flatMap((step) => {
      const twice = step.cautions.find((one, index) =>
        step.cautions.slice(0, index).some((other) => same(one, other)),
      );
      if (step.cautions.length <= most && !twice) return [];
      return finding({
        rule: "too-many-cautions",
        severity: "advice",
        place: { mark: step.mark, field: "cautions" },
        evidence: step.cautions.map(({ hazard }) => hazard).join("\n"),
        found: twice
          ? `Step ${step.number} says “${twice.hazard}” twice.`
          : `Step ${step.number} has ${step.cautions.length} cautions before it.`,
        expected: `At most ${most}, each once.`,
        todo: "Move what holds for the whole job to the first step that needs it, or split the step.",
        source: tooManyCautions.source,
      });
    }),
  examples: [
    { says: "four", sketch: cautions(hazardsNamed("Petrol", "Dust", "Spring", "Burr")), finds: 1 },
    { says: "five", sketch: cautions(hazardsNamed("Petrol", "Dust", "Spring", "Burr", "Belt")), finds: 1 },
    {
      says: "one twice",
      sketch: cautions(hazardsNamed("The spring is wound.", "the spring is wound")),
      finds: 1,
    },
    { says: "twice among three", sketch: cautions(hazardsNamed("Dust", "Burr", "Dust")), finds: 1 },
    { says: "three", sketch: cautions(hazardsNamed("Petrol", "Dust", "Spring")), finds: 0 },
    { says: "one", sketch: cautions(hazardsNamed("Mains")), finds: 0 },
    { says: "none", sketch: cautions([]), finds: 0 },
    { says: "not yet worded", sketch: cautions(hazardsNamed("", "")), finds: 0 },
  ],
};

function hazardsNamed(...words: string[]) {
  return words.map((hazard) => ({ words: hazard }));
}

function same(one: CautionNote, other: CautionNote): boolean {
  const fold = (text: string) => text.toLowerCase().replace(/[^\p{L}\d]+/gu, "");
  return fold(one.hazard) !== "" && fold(one.hazard) === fold(other.hazard);
}
