import { present } from "#lib/build/index.ts";
import { finding } from "#lib/finding/index.ts";
import type { Mark } from "#lib/mark/index.ts";
import { type Step, stepsOf } from "#lib/procedure/index.ts";
import type { Rule, Sketch, View } from "../rule.ts";

/** A caution marked when everything in its step had been done. */
export const cautionAfterAct: Rule = {
  id: "caution-after-act",
  title: "A caution after the act",
  explanation:
    "A caution belongs to the action that follows within the time set for it, else to the one before. One that was marked after the last part or measurement of its step warns of something that is over, or was meant for the next step and came too early for it.",
  source: "ANSI Z535.6, from public summaries: the message precedes the step",
  check: (view) => {
    const byHand = new Set(
      present(view.document.edits)
        .filter(({ edit }) => edit === "belongs")
        .map(({ markId }) => markId),
    );
    return stepsOf(view.procedure).flatMap((step) =>
      step.cautions
        .filter(({ mark }) => !byHand.has(mark) && comesLast(mark, step, view))
        .map((caution) =>
          finding({
            rule: "caution-after-act",
            severity: "doubtful",
            place: { mark: caution.mark, field: "at" },
            evidence: `${caution.hazard}\n${step.mark}`,
            found: `“${caution.hazard}” was marked after all that is done in step ${step.number}, “${step.title}”, and prints with it.`,
            expected: "A caution with the step that it warns of.",
            todo: "If it is meant for the next step, move it there; else answer that it stands where it should.",
            source: cautionAfterAct.source,
          }),
        ),
    );
  },
  examples: [
    { says: "a minute after the nut was off", sketch: at(70), finds: 1 },
    { says: "half a minute before the next action", sketch: at(70, 100), finds: 1 },
    { says: "right after the part", sketch: at(11), finds: 1 },
    { says: "too early for the next by a second", sketch: at(79, 100), finds: 1 },
    { says: "before the action", sketch: at(2), finds: 0 },
    { says: "shortly before the next action", sketch: at(90, 100), finds: 0 },
    { says: "while it is done", sketch: at(7), finds: 0 },
    {
      says: "put there by hand",
      sketch: {
        ...at(70),
        edits: [{ mark: "caution@70", edit: "belongs", value: "action@5", basis: "Burr" }],
      },
      finds: 0,
    },
  ],
};

/** Whether a caution lies after every part and measurement of its step, on the same recording. */
function comesLast(id: string, step: Step, { marks }: View): boolean {
  const own = marks.get(id);
  const acts = step.marks
    .map((one) => marks.get(one))
    .filter((mark): mark is Mark => mark?.kind === "part" || mark?.kind === "measurement");
  if (!own || own.at === null || acts.length === 0) return false;
  const moment = own.at;
  return acts.every((act) => act.recordingId === own.recordingId && act.at !== null && act.at < moment);
}

/** A step with a part, a caution at that second, and another step. */
function at(caution: number, next = 200): Sketch {
  return {
    marks: [
      [5, "action", { words: "Undo the nut." }],
      [10, "part", { item: "Nut", event: "removed" }],
      [caution, "caution", { words: "Burr", avoid: "Wear gloves" }],
      [next, "action", { words: "Lift the cover off." }],
    ],
  };
}
