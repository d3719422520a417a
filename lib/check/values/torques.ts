import type { Mark } from "#lib/mark/index.ts";
import { characteristicValues, typedOf, wordsOf } from "#lib/mark/index.ts";
import { type Step, stepsOf } from "#lib/procedure/index.ts";
import type { View } from "../rule.ts";

/** A tightening torque that was measured or specified, and the step it belongs to. */
export interface Torque {
  mark: Mark;
  step: Step;
  what: string;
  /** Everything that is said with it: the measurement, its step's words and what the step lists. */
  said: string;
}

const torqueUnit =
  /\b(?:lbf[ ·]?(?:ft|in)|lb[ -]?(?:ft|in)|(?:ft|in)[ -]?lbs?f?|kgf?[ ·]?c?m|c?N[ ·]?m|Nm)\b/i;

/** The torques of fasteners in a procedure's steps; none for a build that is not in English. */
export function torquesOf({ procedure, marks }: View): Torque[] {
  if (!/^en\b/i.test(procedure.language)) return [];
  return stepsOf(procedure).flatMap((step) =>
    step.measurements.flatMap((line) => {
      const mark = marks.get(line.mark);
      return mark && isTorque(mark)
        ? [{ mark, step, what: line.what || line.part, said: saidWith(mark, step) }]
        : [];
    }),
  );
}

/** A driving torque ("torque to turn the shaft") tightens nothing. */
function isTorque(mark: Mark): boolean {
  const values = characteristicValues.map((field) => typedOf(mark, field)).join(" ");
  const words = `${wordsOf(mark)} ${wordsOf(mark, "item")}`;
  return (
    torqueUnit.test(values) && !/\b(?:turning|drag|friction|starting|running|to turn|slip)\b/i.test(words)
  );
}

function saidWith(mark: Mark, step: Step): string {
  return [
    ...["words", "note", "sourceNote"].map((field) => wordsOf(mark, field)),
    step.title,
    ...step.details.map(({ text }) => text),
    ...step.consumables.map(({ name }) => name),
    ...step.parts.map(({ note }) => note),
  ].join(" ");
}
