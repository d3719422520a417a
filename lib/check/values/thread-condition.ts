import { finding } from "#lib/finding/index.ts";
import type { Rule, Sketch } from "../rule.ts";
import { torquesOf } from "./torques.ts";

const condition =
  /\b(?:dry|dri?ed|oil(?:ed)?|greased?|lubricat\w*|wet|threadlock|thread locker|anti-?seize|copper slip|moly\w*|graphite|plated|waxed|sealant|as the maker says)\b/i;

/** A torque that does not say how the thread was. */
export const threadCondition: Rule = {
  id: "thread-condition",
  title: "A torque, and nothing of the thread",
  explanation:
    "The same torque stretches an oiled bolt far more than a dry one. A figure that does not say “dry” or “oiled” is believed by both readers and right for one.",
  source: "common practice, no source: T = K d F, with K about 0.20 dry and 0.15 oiled, from memory",
  check: (view) =>
    torquesOf(view)
      .filter(({ said }) => !condition.test(said))
      .map(({ mark, step, what }) =>
        finding({
          rule: "thread-condition",
          severity: "doubtful",
          place: { mark: mark.id, field: "words" },
          evidence: what,
          found: `Step ${step.number}, “${what}”: nothing says whether the thread is dry or oiled.`,
          expected: "Dry, oiled, or what stands on the thread, as the source of the figure means it.",
          todo: "Look in the source of the figure, and write it to the measurement.",
          source: threadCondition.source,
        }),
      ),
  examples: [
    { says: "head nuts", sketch: torque("Head nuts, torque", "24 lbf ft"), finds: 1 },
    { says: "in newton metres", sketch: torque("Clamp bolt", "9 N m"), finds: 1 },
    { says: "a gland", sketch: torque("Gland nut, torque", "40 lbf in"), finds: 1 },
    { says: "only clean", sketch: torque("Bed bolts, torque, thread clean", "70 N m"), finds: 1 },
    { says: "dry", sketch: torque("Head nuts, torque, thread dry", "24 lbf ft"), finds: 0 },
    {
      says: "oiled, in the step",
      sketch: torque("Head nuts, torque", "24 lbf ft", "Oil the threads."),
      finds: 0,
    },
    { says: "threadlock", sketch: torque("Clamp bolt", "9 N m", "One drop of threadlock."), finds: 0 },
    { says: "a turning torque", sketch: torque("Torque to turn the shaft", "0.4 N m"), finds: 0 },
  ],
};

function torque(words: string, typed: string, detail = ""): Sketch {
  return {
    marks: [
      [1, "action", { words: "Tighten them.", detail }],
      [2, "measurement", { words, specified: { typed }, source: "published" }],
    ],
  };
}
