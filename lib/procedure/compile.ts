import { type BuildDocument, clocksOf, present } from "#lib/build/index.ts";
import { compareMarks, type Mark, stages } from "#lib/mark/index.ts";
import { withDrawings } from "./drawn.ts";
import { consumableList, partsList, toolList } from "./lists.ts";
import { filmOfProcedure } from "./moment.ts";
import { layOn, splitsOf } from "./overlay.ts";
import { place } from "./place.ts";
import { deferredLine, type Lookup, lookupOf, loose, makeStep, measurementLine, partUse } from "./steps.ts";
import type { MarkMoment, Procedure, RecordingLine, Step } from "./tree.ts";

/**
 * The procedure of a build. Marks are placed by their time, hand edits laid on, and steps made of what
 * results; lists are computed from the steps. The same document always gives the same procedure, in whatever
 * order its rows stand.
 */
export function compile(document: BuildDocument): Procedure {
  const placed = place(document, splitsOf(document));
  const { steps: edited, tray, orphans } = layOn(document, placed);
  const lookup = lookupOf(document);
  const bare = edited.map((step, index) => makeStep(step, index + 1, lookup));
  const trayOf = (kind: string) => tray.filter((mark) => mark.kind === kind);
  const inTime = present(document.marks).sort(compareMarks(clocksOf(document)));
  const marks = new Map<string, Mark>(inTime.map((mark) => [mark.id, mark]));
  const looseParts = trayOf("part").map((mark) => partUse(mark, lookup));
  const parts = partsList(bare, looseParts, marks, new Map(document.items.map((item) => [item.id, item])));
  const measurements = [
    ...bare.flatMap((step) => step.measurements),
    ...trayOf("measurement").map((mark) => measurementLine(mark, null, lookup)),
  ];
  const steps = withDrawings(bare, parts, measurements, document);
  return {
    ...heading(document),
    stages: byStage(steps),
    parts,
    tools: toolList(steps),
    consumables: consumableList(steps),
    measurements,
    deferred: [
      ...steps.flatMap((step) => step.deferred),
      ...trayOf("deferred").map((mark) => deferredLine(mark, null, lookup)),
    ],
    tray: tray.map((mark) => loose(mark, lookup)),
    unsorted: placed.unsorted.map((mark) => loose(mark, lookup)),
    orphans: orphans.sort((a, b) => (a.edit < b.edit ? -1 : 1)),
    recordings: recordingLines(document),
    moments: momentsOf(steps, inTime, lookup),
    ...(lookup.film && { film: filmOfProcedure(lookup.film) }),
  };
}

function recordingLines(document: BuildDocument): RecordingLine[] {
  return present(document.recordings)
    .map(({ id, name, sha256, probe, publishedAt }) => ({
      id,
      name,
      sha256,
      duration: probe?.duration ?? null,
      publishedAt,
    }))
    .sort((a, b) => (a.name < b.name ? -1 : a.name > b.name ? 1 : a.id < b.id ? -1 : 1));
}

function momentsOf(steps: Step[], inTime: readonly Mark[], lookup: Lookup): MarkMoment[] {
  const stepOf = new Map(steps.flatMap((step) => step.marks.map((mark) => [mark, step.number])));
  return inTime.flatMap((mark) => {
    const { moment, words } = loose(mark, lookup);
    return moment
      ? [{ mark: mark.id, kind: mark.kind, words, step: stepOf.get(mark.id) ?? null, moment }]
      : [];
  });
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
