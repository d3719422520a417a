import { open } from "#lib/finding/index.ts";
import type { CheckedProcedure } from "#lib/procedure/tree.ts";
import { sayWallDate } from "#lib/time/index.ts";
import type { PublishOptions } from "./output.ts";

/** What an output says of its own standing, on every page. */
export interface SheetState {
  /** "Revision B", or "Unreleased". */
  standing: string;
  released: boolean;
  openFindings: number;
  /** "4 open findings". */
  findings: string;
  /** Of the release, or of the print while there is none: "3 May 2026". */
  date: string;
  /** The first eight digits of the content hash. */
  hash8: string;
  /** All of it in one line. */
  line: string;
}

/** The standing of a procedure that is published with these options; `hash` is its content hash in hex. */
export function sheetState(
  checked: CheckedProcedure,
  { release, printedOn }: Pick<PublishOptions, "release" | "printedOn">,
  hash: string,
): SheetState {
  const count = open(checked.findings).length;
  const state = {
    standing: release ? `Revision ${release.revision}` : "Unreleased",
    released: release !== undefined,
    openFindings: count,
    findings: `${count} open ${count === 1 ? "finding" : "findings"}`,
    date: sayWallDate(release?.date ?? printedOn),
    hash8: hash.slice(0, 8),
  };
  return { ...state, line: [state.standing, state.findings, state.date, state.hash8].join(" · ") };
}
