import type { BuildDocument, Edit } from "#lib/build/index.ts";
import type { Finding, Mend } from "#lib/finding/index.ts";
import type { Mark } from "#lib/mark/index.ts";
import { conditionFirst } from "./condition-first.ts";
import { listSupply } from "./list-supply.ts";
import { splitStep } from "./split-step.ts";

/** A row as it is to be. All rows of a mend are written as one command, so that one undo takes them back. */
export type MendedRow = { table: "mark"; row: Mark } | { table: "edit"; row: Edit };

/** What a mend cannot know by itself: the time, ISO 8601 in UTC, and ids for new rows. */
export interface MendGiven {
  now: string;
  newId: () => string;
}

/** How a quick mend is made. It looks at a document and gives the rows to write; it writes nothing. */
export type MakeMend = (
  document: BuildDocument,
  finding: Finding,
  mend: Mend,
  given: MendGiven,
) => MendedRow[];

const mends: Readonly<Record<string, MakeMend>> = {
  "condition-first": conditionFirst,
  "split-step": splitStep,
  "list-tool": listSupply("tool"),
  "list-consumable": listSupply("consumable"),
};

/** The rows of a quick mend; none where the document has changed and there is nothing left to mend. */
export const mend: MakeMend = (document, finding, one, given) =>
  mends[one.name]?.(document, finding, one, given) ?? [];
