import { type Finding, finding } from "#lib/finding/index.ts";
import type { Example, Rule, View } from "../rule.ts";
import { entriesOfMarks, type MarkEntry } from "./entries-of-marks.ts";
import type { EntryExample, EntryRule, Remark } from "./rule.ts";
import { type Sight, sightOf } from "./sight.ts";

/** A rule about measured values, put to the measurement marks of a build. */
export function overMarks(rule: EntryRule): Rule {
  return {
    id: rule.id,
    title: rule.title,
    explanation: rule.explanation,
    source: rule.source,
    check: (view) =>
      once(sightsOf(view).flatMap((one) => rule.check(one.sight).map((remark) => ({ ...one, remark })))).map(
        (one) => found(rule, one),
      ),
    examples: rule.examples.map(asSketch),
  };
}

type Seen = MarkEntry & { sight: Sight };
type Said = Seen & { remark: Remark };

const seen = new WeakMap<View["marks"], Seen[]>();

/** The entries of a build, read once for all rules. */
function sightsOf({ marks }: View): Seen[] {
  const known = seen.get(marks);
  if (known) return known;
  const sights = entriesOfMarks(marks).map((one) => ({ ...one, sight: sightOf(one.entry) }));
  seen.set(marks, sights);
  return sights;
}

/** A finding about two values is said once, at the first of them. */
function once(said: Said[]): Said[] {
  const known = new Set<string>();
  return said.filter(({ remark, sight, item, mark }) => {
    const raws = [...new Set([...sight.facts, ...sight.named].map((fact) => fact.raw))]
      .filter((raw) => remark.found.includes(raw))
      .sort();
    const key = raws.length < 2 ? `${mark}\n${remark.found}` : `${item}\n${raws.join("\n")}`;
    if (known.has(key)) return false;
    known.add(key);
    return true;
  });
}

function found(rule: EntryRule, { mark, field, entry, remark }: Said): Finding {
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
