import { finding } from "#lib/finding/index.ts";
import { type Step, stepsOf } from "#lib/procedure/index.ts";
import { type UsualCaution, usualCautions } from "#lib/reference/hazards/index.ts";
import { passages } from "../passages.ts";
import type { Rule } from "../rule.ts";
import { fires, silent } from "../wording/say.ts";

/** A known hazard, met before anybody warns of it. */
export const hazardWithoutCaution: Rule = {
  id: "hazard-without-caution",
  title: "A known hazard with no caution before it",
  explanation:
    "The message stands before the act, or it comes too late. Once given, it holds for the later steps with the same hazard. A step that only rules the thing out (“no compressed air”) needs none.",
  source: "ANSI Z535.6, from public summaries: the message precedes the step",
  check: (view) => {
    if (passages(view).length === 0) return [];
    const steps = stepsOf(view.procedure).map((step) => ({ ...step, text: textOf(step) }));
    return usualCautions.flatMap((hazard) => {
      const met = steps.find((step) => meets(step, hazard));
      const warned = steps.find((step) => warns(step, hazard));
      if (!met || (warned && warned.number <= met.number)) return [];
      return finding({
        rule: "hazard-without-caution",
        severity: "doubtful",
        place: { mark: met.mark, field: `caution ${hazard.name}` },
        evidence: `${hazard.name}\n${met.title}\n${warned?.number ?? ""}`,
        found: `Step ${met.number}, “${met.title}”, meets ${lowerFirst(hazard.name)}; ${warned ? `the caution comes only with step ${warned.number}` : "no caution speaks of it"}.`,
        expected: "The caution with this step or one before it.",
        todo: warned ? "Move the caution to this step, or answer why it can wait." : todoFor(hazard),
        source: hazard.source,
      });
    });
  },
  examples: [
    ...fires(
      "Wash the drip tray with petrol.",
      "Blow the oilways through with compressed air.",
      "Plug the set into the mains.",
      "Lower the casting into hydrochloric acid.",
      "Compress the valve spring with the tool.",
      "Wipe the bore with acetone.",
      "Etch the plate in nitric acid.",
      "Lower the engine into the frame with the hoist.",
      "Peel off the old lagging.",
    ),
    {
      says: "the caution comes a step too late",
      sketch: {
        marks: [
          [1, "action", { words: "Wash the bowl with petrol." }],
          [50, "caution", { words: "Petrol vapour catches fire.", avoid: "Work outdoors." }],
          [52, "action", { words: "Rinse the bowl with petrol." }],
        ],
      },
      finds: 1,
    },
    {
      says: "goggles against a spring say nothing of the acid",
      sketch: {
        marks: [
          [1, "caution", { words: "The clip can jump.", avoid: "Wear goggles over the eyes." }],
          [2, "action", { words: "Lower the casting into hydrochloric acid." }],
        ],
      },
      finds: 1,
    },
    {
      says: "warned before",
      sketch: {
        marks: [
          [1, "caution", { words: "Petrol vapour catches fire.", avoid: "Work outdoors." }],
          [2, "action", { words: "Wash the bowl with petrol." }],
          [50, "action", { words: "Rinse the bowl with petrol." }],
        ],
      },
      finds: 0,
    },
    ...silent(
      "Wipe the jets. Use no compressed air.",
      "Wash the chain in paraffin, never in petrol.",
      "Unhook the carriage spring.",
      "Disconnect the set from the mains.",
      "Lift the tank off.",
      // What the log offers a caution for, and the restorer alone can tell: none of it is a finding.
      "Peel the old gasket off.",
      "Put penetrating spray on the nuts.",
      "Unhook the hoist from its rail.",
      "Take the brake shoes off.",
    ),
  ],
};

const ruledOut = /\b(?:no|not|never|don't|without|nor|disconnect\w*|unplug\w*|isolate\w*|pull)\b[^.;]*$/i;

/** What a step does and with what, in one text. */
function textOf(step: Step): string {
  return [
    step.title,
    ...step.details.map(({ text }) => text),
    ...step.consumables.map(({ name }) => name),
  ].join(". ");
}

function todoFor({ defer }: UsualCaution): string {
  const whose = defer ?? "Where the law or a licensed trade decides, say so.";
  return `Mark a caution: what is dangerous, what can happen, how to avoid it, with its source; the log offers the usual one. ${whose}`;
}

function lowerFirst(name: string): string {
  return name.charAt(0).toLowerCase() + name.slice(1);
}

function meets({ text }: { text: string }, { needed }: UsualCaution): boolean {
  const match = needed?.exec(text);
  return match != null && !ruledOut.test(text.slice(0, match.index));
}

function warns(step: Step, { said }: UsualCaution): boolean {
  return step.cautions.some((one) => said.test(`${one.hazard} ${one.consequence} ${one.avoid}`));
}
