import type { Procedure } from "#lib/procedure/tree.ts";
import { allSteps, leftText, openItems, sentence } from "./words.ts";

/** Something to tick when the work is done. */
export interface CloseOutCheck {
  /** The same in every print of a build, so that a reader's tick stays with it. */
  key: string;
  text: string;
}

export const closeOutHeading = "Close-out checks";

/**
 * What is looked at before the work counts as done: all of it from what the procedure holds, none where it has no
 * step. That tools are counted and guards put back is common practice, no source.
 */
export function closeOutChecks(procedure: Procedure): CloseOutCheck[] {
  const steps = allSteps(procedure).length;
  if (steps === 0) return [];
  return [
    { key: "steps", text: `${counted(steps, "step")} ticked, none left out.` },
    ...openItems(procedure).map((line) => ({
      key: `open/${line.mark}`,
      text: sentence(`No longer left open${at(line.step)}: ${leftText(line)}`),
    })),
    ...procedure.deferred
      .filter(({ soak }) => soak)
      .map((line) => ({
        key: `soak/${line.mark}`,
        text: sentence(`Within its time${at(line.step)}: ${leftText(line)}`),
      })),
    ...limitCheck(procedure),
    ...countCheck("parts", procedure.parts.length, "part", "fitted, or left out on purpose; none left over"),
    ...countCheck("tools", procedure.tools.length, "tool", "counted back; none left in the machine"),
    { key: "guards", text: "Every guard that came off is back on." },
  ];
}

function limitCheck({ measurements }: Procedure): CloseOutCheck[] {
  const limited = measurements.filter(({ values }) => values.limit).length;
  return countCheck(
    "limits",
    limited,
    "reading as fitted",
    "written down and within its limit",
    "readings as fitted",
  );
}

function countCheck(
  key: string,
  count: number,
  one: string,
  what: string,
  many = `${one}s`,
): CloseOutCheck[] {
  return count === 0 ? [] : [{ key, text: `${counted(count, one, many)} ${what}.` }];
}

/** "All 12 steps", "The one step". */
function counted(count: number, one: string, many = `${one}s`): string {
  return count === 1 ? `The one ${one}` : `All ${count} ${many}`;
}

function at(step: number | null): string {
  return step === null ? "" : ` (step ${step})`;
}
