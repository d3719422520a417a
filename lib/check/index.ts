import type { BuildDocument } from "#lib/build/index.ts";
import { present } from "#lib/build/index.ts";
import { withAnswers, worstFirst } from "#lib/finding/index.ts";
import { type CheckedProcedure, ledgerOf, type Procedure } from "#lib/procedure/index.ts";
import { actionWithoutWords } from "./action-without-words.ts";
import { cautionUnrated } from "./caution-unrated.ts";
import { cautionWithoutWayOut } from "./caution-without-way-out.ts";
import { figureRules } from "./figures/index.ts";
import { filmList } from "./film-list.ts";
import { measurementRules } from "./measurement/over-marks.ts";
import { noUnit } from "./no-unit.ts";
import { notInFilm } from "./not-in-film.ts";
import { openDeferred } from "./open-deferred.ts";
import { orphanedEdit } from "./orphaned-edit.ts";
import { partRules } from "./parts/index.ts";
import { reportOpen } from "./report-open.ts";
import type { Rule } from "./rule.ts";
import { safetyRules } from "./safety/index.ts";
import { stepWithoutStill } from "./step-without-still.ts";
import { stillWithoutWords } from "./still-without-words.ts";
import { structureRules } from "./structure/index.ts";
import { unsortedMark } from "./unsorted-mark.ts";
import { valueWithoutSource } from "./value-without-source.ts";
import { jointRules } from "./values/index.ts";
import { wordingRules } from "./wording/index.ts";

/** Every rule, in the order in which they speak. */
export const rules: readonly Rule[] = [
  // nothing left loose
  openDeferred,
  unsortedMark,
  orphanedEdit,
  reportOpen,
  // parts off = parts on
  ...partRules,
  // people and things
  cautionWithoutWayOut,
  cautionUnrated,
  ...safetyRules,
  // numbers
  noUnit,
  valueWithoutSource,
  ...measurementRules,
  ...jointRules,
  // what a stranger needs
  actionWithoutWords,
  stepWithoutStill,
  stillWithoutWords,
  ...figureRules,
  // the film
  filmList,
  notInFilm,
  ...structureRules,
  // the words
  ...wordingRules,
];

/** What the rules say of a procedure, worst first, with the restorer's answers where they hold. */
export function check(procedure: Procedure, document: BuildDocument): CheckedProcedure {
  const marks = new Map(present(document.marks).map((mark) => [mark.id, mark]));
  const view = { document, procedure, marks, ledger: ledgerOf(procedure, document) };
  const found = rules.flatMap((rule) => rule.check(view));
  return { procedure, findings: worstFirst(withAnswers(found, present(document.answers))) };
}

export { checkEntry, type Entry, type EntryFinding, entryRules } from "./measurement/index.ts";
export { type MendedRow, type MendGiven, mend } from "./mends/index.ts";
export type { Example, Rule, Sketch, View } from "./rule.ts";
export { drawSketch } from "./sketch.ts";
