import type { Item } from "#lib/build/index.ts";
import { type Mark, wordsOf } from "#lib/mark/index.ts";
import type { PartLine, PartUse, Step, SupplyLine, SupplyUse } from "./tree.ts";

/** Events by which a part ends up on the machine, and those by which it came off. */
const puts = new Set(["fitted", "replaced", "substituted"]);

interface UseInStep {
  use: PartUse;
  /** Null for a part mark that no step has taken up. */
  step: Step | null;
}

/**
 * The parts list: a line an item, in the order of the balloons, with what its marks say of it. How many: the
 * most that were on at once outside the trial fit, else as removed, else as made or obtained; null where no mark says
 * a number.
 */
export function partsList(
  steps: Step[],
  loose: PartUse[],
  /** In the order of their time. */
  marks: ReadonlyMap<string, Mark>,
  items: ReadonlyMap<string, Item>,
): PartLine[] {
  const uses = new Map<string, UseInStep[]>();
  const all: UseInStep[] = [
    ...steps.flatMap((step) => step.parts.map((use) => ({ use, step }))),
    ...loose.map((use) => ({ use, step: null })),
  ];
  for (const one of all) uses.set(one.use.item, [...(uses.get(one.use.item) ?? []), one]);
  const order = new Map([...marks.keys()].map((mark, index) => [mark, index]));
  const inTime = (group: UseInStep[]) =>
    group.toSorted((a, b) => (order.get(a.use.mark) ?? 0) - (order.get(b.use.mark) ?? 0));
  const lines = [...uses.values()].map((group) => partLine(group, inTime(group), marks, items));
  return lines.sort((a, b) => a.balloon - b.balloon);
}

function partLine(
  group: UseInStep[],
  inTime: UseInStep[],
  marks: ReadonlyMap<string, Mark>,
  items: ReadonlyMap<string, Item>,
): PartLine {
  const { item, balloon, name } = (group[0] as UseInStep).use;
  const record = items.get(item);
  const latest = (field: string) =>
    group
      .map(({ use }) => wordsOf(marks.get(use.mark) as Mark, field))
      .filter(Boolean)
      .at(-1) ?? "";
  return {
    item,
    balloon,
    name,
    quantity: quantityOf(inTime),
    partNumber: latest("fittedNumber") || latest("partNumber") || record?.partNumber || "",
    material: latest("material") || record?.material || "",
    size: latest("size"),
    source: latest("source"),
    steps: numbersOf(group.map(({ step }) => step)),
    marks: group.map(({ use }) => use.mark),
  };
}

function quantityOf(group: UseInStep[]): number | null {
  const count = (wanted: (one: UseInStep) => boolean) => {
    const chosen = group.filter(wanted);
    const numbers = chosen.map(({ use }) => wholeNumber(use.count));
    return numbers.some((number) => number !== null)
      ? numbers.reduce<number>((sum, number) => sum + (number ?? 0), 0)
      : null;
  };
  return (
    mostOn(group.filter(({ step }) => step !== null && step.stage !== "trial fit")) ??
    count(({ use }) => use.event === "removed") ??
    count(({ use }) => use.event === "made" || use.event === "obtained") ??
    count(() => true)
  );
}

/**
 * The most pieces that were on at once, as the steps put them on and take them off again: a plug that goes in, comes
 * out and goes in is one plug. A piece that replaces one put on before is no further piece. Null where nothing goes on.
 */
function mostOn(group: UseInStep[]): number | null {
  let on = 0;
  let most: number | null = null;
  for (const { use } of group) {
    const number = wholeNumber(use.count);
    if (number === null) continue;
    if (use.event === "removed") on = Math.max(0, on - number);
    else if (use.event === "fitted") on += number;
    else if (puts.has(use.event)) on += fittedBefore(group, use) ? 0 : number;
    else continue;
    if (puts.has(use.event)) most = Math.max(most ?? 0, on);
  }
  return most;
}

/** Whether a step before this use put pieces of the part on that have not come off since. */
function fittedBefore(group: UseInStep[], use: PartUse): boolean {
  const before = group
    .slice(
      0,
      group.findIndex((one) => one.use === use),
    )
    .map((one) => one.use.event);
  return before.lastIndexOf("fitted") > before.lastIndexOf("removed");
}

function wholeNumber(text: string): number | null {
  return /^\d{1,6}$/.test(text) ? Number(text) : null;
}

/** Tools: the union of what the steps use, one line for each name and size. */
export function toolList(steps: Step[]): SupplyLine[] {
  return supplyLines(
    steps,
    (step) => step.tools,
    (use) => `${fold(use.name)}\n${fold(use.detail)}`,
  );
}

/** Consumables: one line for each name; amounts that differ are listed one after the other. */
export function consumableList(steps: Step[]): SupplyLine[] {
  return supplyLines(
    steps,
    (step) => step.consumables,
    (use) => fold(use.name),
  );
}

function supplyLines(
  steps: Step[],
  usesOf: (step: Step) => SupplyUse[],
  keyOf: (use: SupplyUse) => string,
): SupplyLine[] {
  const lines = new Map<string, SupplyLine & { details: Set<string> }>();
  for (const step of steps) {
    for (const use of usesOf(step)) {
      if (use.name === "") continue;
      const key = keyOf(use);
      const line = lines.get(key) ?? { name: use.name, detail: "", steps: [], marks: [], details: new Set() };
      if (use.detail !== "") line.details.add(use.detail);
      if (!line.steps.includes(step.number)) line.steps.push(step.number);
      line.marks.push(use.mark);
      lines.set(key, line);
    }
  }
  return [...lines.values()].map(({ details, ...line }) => ({ ...line, detail: [...details].join("; ") }));
}

function numbersOf(steps: (Step | null)[]): number[] {
  return [...new Set(steps.flatMap((step) => (step ? [step.number] : [])))].sort((a, b) => a - b);
}

function fold(text: string): string {
  return text.toLowerCase().replace(/\s+/g, " ").trim();
}
