import {
  type CharacteristicValue,
  characteristicValues,
  type Mark,
  typedOf,
  wordsOf,
} from "#lib/mark/index.ts";
import type { Entry, EntryContext } from "./entry.ts";

/** An entry, and the value of a measurement mark that it stands for. */
export interface MarkEntry {
  mark: string;
  field: CharacteristicValue;
  item: string;
  entry: Entry;
}

/** How many other measurements of the same part are looked at beside a value: the nearest before and after it. */
const mostRelated = 24;

/** The values of all measurement marks, each with what the build knows beside it. */
export function entriesOfMarks(marks: ReadonlyMap<string, Mark>): MarkEntry[] {
  const all = [...marks.values()];
  const parts = byItem(all.filter((mark) => mark.kind === "part"));
  const measurements = all.filter((mark) => mark.kind === "measurement");
  const groups = byItem(measurements);
  return measurements.flatMap((mark) => {
    const item = itemOf(mark);
    const own = item === "" ? [] : (groups.get(item) ?? []);
    return entriesOf(mark, item, parts.get(item) ?? [], nearestOf(own, mark));
  });
}

/** The part's own identity where it has one, else its name. */
const itemOf = (mark: Mark): string => mark.fields.itemId ?? wordsOf(mark, "item").toLowerCase();

function byItem(marks: readonly Mark[]): Map<string, Mark[]> {
  const groups = new Map<string, Mark[]>();
  for (const mark of marks) {
    const item = itemOf(mark);
    if (item === "") continue;
    const group = groups.get(item);
    if (group) group.push(mark);
    else groups.set(item, [mark]);
  }
  return groups;
}

function nearestOf(group: readonly Mark[], mark: Mark): Mark[] {
  if (group.length <= mostRelated) return group.filter((other) => other !== mark);
  const place = group.indexOf(mark);
  return group
    .slice(Math.max(0, place - mostRelated / 2), place + mostRelated / 2)
    .filter((other) => other !== mark);
}

function entriesOf(mark: Mark, item: string, parts: readonly Mark[], others: readonly Mark[]): MarkEntry[] {
  const filled = characteristicValues.filter((field) => typedOf(mark, field) !== "");
  return filled.map((field) => ({
    mark: mark.id,
    field,
    item,
    entry: {
      id: mark.id,
      text: typedOf(mark, field),
      what: wordsOf(mark),
      context: contextOf(mark, field, parts, others),
    },
  }));
}

function contextOf(
  mark: Mark,
  field: CharacteristicValue,
  parts: readonly Mark[],
  others: readonly Mark[],
): EntryContext {
  const measured = field === "asFound" || field === "asFitted";
  const last = (name: string): string =>
    parts.map((part) => wordsOf(part, name)).findLast((words) => words !== "") ?? "";
  const known = {
    part: wordsOf(mark, "item"),
    material: last("material"),
    fastener: last("size"),
    instrument: measured ? wordsOf(mark, "instrument") : "",
    spec: measured ? typedOf(mark, "specified") : "",
    limit: measured ? typedOf(mark, "limit") : "",
    verdict: [wordsOf(mark, "note"), field === "asFound" && putRight(mark) ? "renewed" : ""]
      .filter(Boolean)
      .join("; "),
  };
  const related = measured ? others.flatMap((other) => relatedOf(other, mark)) : [];
  const filled = Object.fromEntries(Object.entries(known).filter(([, words]) => words !== ""));
  return { ...filled, ...(related.length > 0 && { related }) };
}

/** What was found and then fitted otherwise needs no verdict of its own. */
const putRight = (mark: Mark): boolean =>
  typedOf(mark, "asFitted") !== "" && typedOf(mark, "asFitted") !== typedOf(mark, "asFound");

/** The same characteristic measured again is its history, and no contradiction. */
function relatedOf(other: Mark, mark: Mark): { what: string; text: string }[] {
  if (wordsOf(other).toLowerCase() === wordsOf(mark).toLowerCase()) return [];
  const field = (["asFitted", "asFound", "specified"] as const).find((name) => typedOf(other, name) !== "");
  return field ? [{ what: wordsOf(other), text: typedOf(other, field) }] : [];
}
