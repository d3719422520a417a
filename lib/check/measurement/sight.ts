import {
  boundsOf,
  type Designation,
  type Dimension,
  type Quantity,
  type Reading,
  read,
} from "#lib/quantity/index.ts";
import type { Entry } from "./entry.ts";

/** Where a value of an entry stands. */
export type Stands = "text" | "spec" | "limit" | "fastener" | "related";

/** One value with what it is called. */
export interface Fact {
  from: Stands;
  /** Place among the related values; 0 elsewhere. */
  index: number;
  /** What it is called, in small letters: the label and the words around the figures. */
  label: string;
  /** The label alone. */
  name: string;
  raw: string;
  quantity: Quantity;
  dimension: Dimension;
  si: number;
  /** Least and most in SI units; null where there is no bound. */
  low: number | null;
  high: number | null;
}

/** A designation with what it is called. */
export interface Named {
  from: Stands;
  label: string;
  raw: string;
  designation: Designation;
}

/** An entry, read: what the rules look at. */
export interface Sight {
  entry: Entry;
  decimal: Decimal;
  reading: Reading;
  /** Every text of it that may hold a value, with its reading. */
  readings: { text: string; reading: Reading }[];
  /** The first value of the text. */
  main: Fact | null;
  /** All values: of the text, the specification, the limit, the fastener and the related ones. */
  facts: Fact[];
  named: Named[];
  what: string;
  part: string;
  material: string;
  instrument: string;
  verdict: string;
  /** What was said in words alone, beside related values and in the verdict. */
  remarks: string;
  /** Every word of the entry, in small letters. */
  all: string;
}

/** The decimal sign of a build. */
export type Decimal = "." | ",";

const readings: Record<Decimal, Map<string, Reading>> = { ".": new Map(), ",": new Map() };
const mostKept = 8_000;

/** Reads a text once; the same text is not read again. */
export function readOnce(text: string, decimal: Decimal = "."): Reading {
  const kept = readings[decimal];
  const known = kept.get(text);
  if (known) return known;
  if (kept.size >= mostKept) kept.clear();
  const reading = read(text, { decimal });
  kept.set(text, reading);
  return reading;
}

const otherSpace = /[^\S ]|\s\s/;

/** In small letters, with one plain space between words. */
function small(text = ""): string {
  const single = otherSpace.test(text) ? text.replace(/\s+/g, " ") : text;
  return single.trim().toLowerCase();
}

const commaDecimal = /(?<![\d.,])\d+,(?:\d{1,2}|\d{4,})(?![\d,])|(?<![\d.,])0,\d+/;
const pointDecimal = /\d\.\d/;

/** The decimal sign that the writer used: a comma where the entry has one that can be nothing else, and no point. */
function writersDecimal({ text, context }: Entry, decimal: Decimal): Decimal {
  const related = context.related ?? [];
  if (decimal === "," || ![text, ...related.map((one) => one.text)].some((one) => one.includes(",")))
    return decimal;
  const all = [text, context.spec, context.limit, ...related.map((one) => one.text)].join(" ; ");
  return commaDecimal.test(all) && !pointDecimal.test(all) ? "," : decimal;
}

/** Reads an entry and what is known beside it. */
export function sightOf(entry: Entry, sign: Decimal = "."): Sight {
  const { context } = entry;
  const decimal = writersDecimal(entry, sign);
  const related = context.related ?? [];
  const what = small(entry.what);
  const places: [Stands, number, string, string | undefined][] = [
    ["text", 0, what, entry.text],
    ["spec", 0, what, context.spec],
    ["limit", 0, what, context.limit],
    ["fastener", 0, "fastener", context.fastener],
    ...related.map((one, index): [Stands, number, string, string] => [
      "related",
      index,
      small(one.what),
      one.text,
    ]),
  ];
  const facts: Fact[] = [];
  const named: Named[] = [];
  const readings: Sight["readings"] = [];
  const silent: string[] = [];
  for (const [from, index, name, text] of places) {
    if (text === undefined || text === "") continue;
    const reading = readOnce(text, decimal);
    readings.push({ text, reading });
    const own = factsOf(reading, { from, index, name, raw: text });
    facts.push(...own);
    if (from === "related" && own.length === 0) silent.push(text);
    for (const designation of designationsOf(reading))
      named.push({ from, label: name, raw: text, designation });
  }
  if (!named.some((one) => one.from !== "related" && one.designation.type === "thread"))
    for (const designation of designationsOf(readOnce(entry.what, decimal)))
      if (designation.type === "thread")
        named.push({ from: "fastener", label: "fastener", raw: designation.name, designation });
  return {
    entry,
    decimal,
    reading: readOnce(entry.text, decimal),
    readings,
    main: facts.find((fact) => fact.from === "text") ?? null,
    facts,
    named,
    what,
    part: small(context.part),
    material: small(context.material),
    instrument: small(context.instrument),
    verdict: small(context.verdict),
    remarks: small([...silent, context.verdict].filter(Boolean).join("; ")),
    all: small(
      [
        entry.text,
        entry.what,
        ...Object.values({ ...context, related: "" }),
        ...related.flatMap((one) => [one.what, one.text]),
      ].join(" ; "),
    ),
  };
}

type Origin = Pick<Fact, "from" | "index" | "name" | "raw">;

/** The values of a reading: of several systems the first, of a question the likeliest. */
function factsOf(reading: Reading, origin: Origin): Fact[] {
  switch (reading.kind) {
    case "list":
      return reading.parts.flatMap((part) => factsOf(part, origin));
    case "question":
      return reading.candidates
        .slice(0, 1)
        .flatMap((part) =>
          factsOf(reading.words ? ({ words: reading.words, ...part } as Reading) : part, origin),
        );
    case "bare":
    case "quantity":
      return reading.quantities.slice(0, 1).map((one) => fact(one, origin, reading.words));
    case "product":
      return reading.quantities.map((one, i) => fact(one, origin, reading.names?.[i] ?? reading.words));
    case "sum":
      return reading.total ? [fact(reading.total, origin, reading.words)] : [];
    default:
      return [];
  }
}

function fact(quantity: Quantity, origin: Origin, words: string | undefined): Fact {
  const { low, high } = boundsOf(quantity);
  return {
    from: origin.from,
    index: origin.index,
    label: words === undefined ? origin.name : small(`${origin.name} ${words}`),
    name: origin.name,
    raw: origin.raw,
    quantity,
    dimension: quantity.dimension,
    si: quantity.si,
    low,
    high,
  };
}

function designationsOf(reading: Reading): Designation[] {
  if (reading.kind === "designation") return [reading.designation];
  if (reading.kind === "list") return reading.parts.flatMap(designationsOf);
  return reading.kind === "question" ? reading.candidates.slice(0, 1).flatMap(designationsOf) : [];
}

/** Related values, one a label; of a product or a list only the first. */
export const relatedFacts = (sight: Sight): Fact[] => sight.facts.filter((fact) => fact.from === "related");
