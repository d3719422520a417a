import { near, sayIn } from "../figures.ts";
import type { EntryRule } from "../rule.ts";
import type { Fact, Sight } from "../sight.ts";

/** Capacitors and resistors in a row and side by side. */
export const sideBySide: EntryRule = {
  id: "series-and-parallel",
  title: "In series or in parallel",
  explanation:
    "Resistors in series and capacitors in parallel add up. Resistors in parallel and capacitors in series come to less than the smallest of them. The two are easily taken for one another.",
  source: "Kirchhoff's laws",
  check: (sight) => {
    const kind = sight.main?.dimension;
    if (kind !== "capacitance" && kind !== "resistance") return [];
    if (
      /\b(?:one|each|first|second|other) (?:of|one)\b|\beach\b|^(?:first|second|one|other)\b/.test(sight.what)
    )
      return [];
    const way = wayIn(sight.all);
    const { terms, total } = termsIn(sight, kind);
    if (!way || !total || terms.length < 2 || terms.some((fact) => fact.si <= 0)) return [];
    const adds = (way === "series") === (kind === "resistance");
    const sum = terms.reduce((all, fact) => all + fact.si, 0);
    const joined = 1 / terms.reduce((all, fact) => all + 1 / fact.si, 0);
    const should = adds ? sum : joined;
    if (near(should, total.si, 0.12)) return [];
    return [
      {
        severity: "wrong" as const,
        found: `${sayIn(total.si, total.quantity)} for ${terms.map((fact) => sayIn(fact.si, fact.quantity)).join(" and ")} in ${way}.`,
        expected: `${sayIn(should, total.quantity, 3)}.`,
        meant: `${sayIn(should, total.quantity, 3)}?`,
      },
    ];
  },
  examples: [
    {
      says: "capacitors in series do not add up",
      entry: { text: "2 µF + 2 µF = 4 µF", what: "pair of capacitors in series" },
      finds: 1,
    },
    {
      says: "side by side they do",
      entry: { text: "2 µF + 2 µF = 4 µF", what: "pair of capacitors in parallel" },
      finds: 0,
    },
    {
      says: "8 and 8 µF in series are 4",
      entry: {
        text: "4 µF",
        what: "smoothing capacitors in series, total",
        context: {
          related: [
            { what: "first capacitor", text: "8 µF" },
            { what: "second capacitor", text: "8 µF" },
          ],
        },
      },
      finds: 0,
    },
    {
      says: "100 and 100 Ω in parallel are not 200",
      entry: { text: "100 Ω + 100 Ω = 200 Ω", what: "field coils in parallel" },
      finds: 1,
    },
  ],
};

function wayIn(all: string): "series" | "parallel" | null {
  const series = /\bin series\b|\bseries (?:pair|string|connected)\b|\bend to end\b/.test(all);
  const parallel = /\bin parallel\b|\bparallel(?:led)? (?:pair|connected|bank)\b|\bside by side\b/.test(all);
  return series === parallel ? null : series ? "series" : "parallel";
}

/** The pieces and what they come to: written out in the text, or the related values and the text's. */
function termsIn({ facts, entry, main }: Sight, kind: string): { terms: Fact[]; total: Fact | null } {
  const own = facts.filter((fact) => fact.from === "text" && fact.dimension === kind);
  if (entry.text.includes("=") && own.length > 2)
    return { terms: own.slice(0, -1), total: own.at(-1) ?? null };
  const related = facts.filter(
    (fact) =>
      fact.from === "related" &&
      fact.dimension === kind &&
      !/\b(?:limit|spec|total|across (?:both|all)|together|leak\w*|wanted|should|tolerance|working|measured before|insulation)\b/.test(
        fact.label,
      ),
  );
  return { terms: own.length === 1 ? related.flatMap(repeated) : [], total: main };
}

/** "two, 8 µF each". */
function repeated(fact: Fact): Fact[] {
  const each = /\b(?:pair|both|two|2 off|2 x)\b/i.test(`${fact.raw} ${fact.name}`)
    ? 2
    : /\b(?:three|3 off|3 x)\b/i.test(`${fact.raw} ${fact.name}`)
      ? 3
      : 1;
  return Array.from({ length: each }, () => fact);
}
