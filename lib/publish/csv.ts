/** Read by spreadsheets as a sign that the file is UTF-8; other readers take it off. */
const byteOrderMark = "\ufeff";

/** A table as comma-separated values after RFC 4180: CRLF between records, quotes where a cell needs them. */
export function csv(rows: readonly (readonly string[])[]): string {
  return byteOrderMark + rows.map((row) => `${row.map(cell).join(",")}\r\n`).join("");
}

/** Whether a spreadsheet would take a cell for a formula, or hide its start. */
export function isFormula(text: string): boolean {
  return /^[\s\p{Cf}]*[=+\-@\uff1d\uff0b\uff0d\uff20]|^[\t\r\n]/u.test(text);
}

function cell(text: string): string {
  const guarded = isFormula(text) ? `'${text}` : text;
  return /[",\r\n]/.test(guarded) ? `"${guarded.replaceAll('"', '""')}"` : guarded;
}

/** What is said of cells that had to be guarded; nothing where none had. */
export function guardedSentence(rows: readonly (readonly string[])[]): string[] {
  const guarded = rows.flat().filter(isFormula).length;
  if (guarded === 0) return [];
  return [
    `${guarded} ${guarded === 1 ? "cell begins" : "cells begin"} with a sign that a spreadsheet would take for a formula: an apostrophe stands before it.`,
  ];
}
