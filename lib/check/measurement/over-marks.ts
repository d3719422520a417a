import { type Finding, finding } from "#lib/finding/index.ts";
import type { Mark } from "#lib/mark/index.ts";
import { characteristicValues, typedOf } from "#lib/mark/index.ts";
import type { Example, Rule, View } from "../rule.ts";
import { type Beside, measurementsOf } from "./beside.ts";
import { entriesOf, type MarkEntry } from "./entries-of-marks.ts";
import { entryRules } from "./index.ts";
import type { EntryExample, EntryRule, Remark } from "./rule.ts";
import { type Sight, sightOf } from "./sight.ts";

/** The rules about measured values, put to the measurement marks of a build. */
export const measurementRules: readonly Rule[] = entryRules.map((rule) => ({
  id: rule.id,
  title: rule.title,
  explanation: rule.explanation,
  source: rule.source,
  check: (view) => once(saidOf(view).filter((one) => one.rule === rule)).map(found),
  examples: rule.examples.map(asSketch),
}));

/** What a rule said of one value of a mark. */
interface Said extends MarkEntry {
  rule: EntryRule;
  remark: Remark;
  sight: Sight;
  of: Mark;
}

const saidOfMarks = new WeakMap<View["marks"], Said[]>();

/** What all rules say of a build, worked out once for all of them. */
function saidOf({ document, marks }: View): Said[] {
  const known = saidOfMarks.get(marks);
  if (known) return known;
  const { decimal } = document.build;
  const said = measurementsOf(document, marks).flatMap((beside) => saidOfOne(beside, decimal));
  saidOfMarks.set(marks, said);
  return said;
}

const saidBefore = new WeakMap<Mark, { depends: readonly unknown[]; said: Said[] }>();

/** What is said of a mark stands while it and all that stands beside it are the same: an edit asks few marks anew. */
function saidOfOne(beside: Beside, decimal: "." | ","): Said[] {
  const { mark, parts, others, putRight } = beside;
  const depends = [decimal, putRight, ...parts, ...others];
  const before = saidBefore.get(mark);
  if (before && sameAll(before.depends, depends)) return before.said;
  const said = entriesOf(beside).flatMap((one) => saidOfEntry(one, mark, decimal));
  saidBefore.set(mark, { depends, said });
  return said;
}

const sameAll = (a: readonly unknown[], b: readonly unknown[]): boolean =>
  a.length === b.length && a.every((one, i) => one === b[i]);

function saidOfEntry(one: MarkEntry, of: Mark, decimal: "." | ","): Said[] {
  const sight = sightOf(one.entry, decimal);
  return entryRules.flatMap((rule) =>
    rule
      .check(sight)
      .slice(0, 1)
      .map((remark) => atItsField({ ...one, of, rule, remark, sight }))
      .filter((said) => said !== null),
  );
}

/** A remark about another field alone belongs there; one about another mark's value alone is said at that mark. */
function atItsField(said: Said): Said | null {
  const { of, entry, remark } = said;
  if (remark.found.includes(entry.text)) return said;
  const field = characteristicValues.find(
    (name) => typedOf(of, name) && remark.found.includes(typedOf(of, name)),
  );
  if (field) return { ...said, field };
  const others = entry.context.related?.filter((one) => remark.found.includes(one.text)) ?? [];
  return others.length === 1 ? null : said;
}

/** A finding about two values is said once, at the first of them. */
function once(said: Said[]): Said[] {
  const known = new Set<string>();
  return said.filter((one) => {
    const keys = keysOf(one);
    if (keys.some((key) => known.has(key))) return false;
    for (const key of keys) known.add(key);
    return true;
  });
}

/** What makes two findings one: the same place; the same values of the same part; the same sentence about two of its values. */
function keysOf({ remark, sight, item, mark, field, entry }: Said): string[] {
  const raws = [...new Set([...sight.facts, ...sight.named].map((fact) => fact.raw))]
    .filter((raw) => remark.found.includes(raw))
    .sort();
  const told = remark.found.toLowerCase();
  const named = entry.context.related?.some((one) => told.includes(one.what.toLowerCase())) ?? false;
  return [
    `${mark} ${field}`,
    raws.length < 2 ? `${mark}\n${remark.found}` : `${item}\n${raws.join("\n")}`,
    ...(named && told.includes(sight.what) ? [`${item}\n${remark.found}`] : []),
  ];
}

function found({ rule, mark, field, entry, remark }: Said): Finding {
  const { found, expected, meant, severity, source } = remark;
  return finding({
    rule: rule.id,
    severity,
    place: { mark, field },
    evidence: evidenceOf(entry),
    found,
    expected,
    todo: "Look again at the instrument or the source. Correct the value, or answer why it stands.",
    source: source ?? rule.source,
    ...(meant ? { meant } : {}),
  });
}

/** The value and what it was compared with: an answer lapses when one of them changes. */
function evidenceOf({ text, what, context }: MarkEntry["entry"]): string {
  const { related = [], ...known } = context;
  return [text, what, ...Object.values(known), ...related.flatMap((one) => [one.what, one.text])].join("\n");
}

/** An example as a build: the part with its material and thread, and its measurements. */
function asSketch({ says, entry, finds }: EntryExample): Example {
  const {
    part = "the part",
    material,
    fastener,
    instrument,
    spec,
    limit,
    verdict,
    related = [],
  } = entry.context ?? {};
  const given = (fields: Record<string, string | undefined>) =>
    Object.fromEntries(Object.entries(fields).filter(([, words]) => words !== undefined));
  const typed = (fields: Record<string, string | undefined>) =>
    Object.fromEntries(Object.entries(given(fields)).map(([name, words]) => [name, { typed: words }]));
  return {
    says,
    finds,
    sketch: {
      marks: [
        [1, "part", { item: part, event: "inspected", ...given({ material, size: fastener }) }],
        [
          2,
          "measurement",
          {
            words: entry.what,
            item: part,
            ...typed({ asFound: entry.text, specified: spec, limit }),
            ...given({ instrument, note: verdict }),
          },
        ],
        ...related.map((one, i): [number, "measurement", Record<string, unknown>] => [
          3 + i,
          "measurement",
          { words: one.what, item: part, ...typed({ asFitted: one.text }) },
        ]),
      ],
    },
  };
}
