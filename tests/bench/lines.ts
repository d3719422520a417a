import { captionsLine } from "./captions.ts";
import { checkValuesLine } from "./check-values.ts";
import { compileLine } from "./compile.ts";
import { duplicatesLine } from "./duplicates.ts";
import { ledgerLine } from "./ledger.ts";
import { ledgerPageLine } from "./ledger-page.ts";
import type { BenchLine } from "./measure.ts";
import { printLine } from "./print.ts";
import { bringInLine, listingLine } from "./recordings.ts";
import { searchLine } from "./search.ts";
import { sheetLine } from "./sheet.ts";
import { startLine } from "./start.ts";
import { writeLine } from "./write.ts";

/** Every figure of speed, in the order in which a restorer meets them. */
export const lines: readonly BenchLine[] = [
  startLine,
  listingLine,
  bringInLine,
  sheetLine,
  writeLine,
  searchLine,
  duplicatesLine,
  checkValuesLine,
  captionsLine,
  compileLine,
  ledgerLine,
  ledgerPageLine,
  printLine,
];
