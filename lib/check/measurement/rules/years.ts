import type { EntryRule } from "../rule.ts";
import type { Fact, Sight } from "../sight.ts";

/** Years in an order in which nothing can have happened. */
export const years: EntryRule = {
  id: "years-out-of-order",
  title: "Years out of order",
  explanation:
    "Nothing was cast before its maker began or after the works closed, and no repair came before the machine was built. Of two years that contradict each other, one was misread: a 3 for an 8, or a patent's date for the maker's.",
  source: "arithmetic: the order of the years given",
  check: (sight) => {
    const all = sight.facts.filter((fact) => isYear(fact, sight));
    for (const early of all.filter((fact) => first.test(fact.name)))
      for (const late of all)
        if (late !== early && !first.test(late.name) && late.si < early.si) return [outOfOrder(early, late)];
    for (const end of all.filter((fact) => last.test(fact.name)))
      for (const made of all)
        if (
          made !== end &&
          /\b(?:made|built|cast|casting|new|serial|works)\b/.test(made.name) &&
          made.si > end.si
        )
          return [outOfOrder(made, end)];
    return [];
  },
  examples: [
    {
      says: "cast before the works began",
      entry: {
        text: "1926",
        what: "year on the casting",
        context: { related: [{ what: "maker founded", text: "1931" }] },
      },
      finds: 1,
    },
    {
      says: "cast afterwards",
      entry: {
        text: "1936",
        what: "year on the casting",
        context: { related: [{ what: "maker founded", text: "1931" }] },
      },
      finds: 0,
    },
  ],
};

const first =
  /\b(?:founded|established|began|begun|first made|introduced|patent(?:ed)?|bought new|year built|built|born|start(?:ed)?)\b/;
const last = /\b(?:closed|ceased|last made|ended|wound up|discontinued)\b/;

const isYear = ({ dimension, quantity, si, name }: Fact, { what }: Sight): boolean =>
  dimension === "number" &&
  Number.isInteger(si) &&
  si >= 1600 &&
  si <= 2100 &&
  quantity.unit === "" &&
  (/\b(?:year|date[ds]?|made|built|cast|casting|repair(?:ed)?|overhaul(?:ed)?|rebuilt|new)\b/.test(
    `${what} ${name}`,
  ) ||
    first.test(name) ||
    last.test(name)) &&
  !/\b(?:rpm|beats|serial|number|part no)\b/.test(name);

const outOfOrder = (early: Fact, late: Fact) => ({
  severity: "doubtful" as const,
  found: `${early.name} ${early.raw}, ${late.name} ${late.raw}.`,
  expected: `${late.name} no earlier than ${early.name}.`,
});
