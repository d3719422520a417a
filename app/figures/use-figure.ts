import { useMemo } from "react";
import type { Still } from "#lib/build/index.ts";
import type { MeasurementLine, PartLine, Step } from "#lib/procedure/index.ts";
import { quantitiesOf, read } from "#lib/quantity/index.ts";
import { useDerived, useSessionView } from "../session/provider.tsx";

/** What a figure may speak of: the parts list and the measurements, those of its own step apart from the others. */
export interface FigureSubject {
  step: Step | undefined;
  parts: { own: PartLine[]; others: PartLine[] };
  measurements: { own: MeasurementLine[]; others: MeasurementLine[] };
}

export function useSubject(still: Still): FigureSubject {
  const { stepOf, procedure } = useDerived();
  const { decimal } = useSessionView().document.build;
  const step = stepOf.get(still.markId);
  return useMemo(() => {
    const items = new Set(step?.parts.map((part) => part.item));
    const marks = new Set(step?.marks);
    return {
      step,
      parts: apart(procedure.parts, (part) => items.has(part.item)),
      measurements: apart(
        procedure.measurements.filter((line) => hasLine(line, decimal)),
        (line) => marks.has(line.mark),
      ),
    };
  }, [step, procedure, decimal]);
}

/** Whether a dimension line can stand for a measurement: for a length or an angle, or what is not read. */
function hasLine({ values }: MeasurementLine, decimal: "." | ","): boolean {
  const found = Object.values(values).flatMap(({ typed }) => quantitiesOf(read(typed, { decimal })));
  return found.length === 0 || found.some(({ dimension }) => dimension === "length" || dimension === "angle");
}

function apart<T>(all: readonly T[], own: (one: T) => boolean): { own: T[]; others: T[] } {
  return { own: all.filter(own), others: all.filter((one) => !own(one)) };
}

/** The name of a part that a balloon points at; of one that is gone from the list, its own words. */
export function nameOf(parts: readonly PartLine[], item: string): string {
  return parts.find((part) => part.item === item)?.name ?? item.replace(/^name:/, "");
}

/** The stills of a step, or of one mark where no step has taken it up, in the order in which they print. */
export function useViews(still: Still): Still[] {
  const { document } = useSessionView();
  const { stepOf } = useDerived();
  const marks = stepOf.get(still.markId)?.marks ?? [still.markId];
  const rankOf = (one: Still) => marks.indexOf(one.markId);
  return document.stills
    .filter((one) => one.gone === null && marks.includes(one.markId))
    .sort(
      (a, b) =>
        rankOf(a) - rankOf(b) || a.rank - b.rank || (a.at ?? 0) - (b.at ?? 0) || (a.id < b.id ? -1 : 1),
    );
}
