import type { CheckedProcedure, MeasurementLine } from "#lib/procedure/tree.ts";
import { contentHash } from "../content-hash.ts";
import { csv, guardedSentence } from "../csv.ts";
import { type Output, type PublishOptions, textFile } from "../output.ts";
import { printedValue } from "../quantity.ts";
import { sheetState } from "../state.ts";
import { valueNames } from "../words.ts";

const heads = [
  "Step",
  "What",
  "Part",
  "Its mate",
  ...valueNames.flatMap(([, name]) => [name, `${name}, other units`]),
  "Instrument",
  "Source",
  "Note",
  "Sheet",
];

/** Every measurement with its four values, as typed and in the other system of units: `measurements.csv`. */
export async function toMeasurementsCsv(checked: CheckedProcedure, options: PublishOptions): Promise<Output> {
  const state = sheetState(checked, options, contentHash(checked)).line;
  const rows = checked.procedure.measurements.map((line) => [...cells(line), state]);
  const losses = [
    "A table of measurements has no place for what the procedure cannot do and for the deferral to local codes and licensed practice: they stand in the other outputs.",
    ...guardedSentence(rows),
  ];
  return { files: [textFile("measurements.csv", csv([heads, ...rows]))], losses };
}

function cells(line: MeasurementLine): string[] {
  const values = valueNames.flatMap(([value]) => {
    const typed = line.values[value];
    const printed = typed ? printedValue(typed) : { typed: "", other: null };
    return [printed.typed, printed.other ?? ""];
  });
  const { step, what, part, mate = "", instrument, source, note } = line;
  return [step === null ? "" : String(step), what, part, mate, ...values, instrument, source, note];
}
