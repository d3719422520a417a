import { type BuildDocument, type Edit, type EditName, newEdit } from "#lib/build/index.ts";
import { type Stage, stages, wordsOf } from "#lib/mark/index.ts";
import { compile, stepsOf } from "./compile.ts";
import { layOn, splitsOf } from "./overlay.ts";
import { place } from "./place.ts";
import type { Step } from "./tree.ts";

/**
 * Hand edits of a procedure, as the restorer makes them. Each function gives the rows to write: new edits,
 * changed ones, or ones struck out (`gone` set to `now`). They never touch a mark.
 */
export type EditRows = Edit[];

/** One edit of a mark: laid on with `value`, or taken back with null. A mark has one edit of a kind. */
export function setEdit(
  document: BuildDocument,
  markId: string,
  edit: EditName,
  value: string | null,
  now: string,
): EditRows {
  const id = `${edit}-${markId}`;
  const old = document.edits.find((row) => row.id === id);
  if (value === null) return old && old.gone === null ? [{ ...old, gone: now }] : [];
  const mark = document.marks.find((row) => row.id === markId);
  const basis = mark ? wordsOf(mark) : (old?.basis ?? "");
  const row = old ?? newEdit({ id, buildId: document.build.id, markId, edit });
  return [{ ...row, value, basis, gone: null }];
}

/** Moves a step one place up (−1) or down (1); past the end of its stage it goes over into the next stage there is. */
export function moveStep(document: BuildDocument, stepMark: string, by: -1 | 1, now: string): EditRows {
  const steps = stepsOf(compile(document));
  const index = steps.findIndex((step) => step.mark === stepMark);
  const step = steps[index];
  const other = steps[index + by];
  if (!step) return [];
  if (!other || other.stage !== step.stage) {
    const stage = other?.stage ?? neighbourStage(step.stage, by);
    return stage ? intoStage(document, steps, step, stage, by, now) : [];
  }
  const wanted = steps.filter((one) => one.stage === step.stage).map((one) => one.mark);
  const place = wanted.indexOf(stepMark);
  wanted.splice(place, 1);
  wanted.splice(place + by, 0, stepMark);
  return reorder(document, wanted, now);
}

function neighbourStage(stage: Stage, by: -1 | 1): Stage | undefined {
  return stages[stages.indexOf(stage) + by];
}

function intoStage(
  document: BuildDocument,
  steps: Step[],
  step: Step,
  stage: Stage,
  by: -1 | 1,
  now: string,
): EditRows {
  const rows = setEdit(document, step.mark, "stage", stage, now);
  const there = steps.filter((one) => one.stage === stage).map((one) => one.mark);
  const wanted = by === 1 ? [step.mark, ...there] : [...there, step.mark];
  return latest([...rows, ...reorder(withEdits(document, rows), wanted, now)]);
}

/** Puts a step under another stage, where its time puts it there. */
export function restage(document: BuildDocument, stepMark: string, stage: Stage, now: string): EditRows {
  return [
    ...setEdit(document, stepMark, "after", null, now),
    ...setEdit(document, stepMark, "stage", stage, now),
  ];
}

/** Makes a step one with the step before it in its stage. Nothing where it is the first. */
export function mergeWithPrevious(document: BuildDocument, stepMark: string, now: string): EditRows {
  const steps = stepsOf(compile(document));
  const index = steps.findIndex((step) => step.mark === stepMark);
  const previous = steps[index - 1];
  if (!previous || previous.stage !== steps[index]?.stage) return [];
  return [
    ...setEdit(document, stepMark, "after", null, now),
    ...setEdit(document, stepMark, "merged", previous.mark, now),
  ];
}

/** Begins a new step at a mark that is not the first of its step, called by that mark's words. */
export function splitAt(document: BuildDocument, markId: string, now: string): EditRows {
  const step = stepsOf(compile(document)).find((one) => one.marks.includes(markId));
  const mark = document.marks.find((one) => one.id === markId);
  if (!mark || step?.mark === markId) return [];
  if (mark.kind === "action") return setEdit(document, markId, "merged", null, now);
  return [...setEdit(document, markId, "belongs", null, now), ...setEdit(document, markId, "split", "", now)];
}

/** Moves a mark to the step before (−1) or after (1) its own; one from the tray goes to the first or last step. */
export function moveMark(document: BuildDocument, markId: string, by: -1 | 1, now: string): EditRows {
  const steps = stepsOf(compile(document));
  const own = steps.findIndex((step) => step.marks.includes(markId));
  if (own >= 0 && steps[own]?.mark === markId) return [];
  const target = own >= 0 ? steps[own + by] : by === 1 ? steps[0] : steps.at(-1);
  return target ? setEdit(document, markId, "belongs", target.mark, now) : [];
}

/**
 * Few `after` edits that give the steps of one stage the wanted order: the first step that stands where another
 * should is set right by tying the wanted one to its predecessor and, where that is not enough, the one in the
 * way to its own. Tied one by one, any order can be reached.
 */
export function reorder(document: BuildDocument, wanted: readonly string[], now: string): EditRows {
  const rows: EditRows = [];
  const tie = (id: string) => {
    const before = wanted[wanted.indexOf(id) - 1] ?? "";
    rows.push(...setEdit(withEdits(document, rows), id, "after", before, now));
  };
  const firstWrong = () => {
    const order = orderOf(withEdits(document, rows), wanted);
    const index = wanted.findIndex((id, place) => order[place] !== id);
    return index < 0 ? null : { wanted: wanted[index] as string, inTheWay: order[index] as string };
  };
  for (let turn = 0; turn < wanted.length; turn++) {
    const wrong = firstWrong();
    if (!wrong) break;
    tie(wrong.wanted);
    if (firstWrong()?.wanted === wrong.wanted) tie(wrong.inTheWay);
  }
  return latest(rows);
}

/** Of several rows with one id, the last. */
function latest(rows: EditRows): EditRows {
  return [...new Map(rows.map((row) => [row.id, row])).values()];
}

function orderOf(document: BuildDocument, wanted: readonly string[]): string[] {
  const { steps } = layOn(document, place(document, splitsOf(document)));
  return steps.map((step) => step.head.id).filter((id) => wanted.includes(id));
}

/** The document with those edit rows written. */
export function withEdits(document: BuildDocument, rows: readonly Edit[]): BuildDocument {
  const written = new Map(rows.map((row) => [row.id, row]));
  const kept = document.edits.filter((row) => !written.has(row.id));
  return { ...document, edits: [...kept, ...written.values()] };
}
