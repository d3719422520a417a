import { type BuildDocument, clocksOf } from "#lib/build/index.ts";
import { compareMarks, type Mark, typedOf, wordsOf } from "#lib/mark/index.ts";

/** A measurement mark and what of the build stands beside it. */
export interface Beside {
  mark: Mark;
  /** The part's own identity where it has one, else its name in small letters; "" where there is none. */
  item: string;
  /** The part marks of its part, in order. */
  parts: readonly Mark[];
  /** Other measurements of the same part, the nearest ones, in order; then those of its mate. */
  others: readonly Mark[];
  /** Whether something was done later about what was found. */
  putRight: boolean;
}

/** How many other measurements of the same part are looked at beside a value: the nearest before and after it. */
const mostRelated = 24;

/** Every measurement mark of a build with what stands beside it, in the order of marks. */
export function measurementsOf(document: BuildDocument, marks: ReadonlyMap<string, Mark>): Beside[] {
  const told = [...marks.values()].filter((mark) => mark.kind === "measurement" || mark.kind === "part");
  told.sort(compareMarks(clocksOf(document)));
  const groups = byItem(told);
  const items = new Map(told.map((mark) => [nameOf(mark, "item"), itemOf(mark)]));
  const groupOf = (item: string | undefined) => (item ? groups.get(item) : undefined);
  return told
    .filter((mark) => mark.kind === "measurement")
    .map((mark) =>
      beside(mark, groupOf(itemOf(mark)) ?? [mark], groupOf(items.get(nameOf(mark, "mate"))) ?? []),
    );
}

function byItem(marks: readonly Mark[]): Map<string, Mark[]> {
  const groups = new Map<string, Mark[]>();
  for (const mark of marks) {
    const group = groups.get(itemOf(mark));
    if (group) group.push(mark);
    else groups.set(itemOf(mark), [mark]);
  }
  return groups;
}

const nameOf = (mark: Mark, field: "item" | "mate"): string => wordsOf(mark, field).toLowerCase();
const itemOf = (mark: Mark): string => mark.fields.itemId ?? nameOf(mark, "item");

function beside(mark: Mark, group: readonly Mark[], mate: readonly Mark[]): Beside {
  const measurements = group.filter((other) => other.kind === "measurement");
  const ofMate = mate.filter((other) => other.kind === "measurement" && !group.includes(other));
  return {
    mark,
    item: itemOf(mark),
    parts: group.filter((other) => other.kind === "part"),
    others: [...nearestOf(measurements, mark), ...ofMate.slice(0, mostRelated)],
    putRight:
      fittedOtherwise(mark, mark) ||
      group.slice(group.indexOf(mark) + 1).some((later) => changes(later) || fittedOtherwise(mark, later)),
  };
}

function nearestOf(group: readonly Mark[], mark: Mark): Mark[] {
  const place = group.indexOf(mark);
  const start = group.length <= mostRelated ? 0 : Math.max(0, place - mostRelated / 2);
  return group
    .slice(start, place + mostRelated / 2 + (start === 0 ? mostRelated : 0))
    .filter((other) => other !== mark);
}

/** What makes another part of a part: nobody asks any more about how it was found. */
const changing = new Set(["repaired", "made", "replaced", "substituted", "scrapped"]);
const changes = (mark: Mark): boolean => mark.kind === "part" && changing.has(wordsOf(mark, "event"));

/** The same characteristic, as fitted, with another value than was found. */
function fittedOtherwise(mark: Mark, later: Mark): boolean {
  const fitted = typedOf(later, "asFitted");
  return fitted !== "" && fitted !== typedOf(mark, "asFound") && sameCharacteristic(mark, later);
}

/** Two measurements of the same thing: the second is the history of the first, and no contradiction. */
export const sameCharacteristic = (one: Mark, other: Mark): boolean =>
  wordsOf(one).toLowerCase() === wordsOf(other).toLowerCase();
