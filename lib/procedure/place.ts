import type { BuildDocument } from "#lib/build/index.ts";
import { clocksOf, present, sittingsInOrder } from "#lib/build/index.ts";
import { compareMarks, isStage, type Mark, type Stage, sittingTime } from "#lib/mark/index.ts";

/** A step while it is being put together: the mark that heads it, and the marks that belong to it. */
export interface Draft {
  head: Mark;
  stage: Stage;
  /** In order, the head among them. */
  marks: Mark[];
}

export interface Placed {
  drafts: Draft[];
  tray: Mark[];
  unsorted: Mark[];
}

/** Kinds that people speak of before the action they belong to. */
const saidAhead = new Set(["caution", "tool", "consumable"]);

/**
 * Puts every mark where its time says it belongs: to the action before it, or, for a caution, tool or
 * consumable shortly before an action, to that one. `splits` names marks at which a step begins by hand.
 */
export function place(document: BuildDocument, splits: ReadonlySet<string>): Placed {
  const clocks = clocksOf(document);
  const marks = present(document.marks).sort(compareMarks(clocks));
  const placed: Placed = { drafts: [], tray: [], unsorted: [] };
  for (const sitting of sittingsInOrder(document)) {
    const own = marks.filter((mark) => mark.sittingId === sitting.id);
    const times = own.map((mark) => sittingTime(mark, clocks));
    placeSitting(own, times, sitting.stage, document.build.warnAhead, splits, placed);
  }
  return placed;
}

function placeSitting(
  marks: Mark[],
  times: number[],
  stage: Stage,
  warnAhead: number,
  splits: ReadonlySet<string>,
  placed: Placed,
): void {
  const drafts = new Map<number, Draft>();
  const heads = marks.flatMap((mark, index) => (isHead(mark, splits) ? [index] : []));
  for (const index of heads) {
    const head = marks[index] as Mark;
    if (isStage(head.fields.stage)) stage = head.fields.stage;
    drafts.set(index, { head, stage, marks: [] });
  }
  marks.forEach((mark, index) => {
    if (mark.kind === "") {
      placed.unsorted.push(mark);
      return;
    }
    const home = drafts.has(index) ? index : homeOf(index, marks, times, heads, warnAhead);
    if (home === undefined) placed.tray.push(mark);
    else (drafts.get(home) as Draft).marks.push(mark);
  });
  placed.drafts.push(...drafts.values());
}

/** Which head the mark at `index` belongs to, as an index; none for one before the first action or off film. */
function homeOf(index: number, marks: Mark[], times: number[], heads: number[], warnAhead: number) {
  const mark = marks[index] as Mark;
  const before = heads.findLast((head) => head < index);
  const after = heads.find((head) => head > index);
  const wait = after === undefined ? Number.NaN : (times[after] as number) - (times[index] as number);
  if (saidAhead.has(mark.kind) && wait <= warnAhead) return after;
  if (before === undefined) return undefined;
  const parted = mark.at === null && marks[before]?.at !== null;
  return parted ? undefined : before;
}

function isHead(mark: Mark, splits: ReadonlySet<string>): boolean {
  return mark.kind === "action" || (mark.kind !== "" && splits.has(mark.id));
}
