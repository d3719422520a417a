import type { BuildDocument } from "#lib/build/index.ts";
import { check } from "#lib/check/index.ts";
import type { Finding } from "#lib/finding/index.ts";
import { compile, type Procedure, type Step, stepsOf } from "#lib/procedure/index.ts";

/** What the sheets show of a build beyond its rows: computed from the top, never stored. */
export interface Derived {
  document: BuildDocument;
  procedure: Procedure;
  findings: Finding[];
  /** The step a mark belongs to, by the mark's id. */
  stepOf: ReadonlyMap<string, Step>;
  findingsOf: ReadonlyMap<string, Finding[]>;
}

export function derive(document: BuildDocument): Derived {
  const procedure = compile(document);
  const { findings } = check(procedure, document);
  const stepOf = new Map(
    stepsOf(procedure).flatMap((step) => step.marks.map((mark) => [mark, step] as const)),
  );
  const findingsOf = new Map<string, Finding[]>();
  for (const finding of findings) {
    const mark = finding.place.mark;
    if (mark !== undefined) findingsOf.set(mark, [...(findingsOf.get(mark) ?? []), finding]);
  }
  return { document, procedure, findings, stepOf, findingsOf };
}
