import { type BuildDocument, type Erratum, present, type Release } from "#lib/build/index.ts";
import type { Procedure } from "#lib/procedure/tree.ts";
import { sayWallDate } from "#lib/time/index.ts";
import { compareRevisions } from "./revision.ts";

/** A line of the list of revisions. */
export interface RevisionLine {
  revision: string;
  /** "3 May 2026". */
  date: string;
  changed: string;
  /** What somebody who followed the one before has to do again; empty for nothing. */
  again: string;
}

/** A correction of a mistake that was found in a release. */
export interface CorrectionLine {
  /** The revision it was found in. */
  revision: string;
  /** The step it speaks of, in the procedure that is printed; null where it names none that is there. */
  step: number | null;
  value: string;
  correction: string;
  /** The revision that has it right; null until there is one. */
  mendedIn: string | null;
}

/** What an output says of its own past. */
export interface History {
  revisions: RevisionLine[];
  corrections: CorrectionLine[];
}

/** The past of a build's procedure, latest first: every release, and every report that was found to be right. */
export function historyOf(document: BuildDocument, procedure: Procedure): History {
  const releases = releasesInOrder(document).reverse();
  return {
    revisions: releases.map(({ revision, date, changed, again }) => ({
      revision,
      date: sayWallDate(date),
      changed,
      again,
    })),
    corrections: releases.flatMap((release) =>
      reportsOn(document, release)
        .filter((one) => one.disposition === "mistake")
        .map((one) => correctionOf(one, release, document, procedure)),
    ),
  };
}

/** Releases that have not been struck out, by revision. */
export function releasesInOrder(document: Pick<BuildDocument, "releases">): Release[] {
  return present(document.releases).sort((a, b) => compareRevisions(a.revision, b.revision));
}

/** Reports against a release that have not been struck out, earliest first. */
export function reportsOn({ errata }: Pick<BuildDocument, "errata">, { id }: Pick<Release, "id">): Erratum[] {
  return present(errata)
    .filter((one) => one.releaseId === id)
    .sort((a, b) => (a.reportedAt < b.reportedAt ? -1 : a.reportedAt > b.reportedAt ? 1 : 0));
}

function correctionOf(
  { markId, value, words, correction, mendedIn }: Erratum,
  { revision }: Release,
  { releases }: BuildDocument,
  procedure: Procedure,
): CorrectionLine {
  const steps = procedure.stages.flatMap((stage) => stage.steps);
  return {
    revision,
    step: steps.find((step) => markId !== null && step.marks.includes(markId))?.number ?? null,
    value: value || words,
    correction,
    mendedIn: releases.find((one) => one.id === mendedIn)?.revision ?? null,
  };
}
