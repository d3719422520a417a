import { finding } from "#lib/finding/index.ts";
import { wordsOf } from "#lib/mark/index.ts";
import type { Rule, Sketch } from "../rule.ts";
import { torquesOf } from "./torques.ts";

/** A torque that somebody guessed. */
export const guessOnAJoint: Rule = {
  id: "guess-on-a-joint",
  title: "A guess on a joint",
  explanation:
    "Printed beside published ones, a guessed torque looks as good as they do. A joint that is torqued at all is one that matters.",
  source: "common practice, no source",
  check: (view) =>
    torquesOf(view)
      .filter(({ mark }) => wordsOf(mark, "source") === "guess")
      .map(({ mark, step, what }) =>
        finding({
          rule: "guess-on-a-joint",
          severity: "doubtful",
          place: { mark: mark.id, field: "source" },
          evidence: what,
          found: `Step ${step.number}, “${what}”: the torque is a guess.`,
          expected: "A published figure, or what is usual for that thread, called so.",
          todo: "Look the thread up in the book of tables, or say in the step that the figure is a guess and why.",
          source: guessOnAJoint.source,
        }),
      ),
  examples: [
    { says: "head nuts", sketch: joint("Head nuts", "24 lbf ft", "guess"), finds: 1 },
    { says: "flywheel", sketch: joint("Flywheel bolt, oiled", "90 N m", "guess"), finds: 1 },
    { says: "clamp", sketch: joint("Needle clamp", "8 lbf in", "guess"), finds: 1 },
    { says: "spindle nut", sketch: joint("Spindle nut", "15 Nm", "guess"), finds: 1 },
    { says: "published", sketch: joint("Head nuts", "24 lbf ft", "published"), finds: 0 },
    { says: "common practice", sketch: joint("Clamp", "9 N m", "common practice"), finds: 0 },
    { says: "a guessed length joins nothing", sketch: joint("Lever, length", "40 mm", "guess"), finds: 0 },
    { says: "no source is another rule's", sketch: joint("Head nuts", "24 lbf ft", ""), finds: 0 },
  ],
};

function joint(words: string, typed: string, source: string): Sketch {
  return {
    marks: [
      [1, "action", { words: "Tighten the joint." }],
      [2, "measurement", { words, specified: { typed }, source }],
    ],
  };
}
