import { wordsOf } from "#lib/mark/index.ts";
import { type Step, stepsOf } from "#lib/procedure/index.ts";
import type { View } from "./rule.ts";

/** A text that is printed with a step, and the field of the mark that it stands in. */
export interface Passage {
  step: Step;
  mark: string;
  /** A field of the mark; the instruction is `words`, also where a title was given by hand. */
  field: string;
  text: string;
  /** The instruction of a step; a paragraph below it; what a caution says to do; or a note. */
  is: "instruction" | "detail" | "avoid" | "note";
}

const kept = new WeakMap<View["procedure"], Passage[]>();

/** Texts of the steps, in the order in which they print; none for a build that is not in English. */
export function passages(view: View): Passage[] {
  const before = kept.get(view.procedure);
  if (before) return before;
  const english = /^en\b/i.test(view.procedure.language);
  const found = english ? stepsOf(view.procedure).flatMap((step) => ofStep(step, view)) : [];
  kept.set(view.procedure, found);
  return found;
}

/** The instructions, and the paragraphs that say how. */
export function instructions(view: View): Passage[] {
  return passages(view).filter(({ is }) => is === "instruction" || is === "detail");
}

function ofStep(step: Step, { marks }: View): Passage[] {
  const head = marks.get(step.mark);
  const passage = (is: Passage["is"], mark: string, field: string, text: string): Passage[] =>
    text === "" ? [] : [{ step, mark, field, text, is }];
  return [
    ...step.cautions.flatMap((one) => passage("avoid", one.mark, "avoid", one.avoid)),
    ...(head?.kind === "action" ? passage("instruction", step.mark, "words", step.title) : []),
    ...step.details.flatMap(({ mark, text }, index) =>
      passage("detail", mark, fieldOf(step, index, marks), text),
    ),
    ...step.parts.flatMap((one) => passage("note", one.mark, "words", one.note)),
    ...[...step.tools, ...step.consumables, ...step.measurements].flatMap((one) =>
      passage("note", one.mark, "note", one.note),
    ),
  ];
}

/** Which field of its mark a paragraph is: of an action made one with another, the words come before the detail. */
function fieldOf({ mark: head, details }: Step, index: number, marks: View["marks"]): "words" | "detail" {
  const { mark, text } = details[index] as Step["details"][number];
  const own = marks.get(mark);
  const first = details.findIndex((other) => other.mark === mark) === index;
  return mark !== head && first && own !== undefined && wordsOf(own) === text ? "words" : "detail";
}
