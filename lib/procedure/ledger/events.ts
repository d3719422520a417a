import { type BuildDocument, clocksOf, present } from "#lib/build/index.ts";
import {
  compareMarks,
  isPartEvent,
  type Mark,
  type PartEvent,
  type Stage,
  typedOf,
  wordsOf,
} from "#lib/mark/index.ts";
import { quantitiesOf, read } from "#lib/quantity/index.ts";
import { sayMoment } from "#lib/time/index.ts";
import { stepsOf } from "../compile.ts";
import type { Procedure } from "../tree.ts";
import { itemFinder } from "./item-finder.ts";

/** Something that happened to a part, with when and all that its mark says of it. */
export interface LedgerEvent {
  mark: string;
  item: string;
  name: string;
  event: PartEvent;
  /** Its place among all marks of the build, by time. */
  order: number;
  sittingId: string;
  /** Seconds of the recording's clock, and as it is said; null without film. */
  at: number | null;
  written: string | null;
  stage: Stage;
  /** The step it belongs to; null where none has taken it up. */
  step: number | null;
  count: number | null;
  /** Texts of its fields as typed; empty where nothing was said. */
  says: Said;
  /** Thickness of one piece in metres; null where none was read. */
  thickness: number | null;
}

/** The fields of a part mark that the ledger compares or shows. */
const saidFields = [
  "words",
  "wayRound",
  "place",
  "stack",
  "stackPlace",
  "between",
  "stamped",
  "lookAlike",
  "partNumber",
  "fittedNumber",
  "supersedes",
  "origin",
  "insteadOf",
  "container",
  "source",
  "covers",
  "once",
  "tightness",
  "foundWrong",
] as const;
export type Said = Record<(typeof saidFields)[number] | "torque" | "thickness", string>;

/** The events of a build in the order of their moments. Part marks without a part or an event are none. */
export function eventsOf(procedure: Procedure, document: BuildDocument): LedgerEvent[] {
  const clocks = clocksOf(document);
  const itemOf = itemFinder(document);
  const steps = new Map(
    stepsOf(procedure).flatMap((step) => step.marks.map((mark) => [mark, step] as const)),
  );
  const stageOfSitting = new Map(document.sittings.map((sitting) => [sitting.id, sitting.stage]));
  const ordered = present(document.marks)
    .filter((mark) => mark.kind === "part")
    .sort(compareMarks(clocks));
  let last: { sitting: string; stage: Stage } | null = null;
  return ordered.flatMap((mark, order) => {
    const event = wordsOf(mark, "event");
    const item = itemOf(mark);
    const step = steps.get(mark.id);
    const before = last?.sitting === mark.sittingId ? last.stage : null;
    const stage = step?.stage ?? before ?? stageOfSitting.get(mark.sittingId) ?? "strip";
    last = { sitting: mark.sittingId, stage };
    if (!isPartEvent(event) || !item) return [];
    return [
      { ...common(mark, document.build.decimal), ...item, event, order, stage, step: step?.number ?? null },
    ];
  });
}

function common(mark: Mark, decimal: "." | ",") {
  const says = Object.fromEntries(saidFields.map((field) => [field, wordsOf(mark, field)])) as Said;
  says.torque = typedOf(mark, "torque");
  says.thickness = typedOf(mark, "thickness");
  return {
    mark: mark.id,
    sittingId: mark.sittingId,
    at: mark.at,
    written: mark.at === null ? null : sayMoment(mark.at),
    count: readCount(wordsOf(mark, "count")),
    says,
    thickness: says.thickness === "" ? null : lengthOf(says.thickness, decimal),
  };
}

/** "4", "4 off", "4 ×": a whole number first. Null for anything else, "some" among it. */
export function readCount(text: string): number | null {
  const digits = /^(\d{1,6})(?![\d.,/])/.exec(text.trim())?.[1];
  return digits === undefined || Number(digits) === 0 ? null : Number(digits);
}

function lengthOf(typed: string, decimal: "." | ","): number | null {
  const [quantity] = quantitiesOf(read(typed, { decimal }));
  return quantity?.dimension === "length" ? quantity.si : null;
}

/** The names in a list: commas, semicolons, line ends or "and" between them. */
export function namesIn(text: string): string[] {
  return text
    .split(/[,;\n]|\band\b/)
    .map((name) => name.replace(/^\s*the\s+/i, "").trim())
    .filter(Boolean);
}
