import { finding } from "#lib/finding/index.ts";
import { type Step, stepsOf } from "#lib/procedure/index.ts";
import { isVerb, readSentence } from "../english/index.ts";
import { passages } from "../passages.ts";
import type { Rule } from "../rule.ts";
import { fires, silent } from "../wording/say.ts";

const final = new Set(
  "cut saw drill bore counterbore ream grind mill skim hone machine weld braze rivet stake peen".split(" "),
);
const checking =
  /\b(?:check|measure|mark|scribe|try|trial|test|compare|confirm|verify|dry run|offer|size|template|gauge|centre-pop|centre pop|line|old one|copy|clamp)/i;

/** Something that cannot be undone, with nothing before it that would catch a mistake. */
export const noWayBack: Rule = {
  id: "no-way-back",
  title: "No way back, and no check before",
  explanation:
    "What is drilled, cut, ground or staked stays so. A measurement, a mark or a trial before it is where a mistake can still be caught.",
  source: "US DOE-STD-1029, writer's guide: verification before what cannot be undone (from memory)",
  check: (view) => {
    if (passages(view).length === 0) return [];
    const steps = stepsOf(view.procedure);
    return steps.flatMap((step, index) => {
      const verb = firstVerb(step.title);
      const before = steps[index - 1];
      if (!final.has(verb) || looked(step) || (before !== undefined && looked(before))) return [];
      return finding({
        rule: "no-way-back",
        severity: "advice",
        place: { mark: step.mark, field: "words" },
        evidence: step.title,
        found: `Step ${step.number}: “${step.title}” cannot be undone, and nothing is checked before it.`,
        expected: "A measurement, a mark or a trial in this step or the one before.",
        todo: "Write what you looked at before you began, or answer why a slip does no harm.",
        source: noWayBack.source,
      });
    });
  },
  examples: [
    ...fires(
      "Drill the second hole through the frame.",
      "Ream the bush to 7/16 in.",
      "Cut the new spindle to length.",
      "Stake the nut in its slot.",
    ),
    ...silent(
      "Drill the hole at the mark.",
      "Cut the gasket to the template.",
      "Press the bush in.",
      "File the burr off the hook.",
    ),
    {
      says: "measured in the step before",
      sketch: {
        marks: [
          [1, "action", { words: "Measure the spindle in three places." }],
          [40, "action", { words: "Ream the bush to 7/16 in." }],
        ],
      },
      finds: 0,
    },
  ],
};

function firstVerb(title: string): string {
  const verb = readSentence(title).command?.verb ?? "";
  return isVerb(verb) ? verb : "";
}

/** Whether a step measures, marks out or tries. */
function looked(step: Step): boolean {
  return (
    step.measurements.length > 0 ||
    checking.test(`${step.title} ${step.details.map(({ text }) => text).join(" ")}`)
  );
}
