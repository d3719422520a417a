import { z } from "zod";
import {
  type Gotcha,
  gotchaRow,
  newGotcha,
  newScope,
  type Scope,
  type Sighting,
  sightingRow,
} from "#lib/build/index.ts";
import { ToldError } from "#lib/finding/index.ts";
import { readCsv, writeCsv } from "./csv.ts";

/** The book as JSON: everything, sightings too. */
export const bookForm = z.object({
  form: z.literal("witness-mark-gotchas"),
  version: z.literal(1),
  gotchas: z.array(gotchaRow).max(100_000),
  sightings: z.array(sightingRow).max(1_000_000),
});
export type BookFile = Pick<z.infer<typeof bookForm>, "gotchas" | "sightings">;

/** Why a file is not a book: what was found, what was expected, what to do. */
export class BookError extends ToldError {}

export function toJson({
  gotchas,
  sightings,
}: {
  gotchas: readonly Gotcha[];
  sightings: readonly Sighting[];
}): string {
  const present = { gotchas: gotchas.filter((one) => one.gone === null) };
  const kept = new Set(present.gotchas.map((one) => one.id));
  const told = sightings.filter((one) => one.gone === null && kept.has(one.gotchaId));
  return `${JSON.stringify({ form: "witness-mark-gotchas", version: 1, ...present, sightings: told }, null, 1)}\n`;
}

/** @throws BookError where it is not a book of this form */
export function fromJson(text: string): BookFile {
  let value: unknown;
  try {
    value = JSON.parse(text.replace(/^\uFEFF/, ""));
  } catch (error) {
    throw new BookError({
      found: `The file is not JSON: ${(error as Error).message}.`,
      expected: "A gotcha book, written by this program as JSON.",
      todo: "Choose that file, or one of comma-separated values.",
    });
  }
  const read = bookForm.safeParse(value);
  if (read.success) return read.data;
  const issue = read.error.issues[0];
  throw new BookError({
    found: `The file is not a gotcha book: ${issue?.path.join(".") || "the whole"}: ${issue?.message}.`,
    expected: "A gotcha book, written by this program as JSON. Nothing was brought in.",
    todo: "Mend it at that place, or write the book anew where it comes from.",
  });
}

/** Columns of the table: words of the gotcha, then one scope. A gotcha with several scopes has several lines. */
const words = [
  ["id", "id"],
  ["symptom", "symptom"],
  ["mechanism", "why"],
  ["cause", "cause"],
  ["consequence", "consequence"],
  ["severity", "how bad"],
  ["tell", "how to tell"],
  ["avoid", "how to avoid"],
  ["mend", "how to mend"],
  ["source", "source"],
  ["sourceNote", "source note"],
  ["cost", "cost"],
  ["origin", "origin"],
  ["noted", "noted"],
] as const satisfies [keyof Gotcha, string][];
const scopeWords = ["maker", "model", "variant", "assembly", "item", "make", "partMaker", "kit"] as const;
const scopeHeads = [
  "maker",
  "model",
  "variant",
  "assembly",
  "part",
  "original or reproduction",
  "part maker",
  "kit",
];
const heads = [
  ...words.map(([, head]) => head),
  "applies",
  ...scopeHeads,
  "years from",
  "years to",
  "serial from",
  "serial to",
  "serial by",
];

/** The book as a table, for a spreadsheet. Sightings, joins and what is superseded do not fit in it. */
export function toCsv({ gotchas }: { gotchas: readonly Gotcha[] }): string {
  const lines = gotchas
    .filter((one) => one.gone === null)
    .flatMap((gotcha) => {
      const said = words.map(([name]) => String(gotcha[name]));
      const scopes = [
        ...gotcha.appliesTo.map((scope) => ["yes", ...scopeCells(scope)]),
        ...gotcha.notTo.map((scope) => ["not", ...scopeCells(scope)]),
      ];
      const lines = scopes.length > 0 ? scopes : [["", ...scopeCells(newScope())]];
      return lines.map((scope) => [...said, ...scope]);
    });
  return writeCsv([heads, ...lines]);
}

function scopeCells({ years, serial, ...scope }: Scope): string[] {
  return [...scopeWords.map((name) => scope[name]), years.from, years.to, serial.from, serial.to, serial.by];
}

/**
 * Reads such a table. Columns may stand in any order, and all but the symptom may be missing; one without an id is new.
 *
 * @param newId gives an id to a gotcha that has none
 * @throws BookError where there is no column of symptoms, or a value is none that the column can have
 */
export function fromCsv(text: string, newId: () => string, noted: string): BookFile {
  const [first = [], ...lines] = readCsv(text);
  const column = new Map(first.map((head, index) => [head.trim().toLowerCase(), index]));
  if (!column.has("symptom")) {
    throw new BookError({
      found: `The first line of the table names ${first.slice(0, 6).join(", ") || "nothing"}.`,
      expected:
        "A column called “symptom”, and any of: " +
        `${heads.filter((head) => head !== "symptom").join(", ")}.`,
      todo: "Name the columns so, and bring it in again.",
    });
  }
  const gotchas = new Map<string, Gotcha>();
  for (const [index, line] of lines.entries()) {
    const at = (head: string) => line[column.get(head) ?? -1]?.trim() ?? "";
    const id = at("id") || newId();
    const gotcha = gotchas.get(id) ?? gotchaOf(at, id, noted);
    const scope = scopeOf(at);
    const says = JSON.stringify(scope) !== JSON.stringify(newScope());
    if (says) (at("applies").toLowerCase() === "not" ? gotcha.notTo : gotcha.appliesTo).push(scope);
    const read = gotchaRow.safeParse(gotcha);
    if (!read.success) throw badLine(index + 2, read.error.issues[0]);
    gotchas.set(id, gotcha);
  }
  return { gotchas: [...gotchas.values()], sightings: [] };
}

function gotchaOf(at: (head: string) => string, id: string, noted: string): Gotcha {
  const said = Object.fromEntries(words.map(([name, head]) => [name, at(head)]));
  return {
    ...newGotcha({ id, symptom: "", noted }),
    ...said,
    id,
    cause: said.cause || "suspected",
    noted: said.noted || noted,
  } as Gotcha;
}

function scopeOf(at: (head: string) => string): Scope {
  const said = Object.fromEntries(scopeWords.map((name, index) => [name, at(scopeHeads[index] as string)]));
  const by = at("serial by") === "text" ? "text" : "number";
  return newScope({
    ...said,
    years: { from: at("years from"), to: at("years to") },
    serial: { from: at("serial from"), to: at("serial to"), by },
  } as Partial<Scope>);
}

function badLine(line: number, issue: { path: PropertyKey[]; message: string } | undefined): BookError {
  return new BookError({
    found: `Line ${line} cannot be read: ${issue?.path.join(".")}: ${issue?.message}.`,
    expected: "Values of the form that this program writes. Nothing was brought in.",
    todo: "Mend that line, and bring the table in again.",
  });
}
