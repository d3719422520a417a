import type { Still } from "#lib/build/index.ts";
import { hasLines } from "#lib/figure/index.ts";
import type { Step } from "#lib/procedure/index.ts";

/** What a figure lacks, in words. None of it stops anything. */
export function lackOfStill(still: Still): string[] {
  return [
    ...(still.alt.trim() === "" ? ["no words for what it shows"] : []),
    ...(hasLines(still.drawing) ? [] : ["nothing drawn"]),
  ];
}

/** Names of the step's parts that no balloon of its figures points at, each once. */
export function partsWithoutBalloon(step: Step, stills: readonly Still[]): string[] {
  const shown = new Set(stills.flatMap((still) => still.drawing.balloons.map((balloon) => balloon.item)));
  return [...new Set(step.parts.filter((part) => !shown.has(part.item)).map((part) => part.name))];
}
