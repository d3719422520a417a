import { type BuildDocument, present } from "#lib/build/index.ts";
import { type Field, type Mark, typedOf } from "#lib/mark/index.ts";
import { allThreads } from "#lib/reference/threads/index.ts";

/** How many are offered: more than a person looks through. */
const MOST = 40;

/**
 * What may be picked for a field while it is typed: what stands in the same field of other marks, that of the same
 * part first; then the other values of this very mark's kind of thing; for a size, the threads of the tables.
 */
export function usedBefore(document: BuildDocument, mark: Mark, field: Field): string[] {
  const others = present(document.marks).filter((one) => one.id !== mark.id && one.kind === mark.kind);
  const samePart = (one: Mark) => partOf(one) !== "" && partOf(one) === partOf(mark);
  const ordered = [...others.filter(samePart), ...others.filter((one) => !samePart(one)).reverse()];
  if (field.form === "item" || field.name === "mate") return present(document.items).map((item) => item.name);
  const used = ordered.map((one) => textOf(one, field)).filter((text) => text !== "");
  return [...new Set([...used.slice(0, MOST), ...(field.name === "size" ? threadNames() : [])])];
}

function partOf(mark: Mark): string {
  return typeof mark.fields.item === "string" ? mark.fields.item.trim().toLowerCase() : "";
}

function textOf(mark: Mark, field: Field): string {
  if (field.form === "quantity") return typedOf(mark, field.name);
  const value = mark.fields[field.name];
  return typeof value === "string" ? value.trim() : "";
}

let threads: string[] | null = null;

/** The designations of every thread in the tables, said once. */
function threadNames(): string[] {
  threads ??= [...new Set(allThreads.map((thread) => thread.name))];
  return threads;
}
