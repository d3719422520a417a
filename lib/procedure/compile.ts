import { type BuildDocument, present } from "#lib/build/index.ts";
import { type Mark, stages } from "#lib/mark/index.ts";
import { consumableList, partsList, toolList } from "./lists.ts";
import { layOn, splitsOf } from "./overlay.ts";
import { place } from "./place.ts";
import { deferredLine, lookupOf, loose, makeStep, measurementLine, partUse } from "./steps.ts";
import type { Procedure, Step } from "./tree.ts";

/**
 * The procedure of a build. Marks are placed by their time, hand edits laid on, and steps made of what
 * results; lists are computed from the steps. The same document always gives the same procedure, in whatever
 * order its rows stand.
 */
export function compile(document: BuildDocument): Procedure {
  const placed = place(document, splitsOf(document));
  const { steps: edited, tray, orphans } = layOn(document, placed);
  const lookup = lookupOf(document);
  const steps = edited.map((step, index) => makeStep(step, index + 1, lookup));
  const trayOf = (kind: string) => tray.filter((mark) => mark.kind === kind);
  const marks = new Map<string, Mark>(present(document.marks).map((mark) => [mark.id, mark]));
  const looseParts = trayOf("part").map((mark) => partUse(mark, lookup));
  return {
    ...heading(document),
    stages: byStage(steps),
    parts: partsList(steps, looseParts, marks, new Map(document.items.map((item) => [item.id, item]))),
    tools: toolList(steps),
    consumables: consumableList(steps),
    measurements: [
      ...steps.flatMap((step) => step.measurements),
      ...trayOf("measurement").map((mark) => measurementLine(mark, null, lookup)),
    ],
    deferred: [
      ...steps.flatMap((step) => step.deferred),
      ...trayOf("deferred").map((mark) => deferredLine(mark, null, lookup)),
    ],
    tray: tray.map((mark) => loose(mark, lookup)),
    unsorted: placed.unsorted.map((mark) => loose(mark, lookup)),
    orphans: orphans.sort((a, b) => (a.edit < b.edit ? -1 : 1)),
  };
}

/** Every step of a procedure, in order. */
export function stepsOf(procedure: Pick<Procedure, "stages">): Step[] {
  return procedure.stages.flatMap((stage) => stage.steps);
}

function heading({ machine, assemblies, build }: BuildDocument) {
  const { name, maker, model, years, serial, variant } = machine;
  return {
    buildId: build.id,
    title: build.title,
    summary: build.summary,
    machine: { name, maker, model, years, serial, variant },
    assembly: assemblies.find((assembly) => assembly.id === build.assemblyId)?.name ?? "",
    language: build.language,
    decimal: build.decimal,
  };
}

function byStage(steps: Step[]) {
  return stages
    .map((stage) => ({ stage, steps: steps.filter((step) => step.stage === stage) }))
    .filter((stage) => stage.steps.length > 0);
}
