import type { CheckedProcedure } from "#lib/procedure/tree.ts";
import { contentHash } from "../content-hash.ts";
import { csv, guardedSentence } from "../csv.ts";
import { type Output, type PublishOptions, textFile } from "../output.ts";
import { sheetState } from "../state.ts";

const heads = [
  "No.",
  "Part",
  "Quantity",
  "Part number",
  "Size or thread",
  "Material",
  "Where from",
  "Steps",
  "Sheet",
];

/** The parts list as comma-separated values: `parts.csv`. */
export async function toPartsCsv(checked: CheckedProcedure, options: PublishOptions): Promise<Output> {
  const { parts } = checked.procedure;
  const state = sheetState(checked, options, contentHash(checked)).line;
  const rows = parts.map((part) => [
    String(part.balloon),
    part.name,
    part.quantity === null ? "" : String(part.quantity),
    part.partNumber,
    part.size,
    part.material,
    part.source,
    part.steps.join(" "),
    state,
  ]);
  return {
    files: [textFile("parts.csv", csv([heads, ...rows]))],
    losses: [noPlace, ...guardedSentence(rows)],
  };
}

const noPlace =
  "A table has no place for what the procedure cannot do and for the deferral to local codes and licensed practice: they stand in the other outputs.";
