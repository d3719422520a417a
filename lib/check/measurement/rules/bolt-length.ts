import { sayIn } from "../figures.ts";
import type { EntryRule } from "../rule.ts";
import { relatedFacts } from "../sight.ts";

/** A bolt shorter than what it goes through. */
export const boltLength: EntryRule = {
  id: "bolt-too-short",
  title: "A bolt shorter than what it holds",
  explanation:
    "Under its head a bolt is at least as long as the plates, washers and the nut that it goes through. One that is shorter does not fill its nut.",
  source: "arithmetic",
  check: (sight) => {
    const { main, what } = sight;
    if (
      main?.dimension !== "length" ||
      !/\b(?:bolt|screw|stud)s?\b.{0,12}\blength\b|\blength of (?:the )?(?:bolt|screw|stud)/.test(what)
    )
      return [];
    const held = relatedFacts(sight).filter(
      (fact) =>
        fact.dimension === "length" &&
        /\b(?:plate|flange|lug|thickness|washer|nut height|nut|gasket|cover)\b/.test(fact.name) &&
        !/\b(?:diameter|dia|thread|a\/f|across|width)\b/.test(fact.name),
    );
    const sum = held.reduce((all, fact) => all + fact.si, 0);
    if (held.length < 2 || main.si >= sum * 0.999 || /\bblind|tapped|countersunk\b/.test(sight.all))
      return [];
    return [
      {
        severity: "wrong" as const,
        found: `${main.raw}, through ${held.map((fact) => `${fact.name} ${fact.raw}`).join(" and ")}.`,
        expected: `${sayIn(sum, main.quantity)} at the least.`,
      },
    ];
  },
  examples: [
    {
      says: "15 mm through 17",
      entry: {
        text: "15 mm",
        what: "bolt length under head",
        context: {
          related: [
            { what: "plate thickness", text: "12 mm" },
            { what: "nut height", text: "5 mm" },
          ],
        },
      },
      finds: 1,
    },
    {
      says: "20 mm through 17",
      entry: {
        text: "20 mm",
        what: "bolt length under head",
        context: {
          related: [
            { what: "plate thickness", text: "12 mm" },
            { what: "nut height", text: "5 mm" },
          ],
        },
      },
      finds: 0,
    },
  ],
};
