import { finding } from "#lib/finding/index.ts";
import { stepsOf } from "#lib/procedure/index.ts";
import type { Rule } from "../rule.ts";

/** A part of a step whose picture has balloons, and none for it on any picture. */
export const partNotPointedOut: Rule = {
  id: "part-not-pointed-out",
  title: "A part without a balloon",
  explanation:
    "Once a step's picture points out some of its parts by number, a reader takes it to point out all of them. A part that is on no picture has to be found by its name alone.",
  source: "ISO 6433: item references on the figure and lines of the list answer to each other",
  check: ({ procedure }) => {
    const steps = stepsOf(procedure);
    const figures = steps.flatMap((step) => step.stills);
    const shown = new Set(figures.flatMap(({ drawn }) => drawn?.numbers.map(({ number }) => number) ?? []));
    const lacking = new Map<
      number,
      { step: (typeof steps)[number]; use: (typeof steps)[number]["parts"][number] }
    >();
    for (const step of steps) {
      if (step.stills.every(({ drawn }) => !drawn || drawn.numbers.length === 0)) continue;
      for (const use of step.parts)
        if (!shown.has(use.balloon) && !lacking.has(use.balloon)) lacking.set(use.balloon, { step, use });
    }
    return [...lacking.values()].map(({ step, use }) =>
      finding({
        rule: "part-not-pointed-out",
        severity: "advice",
        place: { mark: use.mark },
        evidence: use.name,
        found: `The picture of step ${step.number} has balloons, and ${use.name || "a part"} (No. ${use.balloon}) has none on any picture.`,
        expected: "A balloon for each part that the step handles, on a picture of this step or of another.",
        todo: "Point it out on a picture that shows it, or answer why it cannot be seen.",
        source: partNotPointedOut.source,
      }),
    );
  },
  examples: [
    {
      says: "one of two parts is pointed out",
      sketch: {
        marks: [
          [1, "action", { words: "Take off the cover" }],
          [2, "part", { item: "Cover", event: "removed" }],
          [3, "part", { item: "Gasket", event: "removed" }],
        ],
        drawings: [{ mark: "action@1", items: ["name:cover"] }],
      },
      finds: 1,
    },
    {
      says: "no picture has balloons",
      sketch: {
        marks: [
          [1, "action", { words: "Take off the cover" }],
          [2, "part", { item: "Cover", event: "removed" }],
        ],
        stills: ["action@1"],
      },
      finds: 0,
    },
    {
      says: "it is pointed out in another step",
      sketch: {
        marks: [
          [1, "action", { words: "Take off the cover" }],
          [2, "part", { item: "Cover", event: "removed" }],
          [40, "action", { words: "Lift out the gear" }],
          [41, "part", { item: "Gear", event: "removed" }],
          [42, "part", { item: "Cover", event: "inspected" }],
        ],
        drawings: [
          { mark: "action@1", items: ["name:cover"] },
          { mark: "action@40", items: ["name:gear"] },
        ],
      },
      finds: 0,
    },
  ],
};
