import type { BuildDocument } from "#lib/build/index.ts";
import { check } from "#lib/check/index.ts";
import type { Finding } from "#lib/finding/index.ts";
import { compile, type PlaceInFilm, type Procedure, type Step, stepsOf } from "#lib/procedure/index.ts";

/** What the sheets show of a build beyond its rows: computed from the top, never stored. */
export interface Derived {
  document: BuildDocument;
  procedure: Procedure;
  findings: Finding[];
  /** The step a mark belongs to, by the mark's id. */
  stepOf: ReadonlyMap<string, Step>;
  findingsOf: ReadonlyMap<string, Finding[]>;
  /** Where a mark is seen in the edited film, in words, by the mark's id; none where there is no film. */
  inFilm: ReadonlyMap<string, string>;
}

export function derive(document: BuildDocument): Derived {
  return deriveFrom(compile(document), document);
}

/** The same, where the procedure has been compiled already. */
export function deriveFrom(procedure: Procedure, document: BuildDocument): Derived {
  const { findings } = check(procedure, document);
  const stepOf = new Map(
    stepsOf(procedure).flatMap((step) => step.marks.map((mark) => [mark, step] as const)),
  );
  const findingsOf = new Map<string, Finding[]>();
  for (const finding of findings) {
    const mark = finding.place.mark;
    if (mark !== undefined) findingsOf.set(mark, [...(findingsOf.get(mark) ?? []), finding]);
  }
  const inFilm = new Map(
    procedure.moments.flatMap(({ mark, moment }) =>
      moment.film ? [[mark, saidInFilm(moment.film)] as const] : [],
    ),
  );
  return { document, procedure, findings, stepOf, findingsOf, inFilm };
}

function saidInFilm(places: readonly PlaceInFilm[]): string {
  return places.length === 0 ? "not in the film" : `film ${places.map(({ written }) => written).join(", ")}`;
}
