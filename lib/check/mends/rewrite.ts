import { type BuildDocument, present } from "#lib/build/index.ts";
import { type Mark, wordsOf } from "#lib/mark/index.ts";
import { compile, stepsOf } from "#lib/procedure/index.ts";
import type { MendedRow } from "./index.ts";

/** The title given to a step by hand, where it prints in place of the words of its mark: not where that is merged. */
function titleEdit(document: BuildDocument, mark: string) {
  const title = present(document.edits).find(
    (edit) => edit.edit === "title" && edit.markId === mark && edit.value.trim() !== "",
  );
  return title && stepsOf(compile(document)).some((step) => step.mark === mark) ? title : undefined;
}

/** A text of a mark as it prints. */
export function printed(document: BuildDocument, mark: Mark, field: string): string {
  const edit = field === "words" ? titleEdit(document, mark.id) : undefined;
  return edit ? edit.value.trim() : wordsOf(mark, field);
}

/**
 * Writes another text where the printed one came from: into the title given by hand, else into the mark. Hand
 * edits made on the old words are taken along, since the meaning is the same.
 */
export function rewritten(
  document: BuildDocument,
  mark: Mark,
  field: string,
  text: string,
  also: Record<string, unknown> = {},
): MendedRow[] {
  const title = field === "words" ? titleEdit(document, mark.id) : undefined;
  const fields = { ...mark.fields, ...also, ...(title ? {} : { [field]: text }) };
  const marks: MendedRow[] =
    title && Object.keys(also).length === 0 ? [] : [{ table: "mark", row: { ...mark, fields } }];
  if (title) return [...marks, { table: "edit", row: { ...title, value: text } }];
  if (field !== "words") return marks;
  const edits = present(document.edits)
    .filter((edit) => edit.markId === mark.id && edit.basis.trim() === wordsOf(mark))
    .map((edit): MendedRow => ({ table: "edit", row: { ...edit, basis: text } }));
  return [...marks, ...edits];
}

export function markOf(document: BuildDocument, id: string | undefined): Mark | undefined {
  return present(document.marks).find((mark) => mark.id === id);
}
