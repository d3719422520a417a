import { readCount } from "./events.ts";

/** One line of a kit's contents, as it was read from what was pasted. */
export interface KitLine {
  /** The line as written: what the restorer says of it is kept under these words. */
  typed: string;
  name: string;
  partNumber: string;
  /** One where the line does not say. */
  count: number;
}

/** Words that stand over the columns of a pasted table. */
const heads: Record<"count" | "partNumber" | "name", RegExp> = {
  count: /^(qty|quantity|count|pieces|pcs|off|no\.? off|how many)\b/i,
  partNumber: /^(part ?(no|number|nr)|p\/n|number|reference|ref|code|item no)\b/i,
  name: /^(name|description|part|item|contents?|what)\b/i,
};

/**
 * Reads a kit's contents as they were pasted: a table with tabs, semicolons or commas between its columns, with or
 * without a line of headings, or plain lines such as "4 x Cover nut" and "Cover gasket, G-12, 1 off". Lines without
 * a letter are left out. Nothing is refused.
 */
export function readKit(text: string): KitLine[] {
  const rows = text
    .split(/\r?\n/)
    .map((line) => line.trim())
    .filter((line) => /\p{L}/u.test(line));
  return addedUp(readRows(rows));
}

/** Lines of the same words are one line: what is said of them is kept under those words. */
function addedUp(lines: readonly KitLine[]): KitLine[] {
  const byWords = new Map<string, KitLine>();
  for (const line of lines) {
    const before = byWords.get(line.typed);
    byWords.set(line.typed, before ? { ...before, count: before.count + line.count } : line);
  }
  return [...byWords.values()];
}

function readRows(rows: readonly string[]): KitLine[] {
  const columns = rows[0] === undefined ? null : headings(cellsOf(rows[0], betweenCells(rows[0])));
  if (!columns) return rows.map((row) => byForm(row, betweenCells(row)));
  const between = betweenCells(rows[0] ?? "");
  return rows.slice(1).map((row) => byHeadings(row, between, columns));
}

/** What stands between the cells of a row: the sign that is least likely to be part of a name. */
function betweenCells(row: string): string {
  return ["\t", ";"].find((sign) => row.includes(sign)) ?? ",";
}

type Columns = Partial<Record<keyof typeof heads, number>>;

/** Which column is which, by their headings; null where the line is none of headings. */
function headings(cells: string[]): Columns | null {
  const columns: Columns = {};
  for (const name of ["count", "partNumber", "name"] as const) {
    const index = cells.findIndex(
      (cell, at) => heads[name].test(cell) && !Object.values(columns).includes(at),
    );
    if (index >= 0) columns[name] = index;
  }
  return columns.name !== undefined && Object.keys(columns).length > 1 ? columns : null;
}

function byHeadings(row: string, between: string, columns: Columns): KitLine {
  const cells = cellsOf(row, between);
  const cell = (name: keyof Columns) => cells[columns[name] ?? -1] ?? "";
  return {
    typed: row,
    name: cell("name") || row,
    partNumber: cell("partNumber"),
    count: readCount(cell("count")) ?? 1,
  };
}

/** How many, before the name, after it, or in a cell of its own. "M6 x 20" is a size: its x stands apart. */
const counts = [
  /^(\d{1,6})\s*(?:x|×|off|pcs?\.?)$/i,
  /^(\d{1,6})\s*(?:x|×|off|pcs?\.?|no\.?)?\s+(?=\p{L})/iu,
  /\s[x×](\d{1,6})$/i,
  /\s(\d{1,6})\s*(?:off|pcs?\.?)$/i,
];
/** A code: it has a figure, and nothing but letters, figures and what stands between them. */
const code = /^(?=.*\d)[\p{L}\d]+(?:[-./]?[\p{L}\d]+)*$/u;

/** A line by what its pieces look like: how many, a name, a part number. */
function byForm(row: string, between: string): KitLine {
  let count: number | null = null;
  const counted = (text: string): string => {
    const match = counts.map((form) => form.exec(text)).find((found) => found !== null);
    if (!match || count !== null) return text;
    count = Number(match[1]) || null;
    return text.replace(match[0], "").trim();
  };
  const rest = cellsOf(row, between).map(counted).filter(Boolean);
  const bare = rest.findIndex((cell) => count === null && /^\d{1,4}$/.test(cell));
  if (bare >= 0) count = Number(rest.splice(bare, 1)[0]) || null;
  const numbered = rest.length > 1 ? rest.findIndex((cell) => code.test(cell)) : -1;
  const partNumber = numbered >= 0 ? (rest.splice(numbered, 1)[0] ?? "") : "";
  return { typed: row, name: rest.join(", ") || row, partNumber, count: count ?? 1 };
}

/** The cells of a row; a cell in double quotes may hold what stands between cells. */
function cellsOf(row: string, between: string): string[] {
  const cells: string[] = [];
  let cell = "";
  let quoted = false;
  for (const [at, letter] of [...row].entries()) {
    if (letter === '"' && (quoted || cell === "" || row[at - 1] === between)) quoted = !quoted;
    else if (letter === between && !quoted) {
      cells.push(cell.trim());
      cell = "";
    } else cell += letter;
  }
  return [...cells, cell.trim()];
}
