import { type BuildDocument, present } from "#lib/build/index.ts";
import { type Mark, newMark, wordsOf } from "#lib/mark/index.ts";
import { compile, type Step, setEdit, stepsOf } from "#lib/procedure/index.ts";
import { commandsOf } from "../wording/two-commands.ts";
import type { MakeMend, MendedRow, MendGiven } from "./index.ts";
import { markOf, printed, rewritten } from "./rewrite.ts";

/**
 * Makes a step of each command. The first keeps mark and details; what should be seen afterwards goes to the
 * last. A later command begins where the film first shows one of its parts, else right after the one before.
 */
export const splitStep: MakeMend = (document, { place }, _mend, given) => {
  const head = markOf(document, place.mark);
  const step = head && stepsOf(compile(document)).find((one) => one.mark === head.id);
  if (!head || !step) return [];
  const [first, ...others] = commandsOf(printed(document, head, "words"));
  if (first === undefined || others.length === 0) return [];
  const later = newActions(document, head, step, others, given);
  const result = wordsOf(head, "result");
  const last = later.at(-1);
  if (last && result !== "") last.fields.result = result;
  const rows: MendedRow[] = [
    ...rewritten(document, head, "words", first, result === "" ? {} : { result: undefined }),
    ...later.map((row): MendedRow => ({ table: "mark", row })),
  ];
  return [...rows, ...keptInOrder(withRows(document, rows), head, step, later, given)];
};

function newActions(
  document: BuildDocument,
  head: Mark,
  step: Step,
  commands: string[],
  given: MendGiven,
): Mark[] {
  let before = head;
  return commands.map((words) => {
    const start = firstPartOf(document, step, words, before);
    const { sittingId, recordingId, at } = start ?? before;
    const rank = start ? start.rank - 0.5 : rankAfter(document, before);
    const fields = { v: head.fields.v, words };
    before = newMark({
      id: given.newId(),
      buildId: head.buildId,
      sittingId,
      recordingId,
      at,
      rank,
      kind: "action",
      fields,
    });
    return before;
  });
}

/** The first part mark of a step, later than a mark, whose part is named in the words. */
function firstPartOf(document: BuildDocument, step: Step, words: string, after: Mark): Mark | undefined {
  if (after.at === null) return undefined;
  const low = words.toLowerCase();
  return step.parts
    .map((part) => ({
      mark: markOf(document, part.mark),
      name: part.name.toLowerCase().split(/\s+/).at(-1) ?? "",
    }))
    .find(
      ({ mark, name }) =>
        name !== "" &&
        low.includes(name) &&
        mark?.recordingId === after.recordingId &&
        (mark.at ?? 0) > (after.at as number),
    )?.mark;
}

/** A rank between a mark and the next one of its moment. */
function rankAfter(document: BuildDocument, mark: Mark): number {
  const next = present(document.marks)
    .filter(
      (one) => one.sittingId === mark.sittingId && one.recordingId === mark.recordingId && one.at === mark.at,
    )
    .map((one) => one.rank)
    .filter((rank) => rank > mark.rank);
  return next.length > 0 ? (mark.rank + Math.min(...next)) / 2 : mark.rank + 1;
}

/** Edits that keep the new steps behind the old one where hand edits have moved it from the place of its time. */
function keptInOrder(
  document: BuildDocument,
  head: Mark,
  step: Step,
  later: Mark[],
  { now }: MendGiven,
): MendedRow[] {
  const procedure = compile(document);
  const steps = stepsOf(procedure);
  // A step that was put after itself keeps the place of its time, and so do those made of it.
  const circling = procedure.orphans.some(({ mark, why }) => mark === head.id && why === "goes in a circle");
  const rows: MendedRow[] = [];
  let before = head.id;
  for (const mark of later) {
    const index = steps.findIndex((one) => one.mark === mark.id);
    const put = (name: "stage" | "after", value: string) =>
      rows.push(
        ...setEdit(document, mark.id, name, value, now).map((row): MendedRow => ({ table: "edit", row })),
      );
    if (steps[index]?.stage !== step.stage) put("stage", step.stage);
    if (steps[index - 1]?.mark !== before && !circling) put("after", before);
    before = mark.id;
  }
  return rows;
}

/** The document with those rows written. */
export function withRows(document: BuildDocument, rows: readonly MendedRow[]): BuildDocument {
  const marks = new Map(document.marks.map((row) => [row.id, row]));
  const edits = new Map(document.edits.map((row) => [row.id, row]));
  for (const one of rows) {
    if (one.table === "mark") marks.set(one.row.id, one.row);
    else edits.set(one.row.id, one.row);
  }
  return { ...document, marks: [...marks.values()], edits: [...edits.values()] };
}
