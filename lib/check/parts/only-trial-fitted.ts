import { finding } from "#lib/finding/index.ts";
import type { Rule } from "../rule.ts";
import { assembly, atMoment, off, on, pieces } from "./words.ts";

/** A part that is on from the trial fit, and was never fitted for good. */
export const onlyTrialFitted: Rule = {
  id: "only-trial-fitted",
  title: "On from the trial only",
  explanation:
    "A dry build looks like the finished one. What went on for a trial has no sealant, no lubricant and no final torque until a later mark says that it was fitted.",
  source: "common practice, no source",
  check: ({ ledger }) =>
    !ledger.assembling
      ? []
      : ledger.accounts.flatMap(({ item, name, now, lines }) => {
          const left = now.trialOld + now.trialNew;
          const last = lines.findLast(({ act, event }) => act?.endsWith("on") && event.stage === "trial fit");
          if (left === 0 || !last) return [];
          return finding({
            rule: "only-trial-fitted",
            severity: "wrong",
            place: { mark: last.event.mark, field: "event" },
            evidence: `${item}\n${left}`,
            found: `${name}: ${pieces(left)} went on for the trial fit${atMoment(last.event)}, and no mark fits ${left === 1 ? "it" : "them"} for good.`,
            expected: "Off again after the trial, or fitted for good.",
            todo: "Mark the moment of the final fitting, with what it had and the trial had not; or mark that it came off.",
            source: onlyTrialFitted.source,
          });
        }),
  examples: [
    {
      says: "left on",
      sketch: {
        marks: [
          off(1, "Cover"),
          off(2, "Nut"),
          [3, "action", { words: "Try it", stage: "trial fit" }],
          on(4, "Cover"),
          assembly(5),
          on(6, "Nut"),
        ],
      },
      finds: 1,
    },
    {
      says: "fitted for good where it was",
      sketch: {
        marks: [
          off(1, "Cover"),
          [3, "action", { words: "Try it", stage: "trial fit" }],
          on(4, "Cover"),
          assembly(5),
          on(6, "Cover"),
        ],
      },
      finds: 0,
    },
  ],
};
