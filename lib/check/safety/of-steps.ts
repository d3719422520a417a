import { type CautionNote, type Step, stepsOf } from "#lib/procedure/index.ts";
import type { Sketch, View } from "../rule.ts";

/** The cautions of the steps; none for a build that is not in English. */
export function cautionsOf({ procedure }: View): { step: Step; caution: CautionNote }[] {
  if (!/^en\b/i.test(procedure.language)) return [];
  return stepsOf(procedure).flatMap((step) => step.cautions.map((caution) => ({ step, caution })));
}

/** A step with those cautions before it, for examples. */
export function cautions(fields: readonly Record<string, unknown>[]): Sketch {
  const avoid = "Keep clear.";
  return {
    marks: [
      ...fields.map((one, index) => [index + 1, "caution", { avoid, ...one }] as const),
      [20, "action", { words: "Turn the wheel." }] as const,
    ],
  };
}
