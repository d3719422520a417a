/** Comma-separated values by RFC 4180, written for spreadsheets that might run a cell which looks like a formula. */

const formula = /^[=+\-@\t\r]/;

export function writeCsv(records: readonly (readonly string[])[]): string {
  return records.map((record) => `${record.map(cell).join(",")}\r\n`).join("");
}

function cell(text: string): string {
  const plain = formula.test(text) ? `'${text}` : text;
  return /[",\r\n]/.test(plain) ? `"${plain.replaceAll('"', '""')}"` : plain;
}

/** Records of a text; quotes that are never closed run to its end. Empty lines are left out. */
export function readCsv(text: string): string[][] {
  const records: string[][] = [];
  let record: string[] = [];
  const pattern = /("(?:[^"]|"")*(?:"|$)|[^",\r\n]*)(,|\r\n|\n|\r|$)/g;
  for (const [, raw = "", end] of text.replace(/^\ufeff/, "").matchAll(pattern)) {
    record.push(uncell(raw));
    if (end === ",") continue;
    if (record.some((one) => one !== "")) records.push(record);
    record = [];
  }
  return records;
}

function uncell(raw: string): string {
  const plain = raw.startsWith('"') ? raw.replace(/^"|"$/g, "").replaceAll('""', '"') : raw;
  return plain.startsWith("'") && formula.test(plain.slice(1)) ? plain.slice(1) : plain;
}
