import { finding } from "#lib/finding/index.ts";
import type { Rule } from "../rule.ts";

/** A procedure that puts together and stops there. */
export const neverProved: Rule = {
  id: "never-proved",
  title: "Put together, and never tried",
  explanation:
    "After the last nut come the things that are forgotten: tools counted, guards back, a turn by hand, a look for leaks, what a good one sounds like. Without them a reader does not know when the job is done.",
  source: "common practice, no source",
  check: ({ procedure }) => {
    const assembled = procedure.stages.find(({ stage }) => stage === "assemble");
    const proved = procedure.stages.some(({ stage }) => stage === "prove" || stage === "set up");
    const last = assembled?.steps.at(-1);
    if (!last || proved) return [];
    return [
      finding({
        rule: "never-proved",
        severity: "advice",
        place: { mark: last.mark, field: "stage" },
        evidence: last.title,
        found: `The procedure ends with the assembly, at step ${last.number}.`,
        expected: "At least one step that sets up or proves what was put together.",
        todo: "Add how it is tried, and what shows that it is right.",
        source: neverProved.source,
      }),
    ];
  },
  examples: [
    { says: "ends with the last nut", sketch: staged("strip", "assemble"), finds: 1 },
    { says: "assembly alone", sketch: staged("assemble"), finds: 1 },
    { says: "inspected before is not proved after", sketch: staged("inspect", "assemble"), finds: 1 },
    { says: "a trial fit is no proof", sketch: staged("trial fit", "assemble"), finds: 1 },
    { says: "proved", sketch: staged("assemble", "prove"), finds: 0 },
    { says: "set up", sketch: staged("assemble", "set up"), finds: 0 },
    { says: "only taken apart", sketch: staged("strip", "clean"), finds: 0 },
    { says: "nothing yet", sketch: {}, finds: 0 },
  ],
};

function staged(...stages: string[]): Rule["examples"][number]["sketch"] {
  return {
    marks: stages.map(
      (stage, index) => [index * 40 + 1, "action", { words: "Turn the wheel.", stage }] as const,
    ),
  };
}
