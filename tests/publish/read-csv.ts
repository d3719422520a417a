/** A reader of comma-separated values, written from the grammar of RFC 4180, section 2, alone. */
export function readCsv(text: string): string[][] {
  const records: string[][] = [];
  let at = 0;
  while (at < text.length) {
    const record: string[] = [];
    for (;;) {
      const [field, next] = text[at] === '"' ? escaped(text, at + 1) : plain(text, at);
      record.push(field);
      at = next;
      if (text[at] !== ",") break;
      at++;
    }
    if (at < text.length && text.slice(at, at + 2) !== "\r\n") throw new Error(`no end of record at ${at}`);
    at += 2;
    records.push(record);
  }
  return records;
}

function escaped(text: string, from: number): [string, number] {
  let field = "";
  for (let at = from; at < text.length; at++) {
    if (text[at] !== '"') field += text[at];
    else if (text[at + 1] === '"') {
      field += '"';
      at++;
    } else return [field, at + 1];
  }
  throw new Error("a quoted field has no end");
}

function plain(text: string, from: number): [string, number] {
  const field = /^[^",\r\n]*/.exec(text.slice(from))?.[0] ?? "";
  return [field, from + field.length];
}
