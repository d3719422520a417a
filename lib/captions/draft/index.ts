/** Marks proposed from what was said: rules, their reasons, and what was decided about their drafts. */
export type { DraftOptions } from "./context.ts";
export {
  type DraftDecision,
  type DraftIdentity,
  identityOf,
  type Matched,
  matchDecisions,
} from "./decisions.ts";
export { draft } from "./draft.ts";
export { type English, englishOf } from "./english.ts";
export { type DraftMark, toDraftMarks } from "./marks.ts";
export { type PlainMark, toPlainMarks } from "./plain-form.ts";
export { type DraftRule, type Example, gistOf, kindOrder } from "./rule.ts";
export { draftRules } from "./rules.ts";
export type {
  Draft,
  DraftKind,
  LessonFields,
  MeasurementFields,
  NamedFields,
  PartFields,
  Sureness,
} from "./types.ts";
